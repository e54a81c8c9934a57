#pragma once
// A mark on the skin in words, as a command line takes it:
//
//   olecranon tip, 250 proximal, on posterior
//   lateral epicondyle, 20 proximal, 10 anterior
//   at 12.5 -40 30            (a place in the limb frame, mm)
//
// The landmark first; then, in any order, millimetres along the limb (proximal, distal), across it
// (anterior, posterior, medial, lateral) and the side whose skin is meant ("on ..."). Marks of a
// line are parted by semicolons.
#include <string>
#include <string_view>
#include <vector>

#include "models/anatomy/terms.hpp"
#include "models/core/error.hpp"
#include "models/incision/skin_place.hpp"

namespace endplate::incision {

// `option` names the place of problems. Slips in a landmark's name that were read are added to
// `assumptions`.
Expected<std::vector<AtSkin>> marks_from(std::string_view text, const std::string& option,
                                         const anatomy::Terms& terms,
                                         std::vector<std::string>& assumptions);

// The words for a mark, as above.
std::string in_words(const AtSkin& mark);

}  // namespace endplate::incision
