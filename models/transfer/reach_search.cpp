#include "models/transfer/reach_search.hpp"

#include <algorithm>

namespace endplate::transfer {

double slack_mm(const FreedEnd& donor, const FreedEnd& recipient, double gap_mm) {
  return (donor.most_cut_mm - donor.pivot_mm) + (recipient.pivot_mm - recipient.least_cut_mm) -
         gap_mm;
}

std::optional<Cuts> best_cuts(const FreedEnd& donor, const FreedEnd& recipient, double gap_mm) {
  const double slack = slack_mm(donor, recipient, gap_mm);
  if (slack < 0.0) return std::nullopt;
  // What is left over lets the recipient be cut as much further distally; what that cannot use up
  // shortens the donor.
  const double recipient_mm = std::min(recipient.least_cut_mm + slack, recipient.most_cut_mm);
  const double unused_mm = slack - (recipient_mm - recipient.least_cut_mm);
  return Cuts{std::max(donor.most_cut_mm - unused_mm, donor.least_cut_mm), recipient_mm};
}

}  // namespace endplate::transfer
