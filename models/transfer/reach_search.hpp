#pragma once
// Where to cut a donor and a recipient so that they meet without tension.
//
// Arc lengths in mm from each branch's own origin, distal positive; negative where it is split out
// of its parent. A freed end swings about its pivot, the place where it stays tethered: the donor
// gives what lies between pivot and cut, the recipient what lies between cut and pivot, and both
// together must span the gap, the straight line between the two pivots.
//
// The pivots are the farthest ones that the branches allow. Nearer ones never reach where these do
// not: to free d mm more lengthens the end by d and moves its pivot by at most d.
#include <optional>

namespace endplate::transfer {

// The donor's pivot lies at or proximal to its cuts, the recipient's at or distal to them.
// least_cut_mm <= most_cut_mm.
struct FreedEnd {
  double pivot_mm = 0.0;
  double least_cut_mm = 0.0;
  double most_cut_mm = 0.0;
};

struct Cuts {
  double donor_mm = 0.0;
  double recipient_mm = 0.0;
};

// What is left over, with both ends as long as they can be; negative: what is missing.
double slack_mm(const FreedEnd& donor, const FreedEnd& recipient, double gap_mm);

// Of the cuts with which the ends meet: the most distal one of the recipient, which leaves the
// axons the shortest way; with it the shortest donor. Nothing where the ends do not meet.
std::optional<Cuts> best_cuts(const FreedEnd& donor, const FreedEnd& recipient, double gap_mm);

}  // namespace endplate::transfer
