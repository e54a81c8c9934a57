#include "models/recovery/forecast.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "models/recovery/patients.hpp"
#include "models/recovery/random.hpp"
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

TargetForecast summarise(std::size_t index, const ForecastQuestion& question,
                         const TargetModel& model, const Courses& courses,
                         const std::vector<double>& weights) {
  using State = Course::State;
  const std::size_t n = courses.size();
  const bool motor = question.targets[index].target.kind == TargetKind::motor;
  std::vector<double> below(n);
  std::vector<double> grows(n);
  std::vector<double> blocked(n);
  double total = 0.0;
  double all = 0.0;
  double in_time = 0.0;
  double useful = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    all += weights[i];
    if (courses[i].state == State::not_below) continue;
    below[i] = weights[i];
    total += weights[i];
    if (courses[i].state == State::block) {
      blocked[i] = weights[i];
      in_time += weights[i];
      useful += weights[i];
    } else if (courses[i].state == State::growth) {
      const double chance = model.in_time(courses[i].arrive);
      grows[i] = weights[i];
      in_time += weights[i] * chance;
      useful += weights[i] * chance * model.useful_given_in_time();
    }
  }
  const auto of = [&](double Course::*time, const std::vector<double>& by) {
    std::vector<double> values(n);
    for (std::size_t i = 0; i < n; ++i) values[i] = courses[i].*time;
    return summarise_weighted(values, by);
  };

  TargetForecast result;
  result.target = index;
  result.distance_mm = of(&Course::distance_mm, below).value_or(Summary{});
  result.chance_below_lesion = all > 0.0 ? total / all : 0.0;
  result.axons_arrive_days = of(&Course::arrive, grows);
  // Where axons have to grow, the dates are theirs; a block is dated for the nerve as a whole.
  const auto& by = result.axons_arrive_days ? grows : blocked;
  if (motor) {
    result.first_units_days = of(&Course::units, by);
    result.first_movement_days = of(&Course::movement, by);
  }
  result.useful_days = of(&Course::useful, by);
  result.chance_axons_in_time = total > 0.0 ? in_time / total : 0.0;
  if (!question.targets[index].partial) {
    result.chance_useful = UsefulChance{motor ? "M3" : "S3", total > 0.0 ? useful / total : 0.0};
  }
  return result;
}

}  // namespace

Forecast forecast(const ForecastQuestion& question) {
  const Draws draws(question.seed);
  const auto patients = sample_patients(question, draws);
  const std::size_t n = patients.size();
  Forecast result;

  std::vector<TargetModel> models;
  for (const TargetBelow& below : question.targets) models.emplace_back(question, below);
  const auto courses_of = [&](std::size_t t) {
    Courses courses(n);
    for (std::size_t i = 0; i < n; ++i) {
      courses[i] =
          models[t].course(patients[i], static_cast<std::uint32_t>(i), question.limb(i), draws);
    }
    return courses;
  };

  std::map<std::size_t, Courses> found;
  for (const Finding& finding : question.findings) {
    if (!found.contains(finding.target)) found.emplace(finding.target, courses_of(finding.target));
  }
  result.weights = weigh(question, found, result);
  result.targets.resize(models.size());
  tbb::parallel_for(std::size_t{0}, models.size(), [&](std::size_t t) {
    result.targets[t] = summarise(t, question, models[t], courses_of(t), result.weights);
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
  result.grade_chance.resize(question.lesions.size());
  double all = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    all += result.weights[i];
    for (std::size_t k = 0; k < question.lesions.size(); ++k) {
      const Component component = patients[i].lesions[k].component;
      result.grade_chance[k][static_cast<std::size_t>(component)] += result.weights[i];
      if (component == Component::block) blocked[i] = result.weights[i];
    }
  }
  for (auto& chances : result.grade_chance) {
    for (double& chance : chances) chance /= all;
  }
  std::vector<double> values(n);
  std::ranges::transform(patients, values.begin(), &Patient::block_first_days);
  result.block_first_days = summarise_weighted(values, blocked);
  std::ranges::transform(patients, values.begin(), &Patient::block_useful_days);
  result.block_useful_days = summarise_weighted(values, blocked);

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
