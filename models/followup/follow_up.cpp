#include "models/followup/follow_up.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>
#include <set>

#include "models/casefile/words.hpp"
#include "models/followup/sensation.hpp"
#include "models/recovery/random.hpp"
#include "models/recovery/weighted.hpp"

namespace endplate::followup {
namespace {

using recovery::Course;
using recovery::Finding;
using recovery::Forecast;
using recovery::ForecastQuestion;
using recovery::Progress;

// Possible patients that Tinel points are weighed over. Of 65536 some 2000 or more count after six
// monthly points, so that the ends of an interval are good to a few per cent of its width.
constexpr std::size_t kDraws = 1U << 16U;
// Fewer effective patients than this and nothing can be summarised.
constexpr double kFewestPatients = 25.0;

// A stated grade may be wrong: what was seen later must be able to outweigh it.
void allow_for_wrong_grade(recovery::LesionModel& model, const FollowupParameters& parameters) {
  if (model.repaired) {
    model.chance_repair_fails = parameters.repair_fails;
    return;
  }
  double sum = 0.0;
  for (const std::size_t component : {1UL, 2UL}) {
    model.chance[component] = std::max(model.chance[component], parameters.grade_error);
  }
  for (const double chance : model.chance) sum += chance;
  for (double& chance : model.chance) chance /= sum;
}

double severity(Progress progress) {
  constexpr std::array<Progress, 6> kWorstFirst{
      Progress::no_advance,      Progress::late,      Progress::cannot_tell_yet,
      Progress::not_informative, Progress::on_course, Progress::ahead};
  return static_cast<double>(std::ranges::find(kWorstFirst, progress) - kWorstFirst.begin());
}

class FollowUp {
 public:
  FollowUp(const casefile::Case& patient, const FollowupParameters& parameters,
           FollowupAnswer& answer)
      : patient_(patient), parameters_(parameters), answer_(answer) {}

  // Weighs the patients of the forecast by the Tinel points.
  std::expected<void, Error> observe(ForecastQuestion& question, const limb::CaseLimb& limb) {
    limb_ = &limb;
    for (recovery::LesionModel& model : question.lesions) {
      allow_for_wrong_grade(model, parameters_);
    }
    misfit_.assign(question.lesions.size(), false);
    const auto& day_zero = patient_.injuries.front().date;
    if (!day_zero) return {};
    for (Finding& finding : sensation_findings(patient_, *day_zero, question.targets)) {
      question.findings.push_back(finding);
    }
    auto reading = read_tinel(patient_, *day_zero, question, limb, parameters_);
    if (!reading) return std::unexpected(reading.error());
    std::ranges::move(reading->remarks, std::back_inserter(answer_.remarks));

    ForecastQuestion possible = question;
    possible.samples = kDraws;
    possible.findings.clear();
    const recovery::Slowing slowing{
        question.parameters->find("rate reference distance", "any", "any").mean,
        question.parameters->find("slowing length", "any", "any").mean};
    std::vector<double> weights;
    for (TinelSeries& series : reading->series) {
      if (series.went_back) {
        misfit_[series.lesion] = true;
        continue;
      }
      const auto fit = likelihoods(growth_of(possible, series.target), series.evidence(), slowing,
                                   parameters_.tinel_in_block);
      const boost::math::chi_squared law(static_cast<double>(series.points.size()));
      if (!std::isfinite(fit.least_chi_square) ||
          boost::math::cdf(boost::math::complement(law, fit.least_chi_square)) <
              parameters_.misfit) {
        misfit_[series.lesion] = true;
        answer_.remarks.push_back(
            "the Tinel points fit no course of growth, nor a nerve that stands still: look again "
            "at "
            "dates, places and the place of the lesion; they were not used");
        continue;
      }
      if (weights.empty()) weights.assign(kDraws, 1.0);
      for (std::size_t i = 0; i < kDraws; ++i) weights[i] *= fit.relative[i];
      series_.push_back(std::move(series));
    }
    if (weights.empty()) return {};
    if (recovery::effective_size(weights) < kFewestPatients) {
      for (const TinelSeries& series : series_) misfit_[series.lesion] = true;
      series_.clear();
      answer_.remarks.push_back(
          "the Tinel points of the lesions do not go together; they were not used");
      return {};
    }
    question.drawn_as = resample(weights, question.samples);
    return {};
  }

  // What the weighed patients say of each lesion.
  void judge(const ForecastQuestion& question, const Forecast& forecast) {
    answer_.lesions =
        judge_lesions(question, forecast, {series_, misfit_}, limb_->metrics(), parameters_);
  }

 private:
  const casefile::Case& patient_;
  const FollowupParameters& parameters_;
  FollowupAnswer& answer_;
  const limb::CaseLimb* limb_ = nullptr;
  std::vector<TinelSeries> series_;
  std::vector<bool> misfit_;  // by lesion
};

// A follow-up judges the nerve as it is; an operation that is only planned has changed nothing.
casefile::Case as_it_is(const casefile::Case& patient, std::vector<std::string>& remarks) {
  casefile::Case now = patient;
  const auto planned = std::erase_if(now.operations, [](const casefile::Operation& operation) {
    return operation.state == casefile::OperationState::planned;
  });
  if (planned > 0) {
    remarks.emplace_back("the planned operation is left out: the nerve is judged as it is");
  }
  return now;
}

std::optional<casefile::Date> last_seen(const casefile::Case& patient) {
  std::optional<casefile::Date> last;
  const auto take = [&](const std::optional<casefile::Date>& date) {
    if (date && (!last || *date > *last)) last = date;
  };
  if (patient.examination) take(patient.examination->date);
  for (const auto& observation : patient.observations) take(observation.date);
  for (const auto& test : patient.electrodiagnosis) take(test.date);
  return last;
}

// The rules again, now with what the follow-up shows; the most urgent of the injuries stands.
void decide(const recovery::DecisionRules& rules, FollowupAnswer& answer) {
  auto& now = answer.recovery;
  for (std::size_t k = 0; k < now.facts.size(); ++k) {
    recovery::DecisionFacts& facts = now.facts[k];
    facts.progress =
        k < answer.lesions.size() ? answer.lesions[k].call.progress : answer.call.progress;
    const recovery::Decision decision = rules.decide(facts);
    if (k == 0 || decision.priority < now.decision.priority) now.decision = decision;
  }
}

void cite(const FollowupParameters& parameters, bool judged, recovery::RecoveryAnswer& answer) {
  std::set<std::string> sources(answer.sources.begin(), answer.sources.end());
  sources.insert(answer.decision.rows.begin(), answer.decision.rows.end());
  if (judged) {
    sources.insert(parameters.rows.begin(), parameters.rows.end());
    answer.assumed_parameters.insert(answer.assumed_parameters.end(), parameters.assumed.begin(),
                                     parameters.assumed.end());
  }
  answer.sources.assign(sources.begin(), sources.end());
}

}  // namespace

Expected<FollowupAnswer> follow_up(const casefile::Case& patient,
                                   const evidence::DataPackage& package,
                                   const anatomy::NerveTree& tree,
                                   const recovery::RecoveryOptions& options) {
  const auto parameters = FollowupParameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto rules = recovery::DecisionRules::from(package);
  if (!rules) return std::unexpected(rules.error());

  FollowupAnswer answer;
  const casefile::Case now = as_it_is(patient, answer.remarks);
  FollowUp steps(now, *parameters, answer);
  recovery::RecoveryOptions with_steps = options;
  with_steps.before_forecast = [&](ForecastQuestion& question, const limb::CaseLimb& limb) {
    return steps.observe(question, limb);
  };
  with_steps.after_forecast = [&](const ForecastQuestion& question, const Forecast& forecast) {
    steps.judge(question, forecast);
  };
  auto recovered = recovery::recover(now, package, tree, with_steps);
  if (!recovered) return std::unexpected(recovered.error());
  answer.recovery = std::move(*recovered);

  if (answer.lesions.empty()) {
    answer.call = {Progress::not_informative, answer.recovery.no_forecast};
  } else {
    if (!answer.recovery.injury_date) {
      for (LesionProgress& lesion : answer.lesions) {
        lesion.call = {Progress::cannot_tell_yet,
                       "the date of the injury is not given, so no finding has a place in time"};
      }
    }
    const auto worst = std::ranges::min_element(
        answer.lesions, {}, [](const LesionProgress& l) { return severity(l.call.progress); });
    answer.worst = static_cast<std::size_t>(worst - answer.lesions.begin());
    answer.call = worst->call;
    answer.chance_no_growth = worst->chances.no_advance;
  }
  if (std::ranges::any_of(answer.lesions, [](const LesionProgress& lesion) {
        return !lesion.points.empty() && !lesion.rate_mm_per_day;
      })) {
    answer.remarks.emplace_back(
        "hardly any patient with these findings grows: the dates are those of the few that do");
  }
  answer.last_seen = last_seen(now);
  if (answer.last_seen &&
      recovery::days_between(*answer.last_seen, options.today) > parameters->last_look_days) {
    answer.remarks.push_back(
        fmt::format("the last examination, of {}, is more than {:.0f} weeks old: examine again "
                    "before acting on this",
                    casefile::to_string(*answer.last_seen), parameters->last_look_days / 7.0));
  }
  decide(*rules, answer);
  cite(*parameters, !answer.lesions.empty(), answer.recovery);
  return answer;
}

}  // namespace endplate::followup
