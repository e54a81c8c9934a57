#pragma once
// The model limb as tables: landmarks, nerve courses with their points, and how each published
// distance is measured on them. Immutable once read; every limb is a scaled and posed copy.
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/course.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/limb/measure.hpp"

namespace endplate::limb {

struct PointRef {
  std::size_t course = 0;
  std::size_t point = 0;
};

// A published row as one reading of a measure on the ledger limb: `factor` times its figure. The
// factor holds the sign, and brings a fraction to millimetres or the limbs of the study to size.
struct MeasureRow {
  std::string row;     // id in landmark_distances.csv
  std::string column;  // its figure: mean_mm or fraction
  double factor = 1.0;
};

// One published quantity: a point of a nerve against a landmark, by one definition.
struct NerveMeasure {
  std::string id;
  std::string nerve;          // tree_node, standard term
  std::string point_name;     // point_std
  std::string landmark_name;  // landmark_std
  std::string landmark;       // the placed landmark that stands for it
  std::size_t course = 0;
  std::optional<std::size_t> point;  // of the course; absent where the place is implied
  std::optional<std::size_t> other;  // of the course, where an `along` distance starts
  Definition definition = Definition::axial;
  Segment axis = Segment::humerus;  // the segment along which the distance runs
  bool front_to_back = false;       // an offset is anterior instead of lateral
  std::string plane;                // of a crossing, in course_planes.csv
  std::string from_level;           // landmark at whose level an `along` distance starts
  double from_offset_mm = 0.0;      // and how far distal of it
  bool weak = false;                // the source leaves open what was measured
  std::string note;                 // what a reader of a residual should know
  std::vector<MeasureRow> rows;
};

class Atlas {
 public:
  // With the start courses of the fit (course_waypoints.csv, course_points.csv).
  static Expected<Atlas> unfitted(const evidence::DataPackage& package);
  // With the fitted ones (fitted_waypoints.csv, fitted_points.csv).
  static Expected<Atlas> fitted(const evidence::DataPackage& package);

  const LandmarkSet& landmarks() const { return landmarks_; }
  const std::vector<Course>& courses() const { return courses_; }
  const std::vector<NerveMeasure>& measures() const { return measures_; }
  const Course* find_course(std::string_view id) const;
  std::optional<PointRef> find_point(std::string_view id) const;

  // The curve of a course on one limb.
  geometry::CubicSpline curve(std::size_t index, const SegmentFrames& frames) const;

  // The measure's landmark, axes and plane on one limb. Measures were checked when read.
  MeasureGeometry geometry_of(const NerveMeasure& measure, const SegmentFrames& frames) const;

  // The landmark in the plane that a crossing looks for; null where it looks round the humerus.
  const Landmark* landmark_of_plane(const NerveMeasure& measure) const;

  // How a crossing of the radius looks in a view of the forearm.
  struct View {
    bool from_front = false;  // else from the lateral side
    double offset_mm = 0.0;   // of the plane from the forearm's axis, across the view, ledger limb
  };
  std::optional<View> view_of_plane(const NerveMeasure& measure) const;

  // A copy with other courses (same ids, points and order).
  Atlas with_courses(std::vector<Course> courses) const;

 private:
  struct PlaneSpec {
    std::string name;
    std::string landmark;  // lies in the plane, but for the offsets
    Segment segment = Segment::humerus;
    double offset_x_mm = 0.0;
    double offset_z_mm = 0.0;
    std::string normal;      // anterior, proximal, lateral; outline: round the humerus
    double clock_deg = 0.0;  // of an outline: 0 anterior, 90 lateral, 180 posterior
    std::string seen_from;   // of a crossing of the radius: lateral, anterior
  };
  CrossingSurface surface_on(const PlaneSpec& spec, const SegmentFrames& frames) const;

  static Expected<Atlas> read(const evidence::DataPackage& package, std::string_view waypoints,
                              std::string_view points);
  // Knots of courses and points that the tables leave open.
  void complete_knots(std::size_t index);

  LandmarkSet landmarks_;
  std::vector<Course> courses_;
  std::vector<NerveMeasure> measures_;
  std::vector<PlaneSpec> planes_;
  std::shared_ptr<const BoneOutline> humerus_;  // shared, so that resolved measures may point to it
};

}  // namespace endplate::limb
