#pragma once
// Whether a donor can give, by this injury, the examination and the EMG.
#include <string_view>

namespace endplate::transfer {

// Strong: examined at M4 or better, or shown by EMG where it cannot be graded alone. Not examined
// is never strong.
enum class DonorState { strong, weak, dead, not_judged };
std::string_view to_string(DonorState state);

}  // namespace endplate::transfer
