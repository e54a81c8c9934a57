#pragma once
#include <string_view>

namespace endplate {

// The standing caution, shown with every answer on whatever shows it.
std::string_view standing_caution();

}  // namespace endplate
