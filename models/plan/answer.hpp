#pragma once
// The options for one case side by side, as plain data. Times are days from the injury, lengths mm,
// chances fractions.
#include <optional>
#include <string>
#include <vector>

#include "models/recovery/recover.hpp"
#include "models/transfer/candidate.hpp"

namespace endplate::plan {

enum class OptionState {
  open,        // may be done now, or is what the decision says
  later,       // kept until something else has failed or was found
  not_judged,  // a donor or a condition was not examined: never feasible until it is
  unlikely,    // late, or with little chance: not for a muscle
  closed       // not an option here
};
std::string_view to_string(OptionState state);

using transfer::DonorState;
using transfer::to_string;

using transfer::PublishedResult;

// The chance of models/recovery, kept apart from what was published.
struct ModelChance {
  std::string scale;  // "M3" or "S3"
  double chance = 0.0;
  std::string of;
};

struct FirstMovement {
  Summary days;
  std::string of;  // whose, and how it was reckoned
};

// One published way of a transfer, as models/transfer judges it with its reach.
struct Candidate {
  std::string id;  // of transfers.csv or tendon_transfers.csv
  std::string donor;
  std::string recipient;
  DonorState donor_state = DonorState::not_judged;
  transfer::Verdict verdict = transfer::Verdict::not_judged;
  // What must be examined first, where the verdict waits for it.
  std::vector<std::string> examine_first;
  std::string reach;  // "reaches", ...; empty for tendons and muscles
  std::vector<PublishedResult> published;
  std::string published_words;
  std::optional<ModelChance> model_chance;
  std::optional<FirstMovement> first_movement;
  std::string donor_cost;
  std::vector<std::string> also_spends;
  bool better_exists = false;  // the table names a better donor for the same end
  std::vector<std::string> reasons;
  std::string provenance;
};

struct GraftDonor {
  std::string nerve;
  double length_low_mm = 0.0;  // of one, on one side
  double length_high_mm = 0.0;
  int cables_low = 0;
  int cables_high = 0;
  std::string covers;  // "one leg", "both legs", ...; in words, with the gap that is known
  std::string cost;
};

struct GraftNeed {
  std::string nerve;
  std::optional<double> gap_mm;
  std::string gap_words;  // the joint position in which it was given, or that it is not known
  int cables_low = 0;     // of sural nerve
  int cables_high = 0;
  std::string cables_words;
  std::optional<double> needed_low_mm, needed_high_mm;
  double needed_for_10_mm = 0.0;  // of sural nerve, at the most, for each 10 mm of gap
  std::vector<GraftDonor> donors;
  std::vector<std::string> unavailable;
  std::vector<std::string> notes;
};

struct Option {
  std::string kind;  // of plan_options.csv: "cable graft"
  std::string name;  // "nerve transfer: elbow flexion"
  bool first = false;
  OptionState state = OptionState::open;
  std::string state_words;
  std::string entry_condition;
  std::vector<std::string> targets;
  std::vector<PublishedResult> published;  // the one with most patients and a count first
  std::optional<ModelChance> model_chance;
  std::optional<FirstMovement> first_movement;
  std::string donor_cost;
  std::vector<std::string> spends;
  std::vector<std::string> finds;
  std::vector<std::string> reasons;
  std::vector<Candidate> candidates;
  std::vector<GraftNeed> grafts;
  std::string comparable_group;
  std::string comparable_words;
  std::string provenance;  // of its entry condition
  std::string source;
  std::vector<std::string> sources;  // rows of the tables
};

struct Rejected {
  std::string id;
  std::string what;  // donor and recipient in words
  std::string reason;
  bool donor_dead = false;  // this injury takes the donor away, as it does many
};

// One input that would change the next step.
struct WhatIf {
  std::string input;
  std::string value;
  std::string becomes;
  std::string rule;
};

struct PlanAnswer {
  recovery::RecoveryAnswer recovery;  // of the case as it stands: decision, lesions, assumptions
  std::string not_run;                // why no chance is given; empty when the model ran
  std::vector<Option> options;        // the first step, then the order of the trade
  std::vector<Rejected> rejected;
  std::vector<WhatIf> what_if;
  std::vector<std::string> not_ranked;  // which groups must not be compared, and why
  std::vector<std::string> assumptions;
  std::vector<std::string> sources;
};

}  // namespace endplate::plan
