#pragma once
// Which nerve and tendon transfers can be done together: the best set drawn from one list of
// donors. What is best is an order, never a score:
//   1. tier by tier: as many of its wanted functions as possible, and then, among the options that
//      serve it, as few as possible of the worst rank that the caller gives, then of the next
//      worst, and so on above rank 1;
//   2. in the same order of tiers, as few options of rank 1;
//   3. fewer donors used;
//   4. of sets equal in all this, the one that holds the first option in which they differ, by the
//      caller's place and then by id (bytes).
// Each donor is used once, each place receives once, forbidden pairs are never both chosen, and
// every balance rule keeps what it keeps. The optimum is exact (zero_one.hpp).
#include <string>
#include <vector>

#include "models/core/error.hpp"

namespace endplate::transfer {

enum class OperationKind { nerve, tendon };

// How often an option serves a target: a double transfer to the elbow flexors serves it twice.
struct Service {
  std::string target;
  int transfers = 1;
};

struct CombinationOption {
  std::string id;
  OperationKind kind = OperationKind::nerve;
  // Donors that are gone when it is done: muscles by id, branches by node, areas of skin. Who
  // spends the branch of a muscle spends the muscle as well and names both; a fascicle out of a
  // nerve that goes on working is a node only. `FDS/ring` is a part of `FDS`: who spends the whole
  // spends each part, and two parts are two donors.
  std::vector<std::string> spends;
  // Donors that are used but go on doing their own work: a tendon joined side to side, a nerve that
  // is joined by its side. They cannot be used twice, yet no balance rule counts them as spent.
  std::vector<std::string> shares;
  std::vector<std::string> receives;  // branches or tendons that are joined to the donor
  std::vector<Service> serves;
  int rank = 1;                      // the caller's order among alternatives; 1 is the best
  int place = 1;                     // and among those of one rank, for ties alone
  bool cuts_working_fibres = false;  // this variant would; carried to the answer
};

// Two options that must not both be chosen. An id that no option has is no fault: tables name all.
struct ForbiddenPair {
  std::string id, a, b, reason, source, provenance;
};

// Of these donors at least `keep` that are strong now stay unspent. Where the injury has left fewer
// than that, none of the strong ones may be spent.
struct BalanceRule {
  std::string id;
  std::vector<std::string> donors;
  int keep = 1;
  std::string reason, source, provenance;
};

// A target is met when the chosen options serve it that often.
struct Demand {
  std::string target;
  int transfers = 1;
  int tier = 1;                         // 1 is served first; demands of one tier count alike
  std::string row, source, provenance;  // of transfer_priorities.csv; empty: the case asks for it
};

struct CombinationTask {
  std::vector<CombinationOption> options;
  std::vector<Demand> demands;
  std::vector<ForbiddenPair> forbidden;
  std::vector<BalanceRule> rules;
  std::vector<std::string> strong_now;  // donors; what is not named was not shown to be strong
};

struct ChosenOption {
  std::string id;
  OperationKind kind = OperationKind::nerve;
  std::vector<std::string> serves;  // those of its targets that are asked for, by tier
  bool cuts_working_fibres = false;
};

// Why an option was left out; where several hold, the first of this list.
enum class LeftOutBy {
  serves_nothing_asked,  // none of its targets is in the demands
  rule_alone,            // `cause`: a rule that it breaks even by itself
  donor_used,            // `cause`: a donor that a chosen option uses
  place_taken,           // `cause`: a place that a chosen option joins
  forbidden_pair,        // `cause`: the pair
  rule,                  // `cause`: a rule that it would break beside the chosen ones
  already_served,        // `cause`: its first target, which has all it needs without it
  falls_short            // `cause`: its first target that stays without, even with it
};

struct LeftOut {
  std::string id;
  LeftOutBy by = LeftOutBy::already_served;
  std::string cause;
  std::vector<std::string> beside;  // the chosen options that stand in its way
};

struct DemandAnswer {
  Demand demand;
  bool met = false;
  std::vector<std::string> by;        // chosen options that serve the target
  std::vector<std::string> left_out;  // options that serve it and were not chosen
};

struct BalanceAnswer {
  std::string rule;
  std::vector<std::string> strong_left;  // strong now and unspent
  bool short_before = false;             // the injury itself leaves fewer than the rule keeps
};

struct Combination {
  std::vector<ChosenOption> chosen;   // by the first tier that each serves, then by id
  std::vector<LeftOut> left_out;      // by id
  std::vector<DemandAnswer> demands;  // by tier, then in the order given
  std::vector<BalanceAnswer> rules;   // in the order given
};

// Error: `internal` where the task contradicts itself (an id twice, a count below its least value)
// or the solver fails. The empty set is always allowed, so there is always an answer.
Expected<Combination> combine(const CombinationTask& task);

}  // namespace endplate::transfer
