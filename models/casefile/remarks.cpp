#include "models/casefile/remarks.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::casefile {

std::optional<std::string> plexus_element(const Place& place) {
  if (const auto* at = std::get_if<AtRoot>(&place)) return at->root + " root";
  if (const auto* at = std::get_if<AtTrunk>(&place)) return at->trunk;
  if (const auto* at = std::get_if<AtCord>(&place)) return at->cord;
  return std::nullopt;
}

std::vector<Remark> worth_giving(const Case& read) {
  std::vector<Remark> remarks;
  const auto add = [&](std::string place, std::string why) {
    remarks.push_back({std::move(place), std::move(why)});
  };
  for (std::size_t i = 0; i < read.injuries.size(); ++i) {
    const Injury& injury = read.injuries[i];
    const std::string at = fmt::format("/injuries/{}", i);
    if (!injury.at) add(at + "/at", "without the place nothing distal to it can be told");
    if (injury.mechanism == Mechanism::unknown) {
      add(at + "/mechanism", "it decides the first step more than any forecast does");
    }
    if (!injury.date) add(at + "/date", "without it no time can be counted from the injury");
    if (!injury.nerve_seen) {
      add(at + "/nerve_seen",
          "whether the nerve was seen, whole or cut, weighs in what to do next");
    }
  }
  if (!read.limb.side_given) add("/limb/side", "the drawing shows a right limb until it is given");
  if (!read.limb.age_years) add("/limb/age_years", "age changes the rate of growth and the result");
  if (!read.limb.stature_mm && !read.limb.stature_percentile && read.limb.measured_mm.empty()) {
    add("/limb/stature_mm", "lengths follow it; a measured length of the limb is better still");
  }
  if (!read.limb.sex) add("/limb/sex", "limb lengths differ at the same stature");
  if (!read.injuries.empty() && (!read.examination || read.examination->muscles.empty())) {
    add("/examination/muscles",
        "a muscle that is not listed counts as not examined, never as normal");
  }
  if (read.examination && !read.examination->date) {
    add("/examination/date", "findings mean another thing early and late");
  }
  for (std::size_t i = 0; i < read.observations.size(); ++i) {
    if (!read.observations[i].date) {
      add(fmt::format("/observations/{}/date", i),
          "without it the observation has no place in time");
    }
  }
  for (std::size_t i = 0; i < read.operations.size(); ++i) {
    if (!read.operations[i].date) {
      add(fmt::format("/operations/{}/date", i), "regrowth is counted from it");
    }
  }
  return remarks;
}

}  // namespace endplate::casefile
