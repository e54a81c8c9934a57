#pragma once
// The routes laid out on one limb: levels along its courses and lengths off them, from which the
// lengths along every nerve of that limb, or of one with other levels and lengths, follow.
#include <Eigen/Core>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/level_spread.hpp"
#include "models/limb/nerve_route.hpp"

namespace endplate::limb {

// A level of a course at which something leaves or ends.
struct Level {
  std::size_t course = 0;
  double arc_mm = 0.0;                                 // from the start of the course
  Eigen::Vector3d parts_mm = Eigen::Vector3d::Zero();  // of it in arm, forearm and hand
  Segment segment = Segment::humerus;
  double sd_mm = 0.0;  // between limbs of one size, and of the fit
  // Something leaves here, or a nerve that follows the course ends: such levels keep their order in
  // every limb. Where a branch running beside the course ends is no part of that order.
  bool in_order = false;
};

// The stretch of a course that a nerve follows, or beside which a branch runs.
struct Stretch {
  std::size_t course = 0;
  std::size_t from = 0;  // levels
  std::size_t to = 0;
  bool follows = false;
};

// Gives the values of the levels that keep an order back to them in ascending order, course by
// course.
void keep_in_order(const std::vector<Level>& levels, std::vector<double>& levels_mm);

class NerveRouteLayout {
 public:
  // `frames` are those of the limb. Expects routes as read_nerve_routes() gives them; a name that
  // the atlas lacks is Fault::internal.
  static Expected<NerveRouteLayout> lay_out(const std::vector<NerveRoute>& routes,
                                            const anatomy::NerveTree& tree, const Atlas& atlas,
                                            const SegmentFrames& frames, const LevelSpread& spread);

  const std::vector<CaseLimbCourse>& courses() const { return courses_; }
  // In the order of their courses and along them.
  const std::vector<Level>& levels() const { return levels_; }
  // Puts the levels elsewhere on their courses; what they vary by stays.
  void move_levels(const std::vector<double>& levels_mm);
  const std::optional<Stretch>& stretch(anatomy::NodeIndex node) const { return stretches_[node]; }
  // Off the courses, by node; 0 for a nerve with a stretch.
  const std::vector<double>& lengths_mm() const { return lengths_mm_; }
  const std::vector<double>& length_sds_mm() const { return length_sds_mm_; }
  Segment length_segment(anatomy::NodeIndex node) const { return length_segments_[node]; }

  // Lengths along the nerves for these levels (arc lengths on their courses, ascending) and
  // lengths. A nerve is at least kLeast_mm long.
  void measure(const std::vector<double>& levels_mm, const std::vector<double>& lengths_mm,
               anatomy::NerveMetrics& metrics) const;
  static constexpr double kLeast_mm = 0.5;

 private:
  struct Leaving {
    std::optional<std::size_t> level;
    double share = 0.0;
    anatomy::NodeIndex parent = 0;
  };
  friend class RouteSurveyor;

  std::vector<CaseLimbCourse> courses_;
  std::vector<Level> levels_;
  std::vector<std::optional<Stretch>> stretches_;
  std::vector<double> lengths_mm_;
  std::vector<double> length_sds_mm_;
  std::vector<Segment> length_segments_;
  std::vector<std::vector<Leaving>> leavings_;
};

}  // namespace endplate::limb
