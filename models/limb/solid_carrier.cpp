#include "models/limb/solid_carrier.hpp"

#include <fmt/format.h>

#include <array>
#include <map>
#include <string>

namespace endplate::limb {
namespace {

std::map<std::string, SolidCarrier, std::less<>> all_words() {
  std::map<std::string, SolidCarrier, std::less<>> words{
      {"thorax", Bone::thorax},
      {"clavicle", Bone::clavicle},
      {"scapula", Bone::scapula},
      {"humerus", Bone::humerus},
      {"ulna", Bone::ulna},
      {"radius", Bone::radius},
      {"hand", Bone::hand},
      {"proximal carpal row", ProximalCarpalRow{}},
      {"metacarpal of thumb", ThumbBone::metacarpal},
      {"proximal phalanx of thumb", ThumbBone::proximal_phalanx},
      {"distal phalanx of thumb", ThumbBone::distal_phalanx},
      {"flesh", Flesh{}},
      {"flesh of thumb", Flesh{std::nullopt, true}}};
  const std::array<std::string_view, 4> fingers{"index", "middle", "ring", "little"};
  const std::array<std::string_view, 3> phalanges{"proximal", "middle", "distal"};
  for (std::size_t f = 0; f < fingers.size(); ++f) {
    words.emplace(fmt::format("flesh of {} finger", fingers[f]),
                  Flesh{static_cast<Finger>(f), false});
    for (std::size_t k = 0; k < phalanges.size(); ++k) {
      words.emplace(fmt::format("{} phalanx of {} finger", phalanges[k], fingers[f]),
                    FingerPhalanx{static_cast<Finger>(f), static_cast<Phalanx>(k)});
    }
  }
  return words;
}

template <class... Ts>
struct Overloaded : Ts... {
  using Ts::operator()...;
};

}  // namespace

std::optional<SolidCarrier> solid_carrier_from(std::string_view word) {
  static const auto words = all_words();
  const auto found = words.find(word);
  if (found == words.end()) return std::nullopt;
  return found->second;
}

Eigen::Vector3d carried(const SolidCarrier& carrier, const Eigen::Vector3d& neutral_mm,
                        const PosedSpace& space) {
  return std::visit(
      Overloaded{
          [&](const Flesh& flesh) -> Eigen::Vector3d {
            return space.flesh_of_thumb(neutral_mm, flesh.thumb ? 1.0 : 0.0, flesh.finger);
          },
          [&](Bone bone) -> Eigen::Vector3d { return space.of_bone(bone) * neutral_mm; },
          [&](ProximalCarpalRow) -> Eigen::Vector3d {
            return space.of_proximal_carpal_row() * neutral_mm;
          },
          [&](const FingerPhalanx& bone) -> Eigen::Vector3d {
            return space.of_phalanx(bone.finger, bone.phalanx) * neutral_mm;
          },
          [&](ThumbBone bone) -> Eigen::Vector3d { return space.of_thumb(bone) * neutral_mm; }},
      carrier);
}

}  // namespace endplate::limb
