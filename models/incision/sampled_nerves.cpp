#include "models/incision/sampled_nerves.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::incision {

Expected<SampledNerves> SampledNerves::from(const std::vector<limb::SampledLine>& lines) {
  std::vector<geometry::LineBundle::Line> laid_out;
  std::vector<anatomy::NodeIndex> nerves;
  for (const limb::SampledLine& line : lines) {
    laid_out.push_back({line.mean_mm.size(), line.samples_mm});
    nerves.push_back(line.nerve);
  }
  if (lines.empty() || lines.front().samples_mm.empty()) {
    return std::unexpected(Error::input(
        {"", "there is no nerve of any sampled limb", "Sample at least one limb with a nerve."}));
  }
  return SampledNerves(std::move(nerves), geometry::LineBundle(laid_out));
}

Expected<std::vector<std::uint8_t>> SampledNerves::chosen(
    const std::vector<anatomy::NodeIndex>& nerves) const {
  if (nerves.empty()) return std::vector<std::uint8_t>(nerves_.size(), 1);
  std::vector<std::uint8_t> of_line(nerves_.size(), 0);
  for (std::size_t k = 0; k < nerves.size(); ++k) {
    const auto found = std::ranges::find(nerves_, nerves[k]);
    if (found == nerves_.end()) {
      return std::unexpected(
          Error::outside_model({fmt::format("/nerves/{}", k), "this nerve has no course in 3D",
                                "Ask about a nerve that has one."}));
    }
    of_line[static_cast<std::size_t>(found - nerves_.begin())] = 1;
  }
  return of_line;
}

Expected<double> checked_within_mm(double within_mm) {
  if (within_mm > 0.0 && within_mm <= kFarthest_mm) return within_mm;
  return std::unexpected(Error::input(
      {"/within_mm", fmt::format("{} mm is no distance to ask about", within_mm),
       fmt::format("Give a distance in mm, above 0 and at most {:.0f}.", kFarthest_mm)}));
}

}  // namespace endplate::incision
