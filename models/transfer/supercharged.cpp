#include "models/transfer/supercharged.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "models/recovery/reading.hpp"

namespace endplate::transfer {
namespace {

using casefile::Grade;
using evidence::Row;
using examination::Extent;
using Found = Condition::Found;

// Injuries of the nerve above the branch to a muscle, as places in the case's list.
std::vector<std::size_t> injuries_above(const Row& row, const Situation& now) {
  std::vector<std::size_t> found;
  const auto nerve = now.anatomy().tree().find(row.text("nerve"));
  const auto muscle = now.anatomy().find_muscle(row.text("above"));
  if (!nerve || !muscle) return found;
  const auto leaves_mm = now.branch_leaves_mm(*nerve, *muscle);
  for (std::size_t i = 0; i < now.injuries().size(); ++i) {
    const anatomy::NervePosition& at = now.injuries()[i].lesion.at;
    if (at.nerve == *nerve && leaves_mm && at.from_start_mm < *leaves_mm) found.push_back(i);
  }
  return found;
}

bool grows_in_its_tubes(Grade grade) {
  return grade == Grade::axonotmesis || grade == Grade::sunderland_2 ||
         grade == Grade::sunderland_3;
}

bool is_divided(Grade grade) {
  return grade == Grade::neurotmesis || grade == Grade::sunderland_4 ||
         grade == Grade::sunderland_5;
}

// Examined at M1 or better, or with units on EMG. Where the case has a variant of supply, what
// moves well may owe it to that.
bool moves(std::size_t muscle, const Situation& now) {
  std::string why;
  const DonorState state = now.donor(muscle, why);
  const bool examined = state == DonorState::strong || state == DonorState::weak;
  return now.muscle_recovers_in_part(muscle) || (examined && now.patient().variants.empty());
}

Found recovers(std::size_t injury, const std::vector<std::size_t>& below, const Situation& now) {
  const Extent extent = now.injuries()[injury].extent;
  const Grade grade = now.patient().injuries[injury].grade;
  // Its axons are whole and recover by themselves.
  if (extent == Extent::conduction_block) return Found::fails;
  const bool some_move =
      std::ranges::any_of(below, [&](std::size_t muscle) { return moves(muscle, now); });
  if (extent == Extent::partial || some_move || grows_in_its_tubes(grade)) return Found::holds;
  return is_divided(grade) ? Found::fails : Found::unknown;
}

Found repaired(std::size_t injury, const Situation& now) {
  const casefile::Injury& given = now.patient().injuries[injury];
  if (recovery::operation_on(now.patient(), given).repaired) return Found::holds;
  // What is not divided is not repaired.
  const bool whole =
      now.injuries()[injury].extent != Extent::complete || grows_in_its_tubes(given.grade);
  return whole ? Found::fails : Found::unknown;
}

}  // namespace

SuperchargedFor supercharged_for(std::string_view transfer, const std::vector<std::size_t>& below,
                                 const evidence::DataPackage& package, const Situation& now) {
  SuperchargedFor answer;
  std::string high;     // why the lesion is none of those
  std::string missing;  // what the case lacks
  for (const Row row : package.table("transfer_supercharged")) {
    if (row.text("transfer") != transfer) continue;
    const auto injuries = injuries_above(row, now);
    const std::size_t muscle = *now.anatomy().find_muscle(row.text("above"));
    if (injuries.empty()) {
      high = fmt::format("published for a lesion of the {} above the branch to {}",
                         row.text("nerve"), now.muscle_name(muscle));
      continue;
    }
    const bool by_repair = row.text("needs") == "repaired";
    for (const std::size_t injury : injuries) {
      const Found found = by_repair ? repaired(injury, now) : recovers(injury, below, now);
      if (found == Found::unknown) {
        answer.found = answer.found == Found::holds ? Found::holds : Found::unknown;
        missing = by_repair ? fmt::format("no repair of the {} is done or planned in this case",
                                          row.text("nerve"))
                            : std::string("whether axons may still come is not known");
      }
      if (found != Found::holds) continue;
      if (answer.found != Found::holds) answer.words.clear();
      answer.found = Found::holds;
      answer.words += fmt::format("{}{}", answer.words.empty() ? "published for " : "; and for ",
                                  row.text("words"));
      answer.said.push_back(
          fmt::format("{}: {}; {}", row.text("study"), row.text("found"), row.text("reason")));
      answer.sources.emplace_back(row.text("id"));
      break;
    }
  }
  if (answer.found == Found::unknown) {
    answer.words = fmt::format(
        "asked for: a recipient through which axons may still come, by an incomplete lesion, signs "
        "of recovery or a repair; {}",
        missing);
  }
  if (answer.found == Found::fails) {
    answer.words = !high.empty() ? high
                                 : "published for a nerve that may still recover or is repaired, "
                                   "and that does not recover by itself";
  }
  return answer;
}

}  // namespace endplate::transfer
