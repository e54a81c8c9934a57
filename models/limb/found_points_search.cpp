#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <optional>

#include "models/evidence/nearest_names.hpp"
#include "models/limb/case_limb_landmark.hpp"
#include "models/limb/found_points.hpp"

namespace endplate::limb {
namespace {

constexpr std::string_view kOther = "other: ";

struct NamedPoint {
  std::string id;
  std::string name;
  bool is_origin = false;
};

// The points of a nerve that lie on a course: those under its own name and those that another
// nerve's point stands for ("NERVE [POINT]").
std::vector<NamedPoint> points_of(const std::string& nerve, const evidence::DataPackage& package) {
  std::vector<NamedPoint> points;
  for (const evidence::Row row : package.table("course_points")) {
    const std::string id(row.text("point"));
    const bool is_origin = row.text("kind") == "origin";
    for (const std::string& node : row.list("tree_node")) {
      if (evidence::same_name(node, nerve)) {
        points.push_back({id, std::string(row.text("point_std")), is_origin});
      }
    }
    for (const std::string& synonym : row.list("synonyms")) {
      const std::size_t open = synonym.find(" [");
      if (open == std::string::npos || !evidence::same_name(synonym.substr(0, open), nerve)) {
        continue;
      }
      points.push_back({id, synonym.substr(open + 2, synonym.size() - open - 3), is_origin});
    }
  }
  return points;
}

// The one point of that name: by the whole name, with or without the tables' "other: ", else by
// words that only one name contains.
std::vector<NamedPoint> called(const std::string& typed, const std::vector<NamedPoint>& points) {
  std::vector<NamedPoint> exact;
  std::vector<NamedPoint> containing;
  for (const NamedPoint& point : points) {
    const bool other = point.name.starts_with(kOther);
    if (evidence::same_name(typed, point.name) ||
        (other && evidence::same_name(typed, point.name.substr(kOther.size())))) {
      exact.push_back(point);
    }
    if (evidence::contains_words(point.name, typed)) containing.push_back(point);
  }
  if (exact.empty()) return containing;
  if (exact.size() > 1 && std::ranges::any_of(exact, &NamedPoint::is_origin)) {
    // The place where a branch leaves its parent, not that from which its own course is drawn.
    std::erase_if(exact, [](const NamedPoint& point) { return !point.is_origin; });
  }
  return exact;
}

class Search {
 public:
  Search(const evidence::DataPackage& package, const Atlas& atlas, const SegmentFrames& frames,
         const std::vector<CaseLimbCourse>& courses, const LevelSpread& spread)
      : package_(package), atlas_(atlas), frames_(frames), courses_(courses), spread_(spread) {}

  std::optional<FoundPoint> find(const casefile::LocatedPoint& located, const std::string& place) {
    const auto ref = point(located, place + "/point");
    if (!ref) return std::nullopt;
    FoundPoint found;
    found.point = *ref;
    found.at = located.at;
    found.error_mm = located.error_mm.value_or(kObserver_mm);
    const CaseLimbCourse& course = courses_[ref->course];
    const CoursePoint& on_course = atlas_.courses()[ref->course].points[ref->point];
    Level& level = found.level;
    level.course = ref->course;
    level.arc_mm = course.arc_at(on_course.knot);
    level.parts_mm = course.parts_at(level.arc_mm);
    const Eigen::Vector3d position = course.position_at(level.arc_mm);
    level.segment = segment_of(position, frames_);
    if (level.arc_mm <= 0.0 || level.arc_mm >= course.length_mm()) {
      refuse(place + "/point",
             fmt::format("where the model begins the {} is a convention and no place to find",
                         located.nerve),
             names(located.nerve));
      return std::nullopt;
    }
    level.sd_mm = spread_.sd_mm(ref->course, position, level.segment, on_course.id);

    const Landmark* landmark = atlas_.landmarks().find(located.at.landmark);
    if (landmark == nullptr) {
      refuse(place + "/at/landmark",
             fmt::format("the model limb does not hold the landmark '{}'", located.at.landmark),
             "Give the place from another landmark, such as the lateral epicondyle.");
      return std::nullopt;
    }
    found.landmark_sd_mm = landmark->sd_mm;
    found.found_in = offset_axis(*landmark, located.at.toward);
    const auto arc = arc_at_landmark(*landmark, frames_, course, located.at, level.arc_mm);
    if (!arc) {
      for (Problem problem : arc.error().problems) {
        problem.place = place + "/" + problem.place;
        problems_.push_back(std::move(problem));
      }
      return std::nullopt;
    }
    found.found_mm = *arc;
    found.found_parts_mm = course.parts_at(*arc);
    return found;
  }

  std::vector<Problem>& problems() { return problems_; }

 private:
  void refuse(std::string place, std::string what, std::string mend) {
    problems_.push_back({std::move(place), std::move(what), std::move(mend)});
  }

  std::string names(const std::string& nerve) const {
    std::vector<std::string> all;
    for (const NamedPoint& point : points_of(nerve, package_)) all.push_back(point.name);
    std::ranges::sort(all);
    const auto repeats = std::ranges::unique(all);
    all.erase(repeats.begin(), repeats.end());
    return fmt::format("Its points are: {}.", fmt::join(all, "; "));
  }

  std::optional<PointRef> point(const casefile::LocatedPoint& located, const std::string& place) {
    const auto all = points_of(located.nerve, package_);
    if (all.empty()) {
      refuse(place, fmt::format("the model limb places no point of the {}", located.nerve),
             "Give a point of the nerve that it leaves, or leave it out.");
      return std::nullopt;
    }
    const auto found = called(located.point, all);
    if (found.size() != 1) {
      refuse(place,
             fmt::format("'{}' is {} of the {}", located.point,
                         found.empty() ? "no point" : "more than one point", located.nerve),
             names(located.nerve));
      return std::nullopt;
    }
    return atlas_.find_point(found.front().id);
  }

  const evidence::DataPackage& package_;
  const Atlas& atlas_;
  const SegmentFrames& frames_;
  const std::vector<CaseLimbCourse>& courses_;
  const LevelSpread& spread_;
  std::vector<Problem> problems_;
};

}  // namespace

std::vector<std::string> points_to_find(const std::string& nerve,
                                        const evidence::DataPackage& package) {
  std::vector<std::string> names;
  for (NamedPoint& point : points_of(nerve, package)) {
    if (std::ranges::find(names, point.name) == names.end()) names.push_back(std::move(point.name));
  }
  return names;
}

Expected<std::vector<FoundPoint>> find_points(const std::vector<casefile::LocatedPoint>& located,
                                              const evidence::DataPackage& package,
                                              const Atlas& atlas, const SegmentFrames& frames,
                                              const std::vector<CaseLimbCourse>& courses,
                                              const LevelSpread& spread) {
  Search search(package, atlas, frames, courses, spread);
  std::vector<FoundPoint> found;
  for (std::size_t i = 0; i < located.size(); ++i) {
    if (auto point = search.find(located[i], fmt::format("/limb/ultrasound/{}", i))) {
      found.push_back(std::move(*point));
    }
  }
  if (!search.problems().empty()) {
    return std::unexpected(Error{Fault::input, std::move(search.problems())});
  }
  return found;
}

}  // namespace endplate::limb
