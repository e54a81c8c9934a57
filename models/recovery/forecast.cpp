#include "models/recovery/forecast.hpp"

#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "models/recovery/column_summary.hpp"
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

std::optional<Summary> summary_of(std::span<const float> values, std::span<const double> weights) {
  if (weights.empty()) return summarise_column(values);
  const std::vector<double> doubles(values.begin(), values.end());
  return summarise_weighted(doubles, weights);
}

// Of the chosen patients.
std::optional<Summary> summary_of(std::span<const float> values, const std::vector<double>& weights,
                                  std::span<const std::uint32_t> chosen) {
  std::vector<float> kept(chosen.size());
  std::ranges::transform(chosen, kept.begin(), [&](std::uint32_t i) { return values[i]; });
  std::vector<double> by(weights.empty() ? 0 : chosen.size());
  if (!weights.empty()) {
    std::ranges::transform(chosen, by.begin(), [&](std::uint32_t i) { return weights[i]; });
  }
  return summary_of(kept, by);
}

TargetForecast summarise(std::size_t index, const ForecastQuestion& question,
                         const TargetModel& model, const TargetSample& sample,
                         const PatientColumns& patients, const std::vector<double>& weights,
                         double all) {
  const bool motor = question.targets[index].target.kind == TargetKind::motor;
  TargetForecast result;
  result.target = index;
  result.distance_mm =
      summary_of(sample.distance_mm.values(), sample.distance_weights.values()).value_or(Summary{});
  result.chance_below_lesion = all > 0.0 ? sample.below / all : 0.0;
  const TargetSample::Growing& grows = sample.growing;
  const auto of_growing = [&](const TargetSample::Column<float>& days) {
    return summary_of(days.values(), grows.weights.values());
  };
  result.axons_arrive_days = of_growing(grows.arrive);
  // Where axons have to grow, the dates are theirs; a block is dated for the nerve as a whole.
  if (result.axons_arrive_days) {
    if (motor) {
      result.first_units_days = of_growing(grows.units);
      result.first_movement_days = of_growing(grows.movement);
    }
    result.useful_days = of_growing(grows.useful);
  } else {
    const auto of_block = [&](const FloatColumn& days) {
      return summary_of(days, weights, sample.blocked);
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

// Of block, growth and none.
std::array<double, 3> grade_chances(const std::vector<Component>& component,
                                    const std::vector<double>& weights) {
  std::array<double, 3> sums{};
  if (weights.empty()) {
    for (std::size_t k = 0; k < sums.size(); ++k) {
      sums[k] = static_cast<double>(std::ranges::count(component, static_cast<Component>(k)));
    }
  } else {
    for (std::size_t i = 0; i < component.size(); ++i) {
      sums[static_cast<std::size_t>(component[i])] += weights[i];
    }
  }
  const double all = sums[0] + sums[1] + sums[2];
  for (double& sum : sums) sum /= all;
  return sums;
}

// Those of some weight with a block at any lesion.
std::vector<std::uint32_t> blocked_patients(const PatientColumns& patients,
                                            const std::vector<double>& weights) {
  const std::size_t n = patients.size();
  std::vector<std::uint8_t> any(n);
  for (const PatientColumns::Lesion& lesion : patients.lesions) {
    for (std::size_t i = 0; i < n; ++i) {
      const bool blocked = lesion.component[i] == Component::block;
      any[i] = any[i] != 0 || blocked ? 1 : 0;
    }
  }
  if (!weights.empty()) {
    for (std::size_t i = 0; i < n; ++i) any[i] = any[i] != 0 && weights[i] > 0.0 ? 1 : 0;
  }
  std::vector<std::uint32_t> blocked(n + 1);
  std::size_t found = 0;
  for (std::size_t i = 0; i < n; ++i) {
    blocked[found] = static_cast<std::uint32_t>(i);
    found += any[i];
  }
  blocked.resize(found);
  return blocked;
}

}  // namespace

Forecast forecast(const ForecastQuestion& question) {
  const Draws draws(question.seed);
  const PatientColumns patients = sample_columns(question, draws);
  Forecast result;

  std::vector<TargetModel> models;
  for (const TargetBelow& below : question.targets) models.emplace_back(question, below);
  result.weights = weigh(question, courses_of_findings(question, models, draws), result);
  const std::vector<double> weights = result.findings_used ? result.weights : std::vector<double>();
  double all = 0.0;
  for (const double weight : result.weights) all += weight;

  std::optional<anatomy::LimbColumns> own_columns;
  if (question.limb_columns == nullptr) own_columns.emplace(*question.limbs);
  const anatomy::LimbColumns& limbs = own_columns ? *own_columns : *question.limb_columns;
  const WayTable ways = way_table(question, limbs, models);
  const std::vector<Departure> leaving = departures(question, patients, models);
  const SampledPatients sampled{patients, leaving, weights};
  result.targets.resize(models.size());
  tbb::enumerable_thread_specific<TargetSample> samples;
  tbb::parallel_for(std::size_t{0}, models.size(), [&](std::size_t t) {
    TargetSample& sample = samples.local();
    sample_target(question, models[t], ways[t], sampled, draws, sample);
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

  for (const PatientColumns::Lesion& lesion : patients.lesions) {
    result.grade_chance.push_back(grade_chances(lesion.component, weights));
  }
  const std::vector<std::uint32_t> blocked = blocked_patients(patients, weights);
  result.block_first_days = summary_of(patients.block_first_days, weights, blocked);
  result.block_useful_days = summary_of(patients.block_useful_days, weights, blocked);

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
