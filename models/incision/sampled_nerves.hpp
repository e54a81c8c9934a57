#pragma once
// The nerves of sampled limbs, laid out once for many questions of what lies near what.
#include <cstdint>
#include <string>
#include <vector>

#include "geometry/line_bundle.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::incision {

class SampledNerves {
 public:
  // Lines as limb::sample_lines gives them: all of the same limbs. Fault::input where there is no
  // line or no limb.
  static Expected<SampledNerves> from(const std::vector<limb::SampledLine>& lines);

  const std::vector<anatomy::NodeIndex>& nerves() const { return nerves_; }
  std::size_t limbs() const { return bundle_.samples(); }
  const geometry::LineBundle& bundle() const { return bundle_; }

  // One for each line of the bundle, 1 where it is of one of those nerves (a nerve without its
  // branches); of none: all. Fault::outside_model at "/nerves/INDEX" for a nerve without a course.
  Expected<std::vector<std::uint8_t>> chosen(const std::vector<anatomy::NodeIndex>& nerves) const;

 private:
  SampledNerves(std::vector<anatomy::NodeIndex> nerves, geometry::LineBundle bundle)
      : nerves_(std::move(nerves)), bundle_(std::move(bundle)) {}

  std::vector<anatomy::NodeIndex> nerves_;  // by line
  geometry::LineBundle bundle_;
};

// Within so many mm is asked, > 0 and at most kFarthest_mm. Fault::input at "/within_mm".
inline constexpr double kFarthest_mm = 100.0;
Expected<double> checked_within_mm(double within_mm);

}  // namespace endplate::incision
