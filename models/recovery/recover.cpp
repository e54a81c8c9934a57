#include "models/recovery/recover.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/limb/case_limb.hpp"
#include "models/recovery/reading.hpp"

namespace endplate::recovery {
namespace {

// More patients than this share their limbs: limbs differ less than growth does.
constexpr int kMostLimbs = 4000;

LesionPlace lesion_place(const casefile::Injury& injury) {
  if (!injury.at) return LesionPlace::nerve;
  if (const auto* root = std::get_if<casefile::AtRoot>(&*injury.at)) {
    return root->level == casefile::RootLevel::preganglionic ? LesionPlace::preganglionic
                                                             : LesionPlace::plexus;
  }
  const bool plexus = std::holds_alternative<casefile::AtTrunk>(*injury.at) ||
                      std::holds_alternative<casefile::AtCord>(*injury.at);
  return plexus ? LesionPlace::plexus : LesionPlace::nerve;
}

std::string operation_words(const OperationOn& operation) {
  if (!operation.repaired) return "without repair";
  return fmt::format("{} {}", operation.planned ? "with the planned" : "after the",
                     operation.graft ? "graft" : "repair");
}

// One case on its way to an answer; each step fills in what the next one needs.
class Recovery {
 public:
  Recovery(const casefile::Case& patient, const evidence::DataPackage& package,
           const anatomy::NerveTree& tree, const RecoveryOptions& options,
           const Parameters& parameters, const DecisionRules& rules, const limb::CaseLimb& limb)
      : patient_(patient),
        package_(package),
        tree_(tree),
        options_(options),
        parameters_(parameters),
        rules_(rules),
        limb_(limb) {}

  Expected<RecoveryAnswer> answer() {
    if (const auto problem = check_dates()) return std::unexpected(Error::input(*problem));
    answer_.injury_date = patient_.injuries.front().date;
    day_zero_ = answer_.injury_date.value_or(options_.today);
    if (!answer_.injury_date) {
      assume(
          "the date of the injury is not known: days count from the injury, and time already "
          "gone is taken as none");
    }
    if (const auto placed = place_lesions(); !placed) return std::unexpected(placed.error());
    find_targets();
    decide();
    point_to_followup();
    if (answer_.no_forecast.empty()) {
      if (const auto run = run_forecast(); !run) return std::unexpected(run.error());
    }
    cite();
    return std::move(answer_);
  }

 private:
  void assume(std::string words) { answer_.assumptions.push_back(std::move(words)); }

  // A sign that stands still would change the decision, and is not looked at here.
  void point_to_followup() {
    if (options_.after_forecast) return;
    const bool tapped = (patient_.examination && !patient_.examination->tinel.empty()) ||
                        std::ranges::any_of(patient_.observations,
                                            [](const auto& seen) { return !seen.tinel.empty(); });
    if (tapped) {
      assume(
          "the Tinel points of the case are not weighed here, though they can change the decision: "
          "followup weighs them");
    }
  }

  std::optional<Problem> check_dates() const {
    for (std::size_t k = 0; k < patient_.injuries.size(); ++k) {
      const auto& date = patient_.injuries[k].date;
      if (date && *date > options_.today) {
        return Problem{fmt::format("/injuries/{}/date", k), "the injury lies after today",
                       "Correct the date, or give --today."};
      }
    }
    const auto& injury = patient_.injuries.front().date;
    for (std::size_t k = 0; k < patient_.operations.size(); ++k) {
      const casefile::Operation& operation = patient_.operations[k];
      const std::string place = fmt::format("/operations/{}/date", k);
      if (operation.date && injury && *operation.date < *injury) {
        return Problem{place, "the operation lies before the injury",
                       "Correct one of the two dates."};
      }
      if (operation.date && operation.state == casefile::OperationState::done &&
          *operation.date > options_.today) {
        return Problem{place, "an operation that is done lies after today",
                       "Correct the date, or write \"state\": \"planned\"."};
      }
    }
    return std::nullopt;
  }

  std::expected<void, Error> place_lesions() {
    for (std::size_t k = 0; k < patient_.injuries.size(); ++k) {
      const casefile::Injury& injury = patient_.injuries[k];
      RecoveryLesion shown;
      shown.nerve = injury.nerve;
      shown.mechanism = mechanism_words(injury.mechanism);
      shown.grade = grade_words(injury.grade);
      if (injury.mechanism == casefile::Mechanism::unknown) {
        assume(fmt::format("injury {}: the mechanism is not known", k + 1));
      }
      if (!injury.at) {
        answer_.no_forecast = fmt::format(
            "the place of the lesion is not given: fill in /injuries/{}/at for a forecast", k);
        shown.place = "place not given";
        answer_.lesions.push_back(std::move(shown));
        operations_.push_back(operation_on(patient_, injury));
        continue;
      }
      auto lesion = limb_.place_injury(injury, k);
      if (!lesion) return std::unexpected(lesion.error());
      shown.place = lesion->words;
      if (shown.nerve.empty()) shown.nerve = tree_.node(lesion->at.nerve).name;
      const OperationOn operation = operation_on(patient_, injury);
      operations_.push_back(operation);
      LesionModel model;
      model.lesion = *lesion;
      if (lesion_place(injury) == LesionPlace::preganglionic) model.lesion.preganglionic = true;
      const GradeChance grade = grade_chance(injury, parameters_);
      model.chance = grade.chance;
      model.partial_growth = grade.partial_growth;
      model.repaired = operation.repaired && !model.lesion.preganglionic;
      if (operation.repaired) model_operation(operation, model);
      if (grade.mixture && !model.repaired && !model.lesion.preganglionic) {
        mixed_injuries_.push_back(k);
        used_parameters_.insert(grade.parameters.begin(), grade.parameters.end());
      }
      shown.repaired = model.repaired;
      shown.preganglionic = model.lesion.preganglionic;
      shown.operation = operation_words(operation);
      answer_.lesions.push_back(std::move(shown));
      models_.push_back(std::move(model));
    }
    return {};
  }

  void model_operation(const OperationOn& operation, LesionModel& model) {
    model.coaptations = operation.graft ? 2 : 1;
    const casefile::Date date = operation.date.value_or(options_.today);
    if (!operation.date) assume("the operation has no date: taken as today");
    model.operation_days = std::max(0.0, days_between(day_zero_, date));
    if (operation.planned) assume("the planned operation is reckoned as done on its date");
    if (operation.gap_mm) {
      model.gap_mm = *operation.gap_mm;
      assume("the gap after resection is taken as half on each side of the lesion");
    } else if (operation.graft) {
      assume("the length of the graft is not given: taken as none, so the way is a little short");
    }
    if (operation.graft) {
      assume(
          "series with grafts over about 50 mm do worse (graft_len_threshold_radial_zhu23, "
          "graft_len_poor_kallio93, graftlen_ulnar_roganovic04); the effect of length that the "
          "counts show is small and uncertain, so the chance of a long graft may be too high");
    }
  }

  void find_targets() {
    std::vector<anatomy::NervePosition> places;
    for (const LesionModel& model : models_) places.push_back(model.lesion.at);
    targets_ = targets_below(all_targets(tree_, package_), places, tree_, limb_.metrics());
    findings_ = findings_of(patient_, targets_, day_zero_, answer_.assumptions);
    if (!answer_.injury_date && !findings_.empty()) {
      findings_.clear();
      assume("findings cannot be dated from an injury without a date: not used");
    }
    const bool partial_lesion = std::ranges::any_of(patient_.injuries, [](const auto& injury) {
      return injury.complete.has_value() && !*injury.complete;
    });
    sign_ = recovery_sign(findings_, targets_);
    kept_ = kept_early(findings_, targets_);
    if (partial_lesion) {
      for (TargetBelow& below : targets_) below.partial = true;
      findings_.clear();
      assume(
          "the deficit is partial: what is dated are the interrupted axons alone, and no chance "
          "of use is given for a muscle that kept some");
    }
  }

  DecisionFacts facts(std::size_t k) const {
    const casefile::Injury& injury = patient_.injuries[k];
    DecisionFacts facts;
    facts.red_flags = patient_.red_flags;
    facts.mechanism = injury.mechanism;
    facts.grade = injury.grade;
    if (injury.complete) {
      facts.completeness = *injury.complete ? Completeness::complete : Completeness::partial;
    } else if (kept_) {
      facts.completeness = Completeness::partial;
    }
    if (injury.nerve_seen) facts.nerve_seen = *injury.nerve_seen ? Seen::yes : Seen::no;
    facts.operation = operations_[k].done;
    facts.operation_date = operations_[k].done_date;
    facts.place = lesion_place(injury);
    facts.recovery = sign_;
    facts.injury_date = injury.date;
    facts.today = options_.today;
    return facts;
  }

  // The most urgent of the injuries' decisions; a red flag never hides that a forecast is withheld.
  void decide() {
    for (std::size_t k = 0; k < patient_.injuries.size(); ++k) {
      DecisionFacts known = facts(k);
      answer_.facts.push_back(known);
      const Decision decision = rules_.decide(known);
      if (k == 0 || decision.priority < answer_.decision.priority) answer_.decision = decision;
      known.red_flags.clear();
      if (rules_.decide(known).withhold_forecast) {
        answer_.no_forecast = fmt::format("the mechanism '{}' is not run as adult trauma",
                                          mechanism_words(known.mechanism));
      }
      if (!patient_.injuries[k].complete && !kept_) {
        assume(
            fmt::format("injury {}: whether the deficit is complete is not given; the rules for "
                        "a complete one were used",
                        k + 1));
      }
    }
    if (answer_.no_forecast.empty() && targets_.empty()) {
      answer_.no_forecast = "no muscle and no skin area of the tables hangs beyond the lesion";
    }
  }

  std::expected<void, Error> run_forecast() {
    const int count = std::min(options_.samples, kMostLimbs);
    const auto limbs = limb_.sample(count, options_.seed);
    const anatomy::LimbColumns limb_columns(limbs);
    ForecastQuestion question;
    question.limb_columns = &limb_columns;
    question.tree = &tree_;
    question.parameters = &parameters_;
    question.limbs = &limbs;
    for (std::size_t k = 0; k < models_.size(); ++k) {
      const casefile::Injury& injury = patient_.injuries[k];
      auto places = limb_.sample_places_mm(injury.nerve, *injury.at, count, options_.seed);
      if (!places) return std::unexpected(places.error());
      models_[k].places_mm = std::move(*places);
    }
    question.samples = static_cast<std::size_t>(options_.samples);
    question.targets = targets_;
    question.lesions = models_;
    question.findings = findings_;
    question.age_years = patient_.limb.age_years;
    question.seed = options_.seed;
    for (const std::size_t k : mixed_injuries_) {
      assume(
          fmt::format("injury {}: the grade is not known, so it is a mixture given the "
                      "mechanism and what was found",
                      k + 1));
    }
    if (!patient_.limb.age_years) {
      assume("the age is not given: the chance of use is that of the middle age group");
    }
    ForecastQuestion asked = question;
    if (options_.before_forecast) {
      if (auto ready = options_.before_forecast(asked, limb_); !ready) return ready;
    }
    const Forecast result = forecast(asked);
    if (options_.after_forecast) options_.after_forecast(asked, result);
    used_parameters_.insert(result.parameters.begin(), result.parameters.end());
    answer_.findings_used = result.findings_used;
    if (result.findings_contradict) {
      assume(
          "the findings fit hardly any patient with this lesion: look again at place, grade and "
          "findings; the forecast was made without them");
    }
    for (std::size_t k = 0; k < models_.size(); ++k) {
      answer_.lesions[k].grade_chance = result.grade_chance[k];
    }
    answer_.block_first_days = result.block_first_days;
    answer_.block_useful_days = result.block_useful_days;
    for (const TargetForecast& target : result.targets) {
      // Below the lesion in the mean limb, so it stands here even where a limb is unlike it.
      const TargetBelow& below = targets_[target.target];
      answer_.targets.push_back({below.target.id, below.target.name, below.target.kind,
                                 below.target.nerve, below.partial, below.target.autonomous_zone,
                                 target});
      for (std::string& id : limb_.sources(below.target.branch)) sources_.insert(std::move(id));
    }
    const double today = std::max(0.0, days_between(day_zero_, options_.today));
    time_operation(question, today);
    answer_.tinel = tinel_schedule(asked, result, std::max(today, 30.0));
    return {};
  }

  void time_operation(const ForecastQuestion& question, double today_days) {
    const bool done = std::ranges::all_of(
        operations_, [](const OperationOn& on) { return on.repaired && !on.planned; });
    const bool block = std::ranges::all_of(
        models_, [](const LesionModel& model) { return model.chance[0] >= 1.0; });
    if (done) {
      answer_.no_timing = "the nerve is repaired";
    } else if (block) {
      answer_.no_timing = "a conduction block is not operated on";
    } else {
      const bool sharp = patient_.injuries.front().mechanism == casefile::Mechanism::open_sharp;
      const bool planned_suture = operations_.front().repaired && !operations_.front().graft;
      answer_.timing = operation_timing(question, today_days, !(sharp || planned_suture));
      if (!answer_.timing) {
        answer_.no_timing = "no lesion that could be repaired has a whole muscle or area below it";
        return;
      }
      if (answer_.timing->procedure == "graft") {
        assume("the curve of operation dates is that of a graft");
      }
      for (const Parameter& parameter : parameters_.all()) {
        if (parameter.treatment == "operated" &&
            (parameter.quantity == "coaptation delay" || parameter.quantity == "rate")) {
          used_parameters_.insert(parameter.id);
        }
      }
    }
  }

  void cite() {
    if (!answer_.no_forecast.empty()) used_parameters_.clear();
    for (const Parameter& parameter : parameters_.all()) {
      if (!used_parameters_.contains(parameter.id)) continue;
      sources_.insert(parameter.rows.begin(), parameter.rows.end());
      if (parameter.provenance == evidence::Provenance::assumed) {
        answer_.assumed_parameters.push_back(fmt::format(
            "{} ({}) is assumed: {}", parameter.quantity, parameter.id, parameter.reason));
      }
    }
    sources_.insert(answer_.decision.rows.begin(), answer_.decision.rows.end());
    answer_.sources.assign(sources_.begin(), sources_.end());
    answer_.assumptions.insert(answer_.assumptions.end(), limb_.assumptions().begin(),
                               limb_.assumptions().end());
    answer_.warnings = limb_.warnings();
  }

  const casefile::Case& patient_;
  const evidence::DataPackage& package_;
  const anatomy::NerveTree& tree_;
  const RecoveryOptions& options_;
  const Parameters& parameters_;
  const DecisionRules& rules_;
  const limb::CaseLimb& limb_;

  RecoveryAnswer answer_;
  casefile::Date day_zero_{};
  std::vector<OperationOn> operations_;  // by injury
  std::vector<LesionModel> models_;      // by injury, when every place is known
  std::vector<TargetBelow> targets_;
  std::vector<Finding> findings_;
  RecoverySign sign_ = RecoverySign::unknown;
  bool kept_ = false;
  std::vector<std::size_t> mixed_injuries_;
  std::set<std::string> used_parameters_;
  std::set<std::string> sources_;
};

}  // namespace

Expected<RecoveryAnswer> recover(const casefile::Case& patient,
                                 const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const RecoveryOptions& options) {
  if (patient.injuries.empty()) {
    return std::unexpected(Error::outside_model(
        {"/injuries", "the case holds no injury, so nothing is denervated",
         "Add \"injuries\" with at least \"nerve\", \"at\" and \"mechanism\"."}));
  }
  auto parameters = Parameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  auto rules = DecisionRules::from(package);
  if (!rules) return std::unexpected(rules.error());
  if (const auto problem = rules->unknown_red_flag(patient.red_flags)) {
    return std::unexpected(Error::input(*problem));
  }
  auto limb = limb::CaseLimb::from(package, tree, patient.limb);
  if (!limb) return std::unexpected(limb.error());
  return Recovery(patient, package, tree, options, *parameters, *rules, *limb).answer();
}

}  // namespace endplate::recovery
