#pragma once
// What takes a place of a bone or muscle along when the limb moves: a bone, as one piece, or the
// flesh.
#include <Eigen/Geometry>
#include <optional>
#include <string_view>
#include <variant>

#include "models/limb/posed_space.hpp"

namespace endplate::limb {

struct ProximalCarpalRow {
  bool operator==(const ProximalCarpalRow&) const = default;
};
struct FingerPhalanx {
  Finger finger = Finger::index;
  Phalanx phalanx = Phalanx::proximal;
  bool operator==(const FingerPhalanx&) const = default;
};
// Of a finger, of the thumb, or of the rest of the limb.
struct Flesh {
  std::optional<Finger> finger;
  bool thumb = false;
  bool operator==(const Flesh&) const = default;
};
using SolidCarrier = std::variant<Flesh, Bone, ProximalCarpalRow, FingerPhalanx, ThumbBone>;

// The words of the column moves_with: "humerus", "middle phalanx of ring finger", "distal phalanx
// of thumb", "metacarpal of thumb", "proximal carpal row", "flesh", "flesh of index finger",
// "flesh of thumb".
std::optional<SolidCarrier> solid_carrier_from(std::string_view word);

Eigen::Vector3d carried(const SolidCarrier& carrier, const Eigen::Vector3d& neutral_mm,
                        const PosedSpace& space);

}  // namespace endplate::limb
