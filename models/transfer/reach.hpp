#pragma once
// Whether a freed donor branch meets a freed recipient branch without tension, in the limb of one
// case: over sampled limbs and over the postoperative range of every joint between them.
//
// The donor is cut between its origin and its end (a motor branch: the entry into the muscle, or as
// far beyond it as dissections followed it) and freed back to its origin, or further up where it is
// split out of its parent. The recipient is cut
// anywhere from its origin, or further up, to where the first branch to a target leaves it, and
// freed distally toward its muscles (recipient_pivots.hpp). Either may be cut and freed in its
// parents as well, as far up as these hold nothing else. What is given in mm holds for the limb of
// the case; ends are not trimmed.
//
// Approximate, and said so among the assumptions: gaps are those of the mean limb at the places
// that the sampled limb's lengths give, grown with its segments (within 4 per cent, tests).
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/pose.hpp"

namespace endplate::transfer {

enum class ReachState {
  reaches,         // without a graft, in at least half of the sampled limbs
  with_graft,      // a graft no longer than kLongestGraft_mm would do in half of them
  does_not_reach,  // it would be longer
  not_computable   // an end of the gap has no place in the model
};

std::string_view to_string(ReachState state);  // "reaches", "with graft", ...

// Beyond this a graft of the median nerve did poorly (graft_figures.csv, worse_median); taken for
// all nerves (assumed).
inline constexpr double kLongestGraft_mm = 70.0;

// Of so many figures of dissections that the limb was not made from, so many lie where computed
// (docs/transfer-reach.md; a test counts them).
inline constexpr int kDissectedFigures = 29;
inline constexpr int kDissectedInside = 20;

// A recipient is sewn where so much of it still stands out of the muscle, if it is that long
// (assumed).
inline constexpr double kStump_mm = 5.0;

// How far a branch can be split out of its parent, as printed for it.
struct SplitOut {
  double length_mm = 0.0;  // >= 0
  std::string row;         // where that is printed; empty where it is not split
};

// An approach that leaves a muscle alone frees the donor no further up than that muscle's border.
struct HeldAt {
  double parent_share = 0.0;  // of the length of the donor's usual parent, 0 to 1
  std::string row;            // where that is printed
};

// A nerve that is opened at its side is not freed: the other one must reach it, where it comes
// nearest to that one's pivot at rest.
enum class Junction {
  end_to_end,
  to_donor_side,     // end-to-side: the recipient's end on a working nerve
  to_recipient_side  // supercharged: the donor's end on a nerve that still has axons
};

struct ReachQuestion {
  anatomy::NodeIndex donor = 0;
  anatomy::NodeIndex recipient = 0;
  Junction junction = Junction::end_to_end;
  SplitOut donor_split = {};
  SplitOut donor_followed = {};  // beyond its entry, into the muscle
  std::optional<HeldAt> donor_held = {};
  SplitOut recipient_split = {};
  std::vector<anatomy::NodeIndex> targets = {};  // ends below the recipient; all when empty
  // Branches of the recipient that must not be cut: it is sewn beyond where they leave it.
  std::vector<anatomy::NodeIndex> spared = {};
};

// A cut, as lengths over the limbs in which the ends meet, and on the limb of the case as a level.
struct CutLevel {
  Summary from_origin_mm;  // of the branch; negative in its parent
  std::string landmark;    // the line from which the level counts; empty round the shoulder girdle
  double distal_mm = 0.0;  // of it along the segment, on the mean limb; negative is proximal
};

// A level on the mean limb.
struct Level {
  std::string landmark;    // the line from which it counts
  double distal_mm = 0.0;  // of it along the segment; negative is proximal
};

struct Reach {
  ReachState state = ReachState::not_computable;
  std::string why;  // not computable

  Summary donor_mm;  // longest freed length, known even where the rest is not computable
  Summary recipient_mm;

  // Absent where not computable, and what follows without meaning.
  std::optional<Summary> slack_mm;  // both ends as long as they can be; negative is missing
  double chance = 0.0;              // of meeting without a graft, 0 to 1
  Summary gap_mm;                   // between the pivots, widest
  // In the anatomical position, near which dissections are measured.
  Summary slack_at_rest_mm;
  double chance_at_rest = 0.0;
  std::vector<std::string> joints_between;
  limb::Pose worst;  // the posture with the widest gap on the mean limb

  // With the cuts that leave the axons the shortest way; absent where no limb reaches.
  std::optional<CutLevel> donor_cut;
  std::optional<CutLevel> recipient_cut;
  // Where the two ends meet in the anatomical position: on the line between the places where they
  // stay tethered, shared between them by their lengths.
  std::optional<Level> sewn_at;
  // From the recipient's cut to the end of its nearest and its farthest target, over all limbs;
  // where a graft is needed its length is part of the way.
  Summary to_nearest_mm;
  Summary to_farthest_mm;
  std::optional<Summary> graft_mm;  // over the limbs that need one

  std::vector<std::string> sources;  // rows behind the places and lengths
  std::vector<std::string> assumptions;
};

class ReachModel {
 public:
  // `tree` must outlive it. samples > 0.
  static Expected<ReachModel> from(const evidence::DataPackage& package,
                                   const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                   int samples, std::uint64_t seed);

  // Fault::input where donor and recipient are the same branch, where a target or what is spared is
  // no branch of the recipient or a length is negative.
  Expected<Reach> reach(const ReachQuestion& question) const;

  // What the mean limb leaves over at rest, mm; the postoperative range only widens the gap. For
  // end-to-end of the nearest target alone: quick, to leave out pairs that lie far apart. Nothing
  // where an end has no place. The branches must not hang on one another.
  std::optional<double> most_slack_mm(anatomy::NodeIndex donor, anatomy::NodeIndex recipient) const;

 private:
  struct Parts;
  std::shared_ptr<const Parts> parts_;
};

}  // namespace endplate::transfer
