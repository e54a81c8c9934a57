#include "models/transfer/transfers.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "models/recovery/decision.hpp"
#include "models/transfer/axon_arrival.hpp"
#include "models/transfer/combination_task.hpp"
#include "models/transfer/splits.hpp"

namespace endplate::transfer {
namespace {

// The spread of branch points needs no more limbs than this.
constexpr int kMostLimbs = 400;

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

class Joiner {
 public:
  Joiner(const evidence::DataPackage& package, const Situation& now,
         const anatomy::NerveMetrics& metrics, const ReachModel& model,
         const recovery::Parameters& parameters, double days)
      : package_(package),
        now_(now),
        metrics_(metrics),
        tree_(now.anatomy().tree()),
        model_(model),
        parameters_(parameters),
        days_(days) {}

  // Reckons the reach of a nerve transfer and lets it speak in the verdict.
  Expected<TransferCandidate> join(Candidate judged) const {
    TransferCandidate candidate{std::move(judged), {}, {}};
    if (candidate.judged.way != Way::nerve) return candidate;
    const Candidate& of = candidate.judged;
    const bool coupled = of.together != Together::one;
    for (const std::string& recipient : of.recipient_nodes) {
      std::optional<Joined> here;
      for (const std::string& donor : of.donor_nodes) {
        auto joined = pair(donor, recipient, of.coaptation);
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

 private:
  // Keeps the one that meets better, or worse.
  static void keep(std::optional<Joined>& kept, Joined joined, bool better) {
    const bool take = !kept || (better ? meets_better(joined.reach, kept->reach)
                                       : meets_better(kept->reach, joined.reach));
    if (take) kept = std::move(joined);
  }

  Expected<Joined> pair(const std::string& donor, const std::string& recipient,
                        Coaptation coaptation) const {
    const auto from = tree_.find(donor);
    const auto to = tree_.find(recipient);
    Joined joined{donor, recipient, {}};
    if (!from || !to) {
      joined.reach.why = fmt::format("{} is not in the nerve tree", from ? recipient : donor);
      return joined;
    }
    ReachQuestion question;
    question.donor = *from;
    question.recipient = *to;
    question.donor_split =
        below_injuries(donor_split(package_, donor), *from, tree_, metrics_, now_.injuries());
    question.donor_followed = donor_followed(package_, donor);
    question.recipient_split =
        below_injuries(recipient_split(package_, recipient), *to, tree_, metrics_, now_.injuries());
    if (coaptation == Coaptation::end_to_side) question.junction = Junction::to_donor_side;
    if (coaptation == Coaptation::supercharged) question.junction = Junction::to_recipient_side;
    auto reach = model_.reach(question);
    if (!reach) return std::unexpected(reach.error());
    joined.reach = std::move(*reach);
    return joined;
  }

  void speak(TransferCandidate& candidate) const {
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
        judged.reasons.emplace_back("does not reach, and the graft would be too long");
        // Whatever an examination would still show.
        judged.verdict = Verdict::not_feasible;
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
                          reach.state == ReachState::reaches ? 1 : 2, days_);
  }

  const evidence::DataPackage& package_;
  const Situation& now_;
  const anatomy::NerveMetrics& metrics_;
  const anatomy::NerveTree& tree_;
  const ReachModel& model_;
  const recovery::Parameters& parameters_;
  double days_ = 0.0;
};

std::optional<double> days_since_injury(const casefile::Case& patient, casefile::Date today) {
  std::optional<double> days;
  for (const casefile::Injury& injury : patient.injuries) {
    if (!injury.date) continue;
    const double since = recovery::days_between(*injury.date, today);
    days = std::max(days.value_or(since), since);
  }
  return days;
}

bool is_no_adult_trauma(const casefile::Case& patient) {
  using casefile::Mechanism;
  return std::ranges::any_of(patient.injuries, [](const casefile::Injury& injury) {
    return injury.mechanism == Mechanism::birth || injury.mechanism == Mechanism::inflammatory ||
           injury.mechanism == Mechanism::compression;
  });
}

void collect_sources(TransferAnswer& answer) {
  std::set<std::string> sources;
  for (const TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      sources.insert(candidate.judged.sources.begin(), candidate.judged.sources.end());
      if (!candidate.joined) continue;
      const auto& rows = candidate.joined->reach.sources;
      sources.insert(rows.begin(), rows.end());
    }
  }
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
  Judgement judgement = judge(*now, package, {answer.days_since_injury});
  answer.rejected = std::move(judgement.rejected);
  const Joiner joiner(package, *now, limb->metrics(), *model, *parameters,
                      answer.days_since_injury.value_or(0.0));
  for (Group& group : judgement.groups) {
    TransferGroup joined{group.function, group.region, group.priority, {}};
    std::map<std::string, TransferCandidate> by_id;
    for (Candidate& candidate : group.candidates) {
      auto one = joiner.join(std::move(candidate));
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
  for (const auto admitted : {Admitted::shown, Admitted::not_judged_too}) {
    auto best = combine(combination_task(*now, package, judgement.groups, admitted));
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
