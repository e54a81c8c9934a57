#include "models/recovery/tinel.hpp"

#include <algorithm>

#include "models/recovery/patients.hpp"
#include "models/recovery/random.hpp"
#include "models/recovery/weighted.hpp"

namespace endplate::recovery {
namespace {

constexpr double kStepDays = 30.0;
constexpr int kMostSteps = 12;

}  // namespace

TinelSchedule tinel_schedule(const ForecastQuestion& question, const Forecast& forecast,
                             double first_days) {
  TinelSchedule schedule;
  const TargetForecast* farthest = nullptr;
  bool skin = false;
  for (const TargetForecast& target : forecast.targets) {
    if (question.targets[target.target].target.kind != TargetKind::sensory) continue;
    skin = true;
    if (!target.axons_arrive_days) continue;
    if (farthest == nullptr || target.distance_mm.p50 > farthest->distance_mm.p50) {
      farthest = &target;
    }
  }
  if (!skin) {
    schedule.says_nothing =
        "no skin fibres run in the nerve beyond the lesion: there is nothing that could tingle, so "
        "its silence is no bad sign";
    return schedule;
  }
  if (farthest == nullptr) {
    schedule.says_nothing =
        "no axons grow from this lesion as it stands: a fixed Tinel sign over it is expected";
    return schedule;
  }

  const TargetBelow& below = question.targets[farthest->target];
  schedule.toward = below.target.name;
  schedule.length_mm = farthest->distance_mm.p50;
  const Draws draws(question.seed);
  const auto patients = sample_patients(question, draws);
  const TargetModel model(question, below);
  const std::size_t n = patients.size();
  std::vector<Course> courses(n);
  std::vector<double> weights(n);
  for (std::size_t i = 0; i < n; ++i) {
    courses[i] = model.course(patients[i], static_cast<std::uint32_t>(i), question.limb(i), draws);
    if (courses[i].state == Course::State::growth) weights[i] = forecast.weights[i];
  }
  std::vector<double> advance(n);
  for (int step = 0; step < kMostSteps; ++step) {
    const double days = first_days + kStepDays * step;
    for (std::size_t i = 0; i < n; ++i) {
      if (weights[i] > 0.0) advance[i] = model.advance_mm(courses[i], days);
    }
    const auto summary = summarise_weighted(advance, weights);
    if (!summary) break;
    if (summary->p95 <= 0.0) continue;
    schedule.steps.push_back({days, *summary});
    if (summary->p50 >= 0.999 * schedule.length_mm) break;
  }
  if (schedule.steps.empty()) {
    schedule.says_nothing = "no axon has left the lesion within the next year";
  }
  return schedule;
}

}  // namespace endplate::recovery
