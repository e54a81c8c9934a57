#pragma once
// Variants of the nerve supply, and the second supplies that most limbs have. Read from
// variant_effects.csv, with the prevalence from variants.csv.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/muscle.hpp"
#include "models/anatomy/skin_area.hpp"

namespace endplate::anatomy {

enum class Effect {
  instead,           // all axons of the target take the other route
  as_well,           // some axons take the other route; what share is unknown
  standard_only,     // the target lacks the second supplies that are counted as usual
  absent,            // the muscle is missing, or the area has no nerve of its own to test
  roots_one_higher,  // every root may carry what the next one below usually does
  roots_one_lower
};

// The other route: along `from` to where it is left, through a linking branch, into another nerve
// and on along the standard tree to the target. Places along a nerve are given by the branches
// that leave just before and just after.
struct Route {
  NodeIndex from = 0;
  std::optional<NodeIndex> leaves_after;
  std::optional<NodeIndex> leaves_before;
  std::optional<NodeIndex> through;
  std::optional<NodeIndex> into;  // none: straight to the target
  std::optional<NodeIndex> enters_after;
  std::optional<NodeIndex> enters_before;
};

struct VariantEffect {
  std::string id;  // of the row, "VE_001"
  Effect effect = Effect::as_well;
  bool all_targets = false;
  std::vector<std::size_t> muscles;
  std::vector<std::size_t> areas;
  std::optional<Route> route;  // given for `instead` and `as_well`
  std::string source;
  evidence::Provenance provenance = evidence::Provenance::assumed;
};

struct PrevalenceRow {
  std::string id;  // of variants.csv
  std::string study;
  std::optional<double> n;
  double fraction = 0.0;
};

// Fractions of limbs, 0 to 1.
struct Prevalence {
  // The pooled figure of a meta-analysis where a row prints one with its interval, else the rows'
  // counts together, else their mean. None where no row has a figure.
  std::optional<double> pooled;
  // The lowest and the highest figure of any row: how far the studies disagree.
  std::optional<double> lowest;
  std::optional<double> highest;
  std::vector<PrevalenceRow> rows;
};

struct Variant {
  std::string name;
  std::vector<std::string> also_called;
  bool usual = false;  // counted in the answer although nobody stated it
  std::vector<VariantEffect> effects;
  Prevalence prevalence;
  std::string how_to_test;  // may be empty
};

// Rows of one name make one variant.
Expected<std::vector<Variant>> read_variants(const evidence::DataPackage& package,
                                             const NerveTree& tree,
                                             const std::vector<Muscle>& muscles,
                                             const std::vector<SkinArea>& areas);

}  // namespace endplate::anatomy
