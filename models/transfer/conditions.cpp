#include "models/transfer/conditions.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::transfer {

using evidence::Row;
using Found = Condition::Found;

std::optional<MuscleCondition> parse_condition(std::string_view text,
                                               const anatomy::Anatomy& anatomy) {
  const auto sign = text.find_first_of("<>");
  if (sign == std::string_view::npos) return std::nullopt;
  const auto muscle = anatomy.find_muscle(text.substr(0, sign));
  if (!muscle) return std::nullopt;
  return MuscleCondition{*muscle, text[sign] == '>'};
}

Found hold(const MuscleCondition& condition, const Situation& now, std::string& why) {
  const DonorState state = now.donor(condition.muscle, why);
  if (condition.at_least) {
    if (state == DonorState::strong) return Found::holds;
    return state == DonorState::not_judged ? Found::unknown : Found::fails;
  }
  if (state == DonorState::strong || now.muscle_kept(condition.muscle)) {
    why = fmt::format("{} works", now.muscle_name(condition.muscle));
    return Found::fails;
  }
  return now.muscle_lost(condition.muscle) ? Found::holds : Found::unknown;
}

namespace {

constexpr int rank(Found found) {
  switch (found) {
    case Found::fails:
      return 0;
    case Found::unknown:
      return 1;
    case Found::holds:
      break;
  }
  return 2;
}

// Of all that must hold the worst counts, of those of which one is enough the best.
Condition joined(const Row& row, const Situation& now) {
  const bool any = row.text("rule") == "any";
  Condition condition;
  std::optional<Found> counts;
  std::string what;
  for (const std::string& text : row.list("conditions")) {
    const auto parsed = parse_condition(text, now.anatomy());
    if (!parsed) continue;
    std::string why;
    const Found found = hold(*parsed, now, why);
    if (!counts || (any ? rank(found) > rank(*counts) : rank(found) < rank(*counts))) {
      counts = found;
      what = std::move(why);
    }
  }
  condition.found = counts.value_or(Found::unknown);
  condition.absolute = row.text("weight") == "absolute";
  condition.ask = row.text("unknown") != "say";
  condition.refuse = row.text("unknown") == "refuse";
  condition.words = fmt::format("asked for: {}; {}", row.text("words"), what);
  return condition;
}

}  // namespace

std::vector<Condition> conditions_of(std::string_view transfer,
                                     const evidence::DataPackage& package, const Situation& now) {
  std::vector<Condition> conditions;
  for (const Row row : package.table("transfer_conditions")) {
    if (row.text("transfer") == transfer) conditions.push_back(joined(row, now));
  }
  return conditions;
}

bool is_deep_finger_flexor(std::string_view muscle) {
  return muscle.starts_with("FDP-");
}

}  // namespace endplate::transfer
