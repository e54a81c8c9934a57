#pragma once
// The mean limb of one case with everything that distances are taken on: at rest, and as it lies in
// the case's pose and after its operations. For the distance*.cpp files.
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/limb/case_pose.hpp"
#include "models/limb/fit_summary.hpp"
#include "models/limb/moved_limb.hpp"

namespace endplate::limb {

class MeasuredLimb {
 public:
  MeasuredLimb(const evidence::DataPackage& package, Atlas atlas, const SegmentFrames& frames,
               CasePose pose, const std::optional<UlnarTransposition>& transposition);

  const Atlas& atlas() const { return atlas_; }
  const FitSummary& fit() const { return fit_; }
  const SegmentFrames& frames() const { return frames_; }
  const CasePose& pose() const { return pose_; }
  bool bent() const { return !pose_.pose.is_neutral(); }

  const geometry::CubicSpline& curve_at_rest(std::size_t course) const { return curves_[course]; }
  const geometry::CubicSpline& curve(std::size_t course) const {
    return moved_ ? moved_->curve(course) : curves_[course];
  }
  MeasureGeometry geometry_of(const NerveMeasure& measure) const;
  // The parameter at which the course passes the landmark's level.
  std::optional<double> level_of(const NerveMeasure& measure) const;
  // Where on its course a measure ends; nothing for a length and where a crossing is not there.
  std::optional<Eigen::Vector3d> place_of(const NerveMeasure& measure) const;

  // The weakest of the rows.
  evidence::Provenance provenance_of(const std::vector<std::string>& rows) const;

  // The measure on this limb at rest and on the ledger limb, mm; and as the limb lies, if its
  // crossing is there.
  struct Taken {
    double here = 0.0;
    double ledger = 0.0;
    std::optional<double> moved;
  };
  std::optional<Taken> take(const NerveMeasure& measure) const;

 private:
  Atlas atlas_;
  FitSummary fit_;
  SegmentFrames frames_;
  CasePose pose_;
  std::vector<geometry::CubicSpline> curves_;
  std::vector<geometry::CubicSpline> ledger_curves_;
  std::map<std::string_view, evidence::Provenance> provenance_;
  std::unique_ptr<const MovedLimb> moved_;  // only where something moved
};

}  // namespace endplate::limb
