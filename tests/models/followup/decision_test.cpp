// What a follow-up does to the decision: the rules of decision_rules.csv under each call.
#include "models/recovery/decision.hpp"

#include "tests/models/recovery/fixture.hpp"

using namespace recovery_tests;
using namespace endplate::recovery;
using casefile::Grade;
using casefile::Mechanism;

namespace {

const casefile::Date kInjury{std::chrono::year(2026), std::chrono::month(1), std::chrono::day(5)};

DecisionFacts facts_on(double days, Mechanism mechanism, OperationDone operation,
                       Progress progress) {
  DecisionFacts facts;
  facts.mechanism = mechanism;
  facts.operation = operation;
  facts.progress = progress;
  facts.recovery = RecoverySign::none;
  facts.injury_date = kInjury;
  if (operation != OperationDone::none) facts.operation_date = plus_days(kInjury, 3);
  facts.today = plus_days(kInjury, days);
  return facts;
}

bool goes_on_waiting(const Decision& decision) {
  for (const char* words : {"Watch", "Go on watching", "Protect", "Follow up", "Examine now",
                            "Take the pressure away", "Nerve seen and whole: watch"}) {
    if (decision.next.starts_with(words)) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("no advance is never answered with more waiting", "[followup]") {
  const auto mechanism = GENERATE(Mechanism::open_sharp, Mechanism::open_crush, Mechanism::gunshot,
                                  Mechanism::closed_traction, Mechanism::fracture_or_dislocation,
                                  Mechanism::iatrogenic, Mechanism::unknown);
  const auto operation = GENERATE(OperationDone::none, OperationDone::repair, OperationDone::graft,
                                  OperationDone::other);
  const auto seen = GENERATE(Seen::yes, Seen::no, Seen::unknown);
  const auto complete =
      GENERATE(Completeness::complete, Completeness::partial, Completeness::unknown);
  const auto sign = GENERATE(RecoverySign::none, RecoverySign::unknown);
  for (const double days : {60.0, 75.0, 100.0, 200.0, 400.0, 600.0, 1000.0}) {
    DecisionFacts facts = facts_on(days, mechanism, operation, Progress::no_advance);
    facts.nerve_seen = seen;
    facts.completeness = complete;
    facts.recovery = sign;
    const Decision decision = rules().decide(facts);
    CAPTURE(mechanism_words(mechanism), static_cast<int>(operation), static_cast<int>(seen),
            static_cast<int>(complete), days, decision.rule, decision.next);
    CHECK_FALSE(goes_on_waiting(decision));
    REQUIRE(decision.by_date);
    CHECK(days_between(facts.today, *decision.by_date) <= 42.0);
  }
}

TEST_CASE("a watchful decision becomes the end of waiting, with a date", "[followup]") {
  DecisionFacts facts = facts_on(80.0, Mechanism::fracture_or_dislocation, OperationDone::none,
                                 Progress::not_followed);
  CHECK(rules().decide(facts).next.starts_with("Watch with dates"));
  facts.progress = Progress::no_advance;
  const Decision decision = rules().decide(facts);
  CHECK(decision.next.starts_with("End of waiting: explore"));
  CHECK(decision.by_date == plus_days(facts.today, 21));

  facts = facts_on(100.0, Mechanism::open_sharp, OperationDone::repair, Progress::on_course);
  CHECK(rules().decide(facts).next.starts_with("Protect"));
  facts.progress = Progress::no_advance;
  CHECK(rules().decide(facts).next.starts_with("End of waiting set: a second observer"));
  facts.today = plus_days(facts.today, 80);
  CHECK(rules().decide(facts).next.starts_with("End of waiting: ultrasound and EMG"));
}

TEST_CASE("axons on course put off the end of waiting to six months and no further", "[followup]") {
  const auto next = [](double days, Progress progress) {
    return rules()
        .decide(facts_on(days, Mechanism::fracture_or_dislocation, OperationDone::none, progress))
        .next;
  };
  CHECK(next(120.0, Progress::not_followed).starts_with("End of waiting"));
  CHECK(next(120.0, Progress::cannot_tell_yet).starts_with("End of waiting"));
  CHECK(next(120.0, Progress::on_course).starts_with("Go on watching, with an end"));
  CHECK(next(120.0, Progress::late).starts_with("EMG of the first muscle now"));
  CHECK(next(190.0, Progress::on_course).starts_with("End of waiting"));
  CHECK(next(190.0, Progress::late).starts_with("End of waiting"));
}

TEST_CASE("no advance takes nothing from what is more urgent", "[followup]") {
  DecisionFacts facts = facts_on(100.0, Mechanism::fracture_or_dislocation, OperationDone::none,
                                 Progress::no_advance);
  facts.red_flags = {"tense compartment"};
  CHECK(rules().decide(facts).rule == "flag_compartment");
  facts.red_flags.clear();
  facts.place = LesionPlace::preganglionic;
  CHECK(rules().decide(facts).rule == "preganglionic");

  DecisionFacts cut =
      facts_on(60.0, Mechanism::open_sharp, OperationDone::none, Progress::on_course);
  cut.completeness = Completeness::complete;
  CHECK(rules().decide(cut).next.starts_with("Explore now"));  // whatever the sign does
}

TEST_CASE("nothing moves in time after a repair: the wait ends whatever the Tinel sign does",
          "[followup]") {
  const Decision decision = rules().decide(
      facts_on(430.0, Mechanism::open_sharp, OperationDone::repair, Progress::cannot_tell_yet));
  CHECK(decision.next.starts_with("End of waiting for the first muscle"));
}

TEST_CASE("a block in which nothing comes back is no block", "[followup]") {
  DecisionFacts facts =
      facts_on(120.0, Mechanism::compression, OperationDone::none, Progress::no_advance);
  facts.grade = Grade::neurapraxia;
  CHECK(rules().decide(facts).next.starts_with("End of waiting"));
}
