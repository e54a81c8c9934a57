// Vignettes: what a hand surgeon would do next, with the source of each expectation.
#include "models/recovery/decision.hpp"

#include <functional>

#include "fixture.hpp"

using namespace recovery_tests;
using namespace endplate::recovery;
using casefile::Date;
using casefile::Grade;
using casefile::Mechanism;

namespace {

Date on(int year, unsigned month, unsigned day) {
  return Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}

const Date kInjury = on(2026, 6, 1);

struct Vignette {
  const char* story;
  const char* source;
  double today_days;
  std::function<void(DecisionFacts&)> facts;
  const char* next_contains;
  double within_days;  // by_date is at most this many days after today
};

}  // namespace

TEST_CASE("vignettes get the first step that the trade expects", "[recovery]") {
  const std::vector<Vignette> vignettes{
      {"median nerve cut by glass at the wrist, complete, first day", "common practice", 0,
       [](auto& f) {
         f.mechanism = Mechanism::open_sharp;
         f.completeness = Completeness::complete;
       },
       "Explore the wound", 3},
      {"knife wound of the forearm, deficit not fully examined", "common practice", 1,
       [](auto& f) { f.mechanism = Mechanism::open_sharp; }, "Explore the wound", 3},
      {"cut over the ulnar nerve, partial deficit", "common practice", 2,
       [](auto& f) {
         f.mechanism = Mechanism::open_sharp;
         f.completeness = Completeness::partial;
       },
       "Explore the wound", 3},
      {"cut two months ago, closed elsewhere without looking at the nerve, nothing moves",
       "common practice", 60,
       [](auto& f) {
         f.mechanism = Mechanism::open_sharp;
         f.completeness = Completeness::complete;
       },
       "Explore now", 7},
      {"crushed forearm, open, complete", "common practice", 0,
       [](auto& f) {
         f.mechanism = Mechanism::open_crush;
         f.completeness = Completeness::complete;
       },
       "Explore with the wound excision", 3},
      {"gunshot of the arm without vascular injury, complete",
       "Omer 1974, J Bone Joint Surg Am 56:1615; common practice", 3,
       [](auto& f) {
         f.mechanism = Mechanism::gunshot;
         f.completeness = Completeness::complete;
       },
       "Watch unless", 91},
      {"gunshot, four months, nothing",
       "Secer 2007, Roganovic 2004 (results fall after 5.5 to 6 months)", 120,
       [](auto& f) {
         f.mechanism = Mechanism::gunshot;
         f.recovery = RecoverySign::none;
       },
       "End of waiting", 21},
      {"radial palsy beside a closed humeral shaft fracture, week one",
       "Ilyas 2020 (77 % recover without operation); common practice", 7,
       [](auto& f) {
         f.mechanism = Mechanism::fracture_or_dislocation;
         f.completeness = Completeness::complete;
       },
       "Watch with dates", 91},
      {"the same at four months without a sign", "EMG series of radial palsy; common practice", 120,
       [](auto& f) {
         f.mechanism = Mechanism::fracture_or_dislocation;
         f.completeness = Completeness::complete;
         f.recovery = RecoverySign::none;
       },
       "End of waiting", 21},
      {"the same at four months with brachioradialis flickering", "common practice", 120,
       [](auto& f) {
         f.mechanism = Mechanism::fracture_or_dislocation;
         f.recovery = RecoverySign::seen;
       },
       "Go on watching", 42},
      {"axillary palsy after shoulder dislocation, week two", "common practice", 14,
       [](auto& f) { f.mechanism = Mechanism::fracture_or_dislocation; }, "Watch with dates", 91},
      {"closed traction of the plexus, postganglionic, month five, nothing",
       "Martin 2019 (best within 3 months); common practice", 150,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.recovery = RecoverySign::none;
       },
       "End of waiting", 21},
      {"upper trunk traction, one week, shoulder and biceps dead", "Martin 2019; common practice",
       7,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.place = LesionPlace::plexus;
       },
       "Refer to a plexus unit now; EMG", 21},
      {"the same at four months, nothing", "Martin 2019; common practice", 120,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.place = LesionPlace::plexus;
         f.recovery = RecoverySign::none;
       },
       "Explore and reconstruct now", 21},
      {"C5 root torn from the cord, week three", "Martin 2019; common practice", 21,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.place = LesionPlace::preganglionic;
       },
       "Refer to a plexus unit", 14},
      {"radial palsy after plating, nerve not seen", "common practice", 2,
       [](auto& f) {
         f.mechanism = Mechanism::iatrogenic;
         f.completeness = Completeness::complete;
         f.nerve_seen = Seen::no;
       },
       "Re-explore early", 7},
      {"radial palsy after plating, nerve seen whole at closure", "common practice", 2,
       [](auto& f) {
         f.mechanism = Mechanism::iatrogenic;
         f.completeness = Completeness::complete;
         f.nerve_seen = Seen::yes;
       },
       "Nerve seen whole", 91},
      {"spontaneous anterior interosseous palsy in a child", "common practice", 10,
       [](auto& f) { f.mechanism = Mechanism::inflammatory; }, "Watch: neuralgic amyotrophy", 91},
      {"Saturday night palsy, EMG shows a block", "Trojaborg 1970 (6 to 8 weeks)", 14,
       [](auto& f) {
         f.mechanism = Mechanism::compression;
         f.grade = Grade::neurapraxia;
       },
       "Take the pressure away", 84},
      {"compression, grade not known", "common practice", 14,
       [](auto& f) { f.mechanism = Mechanism::compression; }, "Find and treat the cause", 28},
      {"birth palsy, two weeks old", "common practice", 14,
       [](auto& f) { f.mechanism = Mechanism::birth; }, "Refer to a birth palsy clinic", 30},
      {"tetraplegia", "Cain 2015; common practice", 60,
       [](auto& f) { f.mechanism = Mechanism::spinal_cord; }, "Test by stimulation", 91},
      {"injection palsy", "common practice", 7, [](auto& f) { f.mechanism = Mechanism::injection; },
       "Watch with pain control", 91},
      {"supracondylar fracture, pulse gone", "common practice", 0,
       [](auto& f) {
         f.mechanism = Mechanism::fracture_or_dislocation;
         f.red_flags = {"lost pulse"};
       },
       "Now: reduce and splint", 0},
      {"forearm crush, pain out of proportion", "common practice", 0,
       [](auto& f) {
         f.mechanism = Mechanism::open_crush;
         f.red_flags = {"pain out of proportion"};
       },
       "Now: take every dressing", 0},
      {"median deficit that grows after a distal radius fracture", "common practice", 1,
       [](auto& f) {
         f.mechanism = Mechanism::fracture_or_dislocation;
         f.completeness = Completeness::partial;
         f.red_flags = {"growing deficit"};
       },
       "Now: find what presses the nerve", 0},
      {"new deficit after an interscalene block", "common practice", 1,
       [](auto& f) {
         f.mechanism = Mechanism::iatrogenic;
         f.red_flags = {"new deficit after an operation or block"};
       },
       "Today: release dressings", 0},
      {"axillary swelling that expands after a stab", "common practice", 0,
       [](auto& f) {
         f.mechanism = Mechanism::open_sharp;
         f.red_flags = {"expanding haematoma"};
       },
       "Now: vascular imaging", 0},
      {"ulnar nerve sutured at the wrist two months ago", "Donoso 1979 (units by 7 months)", 60,
       [](auto& f) {
         f.mechanism = Mechanism::open_sharp;
         f.operation = OperationDone::repair;
         f.operation_date = kInjury;
       },
       "Protect, then examine monthly", 30},
      {"closed complete radial palsy first seen at two years", "textbook rows: 18 months", 730,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.completeness = Completeness::complete;
         f.recovery = RecoverySign::none;
       },
       "Nerve reconstruction is unlikely", 42},
      {"neuroma in continuity known from operation, month two, not repaired",
       "GPnotebook: Sunderland IV does not recover without operation", 60,
       [](auto& f) {
         f.mechanism = Mechanism::closed_traction;
         f.grade = Grade::sunderland_4;
       },
       "Explore and reconstruct", 21},
  };
  CHECK(vignettes.size() >= 25);
  for (const Vignette& vignette : vignettes) {
    CAPTURE(vignette.story, vignette.source);
    DecisionFacts facts;
    facts.injury_date = kInjury;
    facts.today = plus_days(kInjury, vignette.today_days);
    vignette.facts(facts);
    const Decision decision = rules().decide(facts);
    CAPTURE(decision.rule);
    CHECK(decision.next.find(vignette.next_contains) != std::string::npos);
    REQUIRE(decision.by_date);
    CHECK(days_between(facts.today, *decision.by_date) <= vignette.within_days);
    CHECK_FALSE(*decision.by_date < facts.today);
    CHECK_FALSE(decision.reasons.empty());
  }
}

TEST_CASE("what is no adult trauma gets a decision and no forecast", "[recovery]") {
  for (const Mechanism mechanism :
       {Mechanism::birth, Mechanism::spinal_cord, Mechanism::inflammatory, Mechanism::compression,
        Mechanism::injection}) {
    DecisionFacts facts;
    facts.mechanism = mechanism;
    facts.today = kInjury;
    CHECK(rules().decide(facts).withhold_forecast);
  }
}

TEST_CASE("a date that has passed becomes today and says so", "[recovery]") {
  DecisionFacts facts;
  facts.mechanism = Mechanism::open_sharp;
  facts.injury_date = kInjury;
  facts.today = plus_days(kInjury, 10);
  const Decision decision = rules().decide(facts);
  CHECK(decision.overdue);
  CHECK(*decision.by_date == facts.today);
}

TEST_CASE("without the date of the injury the decision stands without a calendar date",
          "[recovery]") {
  DecisionFacts facts;
  facts.mechanism = Mechanism::open_sharp;
  facts.today = kInjury;
  const Decision decision = rules().decide(facts);
  CHECK(decision.rule == "open_sharp_early");
  CHECK_FALSE(decision.by_date);
  CHECK(decision.by_from == "injury");
}

TEST_CASE("dated steps that have passed are left out", "[recovery]") {
  DecisionFacts facts;
  facts.mechanism = Mechanism::fracture_or_dislocation;
  facts.injury_date = kInjury;
  facts.today = plus_days(kInjury, 40);
  const Decision decision = rules().decide(facts);
  REQUIRE(decision.steps.size() == 2);
  CHECK(decision.steps[0].what == "examine");
  CHECK(*decision.steps[0].date == plus_days(kInjury, 56));
}

TEST_CASE("every combination of facts finds a rule and every closed wait has an end",
          "[recovery]") {
  for (int m = 0; m <= static_cast<int>(Mechanism::unknown); ++m) {
    for (const double days : {0.0, 30.0, 100.0, 400.0, 900.0}) {
      for (const auto completeness :
           {Completeness::complete, Completeness::partial, Completeness::unknown}) {
        for (const auto seen : {Seen::yes, Seen::no, Seen::unknown}) {
          for (const auto sign : {RecoverySign::seen, RecoverySign::none, RecoverySign::unknown}) {
            for (const auto operation : {OperationDone::none, OperationDone::other}) {
              DecisionFacts facts;
              facts.mechanism = static_cast<Mechanism>(m);
              facts.completeness = completeness;
              facts.nerve_seen = seen;
              facts.recovery = sign;
              facts.operation = operation;
              facts.injury_date = kInjury;
              facts.today = plus_days(kInjury, days);
              const Decision decision = rules().decide(facts);
              CHECK_FALSE(decision.next.empty());
              REQUIRE(decision.by_date);
              CHECK(days_between(facts.today, *decision.by_date) <= 91.0);
            }
          }
        }
      }
    }
  }
}

TEST_CASE("a red flag that no rule knows is refused with the known ones", "[recovery]") {
  const auto problem = rules().unknown_red_flag({"lost pulse", "green skin"});
  REQUIRE(problem);
  CHECK(problem->place == "/red_flags/1");
  CHECK(problem->mend.find("tense compartment") != std::string::npos);
  CHECK_FALSE(rules().unknown_red_flag({"lost pulse"}));
}
