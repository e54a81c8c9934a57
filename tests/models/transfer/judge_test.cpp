// What a candidate must never be, over many arms and every row of the ledgers.
#include "models/transfer/judge.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>

#include "fixture.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"
#include "models/examination/case_injuries.hpp"
#include "models/transfer/donor.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Coaptation;
using transfer::DonorState;
using transfer::Rejection;
using transfer::Verdict;

namespace {

const std::vector<std::string>& lesions() {
  static const std::vector<std::string> kLesions = {
      kUpperTrunk,
      kAxillary,
      kMusculocutaneous,
      kHighUlnar,
      kHighMedian,
      kHighRadial,
      kLowerTrunk,
      roots({"C5", "C6"}),
      roots({"C5", "C6", "C7"}),
      roots({"C5", "C6", "C7", "C8"}),
      roots({"C7", "C8", "T1"}),
      roots({"C5", "C6", "C7", "C8", "T1"}),
      injury(
          R"("nerve": "posterior interosseous nerve", "at": {"branch": "posterior interosseous nerve", "from_origin_mm": 5})"),
      kLowUlnar,
      kHighMedian + ", " + kHighUlnar};
  return kLesions;
}

// Grades, EMG and skin as chance has it: many not examined, some weak, some at odds with the
// injury.
Arm random_arm(const std::string& injuries, std::mt19937& random) {
  const std::vector<std::string> grades = {"0", "2", "3", "4-", "4", "5", "", "", ""};
  const std::vector<std::string> units = {"none", "reduced", "normal", "", ""};
  const auto pick = [&](const std::vector<std::string>& from) {
    return from[random() % from.size()];
  };
  Arm arm;
  arm.injuries = injuries;
  for (const anatomy::Muscle& muscle : all_anatomy().muscles()) {
    if (auto grade = pick(grades); !grade.empty()) arm.grades.emplace(muscle.id, std::move(grade));
  }
  if (auto found = pick(units); !found.empty()) arm.units.emplace("PQ", std::move(found));
  for (const anatomy::SkinArea& area : all_anatomy().areas()) {
    const auto state = random() % 3;
    if (state == 0) arm.areas.emplace(area.name, "normal");
    if (state == 1) arm.areas.emplace(area.name, "absent");
  }
  return arm;
}

bool strong(const Arm& arm, const std::string& muscle) {
  const auto grade = arm.grades.find(muscle);
  return grade != arm.grades.end() && (grade->second == "4" || grade->second == "5");
}

bool works(const Arm& arm, const std::string& muscle) {
  const auto grade = arm.grades.find(muscle);
  return grade != arm.grades.end() && grade->second != "0" && grade->second != "2";
}

void for_offered(const transfer::Judgement& judgement, const auto& check) {
  for (const transfer::Group& group : judgement.groups) {
    for (const Candidate& one : group.candidates) {
      CAPTURE(one.id);
      check(one);
    }
  }
}

// By the tables and what was written into the case, beside the program's own judgement.
bool donor_was_shown(const Arm& arm, const Candidate& one) {
  for (const evidence::Row rule : package().table("plan_donors")) {
    if (rule.text("transfer") != one.id) continue;
    if (rule.text("judged_by") == "none") return false;
    const auto muscles = rule.list("muscles");
    const auto shown = [&](const std::string& muscle) {
      if (rule.text("judged_by") != "emg") return strong(arm, muscle);
      const auto units = arm.units.find(muscle);
      return units != arm.units.end() && units->second == "normal";
    };
    return rule.text("rule") == "any" ? std::ranges::any_of(muscles, shown)
                                      : std::ranges::all_of(muscles, shown);
  }
  if (one.skin) {
    // An end-to-side donor has no cut; its areas are those of its node.
    return std::ranges::all_of(one.cuts, [&](const transfer::Cut& cut) {
      return std::ranges::all_of(cut.areas, [&](const std::string& area) {
        const auto found = arm.areas.find(area);
        return found != arm.areas.end() && found->second == "normal";
      });
    });
  }
  return std::ranges::all_of(one.donor_muscles,
                             [&](const std::string& muscle) { return strong(arm, muscle); });
}

}  // namespace

TEST_CASE("a donor that is dead, weak or not examined is never feasible", "[transfer]") {
  std::mt19937 random(7);
  int feasible = 0;
  for (const std::string& lesion : lesions()) {
    for (int i = 0; i < 6; ++i) {
      const Arm arm = random_arm(lesion, random);
      for_offered(judged(arm), [&](const Candidate& one) {
        CHECK(one.verdict != Verdict::not_feasible);
        CHECK(one.donor_state != DonorState::dead);
        CHECK(one.donor_state != DonorState::weak);
        if (one.verdict != Verdict::feasible && one.verdict != Verdict::marginal) return;
        ++feasible;
        CHECK(one.donor_state == DonorState::strong);
        CHECK(donor_was_shown(arm, one));
      });
    }
  }
  CHECK(feasible > 60);
}

TEST_CASE("a donor of a textbook lesion that is not examined, or dead, is no longer feasible",
          "[transfer]") {
  int knocked_out = 0;
  for (const Arm& arm :
       {pattern(kUpperTrunk, "P07"), pattern(kHighUlnar, "P34"), pattern(kHighMedian, "P25"),
        pattern(kHighRadial, "P20"), pattern(roots({"C7", "C8", "T1"}), "P12", kMiddleTrunkToo),
        pattern(roots({"C5", "C6", "C7"}), "P10")}) {
    for_offered(judged(arm), [&](const Candidate& one) {
      if (one.verdict != Verdict::feasible) return;
      ++knocked_out;
      Arm unexamined = arm;
      Arm dead = arm;
      const auto take = [&](auto of, const std::string& key, const std::string& lost) {
        (unexamined.*of).erase(key);
        (dead.*of).insert_or_assign(key, lost);
      };
      for (const std::string& muscle : one.donor_muscles) {
        take(&Arm::grades, muscle, "0");
        take(&Arm::units, muscle, "none");
      }
      for (const transfer::Cut& cut : one.cuts) {
        for (const std::string& area : cut.areas) take(&Arm::areas, area, "absent");
      }
      if (one.coaptation == Coaptation::end_to_side) {
        for (const anatomy::SkinArea& area : all_anatomy().areas()) {
          if (arm.areas.at(area.name) == "normal") take(&Arm::areas, area.name, "absent");
        }
      }
      const auto without = judged(unexamined);
      const Candidate* then = find(without, one.id);
      if (then != nullptr) CHECK(then->verdict == Verdict::not_judged);
      CHECK(find(judged(dead), one.id) == nullptr);
    });
  }
  CHECK(knocked_out > 40);
}

TEST_CASE("in the example cases only examined donors are feasible", "[transfer]") {
  static const anatomy::Terms kTerms = *anatomy::Terms::from(package());
  int judged_cases = 0;
  for (const auto& file :
       std::filesystem::directory_iterator(ENDPLATE_SOURCE_DIR "/datasets/cases")) {
    if (file.path().extension() != ".json") continue;
    CAPTURE(file.path().filename().string());
    std::ifstream stream(file.path());
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    const auto patient =
        casefile::read_case(text, kTerms, {casefile::pose_limits(package()), nullptr, {}});
    REQUIRE(patient);
    const auto limb = limb::CaseLimb::from(package(), all_anatomy().tree(), patient->limb);
    REQUIRE(limb);
    const auto now = transfer::Situation::of(*patient, all_anatomy(), *limb, limb->sample(10, 1));
    if (!now) continue;  // no place of the injury
    ++judged_cases;
    const auto examined = examination::examined(*patient, all_anatomy());
    for_offered(transfer::judge(*now, package(), {}), [&](const Candidate& one) {
      if (one.verdict != Verdict::feasible && one.verdict != Verdict::marginal) return;
      CHECK(one.donor_state == DonorState::strong);
      if (transfer::donor_rule(package(), one.id)) return;
      for (const std::string& muscle : one.donor_muscles) {
        CAPTURE(muscle);
        const auto& grade = examined.muscles[*all_anatomy().find_muscle(muscle)];
        REQUIRE(grade);
        CHECK(grade->value >= 4.0);
      }
    });
  }
  CHECK(judged_cases >= 12);
}

TEST_CASE("without an examination nothing is feasible", "[transfer]") {
  for (const std::string& lesion : lesions()) {
    Arm arm;
    arm.injuries = lesion;
    for_offered(judged(arm),
                [](const Candidate& one) { CHECK(one.verdict == Verdict::not_judged); });
  }
}

TEST_CASE("every row of the ledgers is a candidate or has one reason why not", "[transfer]") {
  std::mt19937 random(3);
  std::multiset<std::string> operations;
  for (const evidence::Row row : package().table("transfers")) operations.emplace(row.text("id"));
  REQUIRE(operations.size() == 72);
  for (const evidence::Row row : package().table("tendon_transfers")) {
    const std::string_view function = row.text("function_restored");
    if (function != "amplitude rule" && function != "when to switch from nerve to tendon") {
      operations.emplace(row.text("id"));
    }
  }
  std::set<std::string> once;
  for (const std::string& lesion : lesions()) {
    const auto judgement = judged(random_arm(lesion, random));
    std::multiset<std::string> seen;
    for_offered(judgement, [&](const Candidate& one) {
      seen.insert(one.id);
      once.insert(one.id);
      CHECK_FALSE(one.reasons.empty());
      CHECK_FALSE(one.sources.empty());
      CHECK_FALSE(one.targets.empty());
      CHECK_FALSE(one.provenance.empty());
    });
    for (const Candidate& one : judgement.rejected) {
      CAPTURE(one.id);
      seen.insert(one.id);
      CHECK(one.verdict == Verdict::not_feasible);
      CHECK(one.rejection);
      CHECK(one.reasons.size() == 1);
      CHECK_FALSE(one.rejected_because.empty());
    }
    CHECK(seen == operations);
  }
}

TEST_CASE("each published nerve transfer is a candidate of some lesion", "[transfer]") {
  std::set<std::string> met;
  const auto meet = [&](const Arm& arm) {
    for_offered(judged(arm), [&](const Candidate& one) { met.insert(one.id); });
  };
  // Only what hangs on the nerves that were cut is lost; everything else works.
  std::mt19937 random(11);
  for (const std::string& lesion : lesions()) {
    Arm arm;
    arm.injuries = lesion;
    meet(arm);
    for (int i = 0; i < 4; ++i) meet(random_arm(lesion, random));
  }
  int nerve = 0;
  for (const evidence::Row row : package().table("transfers")) {
    nerve += met.contains(std::string(row.text("id"))) ? 1 : 0;
  }
  CHECK(nerve >= 60);
}

TEST_CASE("standard transfers with few axons stay feasible", "[transfer]") {
  const auto upper = judged(pattern(kUpperTrunk, "P07"));
  const auto ulnar = judged(pattern(kHighUlnar, "P34"));
  const std::vector<std::pair<const transfer::Judgement*, const char*>> low = {
      {&upper, "san_to_ssn_anterior"},
      {&upper, "san_to_ssn_posterior"},
      {&upper, "tri_long_to_ax_ant"},
      {&upper, "tri_lat_to_ax_ant"},
      {&ulnar, "ain_to_deep_ulnar"}};
  for (const auto& [judgement, id] : low) {
    CAPTURE(id);
    const Candidate* one = find(*judgement, id);
    REQUIRE(one != nullptr);
    CHECK(one->verdict == Verdict::feasible);
    REQUIRE(one->axon_ratio);
    CHECK(one->axon_ratio->ratio < 0.6);
  }
  // Accessory at the notch: 1603 of 6004, both in Pruksakorn 2007.
  const auto& notch = *find(upper, "san_to_ssn_posterior")->axon_ratio;
  CHECK(notch.one_study);
  CHECK(notch.ratio == Approx(1603.0 / 6004.0));
  CHECK_FALSE(find(upper, "san_to_ssn_anterior")->axon_ratio->one_study);
  // 757 (SD 183) of 2913 (SD 624): the spread encloses the ratio.
  const auto& ulnar_ratio = *find(ulnar, "ain_to_deep_ulnar")->axon_ratio;
  CHECK(ulnar_ratio.one_study);
  REQUIRE(ulnar_ratio.low);
  CHECK(*ulnar_ratio.low < 757.0 / 2913.0);
  CHECK(*ulnar_ratio.high > 757.0 / 2913.0);
}

TEST_CASE("a superficialis is never offered unless its deep flexor is shown strong", "[transfer]") {
  std::mt19937 random(5);
  int offered = 0;
  int refused = 0;
  const auto check = [&](Arm arm) {
    for (const char* muscle : {"FDP-I", "FDP-M", "FDP-R", "FDP-L"}) {
      const auto chance = random() % 8;
      if (chance == 0) arm.grades.insert_or_assign(muscle, std::string("3"));
      if (chance == 1) arm.grades.erase(muscle);
    }
    const auto judgement = judged(arm);
    for_offered(judgement, [&](const Candidate& one) {
      if (!one.id.starts_with("fds_")) return;
      ++offered;
      // The nerve branch does not tell the finger; the tendon rows name theirs.
      std::vector<std::string> deep = {"FDP-I", "FDP-M", "FDP-R", "FDP-L"};
      if (one.way == transfer::Way::tendon) {
        deep = one.donor_muscles;
        CHECK(std::ranges::any_of(deep, [](const auto& id) { return id.starts_with("FDP-"); }));
      }
      for (const std::string& muscle : deep) {
        if (muscle.starts_with("FDP-")) CHECK(strong(arm, muscle));
      }
    });
    refused += static_cast<int>(
        std::ranges::count(judgement.rejected, Rejection::not_shown, &Candidate::rejection));
  };
  for (int i = 0; i < 12; ++i) {
    check(pattern(kHighRadial, "P20"));
    check(pattern(kLowUlnar, "P37"));
    check(random_arm(kHighRadial, random));
  }
  CHECK(refused > 0);
  CHECK(offered > 0);
  // A high ulnar palsy takes the deep flexors of ring and little finger.
  const auto ulnar = judged(pattern(kHighUlnar, "P34"));
  for (const char* id : {"fds_lasso", "fds_4tail"}) CHECK(find(ulnar, id) == nullptr);
  CHECK(find(ulnar, "fds_middle_lasso") != nullptr);
}

TEST_CASE("pronator teres is not offered where a radial wrist extensor works", "[transfer]") {
  std::mt19937 random(9);
  for (const std::string& lesion : lesions()) {
    for (int i = 0; i < 6; ++i) {
      const Arm arm = random_arm(lesion, random);
      for_offered(judged(arm), [&](const Candidate& one) {
        if (!one.id.starts_with("pt_")) return;
        CHECK_FALSE(works(arm, "ECRL"));
        CHECK_FALSE(works(arm, "ECRB"));
      });
    }
  }
  // Below the branch to the long extensor: the short one is lost, the wrist comes up.
  const std::string below = injury(
      R"("nerve": "deep branch of radial nerve", "at": {"branch": "deep branch of radial nerve", "from_origin_mm": 1})");
  const auto judgement = judged(pattern(below, "P21"));
  for (const char* id : {"pt_ecrb", "pt_distal_to_ecrb", "pt_to_ecrb_tian"}) {
    CAPTURE(id);
    CHECK(find(judgement, id) == nullptr);
    CHECK_FALSE(rejected(judgement, id).empty());
  }
  // Where neither works, both the nerve and the tendon transfer are.
  const auto high = judged(pattern(kHighRadial, "P20"));
  CHECK(find(high, "pt_ecrb") != nullptr);
  CHECK(find(high, "pt_distal_to_ecrb") != nullptr);
}
