#include "models/transfer/reach.hpp"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <chrono>
#include <cmath>

#include "transfer_fixture.hpp"

namespace endplate::transfer {
namespace {

const ReachQuestion& long_head_to_axillary() {
  static const ReachQuestion question{node("radial branch to long head of triceps"),
                                      node("anterior branch of axillary nerve")};
  return question;
}

bool is_between(const Reach& reach, const std::string& joint) {
  return std::ranges::find(reach.joints_between, joint) != reach.joints_between.end();
}

}  // namespace

TEST_CASE("Freed lengths less the gap are the slack, and its sign the chance", "[transfer]") {
  const Reach reach = reach_of(model_of({}, 1), long_head_to_axillary());
  REQUIRE(reach.slack_mm.has_value());
  CHECK(reach.slack_mm->p50 ==
        Approx(reach.donor_mm.p50 + reach.recipient_mm.p50 - reach.gap_mm.p50));
  CHECK(reach.slack_at_rest_mm.p50 >= reach.slack_mm->p50);
  CHECK(reach.chance == (reach.slack_mm->p50 >= 0.0 ? 1.0 : 0.0));
  const Reach many = reach_of(long_head_to_axillary());
  CHECK(many.slack_mm->p05 < many.slack_mm->p50);
  CHECK((many.chance > 0.95) == (many.slack_mm->p05 > 0.0));
  CHECK_FALSE(many.sources.empty());
  CHECK_FALSE(many.assumptions.empty());
}

TEST_CASE("Only joints between the two pivots open the gap", "[transfer]") {
  const Reach shoulder = reach_of(long_head_to_axillary());
  CHECK(is_between(shoulder, "shoulder_abduction_deg"));
  CHECK_FALSE(is_between(shoulder, "elbow_flexion_deg"));
  const Reach elbow = reach_of(
      {node("musculocutaneous branch to brachialis"), node("anterior interosseous nerve")});
  CHECK(is_between(elbow, "elbow_flexion_deg"));
  CHECK_FALSE(is_between(elbow, "wrist_extension_deg"));
  const Reach hand = reach_of({node("anterior interosseous branch to pronator quadratus"),
                               node("deep branch of ulnar nerve")});
  CHECK(is_between(hand, "wrist_extension_deg"));
  CHECK_FALSE(is_between(hand, "shoulder_abduction_deg"));
}

TEST_CASE("A branch split out of its parent reaches further", "[transfer]") {
  // The deep branch was freed over 97 mm (row dbun-max-dissociation-2016).
  ReachQuestion question{node("anterior interosseous branch to pronator quadratus"),
                         node("deep branch of ulnar nerve")};
  const Reach whole = reach_of(question);
  CHECK(whole.state == ReachState::does_not_reach);
  REQUIRE(whole.graft_mm.has_value());
  CHECK(whole.graft_mm->p50 == Approx(-whole.slack_mm->p50).margin(1e-6));
  question.recipient_split = {97.0, "dbun-max-dissociation-2016"};
  const Reach split = reach_of(question);
  CHECK(split.state == ReachState::reaches);
  CHECK(split.slack_mm->p50 == Approx(whole.slack_mm->p50 + 97.0).margin(1e-6));
  CHECK(std::ranges::find(split.sources, "dbun-max-dissociation-2016") != split.sources.end());
  // Cut at the wrist the ulnar nerve would leave the axons less of a way than cut in the forearm.
  REQUIRE(split.recipient_cut.has_value());
  CHECK(split.recipient_cut->from_origin_mm.p50 < 0.0);
  CHECK(split.recipient_cut->landmark == "epicondyles of the humerus");
}

TEST_CASE("A donor followed into its muscle gives that much more", "[transfer]") {
  ReachQuestion question{node("anterior interosseous branch to pronator quadratus"),
                         node("deep branch of ulnar nerve")};
  const Reach to_entry = reach_of(question);
  question.donor_followed = {8.0, "ain-pq-end-bistyloid-2016"};
  const Reach followed = reach_of(question);
  CHECK(followed.donor_mm.p50 == Approx(to_entry.donor_mm.p50 + 8.0).margin(1e-6));
  CHECK(followed.slack_mm->p50 == Approx(to_entry.slack_mm->p50 + 8.0).margin(1e-6));
}

TEST_CASE("A donor held at the border of a muscle is freed to there", "[transfer]") {
  ReachQuestion question = long_head_to_axillary();
  const Reach whole = reach_of(question);
  // Above where the branch leaves, the border changes nothing.
  question.donor_held = {0.0, "NP_271"};
  CHECK(reach_of(question).slack_mm->p50 == whole.slack_mm->p50);
  question.donor_held = {0.3, "NP_271"};
  const Reach held = reach_of(question);
  CHECK(held.donor_mm.p50 < whole.donor_mm.p50);
  CHECK(held.slack_mm->p50 < whole.slack_mm->p50);
  CHECK(std::ranges::find(held.sources, "NP_271") != held.sources.end());
  // Beyond its end nothing is left of it.
  question.donor_held = {1.0, "NP_271"};
  CHECK(reach_of(question).donor_mm.p50 == 0.0);
}

TEST_CASE("The ends are sewn between the places where they stay tethered", "[transfer]") {
  ReachQuestion question{node("anterior interosseous branch to pronator quadratus"),
                         node("deep branch of ulnar nerve")};
  question.recipient_split = {97.0, "dbun-max-dissociation-2016"};
  const Reach reach = reach_of(question);
  REQUIRE(reach.sewn_at.has_value());
  CHECK(reach.sewn_at->landmark == "epicondyles of the humerus");
  // The freed donor swings across about a place above its cut; the recipient's end comes up to it.
  CHECK(std::abs(reach.sewn_at->distal_mm - reach.donor_cut->distal_mm) < 30.0);
}

TEST_CASE("What is drawn nowhere is not computable and says so", "[transfer]") {
  // The other limb; a skin nerve that leaves its cord and runs far beyond it.
  for (const auto& [donor, recipient, missing] :
       {std::array{"contralateral C7 root", "median nerve", "contralateral C7 root"},
        std::array{"intercostobrachial nerve", "medial antebrachial cutaneous nerve",
                   "medial antebrachial cutaneous nerve"}}) {
    const Reach reach = reach_of({node(donor), node(recipient)});
    CHECK(reach.state == ReachState::not_computable);
    CHECK_FALSE(reach.slack_mm.has_value());
    CHECK(reach.why.contains(missing));
    CHECK(reach.donor_mm.p50 > 0.0);
  }
}

TEST_CASE("A nerve opened at its side is met where it comes near", "[transfer]") {
  ReachQuestion question{node("anterior interosseous branch to pronator quadratus"),
                         node("deep branch of ulnar nerve"), Junction::to_recipient_side};
  question.recipient_split = {97.0, "dbun-max-dissociation-2016"};
  const Reach reach = reach_of(question);
  CHECK(reach.state == ReachState::reaches);
  CHECK(reach.recipient_mm.p50 == 0.0);
  // Opened nearer to its pivot, the gap is narrower than to the end of a freed recipient.
  question.junction = Junction::end_to_end;
  CHECK(reach.gap_mm.p50 < reach_of(question).gap_mm.p50);
  // End-to-side: the donor gives no length, and its trunk is not cut.
  const Reach side = reach_of({node("common palmar digital nerve 3 of median nerve"),
                               node("superficial branch of ulnar nerve"), Junction::to_donor_side});
  CHECK(side.donor_mm.p50 == 0.0);
}

TEST_CASE("A longer limb widens the gap with its segments", "[transfer]") {
  casefile::Limb tall;
  tall.sex = casefile::Sex::male;
  tall.age_years = 30.0;
  tall.stature_mm = 1950.0;
  casefile::Limb small = tall;
  small.stature_mm = 1600.0;
  const ReachModel long_limb = model_of(tall, 400);
  const ReachModel short_limb = model_of(small, 400);
  // Each of these two limbs is posed for itself; its sampled ones take its gap, grown with the
  // segments. That growth, from the one to the other, is borne out to within 4 per cent.
  const limb::SegmentScale grown = limb::size_of(tall).mean_scale();
  const limb::SegmentScale from = limb::size_of(small).mean_scale();
  const auto check = [&](const char* donor, const char* recipient, double along, double across) {
    INFO(donor);
    const ReachQuestion question{node(donor), node(recipient)};
    const double gaps =
        reach_of(long_limb, question).gap_mm.p50 / reach_of(short_limb, question).gap_mm.p50;
    CHECK(gaps > 1.05);
    CHECK(gaps > std::min(along, across) * 0.96);
    CHECK(gaps < std::max(along, across) * 1.04);
  };
  const double breadth = grown.breadth / from.breadth;
  check("radial branch to supinator", "posterior interosseous nerve", grown.forearm / from.forearm,
        breadth);
  check("median branch to flexor carpi radialis", "posterior interosseous nerve",
        grown.forearm / from.forearm, breadth);
  check("radial branch to long head of triceps", "anterior branch of axillary nerve",
        grown.arm / from.arm, breadth);
}

TEST_CASE("Questions that make no sense are refused", "[transfer]") {
  const auto refused = [](const ReachQuestion& question) {
    const auto reach = own_model().reach(question);
    REQUIRE_FALSE(reach.has_value());
    CHECK(reach.error().fault == Fault::input);
    CHECK_FALSE(reach.error().problems.front().mend.empty());
  };
  ReachQuestion question = long_head_to_axillary();
  question.recipient = question.donor;
  refused(question);
  refused({node("median branch to flexor carpi radialis"), node("median nerve")});
  question = long_head_to_axillary();
  question.targets = {node("median nerve")};
  refused(question);
  question = long_head_to_axillary();
  question.donor_split.length_mm = std::nan("");
  refused(question);
  CHECK_FALSE(ReachModel::from(limb::own_tables(), own_tree(), {}, 0, 1).has_value());
}

TEST_CASE("The same case and seed give the same numbers", "[transfer]") {
  const Reach once = reach_of(model_of({}, 50), long_head_to_axillary());
  const Reach again = reach_of(model_of({}, 50), long_head_to_axillary());
  CHECK(once.slack_mm->mean == again.slack_mm->mean);
  CHECK(once.to_nearest_mm.p95 == again.to_nearest_mm.p95);
}

TEST_CASE("Cost grows no faster than the number of limbs", "[transfer]") {
  const auto seconds = [](int samples) {
    const ReachModel model = model_of({}, samples);
    double best = 1e9;
    for (int round = 0; round < 5; ++round) {
      const auto from = std::chrono::steady_clock::now();
      reach_of(model, long_head_to_axillary());
      const auto to = std::chrono::steady_clock::now();
      best = std::min(best, std::chrono::duration<double>(to - from).count());
    }
    return best;
  };
  // Eight times the limbs, with leave for a busy machine.
  CHECK(seconds(8000) < 16.0 * seconds(1000));
}

}  // namespace endplate::transfer
