#include "models/recovery/forecast.hpp"

#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "models/recovery/patients.hpp"
#include "models/recovery/random.hpp"
#include "models/recovery/target_sample.hpp"
#include "models/recovery/weighted.hpp"

namespace endplate::recovery {
namespace {

// Fewer effective patients than this and the findings contradict the model.
constexpr double kFewestPatients = 25.0;

using Courses = std::vector<Course>;

// Chance of the finding in this patient, when examiners err with chance `error`.
double likelihood(const Finding& finding, const Course& course, double error) {
  bool expected = false;
  switch (course.state) {
    case Course::State::not_below:
      expected = true;  // was never lost
      break;
    case Course::State::none:
      break;
    case Course::State::block:
    case Course::State::growth:
      expected = finding.days >= due_days(finding.kind, course);
      break;
  }
  return expected == finding.present ? 1.0 - error : error;
}

std::vector<double> weigh(const ForecastQuestion& question,
                          const std::map<std::size_t, Courses>& courses, Forecast& result) {
  const std::size_t n = question.samples;
  std::vector<double> weights(n, 1.0);
  if (question.findings.empty()) return weights;
  const Parameter& error = question.parameters->find("finding error", "any", "any");
  for (std::size_t i = 0; i < n; ++i) {
    for (const Finding& finding : question.findings) {
      weights[i] *= likelihood(finding, courses.at(finding.target)[i], error.mean);
    }
  }
  // Even the patient that fits best is at odds with most of the findings.
  const double half_wrong = std::pow(error.mean * (1.0 - error.mean),
                                     0.5 * static_cast<double>(question.findings.size()));
  if (effective_size(weights) < kFewestPatients || std::ranges::max(weights) < half_wrong) {
    result.findings_contradict = true;
    return std::vector<double>(n, 1.0);
  }
  double sum = 0.0;
  for (const double w : weights) sum += w;
  for (double& w : weights) w *= static_cast<double>(n) / sum;
  result.findings_used = true;
  result.parameters.push_back(error.id);
  return weights;
}

std::optional<Summary> summary_of(const std::vector<double>& values,
                                  const std::vector<double>& weights) {
  return weights.empty() ? summarise_equal(values) : summarise_weighted(values, weights);
}

TargetForecast summarise(std::size_t index, const ForecastQuestion& question,
                         const TargetModel& model, const TargetSample& sample,
                         const PatientColumns& patients, const std::vector<double>& weights,
                         double all) {
  const bool motor = question.targets[index].target.kind == TargetKind::motor;
  TargetForecast result;
  result.target = index;
  result.distance_mm = summary_of(sample.distance_mm, sample.distance_weights).value_or(Summary{});
  result.chance_below_lesion = all > 0.0 ? sample.below / all : 0.0;
  const TargetSample::Growing& grows = sample.growing;
  result.axons_arrive_days = summary_of(grows.arrive, grows.weights);
  // Where axons have to grow, the dates are theirs; a block is dated for the nerve as a whole.
  if (result.axons_arrive_days) {
    if (motor) {
      result.first_units_days = summary_of(grows.units, grows.weights);
      result.first_movement_days = summary_of(grows.movement, grows.weights);
    }
    result.useful_days = summary_of(grows.useful, grows.weights);
  } else {
    const auto of_block = [&](const std::vector<double>& days) {
      std::vector<double> values;
      std::vector<double> by;
      for (const std::size_t i : sample.blocked) {
        values.push_back(days[i]);
        if (!weights.empty()) by.push_back(weights[i]);
      }
      return summary_of(values, by);
    };
    if (motor) {
      result.first_units_days = of_block(patients.block_first_days);
      result.first_movement_days = result.first_units_days;
    }
    result.useful_days = of_block(patients.block_useful_days);
  }
  const double total = sample.below;
  result.chance_axons_in_time = total > 0.0 ? sample.in_time / total : 0.0;
  if (!question.targets[index].partial) {
    const auto share = [&](double sum) { return total > 0.0 ? sum / total : 0.0; };
    result.chance_useful = UsefulChance{motor ? "M3" : "S3", share(sample.useful), {}, {}};
    if (const auto& range = model.useful_range()) {
      const double blocked = sample.in_time - sample.grown_in_time;
      result.chance_useful->p05 = share(blocked + sample.grown_in_time * (*range)[0]);
      result.chance_useful->p95 = share(blocked + sample.grown_in_time * (*range)[1]);
    }
  }
  return result;
}

// The finding's targets, patient by patient.
std::map<std::size_t, Courses> courses_of_findings(const ForecastQuestion& question,
                                                   const std::vector<TargetModel>& models,
                                                   const Draws& draws) {
  std::map<std::size_t, Courses> found;
  if (question.findings.empty()) return found;
  const auto patients = sample_patients(question, draws);
  for (const Finding& finding : question.findings) {
    const auto [at, added] = found.try_emplace(finding.target);
    if (!added) continue;
    Courses& courses = at->second;
    courses.resize(patients.size());
    tbb::parallel_for(std::size_t{0}, patients.size(), [&](std::size_t i) {
      courses[i] = models[finding.target].course(patients[i], static_cast<std::uint32_t>(i),
                                                 question.limb(i), draws);
    });
  }
  return found;
}

}  // namespace

Forecast forecast(const ForecastQuestion& question) {
  const Draws draws(question.seed);
  const PatientColumns patients = sample_columns(question, draws);
  const std::size_t n = patients.size();
  Forecast result;

  std::vector<TargetModel> models;
  for (const TargetBelow& below : question.targets) models.emplace_back(question, below);
  result.weights = weigh(question, courses_of_findings(question, models, draws), result);
  const std::vector<double> weights = result.findings_used ? result.weights : std::vector<double>();
  double all = 0.0;
  for (const double weight : result.weights) all += weight;

  const WayTable ways = way_table(question, models);
  const Slowness slowness = slowness_of(patients, models);
  result.targets.resize(models.size());
  tbb::enumerable_thread_specific<TargetSample> samples;
  tbb::parallel_for(std::size_t{0}, models.size(), [&](std::size_t t) {
    TargetSample& sample = samples.local();
    sample_target(question, models[t], ways.targets[t], patients, slowness, weights, draws, sample);
    result.targets[t] = summarise(t, question, models[t], sample, patients, weights, all);
  });
  // First what axons reach, by the median arrival; then what none reach, by distance.
  std::ranges::stable_sort(result.targets, [](const TargetForecast& a, const TargetForecast& b) {
    if (a.axons_arrive_days.has_value() != b.axons_arrive_days.has_value()) {
      return a.axons_arrive_days.has_value();
    }
    if (a.axons_arrive_days) return a.axons_arrive_days->p50 < b.axons_arrive_days->p50;
    return a.distance_mm.p50 < b.distance_mm.p50;
  });

  std::vector<double> blocked(n);
  for (const PatientColumns::Lesion& lesion : patients.lesions) {
    std::array<double, 3>& chances = result.grade_chance.emplace_back();
    for (std::size_t i = 0; i < n; ++i) {
      const Component component = lesion.component[i];
      chances[static_cast<std::size_t>(component)] += result.weights[i] / all;
      if (component == Component::block) blocked[i] = result.weights[i];
    }
  }
  result.block_first_days = summarise_weighted(patients.block_first_days, blocked);
  result.block_useful_days = summarise_weighted(patients.block_useful_days, blocked);

  std::set<std::string> used(result.parameters.begin(), result.parameters.end());
  for (const TargetModel& model : models) {
    used.insert(model.parameter_ids().begin(), model.parameter_ids().end());
  }
  if (result.block_first_days) {
    used.insert(question.parameters->find("block first sign", "any", "any").id);
    used.insert(question.parameters->find("block useful delay", "any", "any").id);
  }
  result.parameters.assign(used.begin(), used.end());
  return result;
}

}  // namespace endplate::recovery
