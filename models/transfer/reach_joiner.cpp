#include "models/transfer/reach_joiner.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <map>

#include "models/recovery/decision.hpp"
#include "models/transfer/axon_arrival.hpp"
#include "models/transfer/splits.hpp"

namespace endplate::transfer {
namespace {

int rank_of(const Reach& reach) {
  switch (reach.state) {
    case ReachState::reaches:
      return 0;
    case ReachState::with_graft:
      return 1;
    case ReachState::does_not_reach:
      return 2;
    case ReachState::not_computable:
      break;
  }
  return 3;
}

// The one that leaves more slack first.
bool meets_better(const Reach& a, const Reach& b) {
  if (rank_of(a) != rank_of(b)) return rank_of(a) < rank_of(b);
  return a.slack_mm && b.slack_mm && a.slack_mm->p50 > b.slack_mm->p50;
}

// Keeps the one that meets better, or worse.
void keep(std::optional<Joined>& kept, Joined joined, bool better) {
  const bool take = !kept || (better ? meets_better(joined.reach, kept->reach)
                                     : meets_better(kept->reach, joined.reach));
  if (take) kept = std::move(joined);
}

}  // namespace

std::optional<double> days_since_injury(const casefile::Case& patient, casefile::Date today) {
  std::optional<double> days;
  for (const casefile::Injury& injury : patient.injuries) {
    if (!injury.date) continue;
    const double since = recovery::days_between(*injury.date, today);
    days = std::max(days.value_or(since), since);
  }
  return days;
}

Expected<TransferCandidate> ReachJoiner::join(Candidate judged) const {
  TransferCandidate candidate{std::move(judged), {}, {}};
  if (candidate.judged.way != Way::nerve) return candidate;
  const Candidate& of = candidate.judged;
  const bool coupled = of.together != Together::one;
  for (const std::string& recipient : of.recipient_nodes) {
    std::optional<Joined> here;
    for (const std::string& donor : of.donor_nodes) {
      auto joined = pair(donor, recipient, of);
      if (!joined) return std::unexpected(joined.error());
      // Both branches of one nerve go to one recipient; else any donor will do.
      const bool all = of.together == Together::all && of.recipient_nodes.size() == 1;
      keep(here, std::move(*joined), !all);
    }
    if (here) keep(candidate.joined, std::move(*here), !coupled);
  }
  if (candidate.joined) speak(candidate);
  return candidate;
}

Expected<Joined> ReachJoiner::pair(const std::string& donor, const std::string& recipient,
                                   const Candidate& of) const {
  const auto from = tree_.find(donor);
  const auto to = tree_.find(recipient);
  Joined joined{donor, recipient, {}, false};
  if (!from || !to) {
    joined.reach.why = fmt::format("{} is not in the nerve tree", from ? recipient : donor);
    return joined;
  }
  ReachQuestion question;
  question.donor = *from;
  question.recipient = *to;
  question.donor_split =
      below_injuries(donor_split(package_, donor), *from, tree_, now_.lengths(), now_.injuries());
  question.donor_followed = donor_followed(package_, donor);
  const SplitOut printed = recipient_split(package_, recipient);
  question.recipient_split = below_injuries(printed, *to, tree_, now_.lengths(), now_.injuries());
  joined.shortened_by_injury = question.recipient_split.length_mm < printed.length_mm;
  if (of.coaptation == Coaptation::end_to_side) question.junction = Junction::to_donor_side;
  if (of.coaptation == Coaptation::supercharged) question.junction = Junction::to_recipient_side;
  for (const SewnBeyond& beyond : of.sewn_beyond) {
    if (beyond.recipient != recipient) continue;
    for (const std::string& name : beyond.targets) question.targets.push_back(*tree_.find(name));
    for (const std::string& name : beyond.spared) question.spared.push_back(*tree_.find(name));
  }
  auto reach = model_.reach(question);
  if (!reach) return std::unexpected(reach.error());
  joined.reach = std::move(*reach);
  return joined;
}

void ReachJoiner::speak(TransferCandidate& candidate) const {
  Candidate& judged = candidate.judged;
  const Reach& reach = candidate.joined->reach;
  switch (reach.state) {
    case ReachState::reaches:
      judged.reasons.push_back(
          fmt::format("reaches without a graft in {:.0f} of 100 limbs", 100.0 * reach.chance));
      break;
    case ReachState::with_graft:
      judged.reasons.push_back(
          fmt::format("a graft of {:.0f} mm ({:.0f} to {:.0f}) would be needed",
                      reach.graft_mm->p50, reach.graft_mm->p05, reach.graft_mm->p95));
      if (judged.verdict == Verdict::feasible) judged.verdict = Verdict::marginal;
      judged.through_graft = true;
      break;
    case ReachState::does_not_reach:
      // Others have sewn it directly, and the model errs (docs/transfer-reach.md): it turns down
      // only what an injury has made shorter, whatever an examination would still show.
      if (!judged.published || candidate.joined->shortened_by_injury || judged.through_graft) {
        judged.reasons.emplace_back("does not reach, and the graft would be too long");
        judged.verdict = Verdict::not_feasible;
        break;
      }
      judged.reasons.push_back(fmt::format(
          "on the model {:.0f} mm are missing, though it was published without a graft: measure "
          "before you cut",
          -reach.slack_mm->p50));
      if (judged.verdict == Verdict::feasible) judged.verdict = Verdict::marginal;
      judged.through_graft = true;
      break;
    case ReachState::not_computable:
      judged.reasons.push_back("reach not computable: " + reach.why);
      return;
  }
  judged.distance_mm = reach.to_nearest_mm.p50;
  judged.distance_from = "reach";
  const auto recipient = tree_.find(candidate.joined->recipient);
  candidate.axons_arrive_days =
      axon_arrival_days(parameters_, tree_, *recipient, reach.to_nearest_mm,
                        reach.state == ReachState::reaches ? 1 : 2, days_.value_or(0.0));
}

Expected<JudgedTransfers> judge_with_reach(const Situation& now,
                                           const evidence::DataPackage& package,
                                           const ReachJoiner& joiner) {
  Judgement judgement = judge(now, package, {joiner.days()});
  JudgedTransfers answer;
  answer.rejected = std::move(judgement.rejected);
  std::vector<Candidate*> all;
  for (Group& group : judgement.groups) {
    for (Candidate& candidate : group.candidates) all.push_back(&candidate);
  }
  std::vector<std::optional<Expected<TransferCandidate>>> reached(all.size());
  tbb::parallel_for(std::size_t{0}, all.size(),
                    [&](std::size_t k) { reached[k] = joiner.join(std::move(*all[k])); });
  std::size_t next = 0;
  for (Group& group : judgement.groups) {
    TransferGroup joined{group.function, group.region, group.priority, {}};
    std::map<std::string, TransferCandidate> by_id;
    for (Candidate& candidate : group.candidates) {
      Expected<TransferCandidate>& one = *reached[next++];
      if (!one) return std::unexpected(one.error());
      candidate = one->judged;
      by_id.emplace(candidate.id, std::move(*one));
    }
    rank(group);
    for (const Candidate& candidate : group.candidates) {
      TransferCandidate one = std::move(by_id.at(candidate.id));
      one.judged = candidate;
      joined.candidates.push_back(std::move(one));
    }
    answer.groups.push_back(std::move(joined));
  }
  return answer;
}

}  // namespace endplate::transfer
