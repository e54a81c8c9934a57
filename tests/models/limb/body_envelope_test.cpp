#include "models/limb/body_envelope.hpp"

#include <map>

#include "course_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;
using enum Segment;

namespace {

const BodyEnvelope& envelope() {
  static const BodyEnvelope envelope = [] {
    auto read = BodyEnvelope::from(own_tables());
    REQUIRE(read.has_value());
    return *std::move(read);
  }();
  return envelope;
}

}  // namespace

TEST_CASE("the depth under the skin is nought on the outline and grows inwards", "[models][limb]") {
  const SegmentFrames frames;
  for (const Segment segment : {humerus, forearm, hand}) {
    for (const SkinSection& s : envelope().skin(segment)) {
      if (segment == humerus && s.fraction == 0.0) continue;  // the elbow is a union of two forms
      INFO("segment " << static_cast<int>(segment) << ", fraction " << s.fraction);
      // A hair on the segment's own side of the seam at the crease.
      const double f = segment == hand ? s.fraction + 1e-6 : s.fraction - 1e-6;
      const auto depth = [&](double x_mm, double z_mm) {
        return envelope().depth_mm<double>(frames, frames.to_limb(segment, f, x_mm, z_mm));
      };
      CHECK(depth(s.centre_x_mm + s.half_depth_mm, 0.0) == Approx(0.0).margin(5e-3));
      CHECK(depth(s.centre_x_mm, -s.half_width_mm) == Approx(0.0).margin(5e-3));
      CHECK(depth(s.centre_x_mm + s.half_depth_mm - 2.0, 0.0) == Approx(2.0).margin(0.02));
      CHECK(depth(s.centre_x_mm, s.half_width_mm + 3.0) == Approx(-3.0).margin(0.02));
    }
  }
}

TEST_CASE("the skin of arm, forearm and hand has no step at its seams", "[models][limb]") {
  const SegmentFrames frames({1.2, 0.9, 1.1, 1.05}, Side::left);
  for (const double z_mm : {-20.0, 0.0, 20.0}) {
    const auto depth = [&](Segment segment, double fraction) {
      return envelope().depth_mm<double>(frames, frames.to_limb(segment, fraction, 12.0, z_mm));
    };
    CHECK(depth(hand, -1e-6) == Approx(depth(hand, 1e-6)).margin(0.1));
    CHECK(depth(humerus, -1e-6) == Approx(depth(humerus, 1e-6)).margin(0.01));
    CHECK(depth(forearm, -1e-6) == Approx(depth(forearm, 1e-6)).margin(0.01));
  }
}

TEST_CASE("the clearance is measured from the surface of the nearest bone", "[models][limb]") {
  const SegmentFrames frames;
  const auto clearance = [&](Segment segment, double fraction, double x_mm, double z_mm) {
    return envelope().clearance_mm<double>(frames, frames.to_limb(segment, fraction, x_mm, z_mm));
  };
  // Behind the shaft half-way down, whose axis lies 4.5 mm lateral there; the axis is tilted by
  // 3 mm in 180, which the distance feels below 0.01 mm.
  CHECK(clearance(humerus, 0.5, -20.0, 4.5) == Approx(9.0).margin(0.01));
  CHECK(clearance(humerus, 0.5, 0.0, 4.5) == Approx(-11.0).margin(0.01));
  CHECK(clearance(humerus, 0.8933, 0.0, -40.0) == Approx(17.0).margin(0.01));
  const Eigen::Vector3d at_hook = frames.to_limb(hand, 0.072, 16.0, -6.0);
  CHECK(envelope().nearest_bone(frames, at_hook).bone == "hamate");
}

// Bony landmarks that can be felt under the skin stand near the surface of the bones as modelled.
TEST_CASE("landmarks on bones lie near the capsules and under the skin", "[models][limb]") {
  const SegmentFrames frames;
  for (const char* name :
       {"lateral epicondyle", "medial epicondyle", "olecranon tip", "radius, radial border",
        "ulna, medial border", "pisiform", "hook of hamate"}) {
    INFO(name);
    const Eigen::Vector3d p = TestCourse::atlas().landmarks().position_mm(name, frames).value();
    CHECK(std::abs(envelope().clearance_mm<double>(frames, p)) < 3.0);
    CHECK(envelope().depth_mm<double>(frames, p) > -1.0);
  }
}

TEST_CASE("nerve courses stay inside the skin and outside bone", "[models][limb][anatomy]") {
  constexpr double kTolerance_mm = 1.0;
  const SegmentFrames frames;
  for (const Course& course : TestCourse::atlas().courses()) {
    const TestCourse nerve(course.id);
    double least_depth_mm = 100.0;
    double least_clearance_mm = 100.0;
    Eigen::Vector3d shallowest = Eigen::Vector3d::Zero();
    Eigen::Vector3d closest = Eigen::Vector3d::Zero();
    for (const double u : nerve.samples()) {
      const Eigen::Vector3d p = nerve.curve().position(u);
      if (const double depth = envelope().depth_mm<double>(frames, p); depth < least_depth_mm) {
        least_depth_mm = depth;
        shallowest = p;
      }
      if (const double c = envelope().clearance_mm<double>(frames, p); c < least_clearance_mm) {
        least_clearance_mm = c;
        closest = p;
      }
    }
    INFO(course.id << ": depth " << least_depth_mm << " mm at " << shallowest.transpose()
                   << "; clearance " << least_clearance_mm << " mm from the "
                   << envelope().nearest_bone(frames, closest).bone << " at "
                   << closest.transpose());
    CHECK(least_depth_mm > -kTolerance_mm);
    CHECK(least_clearance_mm > -kTolerance_mm);
  }
}

TEST_CASE("no nerve course bends more sharply than a radius of 3 mm", "[models][limb][anatomy]") {
  for (const Course& course : TestCourse::atlas().courses()) {
    const TestCourse nerve(course.id);
    double least_mm = 1000.0;
    double at = 0.0;
    for (const double u : nerve.samples(0.25)) {
      if (const double r = nerve.radius_of_curvature_mm(u); r < least_mm) {
        least_mm = r;
        at = u;
      }
    }
    INFO(course.id << " bends with a radius of " << least_mm << " mm at " << at);
    CHECK(least_mm > 3.0);
  }
}
