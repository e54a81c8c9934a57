#include "models/recovery/decision.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

namespace endplate::recovery {
namespace {

using casefile::Grade;
using casefile::Mechanism;

std::string_view words(Completeness value) {
  switch (value) {
    case Completeness::complete:
      return "complete";
    case Completeness::partial:
      return "partial";
    case Completeness::unknown:
      break;
  }
  return "unknown";
}

std::string_view words(Seen value) {
  switch (value) {
    case Seen::yes:
      return "yes";
    case Seen::no:
      return "no";
    case Seen::unknown:
      break;
  }
  return "unknown";
}

std::string_view words(OperationDone value) {
  switch (value) {
    case OperationDone::repair:
      return "repair done";
    case OperationDone::graft:
      return "graft done";
    case OperationDone::other:
      return "other done";
    case OperationDone::none:
      break;
  }
  return "none";
}

std::string_view words(LesionPlace value) {
  switch (value) {
    case LesionPlace::plexus:
      return "plexus";
    case LesionPlace::preganglionic:
      return "preganglionic";
    case LesionPlace::nerve:
      break;
  }
  return "nerve";
}

std::string_view words(RecoverySign value) {
  switch (value) {
    case RecoverySign::seen:
      return "seen";
    case RecoverySign::none:
      return "none";
    case RecoverySign::unknown:
      break;
  }
  return "unknown";
}

bool listed(const std::vector<std::string>& allowed, std::string_view value) {
  return allowed.empty() || std::ranges::find(allowed, value) != allowed.end();
}

// "28=first EMG"
std::optional<DatedStep> parse_step(const std::string& text) {
  double days = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), days);
  if (error != std::errc() || end == text.data() + text.size() || *end != '=') return std::nullopt;
  return DatedStep{days, std::nullopt, std::string(end + 1, text.data() + text.size())};
}

}  // namespace

std::string_view progress_words(Progress progress) {
  switch (progress) {
    case Progress::ahead:
      return "ahead";
    case Progress::on_course:
      return "on course";
    case Progress::late:
      return "late";
    case Progress::no_advance:
      return "no advance";
    case Progress::cannot_tell_yet:
      return "cannot tell yet";
    case Progress::not_informative:
      return "not informative";
    case Progress::not_followed:
      break;
  }
  return "";
}

std::string_view mechanism_words(Mechanism mechanism) {
  switch (mechanism) {
    case Mechanism::open_sharp:
      return "open sharp";
    case Mechanism::open_crush:
      return "open crush";
    case Mechanism::gunshot:
      return "gunshot";
    case Mechanism::closed_traction:
      return "closed traction";
    case Mechanism::fracture_or_dislocation:
      return "fracture or dislocation";
    case Mechanism::iatrogenic:
      return "iatrogenic";
    case Mechanism::compression:
      return "compression";
    case Mechanism::injection:
      return "injection";
    case Mechanism::inflammatory:
      return "inflammatory";
    case Mechanism::birth:
      return "birth";
    case Mechanism::spinal_cord:
      return "spinal cord";
    case Mechanism::unknown:
      break;
  }
  return "unknown";
}

std::string_view grade_words(Grade grade) {
  switch (grade) {
    case Grade::neurapraxia:
      return "neurapraxia";
    case Grade::axonotmesis:
      return "axonotmesis";
    case Grade::neurotmesis:
      return "neurotmesis";
    case Grade::sunderland_1:
      return "sunderland_1";
    case Grade::sunderland_2:
      return "sunderland_2";
    case Grade::sunderland_3:
      return "sunderland_3";
    case Grade::sunderland_4:
      return "sunderland_4";
    case Grade::sunderland_5:
      return "sunderland_5";
    case Grade::unknown:
      break;
  }
  return "unknown";
}

double days_between(casefile::Date from, casefile::Date to) {
  return static_cast<double>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

casefile::Date plus_days(casefile::Date date, double days) {
  return std::chrono::sys_days(date) +
         std::chrono::days(static_cast<std::int64_t>(std::lround(days)));
}

Expected<DecisionRules> DecisionRules::from(const evidence::DataPackage& package) {
  DecisionRules rules;
  std::vector<Problem> problems;
  bool catch_all = false;
  for (const evidence::Row row : package.table("decision_rules")) {
    Rule rule;
    rule.id = row.text("id");
    rule.priority = row.number("priority").value_or(0.0);
    rule.red_flags = row.list("red_flag");
    rule.mechanisms = row.list("mechanism");
    rule.grades = row.list("grade");
    rule.completeness = row.list("completeness");
    rule.nerve_seen = row.list("nerve_seen");
    rule.operations = row.list("operation");
    rule.recovery = row.list("recovery");
    rule.progress = row.list("progress");
    rule.places = row.list("place");
    rule.min_days = row.number("min_days");
    rule.max_days = row.number("max_days");
    rule.days_from_operation = row.text("days_from") == "operation";
    for (const std::string& text : row.list("dated_steps")) {
      const auto step = parse_step(text);
      if (step) {
        rule.steps.push_back(*step);
      } else {
        problems.push_back(
            {fmt::format("decision_rules.csv, row {}, column dated_steps", row.line()),
             fmt::format("'{}' is no dated step", text),
             "Write DAYS=WHAT, the days counted from the injury."});
      }
    }
    Decision& d = rule.decision;
    d.rule = rule.id;
    d.priority = rule.priority;
    d.next = row.text("next");
    d.by_days = row.number("by_days").value_or(0.0);
    d.by_from = row.text("by_from");
    d.unless = row.text("unless");
    d.reasons = row.list("reasons");
    d.withhold_forecast = row.text("forecast") == "withhold";
    d.practice = row.text("practice");
    d.source = row.text("source");
    d.provenance = row.text("provenance");
    d.rows = row.list("regeneration_rows");
    for (auto& id : row.list("outcome_rows")) d.rows.push_back(std::move(id));
    catch_all =
        catch_all || (rule.red_flags.empty() && rule.mechanisms.empty() && rule.grades.empty() &&
                      rule.completeness.empty() && rule.nerve_seen.empty() &&
                      rule.operations.empty() && rule.recovery.empty() && rule.progress.empty() &&
                      rule.places.empty() && !rule.min_days && !rule.max_days);
    rules.rules_.push_back(std::move(rule));
  }
  if (!catch_all) {
    problems.push_back({"decision_rules.csv", "no rule is without conditions",
                        "Keep one rule of the lowest priority that fits every case."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  std::ranges::stable_sort(rules.rules_, {}, &Rule::priority);
  return rules;
}

bool DecisionRules::fits(const Rule& rule, const DecisionFacts& facts) {
  if (!rule.red_flags.empty() &&
      std::ranges::none_of(facts.red_flags, [&](const std::string& flag) {
        return std::ranges::find(rule.red_flags, flag) != rule.red_flags.end();
      })) {
    return false;
  }
  const auto& from = rule.days_from_operation ? facts.operation_date : facts.injury_date;
  if (from) {
    const double days = days_between(*from, facts.today);
    if (rule.min_days && days < *rule.min_days) return false;
    if (rule.max_days && days > *rule.max_days) return false;
  } else if (rule.min_days) {
    return false;  // an early rule is the safer one when nobody knows how late it is
  }
  return listed(rule.mechanisms, mechanism_words(facts.mechanism)) &&
         listed(rule.grades, grade_words(facts.grade)) &&
         listed(rule.completeness, words(facts.completeness)) &&
         listed(rule.nerve_seen, words(facts.nerve_seen)) &&
         listed(rule.operations, words(facts.operation)) &&
         listed(rule.places, words(facts.place)) && listed(rule.recovery, words(facts.recovery)) &&
         listed(rule.progress, progress_words(facts.progress));
}

std::optional<Problem> DecisionRules::unknown_red_flag(
    const std::vector<std::string>& flags) const {
  std::set<std::string> known;
  for (const Rule& rule : rules_) known.insert(rule.red_flags.begin(), rule.red_flags.end());
  for (std::size_t k = 0; k < flags.size(); ++k) {
    if (known.contains(flags[k])) continue;
    return Problem{fmt::format("/red_flags/{}", k), fmt::format("'{}' is no red flag", flags[k]),
                   fmt::format("Use one of: {}.", fmt::join(known, ", "))};
  }
  return std::nullopt;
}

Decision DecisionRules::decide(const DecisionFacts& facts) const {
  const auto rule =
      std::ranges::find_if(rules_, [&](const Rule& candidate) { return fits(candidate, facts); });
  Decision decision = rule->decision;
  std::optional<casefile::Date> from = facts.today;
  if (decision.by_from == "injury") from = facts.injury_date;
  if (decision.by_from == "operation") from = facts.operation_date;
  if (from) {
    decision.by_date = plus_days(*from, decision.by_days);
    if (*decision.by_date < facts.today) {
      decision.by_date = facts.today;
      decision.overdue = true;
    }
  }
  for (DatedStep step : rule->steps) {
    if (facts.injury_date) {
      step.date = plus_days(*facts.injury_date, step.days_from_injury);
      if (*step.date < facts.today) continue;
    }
    decision.steps.push_back(std::move(step));
  }
  return decision;
}

}  // namespace endplate::recovery
