// What a hand surgeon expects of a combination, with the shipped rules, pairs and priorities. The
// options are written by hand from rows of transfers.csv and tendon_transfers.csv.
#include <algorithm>
#include <catch2/catch.hpp>

#include "models/transfer/combination_tables.hpp"

using namespace endplate;
using namespace endplate::transfer;

namespace {

const evidence::DataPackage& package() {
  static const evidence::DataPackage kPackage =
      evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets").value();
  return kPackage;
}

using Names = std::vector<std::string>;

CombinationOption option(std::string id, Names spends, Names receives, std::vector<Service> serves,
                         int rank = 1) {
  CombinationOption one;
  one.id = std::move(id);
  one.spends = std::move(spends);
  one.receives = std::move(receives);
  one.serves = std::move(serves);
  one.rank = rank;
  return one;
}

CombinationTask task(PalsyPattern pattern, const Names& wishes, const Names& lost,
                     std::vector<CombinationOption> options, Names strong_now) {
  return {std::move(options), demands_of(package(), pattern, wishes, lost),
          forbidden_pairs(package()), balance_rules(package()), std::move(strong_now)};
}

Names chosen(const Combination& answer) {
  Names ids;
  for (const ChosenOption& one : answer.chosen) ids.push_back(one.id);
  return ids;
}

LeftOut left_out(const Combination& answer, const std::string& id) {
  const auto found = std::ranges::find(answer.left_out, id, &LeftOut::id);
  REQUIRE(found != answer.left_out.end());
  return *found;
}

const Names kTriceps{"TRI-LH", "TRI-MH", "TRI-LAT"};
const Names kUpperLost{"elbow flexion", "shoulder abduction", "shoulder external rotation"};

CombinationOption accessory() {
  return option("san_to_ssn_posterior", {"distal part of accessory nerve"}, {"suprascapular nerve"},
                {{"shoulder abduction"}, {"shoulder external rotation"}});
}

CombinationOption long_head(int rank = 1) {
  return option("tri_long_to_ax_ant", {"radial branch to long head of triceps", "TRI-LH"},
                {"anterior branch of axillary nerve"}, {{"shoulder abduction"}}, rank);
}

CombinationOption medial_head(int rank = 2) {
  return option("tri_med_to_ax_ant", {"radial branch to medial head of triceps", "TRI-MH"},
                {"anterior branch of axillary nerve"}, {{"shoulder abduction"}}, rank);
}

CombinationOption ulnar_fascicle() {
  return option("uln_fascicle_to_biceps", {"expendable motor fascicle of ulnar nerve"},
                {"musculocutaneous branch to biceps brachii"}, {{"elbow flexion"}});
}

CombinationOption median_fascicle() {
  return option("med_fascicle_to_brachialis", {"expendable motor fascicle of median nerve"},
                {"musculocutaneous branch to brachialis"}, {{"elbow flexion"}});
}

CombinationOption teres_minor() {
  return option("tri_to_teres_minor", {"radial branch to lateral head of triceps", "TRI-LAT"},
                {"axillary branch to teres minor"}, {{"shoulder external rotation"}}, 2);
}

}  // namespace

// Leechavengvongs S et al., 2003, J Hand Surg Am 28:633-638 (triceps branch to axillary with
// accessory to suprascapular at once); Garg R et al., 2011, J Bone Joint Surg Am 93:819-829.
TEST_CASE("an upper trunk palsy gets two fascicles, accessory and one triceps branch together",
          "[transfer][combination]") {
  const auto answer = combine(task(
      PalsyPattern::upper, {}, kUpperLost,
      {medial_head(), teres_minor(), median_fascicle(), long_head(), accessory(), ulnar_fascicle()},
      kTriceps));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"med_fascicle_to_brachialis", "uln_fascicle_to_biceps",
                                 "san_to_ssn_posterior", "tri_long_to_ax_ant"});
  for (const DemandAnswer& demand : answer->demands) CHECK(demand.met);
  const LeftOut medial = left_out(*answer, "tri_med_to_ax_ant");
  CHECK(medial.by == LeftOutBy::place_taken);
  CHECK(medial.beside == Names{"tri_long_to_ax_ant"});
  // A second head for teres minor would leave one head to extend the elbow.
  const LeftOut second = left_out(*answer, "tri_to_teres_minor");
  CHECK(second.by == LeftOutBy::rule);
  CHECK(second.cause == "triceps_heads");
  CHECK(second.beside == Names{"tri_long_to_ax_ant"});
}

TEST_CASE("the double fascicular transfer as one operation stands for its two halves",
          "[transfer][combination]") {
  auto both = option(
      "double_fascicle_elbow",
      {"expendable motor fascicle of ulnar nerve", "expendable motor fascicle of median nerve"},
      {"musculocutaneous branch to biceps brachii", "musculocutaneous branch to brachialis"},
      {{"elbow flexion", 2}});
  both.cuts_working_fibres = true;
  const auto answer = combine(task(PalsyPattern::upper, {}, kUpperLost,
                                   {ulnar_fascicle(), both, long_head(), accessory()}, kTriceps));
  REQUIRE(answer);
  CHECK(chosen(*answer) ==
        Names{"double_fascicle_elbow", "san_to_ssn_posterior", "tri_long_to_ax_ant"});
  // The flag travels with the option.
  CHECK(answer->chosen.front().cuts_working_fibres);
  CHECK_FALSE(answer->chosen.back().cuts_working_fibres);
  const LeftOut half = left_out(*answer, "uln_fascicle_to_biceps");
  CHECK(half.by == LeftOutBy::donor_used);
  CHECK(half.cause == "expendable motor fascicle of ulnar nerve");
}

TEST_CASE("the same donor never gives twice", "[transfer][combination]") {
  // The terminal accessory nerve for the shoulder or for the elbow: the elbow comes first.
  const auto to_elbow = option("san_to_mcn", {"distal part of accessory nerve"},
                               {"musculocutaneous nerve"}, {{"elbow flexion"}});
  const auto answer =
      combine(task(PalsyPattern::upper, {}, kUpperLost, {accessory(), to_elbow}, {}));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"san_to_mcn"});
  CHECK(left_out(*answer, "san_to_ssn_posterior").by == LeftOutBy::donor_used);
  // With another donor for the elbow both are served.
  const auto with_ulnar = combine(
      task(PalsyPattern::upper, {}, kUpperLost, {accessory(), to_elbow, ulnar_fascicle()}, {}));
  REQUIRE(with_ulnar);
  CHECK(chosen(*with_ulnar) == Names{"uln_fascicle_to_biceps", "san_to_ssn_posterior"});
  // A muscle whose branch went to the nerve transfer is no tendon to move.
  const auto branch = option("fcr_to_pin_tian", {"median branch to flexor carpi radialis", "FCR"},
                             {"posterior interosseous nerve"}, {{"thumb extension at the tip"}});
  auto tendon = option("fcr_edc", {"FCR"}, {"ED"}, {{"finger extension at the knuckles"}});
  tendon.kind = OperationKind::tendon;
  const auto radial = combine(task(
      PalsyPattern::other, {}, {"finger extension at the knuckles", "thumb extension at the tip"},
      {branch, tendon}, {"FCR"}));
  REQUIRE(radial);
  CHECK(radial->chosen.size() == 1);
}

TEST_CASE("two heads of triceps cannot be spent", "[transfer][combination]") {
  // Only two heads are strong: neither may go.
  const auto two_strong = combine(task(PalsyPattern::upper, {}, kUpperLost,
                                       {long_head(), medial_head()}, {"TRI-LH", "TRI-MH"}));
  REQUIRE(two_strong);
  CHECK(two_strong->chosen.empty());
  CHECK(left_out(*two_strong, "tri_long_to_ax_ant").by == LeftOutBy::rule_alone);
  CHECK(left_out(*two_strong, "tri_long_to_ax_ant").cause == "triceps_heads");
  // One strong head: the injury itself breaks the rule, and what is left is kept.
  const auto one_strong =
      combine(task(PalsyPattern::upper, {}, kUpperLost, {long_head()}, {"TRI-LH"}));
  REQUIRE(one_strong);
  CHECK(one_strong->chosen.empty());
  const auto heads = std::ranges::find(one_strong->rules, "triceps_heads", &BalanceAnswer::rule);
  REQUIRE(heads != one_strong->rules.end());
  CHECK(heads->short_before);
  CHECK(heads->strong_left == Names{"TRI-LH"});
}

TEST_CASE("the tendon set of a radial palsy gives wrist, fingers and thumb one donor each",
          "[transfer][combination]") {
  const auto answer = combine(
      task(PalsyPattern::other, {},
           {"wrist extension", "finger extension at the knuckles", "thumb extension at the tip"},
           {option("pt_ecrb", {"PT"}, {"ECRB"}, {{"wrist extension"}}),
            option("fcr_edc", {"FCR"}, {"ED"}, {{"finger extension at the knuckles"}}),
            option("fcu_edc", {"FCU"}, {"ED"}, {{"finger extension at the knuckles"}}, 2),
            option("pl_epl", {"PL"}, {"EPL"}, {{"thumb extension at the tip"}})},
           {"PT", "FCR", "FCU", "PL"}));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"fcr_edc", "pl_epl", "pt_ecrb"});
  CHECK(left_out(*answer, "fcu_edc").by == LeftOutBy::place_taken);
}

TEST_CASE("one strong radial wrist extensor remains", "[transfer][combination]") {
  // High ulnar palsy; the pairs of the table are left away, so that only the rule stands.
  auto ulnar =
      task(PalsyPattern::other, {"thumb adduction"},
           {"straightening the ring and little finger", "thumb adduction"},
           {option("ecrl_4tail", {"ECRL"}, {"lateral bands"},
                   {{"straightening the ring and little finger"}}),
            option("ecrb_adductor", {"ECRB"}, {"adductor pollicis"}, {{"thumb adduction"}})},
           {"ECRL", "ECRB"});
  ulnar.forbidden.clear();
  const auto answer = combine(ulnar);
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"ecrb_adductor"});
  CHECK(left_out(*answer, "ecrl_4tail").by == LeftOutBy::rule);
  CHECK(left_out(*answer, "ecrl_4tail").cause == "radial_wrist_extensor");
  const auto claw = std::ranges::find(answer->demands, false, &DemandAnswer::met);
  REQUIRE(claw != answer->demands.end());
  CHECK(claw->demand.target == "straightening the ring and little finger");
  CHECK(claw->left_out == Names{"ecrl_4tail"});
  // An ECRB that is not proven strong does not count: ECRL is then the last one.
  ulnar.strong_now = {"ECRL"};
  const auto last = combine(ulnar);
  REQUIRE(last);
  CHECK(left_out(*last, "ecrl_4tail").by == LeftOutBy::rule_alone);
}

TEST_CASE("a flexor of each finger remains, slip by slip", "[transfer][combination]") {
  // High ulnar palsy: the deep flexors of ring and little finger are lost.
  const Names strong{"FDP-I", "FDP-M", "FDS"};
  const Names lost{"straightening the ring and little finger", "thumb opposition"};
  const auto lasso = option("fds_middle_lasso", {"FDS/middle"}, {"A1 pulleys"},
                            {{"straightening the ring and little finger"}});
  const auto ring = option("fds_ring_opp", {"FDS/ring"}, {"APB"}, {{"thumb opposition"}});
  const auto answer = combine(task(PalsyPattern::other, {}, lost, {lasso, ring}, strong));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"fds_middle_lasso"});
  CHECK(left_out(*answer, "fds_ring_opp").by == LeftOutBy::rule_alone);
  CHECK(left_out(*answer, "fds_ring_opp").cause == "ring_flexor");
  // The whole muscle holds the slip of the ring finger.
  const auto whole = option("fds_4tail", {"FDS"}, {"lateral bands"},
                            {{"straightening the ring and little finger"}});
  const auto all = combine(task(PalsyPattern::other, {}, lost, {whole}, strong));
  REQUIRE(all);
  CHECK(all->chosen.empty());
}

TEST_CASE("deep flexors joined side to side go on moving their own fingers",
          "[transfer][combination]") {
  // High median palsy: superficialis is lost, ring and little finger have their deep flexors only.
  auto side = option("fdp_side", {}, {"FDP-I", "FDP-M"},
                     {{"index tip flexion"}, {"middle finger tip flexion"}});
  side.shares = {"FDP-R", "FDP-L"};
  const Names lost{"thumb tip flexion", "index tip flexion", "middle finger tip flexion",
                   "thumb opposition"};
  const auto answer =
      combine(task(PalsyPattern::other, {}, lost,
                   {side, option("br_fpl", {"BR"}, {"FPL"}, {{"thumb tip flexion"}}),
                    option("eip_opp", {"EI"}, {"APB"}, {{"thumb opposition"}})},
                   {"FDP-R", "FDP-L", "BR", "EI", "ED"}));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"br_fpl", "eip_opp", "fdp_side"});
}

// Zheng MX et al., 2010, J Hand Surg Am 35:1304-1309: both fire with breathing.
TEST_CASE("phrenic to the flexors and intercostals to the extensors of the elbow never meet",
          "[transfer][combination]") {
  const auto phrenic =
      option("phrenic_to_mcn", {"phrenic nerve"}, {"musculocutaneous nerve"}, {{"elbow flexion"}});
  const auto ribs =
      option("icn_to_triceps", {"fourth intercostal nerve", "fifth intercostal nerve"},
             {"radial branch to long head of triceps"}, {{"elbow extension"}});
  const Names lost{"elbow flexion", "elbow extension"};
  const auto two = combine(task(PalsyPattern::complete, {}, lost, {phrenic, ribs}, {}));
  REQUIRE(two);
  CHECK(chosen(*two) == Names{"phrenic_to_mcn"});
  CHECK(left_out(*two, "icn_to_triceps").by == LeftOutBy::forbidden_pair);
  CHECK(left_out(*two, "icn_to_triceps").cause == "icn_to_triceps+phrenic_to_mcn");
  // The better rank for the elbow's flexion comes before its extension, which is asked for later.
  const auto gracilis =
      option("free_gracilis_elbow", {}, {"biceps tendon"}, {{"elbow flexion"}}, 3);
  const auto three = combine(task(PalsyPattern::complete, {}, lost, {phrenic, ribs, gracilis}, {}));
  REQUIRE(three);
  CHECK(chosen(*three) == Names{"phrenic_to_mcn"});
}

TEST_CASE("the wish of a case comes before the pattern", "[transfer][combination]") {
  const auto to_elbow = option("san_to_mcn", {"distal part of accessory nerve"},
                               {"musculocutaneous nerve"}, {{"elbow flexion"}});
  const auto answer = combine(
      task(PalsyPattern::upper, {"shoulder abduction"}, kUpperLost, {accessory(), to_elbow}, {}));
  REQUIRE(answer);
  CHECK(chosen(*answer) == Names{"san_to_ssn_posterior"});
}
