#include "models/limb/measure.hpp"

#include <array>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>
#include <utility>

namespace endplate::limb {
namespace {

constexpr double kStep = 2.0;  // mm of parameter between the samples that bracket a place

constexpr std::array<std::pair<Definition, std::string_view>, 8> kNames{{
    {Definition::axial, "axial"},
    {Definition::crossing, "crossing"},
    {Definition::along, "along"},
    {Definition::straight, "straight"},
    {Definition::transverse, "transverse"},
    {Definition::offset_at_level, "offset_at_level"},
    {Definition::nearest, "nearest"},
    {Definition::length, "length"},
}};

int steps_between(double from, double to) {
  return std::max(1, static_cast<int>(std::ceil((to - from) / kStep)));
}

}  // namespace

std::optional<Definition> definition_from(std::string_view text) {
  for (const auto& [value, name] : kNames) {
    if (name == text) return value;
  }
  return std::nullopt;
}

std::string_view to_string(Definition definition) {
  for (const auto& [value, name] : kNames) {
    if (value == definition) return name;
  }
  return "";
}

std::optional<double> find_crossing(const geometry::CubicSpline& curve,
                                    const CrossingSurface& surface, double from, double to) {
  const auto height = [&](double u) { return surface.height<double>(curve.position(u)); };
  const int steps = steps_between(from, to);
  double below = height(from);
  for (int i = 1; i <= steps; ++i) {
    const double a = from + (to - from) * (i - 1) / steps;
    const double b = from + (to - from) * i / steps;
    const double above = height(b);
    const double start = std::exchange(below, above);
    if ((start > 0.0) == (above > 0.0)) continue;
    std::uintmax_t iterations = 50;
    const auto bracket = boost::math::tools::toms748_solve(
        height, a, b, start, above, boost::math::tools::eps_tolerance<double>(45), iterations);
    const double root = 0.5 * (bracket.first + bracket.second);
    if (surface.counts(curve.position(root))) return root;
  }
  return std::nullopt;
}

double find_nearest(const geometry::CubicSpline& curve, const Eigen::Vector3d& point, double from,
                    double to) {
  const auto squared = [&](double u) { return (curve.position(u) - point).squaredNorm(); };
  const int steps = steps_between(from, to);
  int best = 0;
  double least = std::numeric_limits<double>::infinity();
  for (int i = 0; i <= steps; ++i) {
    const double d = squared(from + (to - from) * i / steps);
    if (d < least) {
      least = d;
      best = i;
    }
  }
  const double width = (to - from) / steps;
  const double low = std::max(from, from + width * (best - 1));
  const double high = std::min(to, from + width * (best + 1));
  return boost::math::tools::brent_find_minima(squared, low, high, 40).first;
}

}  // namespace endplate::limb
