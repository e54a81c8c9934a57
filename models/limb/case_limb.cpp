#include "models/limb/case_limb.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "models/limb/case_limb_parts.hpp"

namespace endplate::limb {
namespace {

// A point found further than this from where limbs of the size have it lies outside what was
// published.
constexpr double kPublished_sds = 3.0;

void warn_of_found(const FoundPoints& found, const LimbSize& size,
                   std::vector<std::string>& warnings) {
  for (std::size_t i = 0; i < found.points().size(); ++i) {
    const double surprise_mm = found.points()[i].surprise_mm(Eigen::Vector3d::Ones());
    const double sd_mm = found.surprise_sd_mm(i, size);
    if (std::abs(surprise_mm) <= kPublished_sds * sd_mm) continue;
    warnings.push_back(fmt::format(
        "/limb/ultrasound/{}: the point was found {:.0f} mm {} to where limbs of this size have "
        "it, "
        "more than {:g} standard deviations of the published limbs ({:.0f} mm; "
        "landmark_distances.csv). It is believed as given; is it that nerve, and that landmark?",
        i, std::abs(surprise_mm), surprise_mm > 0.0 ? "distal" : "proximal", kPublished_sds,
        sd_mm));
  }
}

}  // namespace

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

  const auto between_limbs = CaseLimbSpread::from(package, *atlas, *adults);
  SegmentFrames frames(size->mean_scale());
  LevelSpread spread(package, between_limbs, frames);
  auto layout = NerveRouteLayout::lay_out(*routes, tree, *atlas, frames, spread);
  if (!layout) return std::unexpected(std::move(layout.error()));

  std::vector<std::string> warnings = size->warnings();
  FoundPoints found;
  if (!limb.ultrasound.empty()) {
    const auto find = [&] {
      return find_points(limb.ultrasound, package, *atlas, frames, layout->courses(), spread);
    };
    auto points = find();
    if (!points) return std::unexpected(std::move(points.error()));
    found = FoundPoints(std::move(*points), layout->levels());
    warn_of_found(found, *size, warnings);
    // The points say a little of the size as well; on the mean limb of the new size they are looked
    // up again.
    size = size->also_knowing(found.size_observation(*size));
    frames = SegmentFrames(size->mean_scale());
    spread = LevelSpread(package, between_limbs, frames);
    layout = NerveRouteLayout::lay_out(*routes, tree, *atlas, frames, spread);
    if (!layout) return std::unexpected(std::move(layout.error()));
    points = find();
    if (!points) return std::unexpected(std::move(points.error()));
    found = FoundPoints(std::move(*points), layout->levels());
  }

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

  for (std::size_t i = 0; i < limb.ultrasound.size(); ++i) {
    if (limb.ultrasound[i].error_mm) continue;
    assumptions.push_back(fmt::format(
        "The error of the point found by ultrasound on the {} is not given: {:g} mm is taken, the "
        "mean difference from dissection at the nerve where it was largest (Abdullah et al. 2025).",
        limb.ultrasound[i].nerve, kObserver_mm));
  }
  if (!found.empty()) {
    assumptions.push_back(fmt::format(
        "A point found by ultrasound takes the other levels of its course along: their correlation "
        "falls to 1/e in {:g} mm (assumed).",
        kMovesTogether_mm));
  }

  CaseLimb result;
  const std::vector<Level> levels = layout->levels();
  std::vector<double> levels_mm;
  for (const Level& level : levels) levels_mm.push_back(level.arc_mm);
  if (!found.empty()) {
    const Eigen::VectorXd moved = found.posterior().mean;
    for (std::size_t k = 0; k < levels.size(); ++k) {
      levels_mm[k] =
          std::clamp(levels_mm[k] + levels[k].sd_mm * moved[static_cast<Eigen::Index>(k)], 0.0,
                     layout->courses()[levels[k].course].length_mm());
    }
    keep_in_order(levels, levels_mm);
    layout->move_levels(levels_mm);
  }
  layout->measure(levels_mm, layout->lengths_mm(), result.metrics_);
  result.parts_ = std::make_shared<const Parts>(Parts{
      &tree, std::move(*atlas), std::move(*size), frames, std::move(*routes), std::move(*layout),
      levels, std::move(spread), std::move(found), std::move(assumptions), std::move(warnings)});
  return result;
}

const LimbSize& CaseLimb::size() const {
  return parts_->size;
}

const std::vector<FoundPoint>& CaseLimb::found_points() const {
  return parts_->found.points();
}

const LevelSpread& CaseLimb::level_spread() const {
  return parts_->spread;
}

const std::vector<std::string>& CaseLimb::warnings() const {
  return parts_->warnings;
}

const std::vector<std::string>& CaseLimb::assumptions() const {
  return parts_->assumptions;
}

std::optional<CaseLimb::OnCourse> CaseLimb::on_course(anatomy::NodeIndex nerve) const {
  const auto& stretch = parts_->layout.stretch(nerve);
  if (!stretch || !stretch->follows) return std::nullopt;
  const std::vector<Level>& levels = parts_->layout.levels();
  return OnCourse{stretch->course, levels[stretch->from].arc_mm, levels[stretch->to].arc_mm};
}

const std::vector<CaseLimbCourse>& CaseLimb::courses() const {
  return parts_->layout.courses();
}

std::vector<Eigen::Vector3d> CaseLimb::path_mm(anatomy::NodeIndex nerve, double step_mm) const {
  const auto on = on_course(nerve);
  if (!on) return {};
  const int steps = std::max(1, static_cast<int>(std::ceil((on->to_mm - on->from_mm) / step_mm)));
  std::vector<Eigen::Vector3d> path;
  for (int k = 0; k <= steps; ++k) {
    path.push_back(courses()[on->course].position_at(
        std::lerp(on->from_mm, on->to_mm, static_cast<double>(k) / steps)));
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
