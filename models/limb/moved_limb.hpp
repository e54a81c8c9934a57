#pragma once
// One limb in a pose, and with the ulnar nerve where an operation laid it: its landmarks, the axes
// of its segments, the courses of its nerves and what a measure is on it.
//
// Places in the limb frame of the frames given, mm: the thorax does not move. A parameter of a
// course names the same place of the nerve here as on the atlas's own curve, and lengths along a
// nerve are those of the nerve at rest: it slides in its bed and keeps its length.
#include <Eigen/Core>
#include <optional>
#include <vector>

#include "models/limb/atlas.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::limb {

class MovedLimb {
 public:
  // `rest`: the atlas's curves on `frames`, by course.
  MovedLimb(const Atlas& atlas, const std::vector<geometry::CubicSpline>& rest,
            const SegmentFrames& frames, const LimbJoints& joints, const BodyEnvelope& envelope,
            const Pose& pose, const std::optional<UlnarTransposition>& transposition);

  const PosedSpace& space() const { return space_; }
  const geometry::CubicSpline& curve(std::size_t course) const { return curves_[course]; }

  // The long axis of a segment, unit. The forearm's runs from between the epicondyles to between
  // the styloids, so it swings as the radius turns round the ulna.
  Eigen::Vector3d proximal(Segment segment) const;

  // As Atlas::geometry_of: landmark, axes and planes go with their bones, sideways with the
  // landmark's bone where that is one of the segment. Crossings are looked for near `rest`, those
  // of the limb at rest: a bent limb may cross a plane again elsewhere.
  MeasureGeometry geometry_of(const NerveMeasure& measure, const MeasureGeometry& rest) const;

  // The measure itself; nothing where its crossing is not there in this pose.
  std::optional<double> take(const NerveMeasure& measure, const MeasureGeometry& rest) const;

  // The parameter of the place that a crossing or an offset at a level is taken at, likewise.
  std::optional<double> crossing_of(const NerveMeasure& measure, const MeasureGeometry& rest) const;

  // The parameter at which the course passes the level of the landmark, likewise.
  std::optional<double> level_of(const NerveMeasure& measure, const MeasureGeometry& rest) const;

 private:
  void see(const Atlas::View& view, CrossingSurface& surface) const;
  Eigen::Matrix3d turn_of(const Landmark* landmark, Segment axis) const;
  std::optional<double> crossing(std::size_t course, const CrossingSurface& here,
                                 const CrossingSurface& at_rest,
                                 const MeasureGeometry& search) const;

  const Atlas* atlas_;
  const std::vector<geometry::CubicSpline>* rest_;
  SegmentFrames frames_;
  PosedSpace space_;
  std::vector<geometry::CubicSpline> curves_;
};

}  // namespace endplate::limb
