#include "models/limb/nerve_route_layout.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace endplate::limb {
// Lays the routes out, parents before children.
class RouteSurveyor {
 public:
  RouteSurveyor(const std::vector<NerveRoute>& routes, const anatomy::NerveTree& tree,
                const Atlas& atlas, const SegmentFrames& frames, const LevelSpread& spread)
      : routes_(routes), tree_(tree), atlas_(atlas), frames_(frames), spread_(spread) {
    for (std::size_t c = 0; c < atlas.courses().size(); ++c) {
      layout_.courses_.emplace_back(atlas.curve(c, frames), frames);
    }
    layout_.stretches_.resize(tree.size());
    layout_.lengths_mm_.resize(tree.size(), 0.0);
    layout_.length_sds_mm_.resize(tree.size(), 0.0);
    layout_.length_segments_.resize(tree.size(), Segment::humerus);
    layout_.leavings_.resize(tree.size());
  }

  Expected<NerveRouteLayout> survey() {
    for (const anatomy::NodeIndex node : tree_.topological_order()) {
      place_departures(node);
      place_course(node);
    }
    if (!problems_.empty()) return std::unexpected(Error{Fault::internal, std::move(problems_)});
    sort_levels();
    return std::move(layout_);
  }

 private:
  void wrong(anatomy::NodeIndex node, std::string what) {
    problems_.push_back({fmt::format("nerve_routes.csv, {}", tree_.node(node).name),
                         std::move(what), "Name a point of the course in question."});
  }

  void place_departures(anatomy::NodeIndex node) {
    const auto& parents = tree_.node(node).parents;
    for (std::size_t k = 0; k < parents.size(); ++k) {
      const Departure& departure = routes_[node].departures[k];
      NerveRouteLayout::Leaving leaving{std::nullopt, departure.share, parents[k]};
      if (departure.place) {
        const auto& stretch = layout_.stretches_[parents[k]];
        if (!stretch) {
          wrong(node, fmt::format("'{}' runs on no course", tree_.node(parents[k]).name));
        } else {
          leaving.level = level(node, stretch->course, *departure.place, departure.provenance);
        }
      }
      layout_.leavings_[node].push_back(leaving);
    }
  }

  void place_course(anatomy::NodeIndex node) {
    const NerveRoute& route = routes_[node];
    if (!route.ends) {
      const double scale = length_scale_of(frames_.scale(), route.scales_with);
      const double sd = route.length_sd_mm.value_or(
          spread_.limbs().of_distance_mm(route.length_mm, route.scales_with));
      layout_.lengths_mm_[node] = scale * route.length_mm;
      layout_.length_sds_mm_[node] = scale * sd;
      layout_.length_segments_[node] = route.scales_with;
      return;
    }
    const auto& leavings = layout_.leavings_[node];
    const Stretch* parent = nullptr;
    if (!leavings.empty()) {
      const auto& usual = layout_.stretches_[leavings.front().parent];
      if (usual) parent = &*usual;
    }
    std::optional<std::size_t> course;
    if (!route.follows.empty()) {
      const Course* own = atlas_.find_course(route.follows);
      if (own == nullptr) return wrong(node, fmt::format("no course '{}'", route.follows));
      course = static_cast<std::size_t>(own - atlas_.courses().data());
    } else if (parent != nullptr) {
      course = parent->course;
    }
    if (!course) return wrong(node, "it ends at a point, but there is no course to run along");
    const bool goes_on =
        parent != nullptr && parent->course == *course && leavings.front().level.has_value();
    const auto provenance =
        leavings.empty() ? evidence::Provenance::read : route.departures.front().provenance;
    const auto from = goes_on ? leavings.front().level
                              : level(node, *course, {"start", "", 0.0, 0.0}, provenance);
    const auto to = level(node, *course, *route.ends, provenance);
    if (!from || !to) return;
    layout_.stretches_[node] = Stretch{*course, *from, *to, !route.follows.empty()};
  }

  std::optional<double> arc_of(anatomy::NodeIndex node, std::size_t course,
                               const std::string& point) {
    const CaseLimbCourse& measured = layout_.courses_[course];
    if (point == "start") return 0.0;
    if (point == "end") return measured.length_mm();
    const CoursePoint* found = atlas_.courses()[course].find(point);
    if (found == nullptr) {
      wrong(node, fmt::format("'{}' is no point of {}", point, atlas_.courses()[course].id));
      return std::nullopt;
    }
    return measured.arc_at(found->knot);
  }

  std::optional<std::size_t> level(anatomy::NodeIndex node, std::size_t course,
                                   const RoutePlace& place, evidence::Provenance provenance) {
    const auto at = arc_of(node, course, place.at);
    if (!at) return std::nullopt;
    const CaseLimbCourse& measured = layout_.courses_[course];
    Level result;
    result.course = course;
    result.arc_mm = *at;
    double gap_mm = 0.0;
    if (!place.toward.empty()) {
      const auto toward = arc_of(node, course, place.toward);
      if (!toward) return std::nullopt;
      gap_mm = *toward - *at;
      result.arc_mm += place.fraction * gap_mm;
    }
    const Segment near = segment_of(measured.position_at(result.arc_mm), frames_);
    result.arc_mm =
        std::clamp(result.arc_mm + place.offset_mm * length_scale_of(frames_.scale(), near), 0.0,
                   measured.length_mm());
    result.parts_mm = measured.parts_at(result.arc_mm);
    const Eigen::Vector3d position = measured.position_at(result.arc_mm);
    result.segment = segment_of(position, frames_);
    // Where a course starts and how far it is modelled are conventions, the same in every limb.
    if (result.arc_mm > 0.0 && result.arc_mm < measured.length_mm()) {
      double variance = std::pow(spread_.sd_mm(course, position, result.segment, place.at), 2);
      // What is only known to lie between two points lies anywhere up to the nearer of them, or as
      // far on the other side. The middle of a skin area is no such place but a convention.
      if (provenance == evidence::Provenance::assumed &&
          tree_.node(node).kind != anatomy::NodeKind::cutaneous) {
        const double either_side_mm = gap_mm * std::min(place.fraction, 1.0 - place.fraction);
        variance += either_side_mm * either_side_mm / 3.0;
      }
      result.sd_mm = std::sqrt(variance);
    }
    const auto same = std::ranges::find_if(layout_.levels_, [&](const Level& other) {
      return other.course == course && std::abs(other.arc_mm - result.arc_mm) < 1e-9;
    });
    if (same != layout_.levels_.end()) {
      return static_cast<std::size_t>(same - layout_.levels_.begin());
    }
    layout_.levels_.push_back(result);
    return layout_.levels_.size() - 1;
  }

  void sort_levels() {
    std::vector<std::size_t> order(layout_.levels_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t i) {
      return std::pair(layout_.levels_[i].course, layout_.levels_[i].arc_mm);
    });
    std::vector<std::size_t> place_of(order.size());
    std::vector<Level> sorted;
    for (const std::size_t i : order) {
      place_of[i] = sorted.size();
      sorted.push_back(layout_.levels_[i]);
    }
    layout_.levels_ = std::move(sorted);
    for (auto& stretch : layout_.stretches_) {
      if (!stretch) continue;
      stretch->from = place_of[stretch->from];
      stretch->to = place_of[stretch->to];
      layout_.levels_[stretch->from].in_order = true;
      if (stretch->follows) layout_.levels_[stretch->to].in_order = true;
    }
    for (auto& leavings : layout_.leavings_) {
      for (auto& leaving : leavings) {
        if (!leaving.level) continue;
        leaving.level = place_of[*leaving.level];
        layout_.levels_[*leaving.level].in_order = true;
      }
    }
  }

  const std::vector<NerveRoute>& routes_;
  const anatomy::NerveTree& tree_;
  const Atlas& atlas_;
  const SegmentFrames& frames_;
  const LevelSpread& spread_;
  NerveRouteLayout layout_;
  std::vector<Problem> problems_;
};

Expected<NerveRouteLayout> NerveRouteLayout::lay_out(const std::vector<NerveRoute>& routes,
                                                     const anatomy::NerveTree& tree,
                                                     const Atlas& atlas,
                                                     const SegmentFrames& frames,
                                                     const LevelSpread& spread) {
  return RouteSurveyor(routes, tree, atlas, frames, spread).survey();
}

void NerveRouteLayout::move_levels(const std::vector<double>& levels_mm) {
  for (std::size_t k = 0; k < levels_.size(); ++k) {
    levels_[k].arc_mm = levels_mm[k];
    levels_[k].parts_mm = courses_[levels_[k].course].parts_at(levels_mm[k]);
  }
}

void keep_in_order(const std::vector<Level>& levels, std::vector<double>& levels_mm) {
  std::vector<std::size_t> ordered;
  std::vector<double> sorted;
  for (std::size_t k = 0; k < levels.size(); ++k) {
    if (levels[k].in_order) {
      ordered.push_back(k);
      sorted.push_back(levels_mm[k]);
    }
    const bool last = k + 1 == levels.size() || levels[k + 1].course != levels[k].course;
    if (!last) continue;
    std::ranges::sort(sorted);
    for (std::size_t i = 0; i < ordered.size(); ++i) levels_mm[ordered[i]] = sorted[i];
    ordered.clear();
    sorted.clear();
  }
}

void NerveRouteLayout::measure(const std::vector<double>& levels_mm,
                               const std::vector<double>& lengths_mm,
                               anatomy::NerveMetrics& metrics) const {
  metrics.length_mm.resize(stretches_.size());
  metrics.leaves_parent_at_mm.resize(stretches_.size());
  for (std::size_t node = 0; node < stretches_.size(); ++node) {
    const auto& stretch = stretches_[node];
    metrics.length_mm[node] = std::max(
        kLeast_mm, stretch ? levels_mm[stretch->to] - levels_mm[stretch->from] : lengths_mm[node]);
  }
  for (std::size_t node = 0; node < stretches_.size(); ++node) {
    auto& leaves = metrics.leaves_parent_at_mm[node];
    leaves.resize(leavings_[node].size());
    for (std::size_t k = 0; k < leaves.size(); ++k) {
      const Leaving& leaving = leavings_[node][k];
      const double parent_mm = metrics.length_mm[leaving.parent];
      leaves[k] =
          leaving.level
              ? std::clamp(levels_mm[*leaving.level] - levels_mm[stretches_[leaving.parent]->from],
                           0.0, parent_mm)
              : leaving.share * parent_mm;
    }
  }
}

}  // namespace endplate::limb
