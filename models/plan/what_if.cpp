#include "models/plan/what_if.hpp"

#include <fmt/format.h>

#include <functional>

namespace endplate::plan {
namespace {

using namespace recovery;
using Facts = std::vector<DecisionFacts>;

constexpr int kStepDays = 7;
constexpr int kMostSteps = 104;

// The most urgent of the injuries' decisions, as recovery takes it.
Decision decide(const DecisionRules& rules, const Facts& facts) {
  Decision decision;
  for (std::size_t k = 0; k < facts.size(); ++k) {
    Decision one = rules.decide(facts[k]);
    if (k == 0 || one.priority < decision.priority) decision = std::move(one);
  }
  return decision;
}

class Variation {
 public:
  Variation(const DecisionRules& rules, const Facts& facts)
      : rules_(rules), facts_(facts), now_(decide(rules, facts)) {}

  bool with(const std::string& input, const std::string& value,
            const std::function<void(DecisionFacts&)>& change) {
    Facts changed = facts_;
    for (DecisionFacts& one : changed) change(one);
    const Decision then = decide(rules_, changed);
    if (then.next == now_.next) return false;
    found_.push_back({input, value, then.next, then.rule});
    return true;
  }
  std::vector<WhatIf> found() && { return std::move(found_); }
  const DecisionFacts& first() const { return facts_.front(); }

 private:
  const DecisionRules& rules_;
  const Facts& facts_;
  Decision now_;
  std::vector<WhatIf> found_;
};

void vary_mechanism(Variation& vary) {
  using casefile::Mechanism;
  for (const Mechanism mechanism :
       {Mechanism::open_sharp, Mechanism::open_crush, Mechanism::gunshot,
        Mechanism::closed_traction, Mechanism::fracture_or_dislocation, Mechanism::iatrogenic,
        Mechanism::compression, Mechanism::injection, Mechanism::inflammatory}) {
    vary.with("mechanism", std::string(mechanism_words(mechanism)),
              [&](DecisionFacts& f) { f.mechanism = mechanism; });
  }
}

// The first week at which the rules say something else, nothing else having changed.
void vary_date(Variation& vary) {
  if (!vary.first().injury_date) return;
  for (int step = 1; step <= kMostSteps; ++step) {
    const int days = step * kStepDays;
    if (vary.with("date", fmt::format("{} more weeks pass without a change", step),
                  [&](DecisionFacts& f) { f.today = plus_days(f.today, days); })) {
      return;
    }
  }
}

}  // namespace

std::vector<WhatIf> what_would_change(const DecisionRules& rules, const Facts& facts) {
  if (facts.empty()) return {};
  Variation vary(rules, facts);
  const DecisionFacts& now = facts.front();
  if (now.mechanism == casefile::Mechanism::unknown) vary_mechanism(vary);
  if (now.completeness != Completeness::partial) {
    vary.with("completeness", "the deficit is partial",
              [](DecisionFacts& f) { f.completeness = Completeness::partial; });
  }
  if (now.completeness == Completeness::partial) {
    vary.with("completeness", "the deficit is complete",
              [](DecisionFacts& f) { f.completeness = Completeness::complete; });
  }
  if (now.nerve_seen != Seen::yes) {
    vary.with("nerve_seen", "the nerve was seen whole",
              [](DecisionFacts& f) { f.nerve_seen = Seen::yes; });
  } else {
    vary.with("nerve_seen", "the nerve was not seen",
              [](DecisionFacts& f) { f.nerve_seen = Seen::no; });
  }
  if (now.recovery != RecoverySign::seen) {
    vary.with("sign of recovery", "movement or EMG units return below the lesion",
              [](DecisionFacts& f) { f.recovery = RecoverySign::seen; });
  } else {
    vary.with("sign of recovery", "the sign of recovery does not hold",
              [](DecisionFacts& f) { f.recovery = RecoverySign::none; });
  }
  if (now.grade != casefile::Grade::neurapraxia) {
    vary.with("grade", "known to be a conduction block",
              [](DecisionFacts& f) { f.grade = casefile::Grade::neurapraxia; });
  }
  if (now.grade != casefile::Grade::neurotmesis) {
    vary.with("grade", "known to be divided (neurotmesis)",
              [](DecisionFacts& f) { f.grade = casefile::Grade::neurotmesis; });
  }
  if (now.place == LesionPlace::plexus) {
    vary.with("place", "a root is found torn from the cord",
              [](DecisionFacts& f) { f.place = LesionPlace::preganglionic; });
  }
  vary_date(vary);
  if (now.red_flags.empty()) {
    vary.with("red flag", "the deficit grows (any red flag comes before all else)",
              [](DecisionFacts& f) { f.red_flags = {"growing deficit"}; });
  } else {
    vary.with("red flag", "the red flag is dealt with",
              [](DecisionFacts& f) { f.red_flags.clear(); });
  }
  return std::move(vary).found();
}

}  // namespace endplate::plan
