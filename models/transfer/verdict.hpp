#pragma once
// From what was found about a candidate to its verdict and the list of its reasons.
#include "models/transfer/candidate.hpp"

namespace endplate::transfer {

Synergy synergy_of(std::string_view word);
// How readily the new function is relearned (common practice).
std::string relearning(Synergy synergy);

void reject(Candidate& candidate, Rejection rejection, std::string reason);

// Not feasible where rejected; not judged while a donor or a condition that is asked for was not
// examined; marginal where something speaks against it; else feasible. Fills `reasons`.
void give_verdict(Candidate& candidate);

}  // namespace endplate::transfer
