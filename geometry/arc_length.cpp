#include "geometry/arc_length.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::geometry {
namespace {

double interpolate(const std::vector<double>& xs, const std::vector<double>& ys, double x) {
  if (x <= xs.front()) return ys.front();
  if (x >= xs.back()) return ys.back();
  const auto above = static_cast<std::size_t>(std::ranges::upper_bound(xs, x) - xs.begin());
  const double t = (x - xs[above - 1]) / (xs[above] - xs[above - 1]);
  return std::lerp(ys[above - 1], ys[above], t);
}

}  // namespace

ArcLengthTable::ArcLengthTable(const CubicSpline& curve) {
  constexpr double kStep = 1.0;
  const auto& knots = curve.knots();
  parameters_.push_back(knots.front());
  for (std::size_t i = 0; i + 1 < knots.size(); ++i) {
    const double span = knots[i + 1] - knots[i];
    const int pieces = std::max(1, static_cast<int>(std::ceil(span / kStep)));
    for (int piece = 1; piece <= pieces; ++piece) {
      parameters_.push_back(piece == pieces ? knots[i + 1] : knots[i] + span * piece / pieces);
    }
  }
  lengths_.push_back(0.0);
  for (std::size_t i = 0; i + 1 < parameters_.size(); ++i) {
    lengths_.push_back(lengths_.back() + arc_length(curve, parameters_[i], parameters_[i + 1]));
  }
}

double ArcLengthTable::length_at(double u) const {
  return interpolate(parameters_, lengths_, u);
}

double ArcLengthTable::parameter_at(double length_mm) const {
  return interpolate(lengths_, parameters_, length_mm);
}

}  // namespace endplate::geometry
