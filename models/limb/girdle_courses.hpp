#pragma once
// Where the nerves round the shoulder girdle run that follow no course of the atlas: roots and
// plexus, the nerves of neck, scapula and chest wall.
//
// Each is a row of points of girdle_courses.csv on the ledger limb with the arm at the side, drawn
// straight from one to the next. Nearly all points are assumed from textbook anatomy, each known to
// 8 to 20 mm (sd_mm); lengths stay those of nerve_routes.csv, so an arc length is laid on the drawn
// line by its share (lengths agree within 15 per cent, tests). Places are in the limb frame of the
// frames given (segment_frames.hpp), mm.
#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct GirdlePoint {
  std::string structure;     // what the nerve passes there; may be empty
  SegmentPoint place;        // of the humerus, on the ledger limb
  std::optional<Bone> bone;  // that it moves with; nothing: as a course does at its level
  double sd_mm = 0.0;        // how sure the place is
};

// A place between two neighbouring points. In a pose it lies as far between where those have moved.
struct GirdlePlace {
  struct End {
    Eigen::Vector3d neutral_mm;
    std::optional<Bone> bone;
  };
  End from;
  End to;
  double share = 0.0;     // of the way; may exceed 1 beyond the nerve's end
  std::size_t index = 0;  // of the point that it lies behind

  Eigen::Vector3d neutral_mm() const;
  // `space`: of the same frames.
  Eigen::Vector3d posed_mm(const PosedSpace& space) const;
};

// One nerve on one limb.
class GirdleLine {
 public:
  // At least two points.
  GirdleLine(const std::vector<GirdlePoint>& points, const SegmentFrames& frames);

  double length_mm() const { return along_mm_.back(); }
  const std::vector<GirdlePlace::End>& points() const { return points_; }
  // At a share of the drawn length; beyond 1 straight on.
  GirdlePlace at(double share) const;

 private:
  std::vector<GirdlePlace::End> points_;
  std::vector<double> along_mm_;  // by point
};

class GirdleCourses {
 public:
  // Refuses a nerve with one point only or a gap in the order of its points.
  static Expected<GirdleCourses> from(const evidence::DataPackage& package,
                                      const anatomy::NerveTree& tree);

  // Empty where the nerve is not drawn.
  const std::vector<GirdlePoint>& points(anatomy::NodeIndex nerve) const { return points_[nerve]; }
  // Ids of the published rows behind its points.
  const std::vector<std::string>& rows(anatomy::NodeIndex nerve) const { return rows_[nerve]; }

 private:
  std::vector<std::vector<GirdlePoint>> points_;  // by node
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace endplate::limb
