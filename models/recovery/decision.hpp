#pragma once
// What to decide next and by when. Red flags come first, then the mechanism; a forecast comes
// after both. The rules are rows of decision_rules.csv, the first that fits by priority wins.
#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::recovery {

enum class Completeness { complete, partial, unknown };
enum class Seen { yes, no, unknown };
enum class OperationDone { none, repair, graft, other };
enum class LesionPlace { nerve, plexus, preganglionic };
enum class RecoverySign { seen, none, unknown };  // in what hangs below the lesion
// What serial examinations show of the axons' advance; `not_followed` where nobody judged it.
enum class Progress {
  not_followed,
  ahead,
  on_course,
  late,
  no_advance,
  cannot_tell_yet,
  not_informative
};
// As decision_rules.csv writes it: "no advance"; empty for not_followed.
std::string_view progress_words(Progress progress);

struct DecisionFacts {
  std::vector<std::string> red_flags;
  casefile::Mechanism mechanism = casefile::Mechanism::unknown;
  casefile::Grade grade = casefile::Grade::unknown;
  Completeness completeness = Completeness::unknown;
  Seen nerve_seen = Seen::unknown;
  OperationDone operation = OperationDone::none;
  LesionPlace place = LesionPlace::nerve;
  RecoverySign recovery = RecoverySign::unknown;
  Progress progress = Progress::not_followed;
  std::optional<casefile::Date> injury_date;
  std::optional<casefile::Date> operation_date;
  casefile::Date today{};
};

struct DatedStep {
  double days_from_injury = 0.0;
  std::optional<casefile::Date> date;
  std::string what;
};

struct Decision {
  std::string rule;
  double priority = 0.0;
  std::string next;
  std::optional<casefile::Date> by_date;  // absent when the date it counts from is not known
  double by_days = 0.0;
  std::string by_from;   // "injury", "today" or "operation"
  bool overdue = false;  // the date was before today and is now today
  std::string unless;
  std::vector<std::string> reasons;
  std::vector<DatedStep> steps;  // those still ahead, when the injury's date is known
  bool withhold_forecast = false;
  std::string practice;  // the common-practice date in words
  std::string source;
  std::string provenance;
  std::vector<std::string> rows;  // of regeneration.csv and outcomes.csv
};

class DecisionRules {
 public:
  static Expected<DecisionRules> from(const evidence::DataPackage& package);
  // Every case fits a rule: the last has no conditions. When the date of the injury is not known,
  // the rules of the early days hold: the safer ones when nobody knows how late it is.
  Decision decide(const DecisionFacts& facts) const;
  // The first of `flags` that no rule knows, so that none is passed over in silence.
  std::optional<Problem> unknown_red_flag(const std::vector<std::string>& flags) const;

 private:
  struct Rule {
    std::string id;
    double priority = 0.0;
    std::vector<std::string> red_flags;
    std::vector<std::string> mechanisms;
    std::vector<std::string> grades;
    std::vector<std::string> completeness;
    std::vector<std::string> nerve_seen;
    std::vector<std::string> operations;
    std::vector<std::string> recovery;
    std::vector<std::string> progress;
    std::vector<std::string> places;
    std::optional<double> min_days;
    std::optional<double> max_days;
    bool days_from_operation = false;
    std::vector<DatedStep> steps;
    Decision decision;
  };
  static bool fits(const Rule& rule, const DecisionFacts& facts);
  std::vector<Rule> rules_;
};

std::string_view mechanism_words(casefile::Mechanism mechanism);
// As decision_rules.csv and recovery_parameters.csv write it: "sunderland_3".
std::string_view grade_words(casefile::Grade grade);
// Of the later date minus the earlier.
double days_between(casefile::Date from, casefile::Date to);
casefile::Date plus_days(casefile::Date date, double days);

}  // namespace endplate::recovery
