#pragma once
// When axons that are led into a nerve come to its nearest target.
#include "models/anatomy/nerve_tree.hpp"
#include "models/core/summary.hpp"
#include "models/recovery/parameters.hpp"

namespace endplate::transfer {

// From the injury, for an operation `operation_days` after it with one coaptation, or two of a
// graft; in closed form (recovery::ArrivalLaw), with the spread of the way added to that of the
// rate. The rate is that of the first of `recipient` and its parents for which one is known.
Summary axon_arrival_days(const recovery::Parameters& parameters, const anatomy::NerveTree& tree,
                          anatomy::NodeIndex recipient, const Summary& way_mm, int coaptations,
                          double operation_days);

}  // namespace endplate::transfer
