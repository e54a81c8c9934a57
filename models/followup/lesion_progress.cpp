#include "models/followup/lesion_progress.hpp"

#include <algorithm>

#include "models/recovery/random.hpp"
#include "models/recovery/weighted.hpp"

namespace endplate::followup {
namespace {

using recovery::Course;
using recovery::Finding;
using recovery::Forecast;
using recovery::ForecastQuestion;

// Fewer effective patients than this and nothing can be summarised.
constexpr double kFewestPatients = 25.0;
// Movement kept before this is no recovery.
constexpr double kEarlyDays = 21.0;

std::optional<Summary> rates_of(const std::vector<Growth>& patients,
                                const std::vector<double>& weights) {
  std::vector<double> rates(patients.size());
  std::vector<double> growing(patients.size());
  for (std::size_t i = 0; i < patients.size(); ++i) {
    rates[i] = patients[i].rate;
    if (patients[i].state == Course::State::growth) growing[i] = weights[i];
  }
  if (recovery::effective_size(growing) < kFewestPatients) return std::nullopt;
  return recovery::summarise_weighted(rates, growing);
}

class Judge {
 public:
  Judge(const ForecastQuestion& question, const Forecast& forecast, const Observed& observed,
        const anatomy::NerveMetrics& metrics, const FollowupParameters& parameters)
      : question_(question),
        forecast_(forecast),
        observed_(observed),
        metrics_(metrics),
        parameters_(parameters) {}

  // What the weighed patients say of each lesion.
  std::vector<LesionProgress> answer() const {
    const ForecastQuestion& question = question_;
    const Forecast& forecast = forecast_;
    std::vector<LesionProgress> lesions;
    ForecastQuestion usual = question;
    usual.drawn_as.clear();
    const auto telling = telling_findings(usual);
    for (std::size_t k = 0; k < question.lesions.size(); ++k) {
      const auto series =
          std::ranges::find(observed_.series, k, [](const TinelSeries& one) { return one.lesion; });
      const Reference reference = reference_of(question, k);
      LesionProgress progress;
      double no_growth_before = 0.0;
      progress.tappable = reference.skin;
      if (series != observed_.series.end()) progress.points = series->points;
      if (reference.target) {
        const std::size_t target =
            series != observed_.series.end() ? series->target : *reference.target;
        const auto patients = growth_of(question, target);
        progress.chances = progress_chances(patients, forecast.weights, parameters_);
        progress.chance_block = share(patients, forecast.weights, Course::State::block);
        progress.rate_mm_per_day = rates_of(patients, forecast.weights);
        const auto before = growth_of(usual, target);
        const std::vector<double> equal(before.size(), 1.0);
        progress.usual_rate_mm_per_day = rates_of(before, equal).value_or(Summary{});
        no_growth_before = progress_chances(before, equal, parameters_).no_advance;
      }
      Basis basis = basis_of(question, k, progress, telling);
      basis.chance_no_growth_before = no_growth_before;
      basis.misfit = observed_.misfit[k] || forecast.findings_contradict;
      progress.call = call(progress.chances, basis, parameters_);
      lesions.push_back(std::move(progress));
    }
    return lesions;
  }

 private:
  // The target whose way stands for the lesion: its farthest skin area, else its farthest muscle.
  struct Reference {
    std::optional<std::size_t> target;
    bool skin = false;
  };
  Reference reference_of(const ForecastQuestion& question, std::size_t lesion) const {
    Reference best;
    double way = -1.0;
    for (std::size_t t = 0; t < question.targets.size(); ++t) {
      const bool skin = question.targets[t].target.kind == recovery::TargetKind::sensory;
      const auto to_target = way_from(question, lesion, t);
      if (!to_target || (best.skin && !skin)) continue;
      if (skin == best.skin && *to_target <= way) continue;
      best = {t, skin};
      way = *to_target;
    }
    return best;
  }

  // From the lesion to the target on the mean limb; nothing when it does not hang below.
  std::optional<double> way_from(const ForecastQuestion& question, std::size_t lesion,
                                 std::size_t target) const {
    const std::vector<anatomy::NervePosition> place{question.lesions[lesion].lesion.at};
    std::optional<double> way;
    for (const recovery::Path& path : question.targets[target].target.paths) {
      if (!path.usual) continue;
      const auto cuts = recovery::cuts_on(path, place, *question.tree, metrics_);
      if (!cuts.empty()) way = std::max(way.value_or(0.0), cuts.front().to_target_mm);
    }
    return way;
  }

  static double share(const std::vector<Growth>& patients, const std::vector<double>& weights,
                      Course::State state) {
    double all = 0.0;
    double in_state = 0.0;
    for (std::size_t i = 0; i < patients.size(); ++i) {
      if (patients[i].state == Course::State::not_below) continue;
      all += weights[i];
      if (patients[i].state == state) in_state += weights[i];
    }
    return all > 0.0 ? in_state / all : 0.0;
  }

  // Findings that say something: a target that answers when it need not have been spared, or one
  // that does not answer although it would in most patients whose axons grow.
  std::vector<Finding> telling_findings(const ForecastQuestion& usual) const {
    std::vector<Finding> telling;
    const recovery::Draws draws(usual.seed);
    const auto patients = recovery::sample_patients(usual, draws);
    for (const Finding& finding : usual.findings) {
      if (finding.present) {
        if (finding.days > kEarlyDays) telling.push_back(finding);
        continue;
      }
      const recovery::TargetModel model(usual, usual.targets[finding.target]);
      double growing = 0.0;
      double due = 0.0;
      for (std::size_t i = 0; i < patients.size(); ++i) {
        const Course course =
            model.course(patients[i], static_cast<std::uint32_t>(i), usual.limb(i), draws);
        if (course.state != Course::State::growth) continue;
        growing += 1.0;
        due += recovery::due_days(finding.kind, course) <= finding.days ? 1.0 : 0.0;
      }
      if (growing == 0.0 || due >= parameters_.finding_due * growing) telling.push_back(finding);
    }
    return telling;
  }

  Basis basis_of(const ForecastQuestion& question, std::size_t lesion,
                 const LesionProgress& progress, const std::vector<Finding>& telling) const {
    Basis basis;
    basis.tappable = progress.tappable;
    const recovery::LesionModel& model = question.lesions[lesion];
    const double start = model.repaired ? model.operation_days : 0.0;
    if (!progress.points.empty()) {
      basis.visits = static_cast<int>(progress.points.size());
      basis.span_days = progress.points.back().days - progress.points.front().days;
      basis.last_days = progress.points.back().days - start;
    }
    basis.anything_seen = !progress.points.empty() || observed_.misfit[lesion];
    for (const Finding& finding : question.findings) {
      basis.anything_seen =
          basis.anything_seen || way_from(question, lesion, finding.target).has_value();
    }
    for (const Finding& finding : telling) {
      if (!way_from(question, lesion, finding.target) || finding.days < start) continue;
      basis.telling_finding = true;
      basis.last_days = std::max(basis.last_days, finding.days - start);
    }
    return basis;
  }

  const ForecastQuestion& question_;
  const Forecast& forecast_;
  const Observed& observed_;
  const anatomy::NerveMetrics& metrics_;
  const FollowupParameters& parameters_;
};

}  // namespace

std::vector<LesionProgress> judge_lesions(const ForecastQuestion& question,
                                          const Forecast& forecast, const Observed& observed,
                                          const anatomy::NerveMetrics& metrics,
                                          const FollowupParameters& parameters) {
  return Judge(question, forecast, observed, metrics, parameters).answer();
}

}  // namespace endplate::followup
