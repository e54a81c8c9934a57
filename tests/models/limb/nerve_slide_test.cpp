#include "models/limb/nerve_slide.hpp"

#include <catch2/catch.hpp>
#include <cmath>

namespace endplate::limb {
namespace {

constexpr double kTether_mm = 60.0;

struct Bed {
  std::vector<double> rest;
  std::vector<double> posed;
  std::vector<double> tether;
};

// 1,200 mm, stretched by `strain` within `half_mm` of the middle.
Bed stretched(double strain, double half_mm) {
  Bed bed;
  for (int i = 0; i <= 1200; ++i) {
    const double s = i - 600.0;
    bed.rest.push_back(i);
    bed.posed.push_back(i + strain * (std::clamp(s, -half_mm, half_mm) + half_mm));
    bed.tether.push_back(kTether_mm);
  }
  return bed;
}

}  // namespace

TEST_CASE("A nerve in a bed that does not change does not slide", "[limb][motion]") {
  const Bed bed = stretched(0.0, 20.0);
  const Slide result = slide(bed.rest, bed.posed, bed.tether);
  for (const double u : result.slide_mm) CHECK(u == Approx(0.0).margin(1e-12));
}

TEST_CASE("A bed stretched evenly takes its nerve along", "[limb][motion]") {
  const Bed bed = stretched(0.03, 600.0);
  const Slide result = slide(bed.rest, bed.posed, bed.tether);
  for (const double u : result.slide_mm) CHECK(u == Approx(0.0).margin(1e-9));
  for (const double e : result.strain) CHECK(e == Approx(0.03));
}

// Closed form for a long bed stretched by e within w of the origin: the nerve's strain is
// e (1 - exp(-w/L) cosh(s/L)) inside and e exp(-s/L) sinh(w/L) beyond, with L the tether length.
TEST_CASE("A bed stretched at one place is felt about a tether length away", "[limb][motion]") {
  const double e = 0.2;
  const double w = 30.0;
  const Bed bed = stretched(e, w);
  const Slide result = slide(bed.rest, bed.posed, bed.tether);
  for (const double s : {0.5, 10.5, 25.5, 40.5, 90.5, 200.5}) {
    const double inside = e * (1.0 - std::exp(-w / kTether_mm) * std::cosh(s / kTether_mm));
    const double outside = e * std::exp(-s / kTether_mm) * std::sinh(w / kTether_mm);
    const auto right = static_cast<std::size_t>(600.0 + s);
    const auto left = static_cast<std::size_t>(600.0 - s);
    INFO(s);
    CHECK(result.strain[right] == Approx(s < w ? inside : outside).margin(1e-4));
    CHECK(result.strain[left] == Approx(result.strain[right]));
  }
  // It slides toward the stretched place from both sides.
  CHECK(result.slide_mm[700] < 0.0);
  CHECK(result.slide_mm[500] == Approx(-result.slide_mm[700]));
}

TEST_CASE("Stretched and shortened a nerve is as long as its bed", "[limb][motion]") {
  for (const double e : {0.15, -0.15}) {
    const Bed bed = stretched(e, 40.0);
    const Slide result = slide(bed.rest, bed.posed, bed.tether);
    double length = 0.0;
    for (std::size_t i = 0; i < result.strain.size(); ++i) length += 1.0 + result.strain[i];
    CHECK(length == Approx(bed.posed.back() - bed.posed.front()));
  }
}

}  // namespace endplate::limb
