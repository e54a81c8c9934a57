#pragma once
// Where the small nerves of arm, forearm and hand run that follow no course of the atlas: skin
// nerves, digital nerves, and motor branches that a cut meets first.
//
// Each is a row of points of drawn_courses.csv on the ledger limb in the anatomical position, drawn
// straight from one to the next; it begins where nerve_routes.csv has it leave its parent
// (drawn_limb.hpp). Nearly all points are assumed from textbook anatomy, each known to its sd_mm.
// Where the depth under the skin is what is known, the place is brought to that depth under the
// modelled skin. Places are in the limb frame of a RIGHT limb, mm.
#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/surface_probe.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/digit_skin.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

struct DrawnPoint {
  std::string structure;  // what the nerve passes there; may be empty
  Segment segment = Segment::humerus;
  SegmentPoint place;                   // on the ledger limb
  std::optional<double> under_skin_mm;  // as it is on any limb
  std::optional<Digit> digit;           // that it moves with, beyond the web
  double sd_mm = 0.0;                   // how sure the place is, in every direction
};

class DrawnCourses {
 public:
  // Refuses a gap in the order of a nerve's points and one that changes the digit it runs on.
  static Expected<DrawnCourses> from(const evidence::DataPackage& package,
                                     const anatomy::NerveTree& tree);

  // Beyond the beginning; empty where the nerve is not drawn.
  const std::vector<DrawnPoint>& points(anatomy::NodeIndex nerve) const { return points_[nerve]; }
  // Ids of the published rows behind its points.
  const std::vector<std::string>& rows(anatomy::NodeIndex nerve) const { return rows_[nerve]; }

 private:
  std::vector<std::vector<DrawnPoint>> points_;  // by node
  std::vector<std::vector<std::string>> rows_;
};

// A place between two neighbouring points.
struct DrawnPlace {
  Eigen::Vector3d neutral_mm;
  std::size_t index = 0;  // of the point that it lies behind; 0 is the beginning
  double share = 0.0;     // of the way to the next
  std::optional<double> under_skin_mm;
  double outline_mm = 0.0;  // how much deeper under the plain outline that is than under the skin
  std::optional<Digit> digit;
  double on_digit = 0.0;  // 0 in the palm, 1 on the digit
  double thumb = 0.0;     // how far the thumb takes it along, as FingerShares::thumb
};

// The skin of a right limb in the anatomical position, and what stands for it where a place of
// every sampled limb is to be brought under it. What it holds must outlive it.
struct DrawnSkin {
  const SkinMesh& mesh;
  const geometry::SurfaceProbe& probe;  // of that mesh
  const BodyEnvelope& outline;
  DigitSkin digits;
};

// One nerve on one right limb.
class DrawnLine {
 public:
  // Of the same limb; `skin` must outlive it. At least one point. `start`: its depth and outline
  // where its parent has them.
  DrawnLine(const DrawnPlace& start, const std::vector<DrawnPoint>& points,
            const SegmentFrames& frames, const DrawnSkin& skin);

  double length_mm() const { return along_mm_.back(); }
  // The beginning and every point of the table.
  std::size_t size() const { return at_point_.size(); }
  const Eigen::Vector3d& point_mm(std::size_t k) const { return knots_[at_point_[k]].neutral_mm; }
  // From the point before it, along the line.
  double away_mm(std::size_t k) const {
    return along_mm_[at_point_[k]] - along_mm_[at_point_[k - 1]];
  }

  // From the axis of limb or digit to that point, unit; zero where its depth is not known.
  Eigen::Vector3d outward(std::size_t k) const;

  // At a share of the drawn length, 0 to 1.
  DrawnPlace at(double share) const;
  // The place, moved by so much, under the skin: as deep as it was drawn and `deeper_mm` more where
  // its depth is known, at least kLeastDepth_mm or on a digit kLeastDigitDepth_mm elsewhere.
  Eigen::Vector3d in_flesh(const DrawnPlace& place, const Eigen::Vector3d& moved_by_mm,
                           double deeper_mm = 0.0) const;
  // What carries it. `frames`: of the limb on either side; `neutral_mm`: on that side.
  static NervePlace carried(const DrawnPlace& place, const SegmentFrames& frames,
                            const Eigen::Vector3d& neutral_mm);

 private:
  // Brings the place under the skin, and to its depth where that is known, by the mesh.
  void settle(DrawnPlace& place) const;
  double thumb_at(const DrawnPlace& place) const;
  void add(const DrawnPlace& knot);

  SegmentFrames frames_;
  const DrawnSkin* skin_;
  std::vector<std::optional<Digit>> digits_;  // by point; the first is the beginning
  std::vector<std::size_t> at_point_;         // of the knots, by point
  std::vector<DrawnPlace> knots_;
  std::vector<double> along_mm_;  // by knot
};

}  // namespace endplate::limb
