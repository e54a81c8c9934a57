#include "models/limb/found_distances.hpp"

#include <catch2/catch.hpp>
#include <cmath>

namespace endplate::limb {
namespace {

DistancePrior distance(std::size_t point, double arc_mm, double mean_mm, double sd_mm,
                       const std::string& landmark) {
  return {mean_mm, sd_mm, {{{0, point}, arc_mm, 8.0, -1.0}}, landmark, 4.0};
}

}  // namespace

TEST_CASE("without a reading a distance stays as it was", "[limb][ultrasound]") {
  FoundDistances none;
  none.finish();
  const auto same = none.narrow(distance(0, 100.0, 110.0, 20.0, "lateral epicondyle"));
  CHECK(same.mean_mm == 110.0);
  CHECK(same.sd_mm == 20.0);
}

TEST_CASE("a reading moves its own distance, those of its point and its neighbours",
          "[limb][ultrasound]") {
  FoundDistances found;
  found.add(distance(0, 100.0, 110.0, 20.0, "lateral epicondyle"), 125.0, 5.0);
  found.finish();
  const double own = 400.0 + 25.0;

  const auto itself = found.narrow(distance(0, 100.0, 110.0, 20.0, "lateral epicondyle"));
  CHECK(itself.mean_mm == Approx(110.0 + 400.0 / own * 15.0));
  CHECK(itself.sd_mm == Approx(std::sqrt(400.0 - 400.0 * 400.0 / own)));

  // Another landmark, a wider distance: all that the reading's own holds but for its landmark.
  const auto other_landmark = found.narrow(distance(0, 100.0, 90.0, 30.0, "olecranon tip"));
  const double point = 400.0 - 16.0;
  CHECK(other_landmark.mean_mm == Approx(90.0 + point / own * 15.0));
  CHECK(other_landmark.sd_mm == Approx(std::sqrt(900.0 - point * point / own)));

  // A neighbour 50 mm away shares the spread of levels alone.
  const auto neighbour = found.narrow(distance(1, 150.0, 60.0, 20.0, "lateral epicondyle"));
  const double tie = 64.0 * std::exp(-0.5);
  CHECK(neighbour.mean_mm == Approx(60.0 + tie / own * 15.0));
  CHECK(neighbour.sd_mm == Approx(std::sqrt(400.0 - tie * tie / own)));

  // Another course, and a distance across the limb, know nothing of it.
  DistancePrior elsewhere = distance(0, 100.0, 60.0, 20.0, "lateral epicondyle");
  elsewhere.moves[0].point.course = 1;
  CHECK(found.narrow(elsewhere).mean_mm == Approx(60.0));
  elsewhere.moves.clear();
  CHECK(found.narrow(elsewhere).sd_mm == Approx(20.0));
}

TEST_CASE("a length between two points moves with the difference of both", "[limb][ultrasound]") {
  FoundDistances found;
  found.add(distance(0, 100.0, 110.0, 20.0, "lateral epicondyle"), 125.0, 5.0);
  found.finish();
  // From the found point to one 100 mm distal of it: when the first moves proximally (a reading
  // counted proximal positive), the way to the second grows.
  const DistancePrior length{
      100.0, 25.0, {{{0, 1}, 200.0, 8.0, 1.0}, {{0, 0}, 100.0, 8.0, -1.0}}, "", 0.0};
  const double tie = 64.0 * (1.0 - std::exp(-1.0));
  CHECK(found.narrow(length).mean_mm == Approx(100.0 + tie / 425.0 * 15.0));
}

}  // namespace endplate::limb
