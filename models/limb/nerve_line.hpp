#pragma once
// The course of one nerve as a row of places that move with the joints.
#include <Eigen/Core>
#include <cstddef>
#include <string_view>
#include <vector>

#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/deltoid_fibre.hpp"
#include "models/limb/posed_bones.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

// Subcutaneous nerves lie in the fat, not in the skin itself: at least so deep. Assumed: skin of
// about 2 mm and half of a small nerve.
inline constexpr double kLeastDepth_mm = 3.5;
// From a nerve's middle to the cortex it lies on, at the least: half of a small nerve. Assumed.
inline constexpr double kLeastClearance_mm = 1.0;

// A place of a nerve and what carries it.
struct NervePlace {
  Eigen::Vector3d neutral_mm;  // in the anatomical position, limb frame
  FingerShares fingers;
  double in_deltoid = 0.0;       // 0 to 1; the rest is the flesh about it
  double least_pronation = 0.0;  // share of the forearm's turn, where the flesh has less
};

// A place of a course of the atlas.
NervePlace nerve_place(std::string_view course, const SegmentFrames& frames,
                       const Eigen::Vector3d& neutral_mm);

struct NerveLine {
  std::size_t course = 0;     // of the atlas
  std::vector<double> knots;  // parameters on the course, ascending
  std::vector<NervePlace> places;
};

// Every `step_mm` on the ledger limb, about so on others. Places of the fit that lie nearer to the
// skin than kLeastDepth_mm are moved inwards to that depth.
NerveLine nerve_line(const Atlas& atlas, std::size_t course, const SegmentFrames& frames,
                     const BodyEnvelope& envelope, double step_mm);

// Lets the places in the hand follow the thumb as the skin nearest to them does. `skin`: that of
// the line's limb in the anatomical position.
void follow_thumb(NerveLine& line, const SkinMesh& skin, const SegmentFrames& frames);

// The nerves of one limb in one pose: carried by the flesh, and by the deltoid where they run in
// it; under the skin and out of the bones. `envelope` and `space` must outlive it.
class PosedNerves {
 public:
  // `frames` and `space` of the same limb.
  PosedNerves(const LandmarkSet& landmarks, const BodyEnvelope& envelope,
              const SegmentFrames& frames, const PosedSpace& space);

  // In the limb frame, mm.
  Eigen::Vector3d operator()(const NervePlace& place) const;
  std::vector<Eigen::Vector3d> operator()(const NerveLine& line) const;

 private:
  Eigen::Vector3d within_deltoid(const Eigen::Vector3d& neutral_mm) const;

  const BodyEnvelope& envelope_;
  SegmentFrames frames_;
  const PosedSpace& space_;
  Eigen::Isometry3d humerus_;
  DeltoidFibre deltoid_;
  PosedBones bones_;
};

}  // namespace endplate::limb
