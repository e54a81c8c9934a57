#pragma once
// The safe-zone rules of approaches.csv (approach_rules.csv) judged on the limb.
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::incision {

// What one limb of the studied kind has, mm.
struct LimbDistance {
  double mean_mm = 0.0;
  double sd_mm = 0.0;
  double low_mm = 0.0;  // 90 % interval
  double high_mm = 0.0;
  std::vector<double> samples_mm;  // of a track; else the distance is taken as normal

  static LimbDistance normal(double mean_mm, double sd_mm);
  static LimbDistance of_samples(std::vector<double> samples_mm);

  // The chance that a limb's distance lies between the two, ends included; 0 to 1.
  double chance(std::optional<double> from_mm, std::optional<double> to_mm) const;
};

enum class RuleCheck { beyond, before, band, place, possible, change, none };

struct ApproachRule {
  std::string row;  // of approaches.csv
  RuleCheck check = RuleCheck::none;
  std::optional<double> low_mm;
  std::optional<double> high_mm;
  std::string of_row;    // of approach_measures.csv, judged
  std::string from_row;  // of a change: the row from which it counts
  std::string reason;    // how the figure was read, or why it is not judged
};

// In the order of the table. Fault::internal: a check without its figures.
Expected<std::vector<ApproachRule>> approach_rules(const evidence::DataPackage& package);

// The criteria, fixed before any rule was judged.
inline constexpr double kRareLimb = 0.05;   // beyond and before: at most so many limbs break it
inline constexpr double kCommonLimb = 0.5;  // band: at least so many limbs lie in it
inline constexpr double kSeenLimb = 0.05;   // possible: more limbs than this

struct RuleVerdict {
  // beyond, before: the chance that a limb breaks the rule; band, possible: that it lies within;
  // place: that a limb lies as far from the mean as the figure, or farther; change: mm.
  double figure = 0.0;
  bool confirmed = false;
};

// `from` is asked of a change alone. `rule` must not be one that is not judged.
RuleVerdict judge(const ApproachRule& rule, const LimbDistance& of, const LimbDistance* from);

}  // namespace endplate::incision
