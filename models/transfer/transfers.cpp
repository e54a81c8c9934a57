#include "models/transfer/transfers.hpp"

#include <algorithm>
#include <set>

#include "models/transfer/combination_task.hpp"
#include "models/transfer/unpublished.hpp"

namespace endplate::transfer {
namespace {

// The spread of branch points needs no more limbs than this.
constexpr int kMostLimbs = 400;

bool is_no_adult_trauma(const casefile::Case& patient) {
  using casefile::Mechanism;
  return std::ranges::any_of(patient.injuries, [](const casefile::Injury& injury) {
    return injury.mechanism == Mechanism::birth || injury.mechanism == Mechanism::inflammatory ||
           injury.mechanism == Mechanism::compression;
  });
}

std::vector<Group> judged_alone(const std::vector<TransferGroup>& groups) {
  std::vector<Group> alone;
  for (const TransferGroup& group : groups) {
    Group& one = alone.emplace_back(Group{group.function, group.region, group.priority, {}});
    for (const TransferCandidate& candidate : group.candidates) {
      one.candidates.push_back(candidate.judged);
    }
  }
  return alone;
}

void collect_sources(TransferAnswer& answer) {
  std::set<std::string> sources;
  const auto add = [&](const TransferCandidate& candidate) {
    sources.insert(candidate.judged.sources.begin(), candidate.judged.sources.end());
    if (!candidate.joined) return;
    const auto& rows = candidate.joined->reach.sources;
    sources.insert(rows.begin(), rows.end());
  };
  for (const TransferGroup& group : answer.groups) std::ranges::for_each(group.candidates, add);
  std::ranges::for_each(answer.unpublished, add);
  answer.sources.assign(sources.begin(), sources.end());
}

}  // namespace

Expected<TransferAnswer> transfers(const casefile::Case& patient,
                                   const evidence::DataPackage& package,
                                   const TransferOptions& options) {
  const auto anatomy = anatomy::Anatomy::from(package);
  if (!anatomy) return std::unexpected(anatomy.error());
  const auto parameters = recovery::Parameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto limb = limb::CaseLimb::from(package, anatomy->tree(), patient.limb);
  if (!limb) return std::unexpected(limb.error());
  const auto limbs = limb->sample(std::min(options.samples, kMostLimbs), options.seed);
  const auto now = Situation::of(patient, *anatomy, *limb, limbs);
  if (!now) return std::unexpected(now.error());
  const auto model =
      ReachModel::from(package, anatomy->tree(), patient.limb, options.samples, options.seed);
  if (!model) return std::unexpected(model.error());

  TransferAnswer answer;
  answer.days_since_injury = days_since_injury(patient, options.today);
  const ReachJoiner joiner(package, *now, *model, *parameters, answer.days_since_injury);
  auto judged = judge_with_reach(*now, package, joiner);
  if (!judged) return std::unexpected(judged.error());
  answer.groups = std::move(judged->groups);
  answer.rejected = std::move(judged->rejected);
  if (options.unpublished) {
    auto pairs = unpublished(*now, package, *model, joiner);
    if (!pairs) return std::unexpected(pairs.error());
    answer.unpublished = std::move(*pairs);
  }
  const std::vector<Group> groups = judged_alone(answer.groups);
  for (const auto admitted : {Admitted::shown, Admitted::not_judged_too}) {
    auto best = combine(combination_task(*now, package, groups, admitted));
    if (!best) return std::unexpected(best.error());
    (admitted == Admitted::shown ? answer.combination : answer.if_shown) = std::move(*best);
  }
  answer.assumptions = limb->assumptions();
  if (answer.days_since_injury) {
    answer.assumptions.emplace_back("every transfer is reckoned as done today");
  } else {
    answer.assumptions.emplace_back(
        "the date of the injury is not given: days count from the operation");
  }
  answer.warnings = limb->warnings();
  if (is_no_adult_trauma(patient)) {
    answer.warnings.emplace_back(
        "the published results and the days on which axons arrive are those of adults after an "
        "injury; this case is another kind of palsy, for which they are no guide");
  }
  collect_sources(answer);
  return answer;
}

}  // namespace endplate::transfer
