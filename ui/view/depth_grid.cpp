#include "ui/view/depth_grid.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace endplate::ui {
namespace {

constexpr int kCell_px = 2;

// Twice the area of a triangle, signed.
double area(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c) {
  return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

}  // namespace

DepthGrid::DepthGrid(const QSize& pixels)
    : columns_(pixels.width() / kCell_px + 1),
      rows_(pixels.height() / kCell_px + 1),
      depth_mm_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_),
                std::numeric_limits<float>::infinity()) {}

void DepthGrid::add(const std::array<Eigen::Vector3d, 3>& corners) {
  std::array<Eigen::Vector2d, 3> at;
  for (std::size_t k = 0; k < 3; ++k) at[k] = corners[k].head<2>() / kCell_px;
  const double whole = area(at[0], at[1], at[2]);
  if (std::abs(whole) < 1e-9) return;
  const Eigen::Vector2d low = at[0].cwiseMin(at[1]).cwiseMin(at[2]);
  const Eigen::Vector2d high = at[0].cwiseMax(at[1]).cwiseMax(at[2]);
  const int left = std::max(0, static_cast<int>(std::floor(low.x())));
  const int right = std::min(columns_ - 1, static_cast<int>(std::ceil(high.x())));
  const int top = std::max(0, static_cast<int>(std::floor(low.y())));
  const int bottom = std::min(rows_ - 1, static_cast<int>(std::ceil(high.y())));
  for (int y = top; y <= bottom; ++y) {
    for (int x = left; x <= right; ++x) {
      const Eigen::Vector2d middle(x + 0.5, y + 0.5);
      const double a = area(middle, at[1], at[2]) / whole;
      const double b = area(at[0], middle, at[2]) / whole;
      const double c = 1.0 - a - b;
      if (a < 0.0 || b < 0.0 || c < 0.0) continue;
      float& nearest = depth_mm_[static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) +
                                 static_cast<std::size_t>(x)];
      const double depth = a * corners[0].z() + b * corners[1].z() + c * corners[2].z();
      nearest = std::min(nearest, static_cast<float>(depth));
    }
  }
}

bool DepthGrid::hides(const Eigen::Vector3d& point, double slack_mm) const {
  const int x = static_cast<int>(std::floor(point.x() / kCell_px));
  const int y = static_cast<int>(std::floor(point.y() / kCell_px));
  if (x < 0 || y < 0 || x >= columns_ || y >= rows_) return false;
  const float nearest = depth_mm_[static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) +
                                  static_cast<std::size_t>(x)];
  return static_cast<double>(nearest) < point.z() - slack_mm;
}

}  // namespace endplate::ui
