#include "models/recovery/timing.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "models/recovery/patients.hpp"
#include "models/recovery/random.hpp"

namespace endplate::recovery {
namespace {

constexpr double kStepDays = 30.0;
constexpr double kLastDays = 1095.0;
constexpr double kNearlyBest = 0.9;
constexpr double kUnlikely = 0.2;
constexpr std::size_t kPatients = 400;  // a smooth curve needs no more: every day has the same ones

// Over the targets that some axons can reach; one that hangs on torn roots alone would only dilute
// what a repair can do for the others.
double mean_useful(const ForecastQuestion& question) {
  const Draws draws(question.seed);
  const auto patients = sample_patients(question, draws);
  double sum = 0.0;
  std::size_t counted = 0;
  for (const TargetBelow& below : question.targets) {
    const TargetModel model(question, below);
    double useful = 0.0;
    double total = 0.0;
    bool reached = false;
    for (std::size_t i = 0; i < patients.size(); ++i) {
      const Course course =
          model.course(patients[i], static_cast<std::uint32_t>(i), question.limb(i), draws);
      if (course.state == Course::State::not_below) continue;
      total += 1.0;
      if (course.state != Course::State::growth) continue;
      reached = true;
      useful += model.in_time(course.arrive) * model.useful_given_in_time();
    }
    if (!reached) continue;
    sum += useful / total;
    ++counted;
  }
  return counted > 0 ? sum / static_cast<double>(counted) : 0.0;
}

}  // namespace

std::optional<OperationTiming> operation_timing(const ForecastQuestion& asked, double first_days,
                                                bool graft) {
  const bool repairable = std::ranges::any_of(
      asked.lesions, [](const LesionModel& model) { return !model.lesion.preganglionic; });
  ForecastQuestion question = asked;
  const auto of_kind = [&](TargetKind kind) {
    std::vector<TargetBelow> kept;
    for (const TargetBelow& below : asked.targets) {
      if (below.target.kind == kind && !below.partial) kept.push_back(below);
    }
    return kept;
  };
  OperationTiming timing;
  question.targets = of_kind(TargetKind::motor);
  timing.scale = "M3";
  timing.of = "mean over the muscles that a repair can reach";
  if (question.targets.empty()) {
    question.targets = of_kind(TargetKind::sensory);
    timing.scale = "S3";
    timing.of = "mean over the skin areas that a repair can reach";
  }
  if (question.targets.empty() || !repairable) return std::nullopt;

  question.samples = std::min(kPatients, asked.samples);
  question.findings.clear();
  timing.procedure = graft ? "graft" : "direct repair";
  for (LesionModel& model : question.lesions) {
    model.repaired = true;
    model.coaptations = graft ? 2 : 1;
  }
  const double begin = std::max(0.0, first_days);
  const int steps = static_cast<int>((std::max(kLastDays, begin) - begin) / kStepDays);
  for (int k = 0; k <= steps; ++k) {
    const double day = begin + kStepDays * k;
    for (LesionModel& model : question.lesions) model.operation_days = day;
    timing.chance_by_date.push_back({day, mean_useful(question)});
  }

  // Where the straight line between two dates of the curve passes `level` for the first time.
  const auto falls_below = [&](double level) -> std::optional<double> {
    const auto& curve = timing.chance_by_date;
    if (curve.front().chance < level) return curve.front().days;
    for (std::size_t k = 1; k < curve.size(); ++k) {
      if (curve[k].chance >= level) continue;
      const double part = (curve[k - 1].chance - level) / (curve[k - 1].chance - curve[k].chance);
      return std::lerp(curve[k - 1].days, curve[k].days, part);
    }
    return std::nullopt;
  };
  timing.unlikely_after_days = falls_below(kUnlikely);
  // Where it is unlikely from the first day on, no day is the best.
  if (timing.chance_by_date.front().chance >= kUnlikely)
    timing.best_before_days = falls_below(kNearlyBest * timing.chance_by_date.front().chance);
  return timing;
}

}  // namespace endplate::recovery
