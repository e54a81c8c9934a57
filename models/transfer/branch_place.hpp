#pragma once
// Where the places of a branch lie on the mean limb.
//
// A nerve that follows a course lies on it, one round the shoulder girdle on its drawn line
// (girdle_courses.hpp), by its share of the length. A branch without either has only a length: it
// is laid along its parent from where it leaves, as the tables lay those that run beside their
// parent, and beyond the parent's end straight on (assumed), round the girdle no farther than
// kBeyondGirdle_mm. A place split out of the parent lies in the parent. Of several parents the
// usual one counts.
#include <Eigen/Core>
#include <optional>
#include <vector>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::transfer {

// A drawn line of the girdle tells no more about what lies beyond its end (assumed).
inline constexpr double kBeyondGirdle_mm = 30.0;

struct CarriedPlace {
  anatomy::NodeIndex carrier = 0;  // a nerve that follows a course or is drawn round the girdle
  // From its beginning, in the limb asked for; on a line of the girdle at the same share of the
  // mean limb's. May exceed its length.
  double arc_mm = 0.0;
  bool beside = false;  // of a branch that is not drawn itself
};

class BranchPlaces {
 public:
  // Of the right limb; `tree` and `limb` must outlive it. `frames`: of the mean limb.
  BranchPlaces(const anatomy::NerveTree& tree, const limb::CaseLimb& limb,
               const limb::GirdleCourses& girdle, const limb::SegmentFrames& frames);

  // The place `from_origin_mm` along a branch in the limb of those lengths; nothing where neither
  // the branch nor any nerve that it hangs on has one.
  std::optional<CarriedPlace> place(anatomy::NodeIndex branch, double from_origin_mm,
                                    const anatomy::NerveMetrics& lengths) const;

  // The arc length on the mean limb of that on another limb whose arm, forearm and hand are
  // `ratio` times as long.
  double on_mean_limb_mm(const CarriedPlace& place, const Eigen::Vector3d& ratio) const;

  // On the mean limb, limb frame, mm.
  Eigen::Vector3d position_mm(anatomy::NodeIndex carrier, double arc_mm) const;
  limb::Segment segment(anatomy::NodeIndex carrier, double arc_mm) const;
  // Between which points a place lies on a line of the girdle; nothing on a course.
  std::optional<limb::GirdlePlace> on_girdle(anatomy::NodeIndex carrier, double arc_mm) const;

 private:
  struct Run {  // of one segment
    double to_mm = 0.0;
    limb::Segment segment = limb::Segment::humerus;
  };
  struct Path {
    double step_mm = 1.0;
    std::vector<Eigen::Vector3d> places_mm;  // empty: has no place of its own
    std::vector<Run> runs;
    double length_mm = 0.0;
    std::optional<limb::GirdleLine> girdle;
  };

  const anatomy::NerveTree* tree_;
  std::vector<Path> paths_;  // by node
};

}  // namespace endplate::transfer
