#include <algorithm>

#include "limb_fixture.hpp"
#include "models/limb/distance.hpp"

namespace endplate::limb {
namespace {

casefile::Limb bent(const std::map<std::string, double>& pose_deg, Side side = Side::right) {
  casefile::Limb given;
  given.side = side;
  given.pose_deg = pose_deg;
  return given;
}

std::vector<Distance> ask(const casefile::Limb& given, const DistanceQuery& query = {},
                          const std::vector<casefile::Operation>& operations = {}) {
  auto answer = distances(own_tables(), given, query, operations);
  if (!answer) FAIL(answer.error().problems.front().what);
  return answer->distances;
}

std::vector<casefile::Operation> transposed() {
  casefile::Operation operation;
  operation.state = casefile::OperationState::done;
  casefile::Procedure procedure;
  procedure.procedure = "transposition";
  procedure.nerve = "ulnar nerve";
  operation.done.push_back(procedure);
  return {operation};
}

// The summary of the published kind.
const Summary& main_figure(const Distance& d) {
  if (d.definition == "along" || d.definition == "length") return *d.along_nerve_mm;
  if (d.along_limb_mm) return *d.along_limb_mm;
  return d.across_limb_mm ? *d.across_limb_mm : *d.straight_mm;
}

}  // namespace

TEST_CASE("a pose of straight joints is no pose", "[limb][distance][pose]") {
  const auto rest = ask({});
  const auto zero = ask(bent({{"elbow_flexion_deg", 0.0}, {"wrist_extension_deg", 0.0}}));
  REQUIRE(rest.size() == zero.size());
  for (std::size_t i = 0; i < rest.size(); ++i) {
    CHECK(main_figure(rest[i]).mean == main_figure(zero[i]).mean);
    CHECK_FALSE(zero[i].in_pose);
    CHECK(zero[i].moved_mm == 0.0);
  }
}

TEST_CASE("the pose moves the mean by the model's change and leaves the spread",
          "[limb][distance][pose]") {
  const auto rest = ask({});
  const auto moved = ask(bent({{"elbow_flexion_deg", 90.0}, {"forearm_pronation_deg", 80.0}}));
  REQUIRE(rest.size() == moved.size());
  int changed = 0;
  int posed = 0;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    CAPTURE(rest[i].nerve, rest[i].point, rest[i].landmark);
    REQUIRE(rest[i].point == moved[i].point);
    CHECK(main_figure(moved[i]).sd == Approx(main_figure(rest[i]).sd));
    if (!moved[i].in_pose) {
      CHECK(main_figure(moved[i]).mean == Approx(main_figure(rest[i]).mean));
      continue;
    }
    ++posed;
    if (std::abs(moved[i].moved_mm) > 1.0) ++changed;
    if (moved[i].direction == rest[i].direction && !moved[i].straight_mm) {
      CHECK(main_figure(moved[i]).mean ==
            Approx(main_figure(rest[i]).mean + moved[i].moved_mm).margin(1e-9));
    }
  }
  CHECK(posed >= 200);
  CHECK(changed >= 10);
}

TEST_CASE("bending the elbow leaves what lies on one side of it and brings the rest nearer",
          "[limb][distance][pose]") {
  const DistanceQuery wrist{"median nerve", "distal wrist crease", ""};
  const auto rest = ask({}, wrist);
  const auto moved = ask(bent({{"elbow_flexion_deg", 90.0}}), wrist);
  REQUIRE(rest.size() == moved.size());
  int beyond = 0;
  int above = 0;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    if (!rest[i].straight_mm || !moved[i].straight_mm) continue;
    const double before = rest[i].straight_mm->mean;
    const double after = moved[i].straight_mm->mean;
    CAPTURE(rest[i].point, before, after);
    if (before < 200.0) {
      ++beyond;
      CHECK(after == Approx(before).margin(0.5));
    } else if (before > 300.0) {
      ++above;
      CHECK(after < before - 50.0);
    }
  }
  CHECK(beyond >= 1);
  CHECK(above >= 1);
}

TEST_CASE("distances in a pose are the same on both sides", "[limb][distance][pose]") {
  const std::map<std::string, double> pose{{"elbow_flexion_deg", 70.0},
                                           {"forearm_pronation_deg", 110.0},
                                           {"shoulder_abduction_deg", 60.0}};
  const DistanceQuery query{"radial nerve", "lateral epicondyle", ""};
  const auto right = ask(bent(pose), query);
  const auto left = ask(bent(pose, Side::left), query);
  REQUIRE(right.size() == left.size());
  for (std::size_t i = 0; i < right.size(); ++i) {
    CAPTURE(right[i].point);
    CHECK(main_figure(right[i]).mean == Approx(main_figure(left[i]).mean).margin(1e-9));
    CHECK(right[i].over_skin_mm.has_value() == left[i].over_skin_mm.has_value());
    if (right[i].over_skin_mm && left[i].over_skin_mm) {
      CHECK(right[i].over_skin_mm->mean == Approx(left[i].over_skin_mm->mean).margin(1e-9));
    }
  }
}

TEST_CASE("a transposed ulnar nerve moves its own points at the elbow and no others",
          "[limb][distance]") {
  const auto rest = ask({});
  const auto moved = ask({}, {}, transposed());
  REQUIRE(rest.size() == moved.size());
  int changed = 0;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    CAPTURE(rest[i].nerve, rest[i].point, rest[i].landmark);
    CHECK_FALSE(moved[i].in_pose);
    if (rest[i].nerve.find("ulnar") == std::string::npos) {
      CHECK(main_figure(moved[i]).mean == Approx(main_figure(rest[i]).mean).margin(1e-4));
    } else if (rest[i].straight_mm && moved[i].straight_mm &&
               std::abs(moved[i].straight_mm->mean - rest[i].straight_mm->mean) > 5.0) {
      ++changed;
    }
  }
  CHECK(changed >= 1);
}

TEST_CASE("a narrow question is answered over the skin, a wide one when asked",
          "[limb][distance][skin]") {
  const auto narrow = ask({}, {"axillary nerve", std::nullopt, ""});
  REQUIRE(narrow.size() <= kFewDistances);
  for (const Distance& d : narrow) {
    CAPTURE(d.point, d.landmark);
    CHECK(d.over_skin_mm.has_value() != !d.over_skin_absent.empty());
    if (!d.over_skin_mm) continue;
    CHECK(d.over_skin_mm->p05 >= 0.0);
    CHECK(d.over_skin_mm->p05 <= d.over_skin_mm->mean);
  }
  CHECK(std::ranges::any_of(narrow, [](const Distance& d) { return d.over_skin_mm.has_value(); }));
  const auto wide = ask({});
  REQUIRE(wide.size() > kFewDistances);
  CHECK(std::ranges::none_of(wide, [](const Distance& d) { return d.over_skin_mm.has_value(); }));
}

TEST_CASE("a tape is at least as long as the straight way less what flesh hides",
          "[limb][distance][skin]") {
  int compared = 0;
  for (const Distance& d : ask({}, {std::nullopt, "lateral epicondyle", "", true})) {
    if (!d.over_skin_mm || !d.straight_mm || !d.along_limb_mm) continue;
    if (std::abs(d.along_limb_mm->mean) < 40.0) continue;
    ++compared;
    CAPTURE(d.nerve, d.point);
    CHECK(d.over_skin_mm->mean > 0.9 * std::abs(d.along_limb_mm->mean));
    CHECK(d.over_skin_mm->mean < std::abs(d.along_limb_mm->mean) + 90.0);
  }
  CHECK(compared >= 10);
}

}  // namespace endplate::limb
