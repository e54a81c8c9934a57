#include "models/limb/atlas.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace endplate::limb {
namespace {

// A place at the very end of a course may be found a little beyond it.
constexpr double kSearchBeyond_mm = 5.0;

// Below this level of the arm (20 mm above the epicondyles) the humerus has no round outline.
constexpr double kOutlineFrom = 20.0 / kLedgerArm_mm;

// Collects what is wrong in one table, with its row and column.
class Checker {
 public:
  explicit Checker(std::string file) : file_(std::move(file)) {}

  void wrong(const evidence::Row& row, std::string_view column, std::string what) {
    problems_.push_back({fmt::format("{}, row {}, column {}", file_, row.line(), column),
                         std::move(what), "Use a name that its table holds."});
  }
  Segment segment(const evidence::Row& row, std::string_view column) {
    const auto segment = segment_from(row.text(column));
    if (!segment) wrong(row, column, fmt::format("'{}' is no segment", row.text(column)));
    return segment.value_or(Segment::humerus);
  }
  std::vector<Problem>& problems() { return problems_; }

 private:
  std::string file_;
  std::vector<Problem> problems_;
};

// Only fitted tables hold knots; for the others they follow from the waypoints.
std::vector<Course> read_waypoints(const evidence::Table& table, Checker& check) {
  const bool fitted = table.has_column("knot");
  std::vector<Course> courses;
  for (const evidence::Row row : table) {
    const std::string id(row.text("course"));
    if (courses.empty() || courses.back().id != id) {
      if (std::ranges::find(courses, id, &Course::id) != courses.end()) {
        check.wrong(row, "course", fmt::format("the rows of '{}' do not stand together", id));
      }
      courses.push_back({});
      courses.back().id = id;
      courses.back().from_point = row.text("from_point");
    }
    Waypoint waypoint;
    waypoint.segment = check.segment(row, "segment");
    waypoint.place = {row.number("fraction").value_or(0.0), row.number("x_mm").value_or(0.0),
                      row.number("z_mm").value_or(0.0)};
    waypoint.structure = row.text("structure");
    waypoint.prior_sd_mm = row.number("prior_sd_mm").value_or(0.0);
    courses.back().waypoints.push_back(std::move(waypoint));
    if (!fitted) continue;
    Course& course = courses.back();
    // The start of a branch has no row of its own.
    if (course.is_branch() && course.knots.empty()) course.knots.push_back(0.0);
    course.knots.push_back(row.number("knot").value_or(0.0));
  }
  return courses;
}

void read_points(const evidence::Table& table, std::vector<Course>& courses, Checker& check) {
  const bool fitted = table.has_column("knot");
  for (const evidence::Row row : table) {
    const auto course = std::ranges::find(courses, row.text("course"), &Course::id);
    if (course == courses.end()) {
      check.wrong(row, "course", fmt::format("no course is called '{}'", row.text("course")));
      continue;
    }
    CoursePoint point;
    point.id = row.text("point");
    point.segment = check.segment(row, "segment");
    point.fraction = row.number("fraction").value_or(0.0);
    point.after = row.list("after");
    point.knot =
        fitted ? row.number("knot").value_or(0.0) : std::numeric_limits<double>::quiet_NaN();
    course->points.push_back(std::move(point));
  }
}

}  // namespace

Expected<Atlas> Atlas::unfitted(const evidence::DataPackage& package) {
  return read(package, "course_waypoints", "course_points");
}

Expected<Atlas> Atlas::fitted(const evidence::DataPackage& package) {
  return read(package, "fitted_waypoints", "fitted_points");
}

Expected<Atlas> Atlas::read(const evidence::DataPackage& package, std::string_view waypoints,
                            std::string_view points) {
  Atlas atlas;
  auto landmarks = LandmarkSet::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());
  atlas.landmarks_ = std::move(*landmarks);

  atlas.humerus_ =
      std::make_shared<const BoneOutline>(BoneOutline::from(package.table("humerus_outline")));
  Checker courses_check(std::string(waypoints) + ".csv");
  atlas.courses_ = read_waypoints(package.table(waypoints), courses_check);
  Checker points_check(std::string(points) + ".csv");
  read_points(package.table(points), atlas.courses_, points_check);
  for (const Course& course : atlas.courses_) {
    if (!course.is_branch()) continue;
    const auto start = atlas.find_point(course.from_point);
    if (!start || atlas.courses_[start->course].is_branch()) {
      courses_check.problems().push_back(
          {fmt::format("{}.csv", waypoints),
           fmt::format("'{}', where {} begins, is no point of a trunk", course.from_point,
                       course.id),
           "Let the branch begin at a point of a course that is not a branch itself."});
    }
  }
  if (courses_check.problems().empty()) {
    for (const bool branches : {false, true}) {
      for (std::size_t c = 0; c < atlas.courses_.size(); ++c) {
        if (atlas.courses_[c].is_branch() == branches) atlas.complete_knots(c);
      }
    }
  }

  Checker planes_check("course_planes.csv");
  for (const evidence::Row row : package.table("course_planes")) {
    PlaneSpec plane;
    plane.name = row.text("plane");
    plane.landmark = row.text("landmark");
    plane.segment = planes_check.segment(row, "segment");
    plane.normal = row.text("normal");
    plane.clock_deg = row.number("clock_deg").value_or(0.0);
    plane.seen_from = row.text("seen_from");
    plane.offset_x_mm = row.number("offset_x_mm").value_or(0.0);
    plane.offset_z_mm = row.number("offset_z_mm").value_or(0.0);
    if (atlas.landmarks_.find(plane.landmark) == nullptr) {
      planes_check.wrong(row, "landmark", fmt::format("'{}' is not placed", plane.landmark));
    }
    atlas.planes_.push_back(std::move(plane));
  }

  Checker check("course_measures.csv");
  std::map<std::string, std::size_t, std::less<>> index_of;
  for (const evidence::Row row : package.table("course_measures")) {
    NerveMeasure measure;
    measure.id = row.text("measure");
    measure.nerve = row.text("tree_node");
    measure.point_name = row.text("point_std");
    measure.landmark_name = row.text("landmark_std");
    measure.plane = row.text("plane");
    measure.axis = check.segment(row, "axis");
    measure.front_to_back = row.text("direction") == "anterior";
    const auto definition = definition_from(row.text("definition"));
    if (!definition) {
      check.wrong(row, "definition", fmt::format("'{}' is no definition", row.text("definition")));
      continue;
    }
    measure.definition = *definition;
    const auto course = std::ranges::find(atlas.courses_, row.text("course"), &Course::id);
    if (course == atlas.courses_.end()) {
      check.wrong(row, "course", fmt::format("no course is called '{}'", row.text("course")));
      continue;
    }
    measure.course = static_cast<std::size_t>(course - atlas.courses_.begin());
    const auto point_index = [&](std::string_view column) -> std::optional<std::size_t> {
      if (row.text(column).empty()) return std::nullopt;
      const CoursePoint* point = course->find(row.text(column));
      if (point == nullptr) {
        check.wrong(row, column, fmt::format("'{}' is no point of this course", row.text(column)));
        return std::nullopt;
      }
      return static_cast<std::size_t>(point - course->points.data());
    };
    measure.point = point_index("point");
    measure.other = point_index("other_point");
    const bool needs_landmark =
        *definition != Definition::along && *definition != Definition::length;
    if (needs_landmark && atlas.landmarks_.find(row.text("landmark")) == nullptr) {
      check.wrong(row, "landmark", fmt::format("'{}' is not placed", row.text("landmark")));
    }
    measure.landmark = row.text("landmark");
    measure.from_level = row.text("from_level");
    measure.from_offset_mm = row.number("from_offset_mm").value_or(0.0);
    measure.weak = row.text("trust") == "weak";
    measure.note = row.text("note");
    if (*definition == Definition::crossing &&
        std::ranges::find(atlas.planes_, measure.plane, &PlaneSpec::name) == atlas.planes_.end()) {
      check.wrong(row, "plane", fmt::format("'{}' is no plane", measure.plane));
    }
    index_of.emplace(measure.id, atlas.measures_.size());
    atlas.measures_.push_back(std::move(measure));
  }

  Checker rows_check("course_measure_rows.csv");
  for (const evidence::Row row : package.table("course_measure_rows")) {
    const auto measure = index_of.find(row.text("measure"));
    if (measure == index_of.end()) {
      rows_check.wrong(row, "measure",
                       fmt::format("no measure is called '{}'", row.text("measure")));
      continue;
    }
    atlas.measures_[measure->second].rows.push_back(
        {std::string(row.text("row")), std::string(row.text("column")),
         row.number("sign").value_or(1.0) * row.number("factor_mm").value_or(1.0)});
  }

  std::vector<Problem> problems;
  for (Checker* checker : {&courses_check, &points_check, &planes_check, &check, &rows_check}) {
    std::ranges::move(checker->problems(), std::back_inserter(problems));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return atlas;
}

void Atlas::complete_knots(std::size_t index) {
  Course& course = courses_[index];
  const SegmentFrames ledger_limb;
  if (course.knots.empty()) {
    std::optional<Eigen::Vector3d> start;
    if (const auto ref = find_point(course.from_point)) {
      start =
          curve(ref->course, ledger_limb).position(courses_[ref->course].points[ref->point].knot);
    }
    course.knots = chord_knots(positions_mm(course, ledger_limb, start));
  }
  const geometry::CubicSpline own = curve(index, ledger_limb);
  for (CoursePoint& point : course.points) {
    if (std::isnan(point.knot)) point.knot = knot_at_level(own, point.segment, point.fraction);
  }
}

geometry::CubicSpline Atlas::curve(std::size_t index, const SegmentFrames& frames) const {
  const Course& course = courses_[index];
  std::optional<Eigen::Vector3d> start;
  if (course.is_branch()) {
    const auto ref = find_point(course.from_point);
    start = curve(ref->course, frames).position(courses_[ref->course].points[ref->point].knot);
  }
  return {course.knots, positions_mm(course, frames, start)};
}

const Course* Atlas::find_course(std::string_view id) const {
  const auto found = std::ranges::find(courses_, id, &Course::id);
  return found == courses_.end() ? nullptr : &*found;
}

std::optional<PointRef> Atlas::find_point(std::string_view id) const {
  for (std::size_t c = 0; c < courses_.size(); ++c) {
    if (const CoursePoint* point = courses_[c].find(id)) {
      return PointRef{c, static_cast<std::size_t>(point - courses_[c].points.data())};
    }
  }
  return std::nullopt;
}

MeasureGeometry Atlas::geometry_of(const NerveMeasure& measure, const SegmentFrames& frames) const {
  MeasureGeometry geometry;
  geometry.definition = measure.definition;
  geometry.distal = -frames.proximal(measure.axis);
  geometry.sideways =
      measure.front_to_back ? frames.anterior(measure.axis) : frames.lateral(measure.axis);
  if (const auto landmark = landmarks_.position_mm(measure.landmark, frames)) {
    geometry.landmark = *landmark;
  }
  const Course& course = courses_[measure.course];
  geometry.search_from = course.knots.front();
  geometry.search_to = course.knots.back() + kSearchBeyond_mm;
  if (measure.definition == Definition::offset_at_level) {
    geometry.surface.normal = geometry.distal;
    geometry.surface.through = geometry.landmark;
  }
  const auto plane = std::ranges::find(planes_, measure.plane, &PlaneSpec::name);
  if (plane != planes_.end()) geometry.surface = surface_on(*plane, frames);
  if (!measure.from_level.empty()) {
    CrossingSurface level;
    level.normal = geometry.distal;
    level.through = *landmarks_.position_mm(measure.from_level, frames) +
                    measure.from_offset_mm * geometry.distal;
    geometry.from_level = level;
  }
  return geometry;
}

const Landmark* Atlas::landmark_of_plane(const NerveMeasure& measure) const {
  const auto plane = std::ranges::find(planes_, measure.plane, &PlaneSpec::name);
  if (plane == planes_.end() || plane->normal == "outline") return nullptr;
  return landmarks_.find(plane->landmark);
}

std::optional<Atlas::View> Atlas::view_of_plane(const NerveMeasure& measure) const {
  const auto plane = std::ranges::find(planes_, measure.plane, &PlaneSpec::name);
  if (plane == planes_.end() || plane->seen_from.empty()) return std::nullopt;
  const bool from_front = plane->seen_from == "anterior";
  return View{from_front, from_front ? plane->offset_z_mm : plane->offset_x_mm};
}

CrossingSurface Atlas::surface_on(const PlaneSpec& spec, const SegmentFrames& frames) const {
  const Eigen::Vector3d anterior = frames.anterior(spec.segment);
  const Eigen::Vector3d proximal = frames.proximal(spec.segment);
  const Eigen::Vector3d lateral = frames.lateral(spec.segment);
  CrossingSurface surface;
  surface.breadth = frames.scale().breadth;
  surface.through = *landmarks_.position_mm(spec.landmark, frames) +
                    surface.breadth * (spec.offset_x_mm * anterior + spec.offset_z_mm * lateral);
  if (spec.normal == "outline") {
    surface.outline = humerus_.get();
    surface.clock_rad = spec.clock_deg * std::numbers::pi / 180.0;
    surface.through = frames.origin(Segment::humerus);
    surface.axes << anterior, proximal, lateral;
    surface.length_mm = frames.length_mm(Segment::humerus);
    surface.from_fraction = kOutlineFrom;
  } else {
    surface.normal = spec.normal == "anterior"   ? anterior
                     : spec.normal == "proximal" ? proximal
                                                 : lateral;
    // A plane along the segment goes on into the others, where its crossings mean nothing.
    if (spec.normal != "proximal" && spec.segment != Segment::humerus) {
      surface.distal = -proximal;
      surface.distal_of = frames.origin(spec.segment);
    }
  }
  return surface;
}

Atlas Atlas::with_courses(std::vector<Course> courses) const {
  Atlas copy = *this;
  copy.courses_ = std::move(courses);
  return copy;
}

}  // namespace endplate::limb
