#pragma once
// The solids of the standard limb, and which points they hold.
#include <algorithm>
#include <numbers>
#include <string>
#include <string_view>
#include <vector>

#include "../../support/solid_probe.hpp"
#include "limb_fixture.hpp"
#include "models/limb/limb_solids.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

inline const SolidShapes& own_shapes() {
  static const SolidShapes shapes = SolidShapes::from(own_tables()).value();
  return shapes;
}

inline const LimbJoints& own_joints() {
  static const LimbJoints joints = LimbJoints::from(own_tables()).value();
  return joints;
}

inline const SkinMesh& own_skin() {
  static const SkinMesh skin =
      make_skin(SegmentFrames(), BodyEnvelope::from(own_tables()).value(), own_joints(), 1);
  return skin;
}

inline const std::vector<LimbSolid>& own_solids() {
  static const std::vector<LimbSolid> solids = make_solids(SegmentFrames(), own_shapes(), 1);
  return solids;
}

// One a solid, in their order.
inline const std::vector<test::SolidProbe>& own_probes() {
  static const auto probes = [] {
    std::vector<test::SolidProbe> result;
    for (const LimbSolid& solid : own_solids()) result.emplace_back(solid.mesh);
    return result;
  }();
  return probes;
}

// The first solid of that name, and part if one is given.
inline const LimbSolid& solid_of(std::string_view name, std::string_view part = "") {
  const auto found = std::ranges::find_if(own_solids(), [&](const LimbSolid& solid) {
    return solid.name == name && (part.empty() || solid.part == part);
  });
  if (found == own_solids().end()) FAIL("no solid is called " << name);
  return *found;
}

// Above this level of the arm the skin is only a round end: the shoulder girdle lies outside of it.
inline constexpr double kSkinHoldsTo = 0.7;

inline bool below_shoulder(const Eigen::Vector3d& p) {
  return SegmentFrames().from_limb(Segment::humerus, p).fraction < kSkinHoldsTo;
}

}  // namespace endplate::limb
