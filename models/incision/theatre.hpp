#pragma once
// One limb as it lies in theatre: its skin in the pose, and where marks stand on it.
//
// Places in the limb frame of the case's side, mm (segment_frames.hpp). A mark is set on the limb
// at rest, along and across its segment, and moves with the skin: that is how a study measured it
// whose limb lay in a pose. Above four fifths of the arm the skin is a round end that stands for
// shoulder and chest.
#include <Eigen/Core>
#include <memory>
#include <string>
#include <vector>

#include "geometry/surface_point.hpp"
#include "geometry/triangle_mesh.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/incision/skin_place.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/case_pose.hpp"

namespace endplate::incision {

// A place of the skin.
struct SkinPlace {
  geometry::SurfacePoint on_skin;  // of Theatre::skin()
  Eigen::Vector3d position_mm = Eigen::Vector3d::Zero();
  Eigen::Vector3d inward = Eigen::Vector3d::UnitX();  // unit, into the limb
  std::string region;                                 // as limb::skin_region names it
  // How far from its landmark along the limb, distal positive, and the axis itself (unit, distal,
  // in the pose): on a limb that is longer the mark stands higher or lower on it.
  double from_landmark_mm = 0.0;
  Eigen::Vector3d distal = Eigen::Vector3d::Zero();
  limb::Segment segment = limb::Segment::humerus;
};

class Theatre {
 public:
  // Fault::input as CaseLimb and CasePose have it.
  static Expected<Theatre> from(const evidence::DataPackage& package,
                                const anatomy::NerveTree& tree, const casefile::Limb& given);

  Side side() const;
  const limb::CaseLimb& limb() const;
  const limb::CasePose& pose() const;
  const geometry::TriangleMesh& skin() const;  // in the pose

  // Problems stand at "": the caller knows of which mark. Fault::input: no such landmark, or no
  // skin there; Fault::outside_model: the landmark has no place in the model, or the skin there is
  // not the limb's.
  Expected<SkinPlace> place(const AtSkin& mark) const;
  SkinPlace place(const geometry::SurfacePoint& on_skin) const;

  // The shortest line over the skin, every `step_mm` at most, both ends included.
  Expected<std::vector<SkinPlace>> line(const SkinPlace& from, const SkinPlace& to,
                                        double step_mm) const;

  // How deep under the skin; negative outside.
  double depth_mm(const Eigen::Vector3d& position_mm) const;
  // From a place of the skin in a direction (unit) to the first bone; nothing where none is met
  // within the limb.
  std::optional<double> to_bone_mm(const Eigen::Vector3d& from_mm,
                                   const Eigen::Vector3d& direction) const;
  // And to where it leaves the limb on the far side.
  double through_mm(const Eigen::Vector3d& from_mm, const Eigen::Vector3d& direction) const;

 private:
  struct Parts;
  std::shared_ptr<const Parts> parts_;
};

}  // namespace endplate::incision
