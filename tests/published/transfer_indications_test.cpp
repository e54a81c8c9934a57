// The transfers that the literature recommends for the lesions of the textbooks are among the
// first five of their function. The source stands beside each.
#include "tests/models/transfer/fixture.hpp"

using namespace transfer_tests;
using transfer::Verdict;

namespace {

struct Recommended {
  const char* id;
  const char* source;
  Verdict verdict = Verdict::feasible;
};

void check(const transfer::Judgement& judgement, const std::vector<Recommended>& all) {
  for (const Recommended& one : all) {
    CAPTURE(one.id, one.source, rejected(judgement, one.id));
    const int at = place(judgement, one.id);
    CHECK(at >= 1);
    CHECK(at <= 5);
    const transfer::Candidate* candidate = find(judgement, one.id);
    if (candidate != nullptr) CHECK(candidate->verdict == one.verdict);
  }
}

constexpr auto kRinker = "Rinker 2015, Ann Plast Surg, doi 10.1097/SAP.0000000000000373 (abstract)";
constexpr auto kEmamhadi = "Emamhadi 2022, Int J Spine Surg 8323 (abstract)";
constexpr auto kCosta = "Costa 2020, Plast Aesthet Res 7:32 (page 349)";
constexpr auto kC5ToC8 = "J Hand Surg Am 2021, S0363-5023(21)00756-5 (abstract, 52 patients)";
constexpr auto kMedianToRadial = "Mackinnon 2007, J Neurosurg 107:666 (abstract)";
constexpr auto kHsiao = "Hsiao 2008, Hand (N Y) 4:92, PMC2654949 (abstract)";
constexpr auto kC7ToT1 = "Dong, supinator to posterior interosseous in C7-T1 palsies (abstract)";

}  // namespace

TEST_CASE("upper trunk: accessory, triceps branch and fascicles come first", "[transfer]") {
  check(judged(pattern(kUpperTrunk, "P07")),
        {{"san_to_ssn_anterior", kRinker},
         {"tri_med_to_ax_ant", kRinker},
         {"tri_long_to_ax_ant", kEmamhadi},
         {"uln_fascicle_to_biceps", "Venkatramani 2008, doi 10.1186/1749-7221-3-15 (abstract)"},
         {"double_fascicle_elbow", kEmamhadi}});
}

TEST_CASE("isolated axillary: the triceps branches come first", "[transfer]") {
  check(judged(pattern(kAxillary, "P42")),
        {{"tri_long_to_ax_ant", "Leechavengvongs 2003 (ledger row)"},
         {"tri_med_to_ax_ant", kRinker}});
}

TEST_CASE("musculocutaneous: the fascicles come first", "[transfer]") {
  check(judged(pattern(kMusculocutaneous, "P44")),
        {{"uln_fascicle_to_biceps", kRinker},
         {"double_fascicle_elbow", "Sneiders 2019 (ledger row)"}});
}

TEST_CASE("high ulnar: anterior interosseous to the deep branch comes first", "[transfer]") {
  Arm arm = pattern(kHighUlnar, "P34");
  const auto judgement = judged(arm);
  check(judgement, {{"ain_to_deep_ulnar", kRinker},
                    {"sens_3web_to_ulnar_digital", "Orlando 2025 (ledger row)"}});
  // Into the side of the nerve where it is repaired, or may recover.
  arm.more =
      R"(, "operations": [{"state": "planned", "done": [{"procedure": "repair", "nerve": "ulnar nerve"}]}])";
  check(judged(arm), {{"ain_sets_ulnar", "Baltzer 2016 (ledger row)"},
                      {"ain_sets_with_repair", "Koriem 2020 (ledger row)"}});
}

TEST_CASE("high median: radial branches to pronator teres and anterior interosseous",
          "[transfer]") {
  check(judged(pattern(kHighMedian, "P25")),
        {{"ecrb_to_pt", kHsiao},
         {"sup_to_ain_hsiao", kHsiao},
         {"brachialis_to_ain", "Politikou 2024 (ledger row)"},
         {"adm_to_thenar", "Guilan University group (ledger row)"},
         {"sens_4web_to_1web", kCosta},
         {"sens_srn_to_digital", kCosta}});
}

TEST_CASE("high radial: median branches to wrist and fingers, and no supinator", "[transfer]") {
  const auto judgement = judged(pattern(kHighRadial, "P20"));
  check(judgement, {{"fds_to_ecrb", kMedianToRadial},
                    {"fcr_to_pin_ray11", kMedianToRadial},
                    {"pt_distal_to_ecrb", "Bertelli 2020 (ledger row)"},
                    {"fcr_to_pin_tian", "Tian 2022 (ledger row)"}});
  CHECK(rejected(judgement, "sup_to_pin").find("M0") != std::string::npos);
  CHECK(find(judgement, "sup_to_pin") == nullptr);
}

TEST_CASE("lower trunk: brachialis to anterior interosseous", "[transfer]") {
  // The row counts pronator quadratus among what may be weak; where it works, the recipient does.
  check(judged(pattern(kLowerTrunk, "P12", "PQ")),
        {{"brachialis_to_ain", kC7ToT1}, {"ecrb_to_ain", "Messina 2016 (ledger row)"}});
}

TEST_CASE("C7 to T1: supinator to posterior interosseous as well", "[transfer]") {
  check(judged(pattern(roots({"C7", "C8", "T1"}), "P12", kMiddleTrunkToo)),
        {{"brachialis_to_ain", kC7ToT1},
         {"sup_to_pin", "Bertelli 2010 (ledger row)"},
         {"sup_to_pin_dong", kC7ToT1},
         {"post_deltoid_to_triceps", "Messina 2016 (ledger row)"}});
}

TEST_CASE("C5 to C7: accessory, ulnar fascicle and superficialis; triceps is dead", "[transfer]") {
  const auto judgement = judged(pattern(roots({"C5", "C6", "C7"}), "P10"));
  check(judgement, {{"san_to_ssn_anterior", kRinker},
                    {"uln_fascicle_to_biceps", kRinker},
                    {"pq_to_ecrb", kC5ToC8},
                    {"icn_to_triceps", "Zheng 2010 (ledger row)", Verdict::not_judged}});
  CHECK(find(judgement, "tri_long_to_ax_ant") == nullptr);
  CHECK(find(judgement, "tri_med_to_ax_ant") == nullptr);
}

TEST_CASE("four roots with a working T1: accessory, a fascicle, and pronator quadratus",
          "[transfer]") {
  check(judged(pattern(roots({"C5", "C6", "C7", "C8"}), "P10", kExtensorsToo)),
        {{"san_to_ssn_anterior", kC5ToC8},
         {"uln_fascicle_to_biceps", kC5ToC8},
         {"pq_to_ecrb", kC5ToC8}});
}

TEST_CASE("skin of the radial nerve: by the lateral skin nerve of the forearm or end-to-side",
          "[transfer]") {
  const auto judgement = judged(pattern(kHighRadial, "P20"));
  check(judgement, {{"sens_lacn_to_srn", "Costa 2020 (page 353; ledger row)"},
                    {"sens_srn_ets_median", "Costa 2020 (page 353; ledger row)"}});
  CHECK(find(judgement, "sens_srn_ets_median")->cuts.empty());
}

TEST_CASE("skin of the ulnar nerve: the third web, or end-to-side to it", "[transfer]") {
  check(judged(pattern(kHighUlnar, "P34")),
        {{"sens_ulnar_ets_median", "Costa 2020 (page 353; ledger row)"}});
}
