#include "geometry/swept_solid.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <stdexcept>

#include "geometry/cubic_spline.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;

// A rounded end takes at most this share of the solid.
constexpr double kEndShare = 0.45;

struct Row {
  double knot;
  double size;  // of the ellipse at that knot
};

class Sweeper {
 public:
  explicit Sweeper(const std::vector<SweptRing>& rings) : rings_(rings) {
    if (rings.size() < 2) throw std::invalid_argument("a swept solid has at least two rings");
    CubicSpline::Points centres(static_cast<Eigen::Index>(rings.size()), 3);
    CubicSpline::Points shapes(centres.rows(), 3);
    for (std::size_t i = 0; i < rings.size(); ++i) {
      const auto row = static_cast<Eigen::Index>(i);
      centres.row(row) = rings[i].centre_mm.transpose();
      shapes.row(row) << rings[i].half_a_mm, rings[i].half_b_mm, 0.0;
      knots_.push_back(
          i == 0 ? 0.0 : knots_.back() + (rings[i].centre_mm - rings[i - 1].centre_mm).norm());
    }
    centres_.emplace(knots_, centres);
    shapes_.emplace(knots_, shapes);
  }

  double length_mm() const { return knots_.back(); }

  std::vector<Row> rows(const SweepFineness& fineness, double rest_mm) const {
    const double length = length_mm();
    const auto end_mm = [&](const SweptRing& ring) {
      return std::min(std::min(ring.half_a_mm, ring.half_b_mm), kEndShare * length);
    };
    const double first = end_mm(rings_.front());
    const double last = end_mm(rings_.back());
    std::vector<Row> result;
    for (int k = 1; k < fineness.end; ++k) {
      const double a = 0.5 * std::numbers::pi * k / fineness.end;
      result.push_back({first * (1.0 - std::cos(a)), std::sin(a)});
    }
    const int steps = std::max(2, static_cast<int>(std::lround(rest_mm / fineness.step_mm)));
    for (int k = 0; k <= steps; ++k) {
      result.push_back({std::lerp(first, length - last, static_cast<double>(k) / steps), 1.0});
    }
    for (int k = fineness.end - 1; k > 0; --k) {
      const double a = 0.5 * std::numbers::pi * k / fineness.end;
      result.push_back({length - last * (1.0 - std::cos(a)), std::sin(a)});
    }
    return result;
  }

  Vector3d centre_mm(double knot) const { return centres_->position(knot); }
  double along(double knot) const {
    const std::size_t i = interval(knot);
    return static_cast<double>(i) + (knot - knots_[i]) / (knots_[i + 1] - knots_[i]);
  }

  // The ellipse's half-axes in space.
  struct Ellipse {
    Vector3d a;
    Vector3d b;
  };
  Ellipse ellipse(double knot) const {
    const std::size_t i = interval(knot);
    const double t = along(knot) - static_cast<double>(i);
    const Vector3d shape = shapes_->position(knot);
    const auto between = [](double value, double one, double other) {
      return std::clamp(value, std::min(one, other), std::max(one, other));
    };
    const SweptRing& low = rings_[i];
    const SweptRing& high = rings_[i + 1];
    const Vector3d tangent = centres_->derivative(knot).normalized();
    const Vector3d normal =
        ((1.0 - t) * normal_of(low, tangent) + t * normal_of(high, tangent)).normalized();
    const Vector3d toward = (1.0 - t) * low.toward.normalized() + t * high.toward.normalized();
    const Vector3d across = normal.cross(toward).normalized();
    return {between(shape.x(), low.half_a_mm, high.half_a_mm) * across.cross(normal),
            between(shape.y(), low.half_b_mm, high.half_b_mm) * across};
  }

 private:
  static Vector3d normal_of(const SweptRing& ring, const Vector3d& tangent) {
    if (!ring.normal) return tangent;
    const Vector3d unit = ring.normal->normalized();
    return unit.dot(tangent) < 0.0 ? Vector3d(-unit) : unit;
  }
  std::size_t interval(double knot) const {
    const auto above = std::ranges::upper_bound(knots_, knot);
    return std::clamp<std::size_t>(static_cast<std::size_t>(above - knots_.begin()), 1,
                                   knots_.size() - 1) -
           1;
  }

  const std::vector<SweptRing>& rings_;
  std::vector<double> knots_;
  std::optional<CubicSpline> centres_;
  std::optional<CubicSpline> shapes_;
};

}  // namespace

SweptSolid sweep(const std::vector<SweptRing>& rings, const SweepFineness& fineness,
                 double rest_mm) {
  const Sweeper sweeper(rings);
  SweptSolid solid;
  auto& vertices = solid.mesh.vertices_mm;
  auto& triangles = solid.mesh.triangles;
  const auto add = [&](const Vector3d& p, double along) {
    vertices.push_back(p);
    solid.along.push_back(along);
  };
  const auto around = static_cast<std::uint32_t>(fineness.around);
  add(rings.front().centre_mm, 0.0);
  const std::vector<Row> rows = sweeper.rows(fineness, rest_mm);
  for (const Row& row : rows) {
    const Vector3d centre = sweeper.centre_mm(row.knot);
    const auto ellipse = sweeper.ellipse(row.knot);
    for (std::uint32_t k = 0; k < around; ++k) {
      const double angle = 2.0 * std::numbers::pi * k / around;
      add(centre + row.size * (std::cos(angle) * ellipse.a + std::sin(angle) * ellipse.b),
          sweeper.along(row.knot));
    }
  }
  add(rings.back().centre_mm, static_cast<double>(rings.size() - 1));

  const auto vertex = [&](std::size_t row, std::uint32_t k) {
    return static_cast<std::uint32_t>(1 + row * around + k % around);
  };
  const auto last = static_cast<std::uint32_t>(vertices.size() - 1);
  // The half-axes a and b and the direction along the curve's direction are right-handed in that
  // order.
  for (std::uint32_t k = 0; k < around; ++k) {
    triangles.push_back({0, vertex(0, k + 1), vertex(0, k)});
    for (std::size_t row = 0; row + 1 < rows.size(); ++row) {
      triangles.push_back({vertex(row, k), vertex(row, k + 1), vertex(row + 1, k)});
      triangles.push_back({vertex(row, k + 1), vertex(row + 1, k + 1), vertex(row + 1, k)});
    }
    triangles.push_back({last, vertex(rows.size() - 1, k), vertex(rows.size() - 1, k + 1)});
  }
  return solid;
}

}  // namespace endplate::geometry
