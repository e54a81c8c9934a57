#pragma once
// What lies under a ray or about a point of the posed limb, by name.
#include <Eigen/Core>
#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "models/limb/limb_joints.hpp"
#include "models/limb/limb_solids.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

enum class PickKind { skin, muscle, bone };

struct PickHit {
  PickKind kind = PickKind::skin;
  std::string name;  // of the skin's region, the muscle or the bone, in standard terms
  std::string part;  // of the muscle or bone; empty for skin
  // Along a ray: from its origin to where it enters. About a point: how deep it lies under the
  // surface of what is named.
  double depth_mm = 0.0;
  Eigen::Vector3d place_mm = Eigen::Vector3d::Zero();  // on that surface
};

// One limb in one pose, prepared for many questions. Places are in the limb frame, mm.
class PickScene {
 public:
  // `skin` and `solids` were made for `frames`; `space` poses them.
  PickScene(const SegmentFrames& frames, const LimbJoints& joints, const SkinMesh& skin,
            const std::vector<LimbSolid>& solids, const PosedSpace& space);
  ~PickScene();
  PickScene(PickScene&&) noexcept;
  PickScene& operator=(PickScene&&) noexcept;

  // In order of depth; of skin, muscle and bone alike the first entry of each name. A ray that ends
  // up on the far side names no skin a second time unless the region differs.
  std::vector<PickHit> along(const Eigen::Vector3d& origin_mm,
                             const Eigen::Vector3d& direction) const;
  // What holds a point: the region of the skin nearest to it, if it lies within the skin, then
  // muscles and bones.
  std::vector<PickHit> at(const Eigen::Vector3d& point_mm) const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace endplate::limb
