#pragma once
// Is a nerve on course? The states, their chances, and the one that is called.
#include <span>
#include <string>

#include "models/followup/growth.hpp"
#include "models/followup/parameters.hpp"
#include "models/recovery/decision.hpp"

namespace endplate::followup {

// Chances that sum to 1. Growth is late below the slow rate and ahead above the fast one. A
// conduction block has no front: it is on course, for its time is weighed by what has come back.
struct ProgressChances {
  double ahead = 0.0;
  double on_course = 0.0;
  double late = 0.0;
  double no_advance = 0.0;  // nothing grows
};
ProgressChances progress_chances(std::span<const Growth> patients, std::span<const double> weights,
                                 const FollowupParameters& parameters);

// What there is to judge by.
struct Basis {
  double chance_no_growth_before = 0.0;  // that nothing grows, before anything was seen
  bool tappable = true;                  // skin fibres run in the nerve beyond the lesion
  bool anything_seen = false;            // a muscle, EMG, sensation or a point, on a known date
  bool misfit = false;                   // the findings fit no course
  double last_days = 0.0;        // the last finding that says anything, from injury or repair
  int visits = 0;                // with a Tinel point that was used
  double span_days = 0.0;        // between the first and the last of them
  bool telling_finding = false;  // a muscle or area that answers, or does not although it is due
};

struct Call {
  recovery::Progress progress = recovery::Progress::cannot_tell_yet;
  std::string why;  // of "cannot tell yet", "not informative" and an unlikely "no advance"
};
// `no advance` is also called while growth is the likelier, once what was seen has raised the odds
// of nothing growing enough (call_evidence).
Call call(const ProgressChances& chances, const Basis& basis, const FollowupParameters& parameters);

}  // namespace endplate::followup
