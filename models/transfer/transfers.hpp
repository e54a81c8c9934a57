#pragma once
// The question of the transfer command: for what this case has lost, which published transfers have
// a donor that works and an end that it reaches, and which of them can be done together.
#include <cstdint>

#include "models/transfer/combination.hpp"
#include "models/transfer/reach_joiner.hpp"

namespace endplate::transfer {

struct TransferAnswer {
  std::vector<TransferGroup> groups;
  std::vector<Candidate> rejected;
  // Only on request, and never in a combination: pairs that meet, of which nobody has published a
  // series. The one with most spare length first.
  std::vector<TransferCandidate> unpublished;
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
  bool unpublished = false;  // ask for them
};

// Fault::input as CaseLimb::from and Situation::of have it.
Expected<TransferAnswer> transfers(const casefile::Case& patient,
                                   const evidence::DataPackage& package,
                                   const TransferOptions& options);

}  // namespace endplate::transfer
