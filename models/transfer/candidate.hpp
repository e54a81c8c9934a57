#pragma once
// One published way of a nerve, tendon or muscle transfer, judged for one case, as plain data.
// Lengths mm, times days, shares and ratios fractions.
#include <optional>
#include <string>
#include <vector>

#include "models/transfer/donor_state.hpp"
#include "models/transfer/published.hpp"

namespace endplate::transfer {

enum class Way { nerve, tendon };
// End-to-side leaves the donor whole. A supercharged transfer cuts the donor, as end-to-end does,
// and leaves the recipient whole.
enum class Coaptation { end_to_end, end_to_side, supercharged, none };
// Which of several donor nodes are cut.
enum class Together { one, one_of_each_nerve, all };
enum class Synergy { synergist, neutral, antagonist, not_known };
enum class Verdict { feasible, marginal, not_feasible, not_judged };
// Why a way is no candidate here. The first that holds, in this order.
enum class Rejection {
  not_lost,           // what it restores is not lost, or not wholly
  other_lesion,       // published for another lesion or palsy
  cuts_working,       // a muscle that works would be cut with the recipient
  recipient_injured,  // the injury lies where it would be sewn, or beyond
  trunk,              // a whole trunk would be cut
  unavailable,        // the case says so
  donor_dead,
  donor_weak,
  contraindicated,  // what must hold beside the donor does not
  not_shown         // it was not examined, and without it the transfer is never offered
};

std::string_view to_string(Way way);
std::string_view to_string(Coaptation coaptation);
std::string_view to_string(Synergy synergy);
std::string_view to_string(Verdict verdict);

// What hangs on a donor where it is cut. Nothing for a donor that is sewn to by its side.
struct Cut {
  std::string node;                  // standard term
  std::string nerve;                 // from which it leaves; empty at the top of the tree
  std::vector<std::string> muscles;  // all that lose their nerve wholly
  std::vector<std::string> in_part;  // muscles that keep another branch
  std::vector<std::string> areas;    // of skin
};

// Myelinated axons of the donor to those of the recipient, for show.
struct AxonRatio {
  double ratio = 0.0;
  std::optional<double> low, high;  // what it spreads over, as `words` say
  bool one_study = false;           // both counts; else they are of different people and methods
  std::string words;
  std::vector<std::string> rows;  // of axon_counts
};

// Something that must hold beside the donor itself.
struct Condition {
  enum class Found { holds, fails, unknown } found = Found::unknown;
  bool absolute = true;  // a relative one that fails makes the verdict marginal
  bool ask = true;       // unknown leaves the verdict open; else it is only said
  bool refuse = false;   // unknown is refused until it is shown
  std::string words;
};

// A recipient of which some muscles still work, sewn beyond their branches.
struct SewnBeyond {
  std::string recipient;             // standard terms
  std::vector<std::string> targets;  // branches to lost muscles beyond
  std::vector<std::string> spared;   // branches of the recipient that are not cut
  std::vector<std::string> working;  // muscles, as they are shown
};

struct Candidate {
  std::string id;  // of transfers.csv or tendon_transfers.csv
  Way way = Way::nerve;
  bool published = true;
  std::string function;          // as transfers.csv names it
  std::string donor, recipient;  // in words
  std::string what;              // donor and recipient in few words
  std::vector<std::string> donor_nodes, recipient_nodes;
  Together together = Together::one;
  std::vector<SewnBeyond> sewn_beyond;     // of those recipient nodes of which some muscle works
  std::vector<std::string> donor_muscles;  // keys; all that must be strong
  // What is gone as a donor when it is done, and what goes on doing its own work: keys of muscles,
  // or of the superficialis of one finger ("FDS/ring"). Nerve transfers: donor_muscles.
  std::vector<std::string> spends, shares;
  std::vector<std::string> targets;      // lost, as they are shown
  std::vector<std::string> target_keys;  // muscle keys, or areas
  bool skin = false;
  Coaptation coaptation = Coaptation::none;
  bool through_graft = false;
  std::vector<Cut> cuts;  // one for each donor node

  DonorState donor_state = DonorState::not_judged;
  std::vector<std::string> donor_reasons;  // what is missing stands first
  std::vector<Condition> conditions;
  Synergy synergy = Synergy::not_known;
  std::string synergy_words;  // how readily it is relearned
  std::string donor_cost;
  std::vector<std::string> also_spends;  // tendon options for what this case lacks
  std::optional<AxonRatio> axon_ratio;
  std::vector<PublishedResult> results;
  std::string result_words;         // a result that is no share
  std::vector<std::string> timing;  // delay and age
  std::vector<std::string> doubts;  // each makes the verdict marginal
  std::vector<std::string> said;    // needs, contraindications and conflicts of the table
  std::optional<double> longest_delay_months;  // in the series; never a filter
  bool better_exists = false;                  // the table names a better donor for the same end
  // From the coaptation to the muscle or skin: of the row, until a reach gives that of the limb.
  std::optional<double> distance_mm;
  std::string distance_from;  // "row"

  Verdict verdict = Verdict::not_judged;
  std::optional<Rejection> rejection;
  std::string rejected_because;  // one reason
  std::string beaten_by;         // id; empty on the front
  std::vector<std::string> reasons;
  std::vector<std::string> examine_first;  // of reasons; while the verdict is not judged
  std::vector<std::string> sources;        // ids of rows
  std::string study;
  std::string provenance;
};

}  // namespace endplate::transfer
