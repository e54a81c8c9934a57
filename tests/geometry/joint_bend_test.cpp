#include "geometry/joint_bend.hpp"

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <catch2/catch.hpp>
#include <numbers>
#include <random>

using Eigen::Vector3d;
using endplate::geometry::JointBend;

namespace {

constexpr double kHalfZone_mm = 40.0;
const Vector3d kCentre(3.0, -2.0, 5.0);

double radians(double degrees) {
  return degrees * std::numbers::pi / 180.0;
}

// An elbow: the bones along y, x in front, turned about z.
JointBend elbow(double flexion_deg) {
  return {kCentre, Vector3d::UnitY(), Vector3d::UnitZ(), radians(flexion_deg), kHalfZone_mm};
}

Vector3d turned(const Vector3d& p, double flexion_deg) {
  return kCentre + Eigen::AngleAxisd(radians(flexion_deg), Vector3d::UnitZ()) * (p - kCentre);
}

// Places within an arm: 40 mm about the bones, 100 mm up and down.
std::vector<Vector3d> places(int count) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> across(-40.0, 40.0);
  std::uniform_real_distribution<double> along(-100.0, 100.0);
  std::vector<Vector3d> result;
  for (int i = 0; i < count; ++i) {
    result.emplace_back(kCentre + Vector3d(across(random), along(random), across(random)));
  }
  return result;
}

}  // namespace

TEST_CASE("a straight joint leaves every point where it is", "[geometry]") {
  for (const Vector3d& p : places(50)) CHECK(elbow(0.0)(p) == p);
}

TEST_CASE("the bones stay straight and turn about the joint", "[geometry]") {
  const JointBend bend = elbow(110.0);
  for (const double y : {0.0, 5.0, 30.0, 90.0}) {
    const Vector3d above = kCentre + Vector3d(0.0, y, 4.0);
    const Vector3d below = kCentre + Vector3d(0.0, -y, 4.0);
    CHECK((bend(above) - above).norm() < 1e-9);
    CHECK((bend(below) - turned(below, 110.0)).norm() < 1e-9);
  }
}

TEST_CASE("flesh behind a bent joint keeps its distance from the bones", "[geometry]") {
  const JointBend bend = elbow(130.0);
  const Vector3d far_end = turned(kCentre - Vector3d(0.0, 500.0, 0.0), 130.0);
  const auto from_segment = [](const Vector3d& p, const Vector3d& a, const Vector3d& b) {
    const double t = std::clamp((p - a).dot(b - a) / (b - a).squaredNorm(), 0.0, 1.0);
    return (p - a - t * (b - a)).norm();
  };
  for (const double y : {-60.0, -30.0, -8.0, 0.0, 3.0, 20.0, 39.0, 50.0}) {
    const Vector3d p = bend(kCentre + Vector3d(-30.0, y, 0.0));
    const double from_bones =
        std::min(from_segment(p, kCentre, kCentre + Vector3d(0.0, 500.0, 0.0)),
                 from_segment(p, kCentre, far_end));
    CHECK(from_bones == Approx(30.0));
  }
}

TEST_CASE("no part of the bent space is turned inside out or torn", "[geometry]") {
  for (const double flexion_deg : {5.0, 60.0, 90.0, 140.0, 158.0}) {
    const JointBend bend = elbow(flexion_deg);
    for (const Vector3d& p : places(2000)) {
      constexpr double kStep = 1e-4;
      Eigen::Matrix3d gradient;
      for (int k = 0; k < 3; ++k) {
        const Vector3d step = kStep * Vector3d::Unit(k);
        gradient.col(k) = (bend(p + step) - bend(p - step)) / (2.0 * kStep);
      }
      INFO("flexion " << flexion_deg << " at " << (p - kCentre).transpose());
      CHECK(gradient.determinant() > 0.0);
      CHECK(gradient.norm() < 100.0);  // no jump
    }
  }
}

TEST_CASE("the two sides of a bent joint stay on their sides of the plane between", "[geometry]") {
  const double flexion_deg = 145.0;
  const JointBend bend = elbow(flexion_deg);
  const double half = radians(flexion_deg / 2.0);
  const Vector3d normal(-std::sin(half), std::cos(half), 0.0);  // toward the proximal side
  for (const Vector3d& p : places(2000)) {
    const double side = (bend(p) - kCentre).dot(normal);
    CHECK(side * (p.y() - kCentre.y()) >= -1e-9);
  }
}

TEST_CASE("bending the other way is the mirror image", "[geometry]") {
  const auto mirrored = [](const Vector3d& p) {
    return Vector3d(2.0 * kCentre.x() - p.x(), p.y(), p.z());
  };
  for (const Vector3d& p : places(200)) {
    CHECK((elbow(-70.0)(mirrored(p)) - mirrored(elbow(70.0)(p))).norm() < 1e-9);
  }
}

TEST_CASE("a held point behind the joint goes with its bone", "[geometry]") {
  const JointBend bend = elbow(100.0);
  const Vector3d above = kCentre + Vector3d(-12.0, 6.0, -20.0);
  const Vector3d below = kCentre + Vector3d(-12.0, -6.0, -20.0);
  CHECK((bend.held(above) - above).norm() < 1e-9);
  CHECK((bend.held(below) - turned(below, 100.0)).norm() < 1e-9);
  const Vector3d front = kCentre + Vector3d(15.0, 6.0, 0.0);
  CHECK((bend.held(front) - bend(front)).norm() < 1e-9);
}
