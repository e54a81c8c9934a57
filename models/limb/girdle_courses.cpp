#include "models/limb/girdle_courses.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "models/limb/bone_words.hpp"

namespace endplate::limb {

using Eigen::Vector3d;

Vector3d GirdlePlace::neutral_mm() const {
  return from.neutral_mm + share * (to.neutral_mm - from.neutral_mm);
}

Vector3d GirdlePlace::posed_mm(const PosedSpace& space) const {
  const auto moved = [&](const End& end) -> Vector3d {
    return end.bone ? space.of_bone(*end.bone) * end.neutral_mm : space.held(end.neutral_mm);
  };
  const Vector3d start = moved(from);
  return start + share * (moved(to) - start);
}

GirdleLine::GirdleLine(const std::vector<GirdlePoint>& points, const SegmentFrames& frames) {
  for (const GirdlePoint& point : points) {
    const Vector3d at = frames.to_limb(Segment::humerus, point.place);
    along_mm_.push_back(
        points_.empty() ? 0.0 : along_mm_.back() + (at - points_.back().neutral_mm).norm());
    points_.push_back({at, point.bone});
  }
}

GirdlePlace GirdleLine::at(double share) const {
  const double arc_mm = std::max(share, 0.0) * length_mm();
  const auto next = std::ranges::upper_bound(along_mm_, arc_mm);
  const auto k = std::clamp<std::ptrdiff_t>(next - along_mm_.begin(), 1,
                                            static_cast<std::ptrdiff_t>(along_mm_.size()) - 1);
  const auto to = static_cast<std::size_t>(k);
  return {points_[to - 1], points_[to],
          (arc_mm - along_mm_[to - 1]) / (along_mm_[to] - along_mm_[to - 1]), to - 1};
}

Expected<GirdleCourses> GirdleCourses::from(const evidence::DataPackage& package,
                                            const anatomy::NerveTree& tree) {
  GirdleCourses result;
  result.points_.resize(tree.size());
  result.rows_.resize(tree.size());
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("girdle_courses")) {
    const auto nerve = tree.find(row.text("nerve"));
    if (!nerve) continue;  // its foreign key was checked when the table was read
    auto& points = result.points_[*nerve];
    if (row.number("order").value() != static_cast<double>(points.size() + 1)) {
      problems.push_back({fmt::format("girdle_courses.csv, row {}", row.line()),
                          fmt::format("the points of '{}' are not in order", row.text("nerve")),
                          "Number them from 1 along the nerve."});
    }
    points.push_back(
        {std::string(row.text("structure")),
         {row.number("fraction").value(), row.number("x_mm").value(), row.number("z_mm").value()},
         bone_from(row.text("bone")),
         row.number("sd_mm").value()});
    auto& rows = result.rows_[*nerve];
    for (auto& id : row.list("rows")) {
      if (std::ranges::find(rows, id) == rows.end()) rows.emplace_back(id);
    }
  }
  for (anatomy::NodeIndex i = 0; i < tree.size(); ++i) {
    if (result.points_[i].size() != 1) continue;
    problems.push_back({"girdle_courses.csv",
                        fmt::format("'{}' has one point only", tree.node(i).name),
                        "Give at least its beginning and its end."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

}  // namespace endplate::limb
