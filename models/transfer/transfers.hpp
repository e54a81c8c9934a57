#pragma once
// The question of the transfer command: for what this case has lost, which published transfers have
// a donor that works and an end that it reaches, and which of them can be done together.
#include <cstdint>

#include "models/transfer/combination.hpp"
#include "models/transfer/judge.hpp"
#include "models/transfer/reach.hpp"

namespace endplate::transfer {

// The pair of a candidate's donors and recipients that meets best. Of coupled donors the pair that
// meets worst, since all of them are done.
struct Joined {
  std::string donor;  // standard terms
  std::string recipient;
  Reach reach;
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

struct TransferAnswer {
  std::vector<TransferGroup> groups;
  std::vector<Candidate> rejected;
  Combination combination;  // of what was shown to work
  Combination if_shown;     // and of donors and conditions that were not examined, if they do
  std::optional<double> days_since_injury;  // what is reckoned as done today
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;
  std::vector<std::string> sources;
};

struct TransferOptions {
  int samples = 1000;  // limbs
  std::uint64_t seed = 1;
  casefile::Date today{};
};

// Fault::input as CaseLimb::from and Situation::of have it.
Expected<TransferAnswer> transfers(const casefile::Case& patient,
                                   const evidence::DataPackage& package,
                                   const TransferOptions& options);

}  // namespace endplate::transfer
