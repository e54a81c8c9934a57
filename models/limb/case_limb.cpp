#include "models/limb/case_limb.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "models/limb/case_limb_parts.hpp"

namespace endplate::limb {

Expected<CaseLimb> CaseLimb::from(const evidence::DataPackage& package,
                                  const anatomy::NerveTree& tree, const casefile::Limb& limb) {
  auto atlas = package.tables().contains("fitted_points") ? Atlas::fitted(package)
                                                          : Atlas::unfitted(package);
  if (!atlas) return std::unexpected(std::move(atlas.error()));
  auto routes = read_nerve_routes(package, tree);
  if (!routes) return std::unexpected(std::move(routes.error()));
  auto size = LimbSize::from(package, limb);
  if (!size) return std::unexpected(std::move(size.error()));
  const auto adults = LimbSize::from(package, {});
  if (!adults) return std::unexpected(adults.error());

  const SegmentFrames frames(size->mean_scale());
  const auto spread = CaseLimbSpread::from(package, *atlas, *adults);
  auto layout = NerveRouteLayout::lay_out(*routes, tree, package, *atlas, frames, spread);
  if (!layout) return std::unexpected(std::move(layout.error()));

  std::vector<std::string> assumptions = size->assumptions();
  std::size_t assumed = 0;
  std::size_t all = 0;
  for (const NerveRoute& route : *routes) {
    for (const Departure& departure : route.departures) {
      ++all;
      if (departure.provenance == evidence::Provenance::assumed) ++assumed;
    }
  }
  assumptions.push_back(
      fmt::format("{} of the {} places where a nerve leaves another, or the lengths beyond them, "
                  "are not published and assumed from their neighbours and textbook order",
                  assumed, all));

  CaseLimb result;
  const std::vector<Level>& levels = layout->levels();
  std::vector<double> levels_mm;
  for (const Level& level : levels) levels_mm.push_back(level.arc_mm);
  layout->measure(levels_mm, layout->lengths_mm(), result.metrics_);
  result.parts_ = std::make_shared<const Parts>(Parts{&tree, std::move(*atlas), std::move(*size),
                                                      frames, std::move(*routes),
                                                      std::move(*layout), std::move(assumptions)});
  return result;
}

const std::vector<std::string>& CaseLimb::assumptions() const {
  return parts_->assumptions;
}

std::vector<Eigen::Vector3d> CaseLimb::path_mm(anatomy::NodeIndex nerve, double step_mm) const {
  const auto& stretch = parts_->layout.stretch(nerve);
  if (!stretch || !stretch->follows) return {};
  const std::vector<Level>& levels = parts_->layout.levels();
  const double from_mm = levels[stretch->from].arc_mm;
  const double to_mm = levels[stretch->to].arc_mm;
  const int steps = std::max(1, static_cast<int>(std::ceil((to_mm - from_mm) / step_mm)));
  std::vector<Eigen::Vector3d> path;
  for (int k = 0; k <= steps; ++k) {
    path.push_back(parts_->layout.courses()[stretch->course].position_at(
        std::lerp(from_mm, to_mm, static_cast<double>(k) / steps)));
  }
  return path;
}

std::vector<std::string> CaseLimb::sources(anatomy::NodeIndex nerve) const {
  const NerveRoute& route = parts_->routes.at(nerve);
  std::set<std::string> rows(route.rows.begin(), route.rows.end());
  std::set<std::string> points;
  const auto take = [&](const std::optional<RoutePlace>& place) {
    if (!place) return;
    points.insert(place->at);
    points.insert(place->toward);
  };
  for (const Departure& departure : route.departures) {
    rows.insert(departure.rows.begin(), departure.rows.end());
    take(departure.place);
  }
  take(route.ends);
  for (const NerveMeasure& measure : parts_->atlas.measures()) {
    const auto& on_course = parts_->atlas.courses()[measure.course].points;
    if (!measure.point || !points.contains(on_course[*measure.point].id)) continue;
    for (const MeasureRow& row : measure.rows) rows.insert(row.row);
  }
  return {rows.begin(), rows.end()};
}

}  // namespace endplate::limb
