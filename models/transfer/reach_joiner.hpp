#pragma once
// Judged transfers with their reach: the one judgement behind `transfer` and `plan`.
#include "models/recovery/parameters.hpp"
#include "models/transfer/judge.hpp"
#include "models/transfer/reach.hpp"

namespace endplate::transfer {

// The pair of a candidate's donors and recipients that meets best. Of coupled donors the pair that
// meets worst, since all of them are done.
struct Joined {
  std::string donor;  // standard terms
  std::string recipient;
  Reach reach;
  bool shortened_by_injury = false;  // less of the recipient can be split out than was printed
};

struct TransferCandidate {
  Candidate judged;                          // verdict and reasons with the reach
  std::optional<Joined> joined;              // nerve transfers
  std::optional<Summary> axons_arrive_days;  // at the nearest target, from the injury
};

struct TransferGroup {
  std::string function;
  std::string region;
  bool priority = false;
  std::vector<TransferCandidate> candidates;
};

// Of the injury that lies longest back.
std::optional<double> days_since_injury(const casefile::Case& patient, casefile::Date today);

class ReachJoiner {
 public:
  // All must outlive it. `days`: since the injury, on the day of the operation.
  ReachJoiner(const evidence::DataPackage& package, const Situation& now, const ReachModel& model,
              const recovery::Parameters& parameters, std::optional<double> days)
      : package_(package),
        now_(now),
        tree_(now.anatomy().tree()),
        model_(model),
        parameters_(parameters),
        days_(days) {}

  // Reckons the reach of a nerve transfer and lets it speak in the verdict: one that would need a
  // graft is marginal at best, one that a graft would be too long for is not feasible.
  Expected<TransferCandidate> join(Candidate judged) const;

  std::optional<double> days() const { return days_; }

 private:
  Expected<Joined> pair(const std::string& donor, const std::string& recipient,
                        const Candidate& of) const;
  void speak(TransferCandidate& candidate) const;

  const evidence::DataPackage& package_;
  const Situation& now_;
  const anatomy::NerveTree& tree_;
  const ReachModel& model_;
  const recovery::Parameters& parameters_;
  std::optional<double> days_;
};

struct JudgedTransfers {
  std::vector<TransferGroup> groups;
  std::vector<Candidate> rejected;
};

// judge() and the reach of each candidate, ranked again with it.
Expected<JudgedTransfers> judge_with_reach(const Situation& now,
                                           const evidence::DataPackage& package,
                                           const ReachJoiner& joiner);

}  // namespace endplate::transfer
