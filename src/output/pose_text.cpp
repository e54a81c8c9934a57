#include "output/pose_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace endplate::cli {

std::string pose_in_words(const std::map<std::string, double>& pose_deg) {
  constexpr std::string_view kUnit = "_deg";
  std::string words;
  for (const auto& [key, angle_deg] : pose_deg) {
    if (angle_deg == 0.0) continue;
    std::string joint = key.ends_with(kUnit) ? key.substr(0, key.size() - kUnit.size()) : key;
    std::ranges::replace(joint, '_', ' ');
    words += fmt::format("{}{} {:g}", words.empty() ? "" : ", ", joint, angle_deg);
  }
  return words + " degrees";
}

}  // namespace endplate::cli
