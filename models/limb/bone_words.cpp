#include "models/limb/bone_words.hpp"

#include <array>
#include <utility>

namespace endplate::limb {

std::optional<Bone> bone_from(std::string_view text) {
  constexpr std::array<std::pair<std::string_view, Bone>, 7> kBones{{{"thorax", Bone::thorax},
                                                                     {"clavicle", Bone::clavicle},
                                                                     {"scapula", Bone::scapula},
                                                                     {"humerus", Bone::humerus},
                                                                     {"ulna", Bone::ulna},
                                                                     {"radius", Bone::radius},
                                                                     {"hand", Bone::hand}}};
  for (const auto& [word, bone] : kBones) {
    if (word == text) return bone;
  }
  return std::nullopt;  // soft
}

}  // namespace endplate::limb
