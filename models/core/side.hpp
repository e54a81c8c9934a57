#pragma once
#include <string_view>

namespace endplate {

// The canonical limb is the right one; the left is its mirror image in the sagittal plane.
enum class Side { right, left };

constexpr std::string_view to_string(Side side) {
  return side == Side::right ? "right" : "left";
}

}  // namespace endplate
