#pragma once
// What must hold beside the donor: "IS>=4" works at M4 or better, "ECRL<4" does not work.
#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

struct MuscleCondition {
  std::size_t muscle = 0;
  bool at_least = false;
};

// Nothing for a text that is no condition or names no muscle.
std::optional<MuscleCondition> parse_condition(std::string_view text,
                                               const anatomy::Anatomy& anatomy);

// `why` gets what was found, in words. A muscle works when it was examined so or when the injury
// leaves it alone; it is strong by examination only.
Condition::Found hold(const MuscleCondition& condition, const Situation& now, std::string& why);

// Those of transfer_conditions.csv for a nerve transfer.
std::vector<Condition> conditions_of(std::string_view transfer,
                                     const evidence::DataPackage& package, const Situation& now);

// The deep flexor of a finger: its superficialis may be given only when it is shown to be strong.
bool is_deep_finger_flexor(std::string_view muscle);

}  // namespace endplate::transfer
