#include "models/transfer/branch_place.hpp"

#include <algorithm>
#include <cmath>

#include "models/limb/case_limb_course.hpp"

namespace endplate::transfer {

using anatomy::NodeIndex;
using Eigen::Vector3d;

BranchPlaces::BranchPlaces(const anatomy::NerveTree& tree, const limb::CaseLimb& limb,
                           const limb::GirdleCourses& girdle, const limb::SegmentFrames& frames)
    : tree_(&tree), paths_(tree.size()) {
  constexpr double kStep_mm = 1.0;
  for (NodeIndex node = 0; node < tree.size(); ++node) {
    Path& path = paths_[node];
    path.places_mm = limb.path_mm(node, kStep_mm);
    path.length_mm = limb.metrics().length_mm[node];
    if (path.places_mm.empty() && !girdle.points(node).empty()) {
      path.girdle.emplace(girdle.points(node), frames);
      const auto pieces = static_cast<int>(std::ceil(path.girdle->length_mm() / kStep_mm));
      for (int k = 0; k <= pieces; ++k) {
        path.places_mm.push_back(path.girdle->at(static_cast<double>(k) / pieces).neutral_mm());
      }
    }
    if (path.places_mm.empty()) continue;
    const auto steps = static_cast<double>(path.places_mm.size() - 1);
    path.step_mm = path.length_mm / steps;
    for (std::size_t k = 1; k < path.places_mm.size(); ++k) {
      const limb::Segment segment =
          limb::segment_of(0.5 * (path.places_mm[k - 1] + path.places_mm[k]), frames);
      if (path.runs.empty() || path.runs.back().segment != segment) {
        path.runs.push_back({0.0, segment});
      }
      path.runs.back().to_mm = static_cast<double>(k) * path.step_mm;
    }
  }
}

std::optional<CarriedPlace> BranchPlaces::place(NodeIndex branch, double from_origin_mm,
                                                const anatomy::NerveMetrics& lengths) const {
  bool beside = false;
  while (from_origin_mm < 0.0 || paths_[branch].places_mm.empty()) {
    const auto& parents = tree_->node(branch).parents;
    if (parents.empty()) return std::nullopt;
    if (from_origin_mm > 0.0) beside = true;
    from_origin_mm += lengths.leaves_parent_at_mm[branch].front();
    if (!std::isfinite(from_origin_mm)) return std::nullopt;
    branch = parents.front();
  }
  if (const Path& path = paths_[branch]; path.girdle) {
    const double length_mm = lengths.length_mm[branch];
    if (from_origin_mm > length_mm + kBeyondGirdle_mm) return std::nullopt;
    from_origin_mm *= path.length_mm / length_mm;
  }
  return CarriedPlace{branch, from_origin_mm, beside};
}

double BranchPlaces::on_mean_limb_mm(const CarriedPlace& place, const Vector3d& ratio) const {
  if (paths_[place.carrier].girdle) return place.arc_mm;
  double left_mm = place.arc_mm;
  double from_mm = 0.0;
  double last = 1.0;
  for (const Run& run : paths_[place.carrier].runs) {
    last = ratio[static_cast<Eigen::Index>(run.segment)];
    const double run_mm = (run.to_mm - from_mm) * last;
    if (left_mm <= run_mm) return from_mm + left_mm / last;
    left_mm -= run_mm;
    from_mm = run.to_mm;
  }
  return from_mm + left_mm / last;
}

Vector3d BranchPlaces::position_mm(NodeIndex carrier, double arc_mm) const {
  const Path& path = paths_[carrier];
  const double steps = std::max(arc_mm, 0.0) / path.step_mm;
  const auto k = std::min(static_cast<std::size_t>(steps), path.places_mm.size() - 2);
  const Vector3d& from = path.places_mm[k];
  return from + (steps - static_cast<double>(k)) * (path.places_mm[k + 1] - from);
}

limb::Segment BranchPlaces::segment(NodeIndex carrier, double arc_mm) const {
  const auto& runs = paths_[carrier].runs;
  for (const Run& run : runs) {
    if (arc_mm <= run.to_mm) return run.segment;
  }
  return runs.back().segment;
}

std::optional<limb::GirdlePlace> BranchPlaces::on_girdle(NodeIndex carrier, double arc_mm) const {
  const Path& path = paths_[carrier];
  if (!path.girdle) return std::nullopt;
  return path.girdle->at(arc_mm / path.length_mm);
}

}  // namespace endplate::transfer
