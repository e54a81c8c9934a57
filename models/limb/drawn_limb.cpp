#include "models/limb/drawn_limb.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "models/limb/case_limb_course.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/limb_size.hpp"

namespace endplate::limb {

using anatomy::NodeIndex;

Expected<std::vector<DrawnNerve>> drawn_nerves(const evidence::DataPackage& package,
                                               const anatomy::NerveTree& tree, const CaseLimb& limb,
                                               const DrawnSkin& skin) {
  const auto drawn = DrawnCourses::from(package, tree);
  if (!drawn) return std::unexpected(drawn.error());
  const auto girdle = GirdleCourses::from(package, tree);
  if (!girdle) return std::unexpected(girdle.error());
  const SegmentFrames frames(limb.size().mean_scale());
  const anatomy::NerveMetrics& metrics = limb.metrics();

  std::vector<DrawnNerve> result;
  std::map<NodeIndex, std::size_t> place_of;
  std::vector<Problem> problems;
  for (const NodeIndex node : tree.topological_order()) {
    const std::vector<DrawnPoint>& points = drawn->points(node);
    if (points.empty() || limb.on_course(node)) continue;
    const std::vector<NodeIndex>& parents = tree.node(node).parents;
    std::optional<DrawnNerve::OnCourse> on_course;
    std::optional<DrawnNerve::OnDrawn> on_drawn;
    std::optional<DrawnPlace> start;
    if (!parents.empty()) {
      const NodeIndex parent = parents.front();
      const double leaves_mm = metrics.leaves_parent_at_mm[node].front();
      const double share = std::clamp(leaves_mm / metrics.length_mm[parent], 0.0, 1.0);
      if (const auto along = limb.on_course(parent)) {
        on_course = {along->course, along->from_mm + leaves_mm};
        start.emplace().neutral_mm = limb.courses()[along->course].position_at(on_course->arc_mm);
      } else if (const auto at = place_of.find(parent); at != place_of.end()) {
        on_drawn = {at->second, share};
        start = result[at->second].line.at(share);
      } else if (!girdle->points(parent).empty()) {
        start.emplace().neutral_mm =
            GirdleLine(girdle->points(parent), frames).at(share).neutral_mm();
      }
    }
    if (!start) {
      problems.push_back({"drawn_courses.csv",
                          fmt::format("the parent of '{}' is not drawn", tree.node(node).name),
                          "Draw its usual parent as well."});
      continue;
    }
    place_of[node] = result.size();
    result.push_back({node, points, on_course, on_drawn, DrawnLine(*start, points, frames, skin)});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

}  // namespace endplate::limb
