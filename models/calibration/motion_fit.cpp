#include "models/calibration/motion_fit.hpp"

#include <ceres/ceres.h>

#include <array>
#include <cmath>
#include <map>
#include <set>

namespace endplate::calibration {
namespace {

using limb::MotionMeasure;
using limb::MotionModel;
using limb::MotionParameters;
using limb::MotionQuantity;

constexpr int kTethers = 3;
// What a tether length may be before any study, as a factor: between a thumb's breadth and an arm.
constexpr double kPriorLogSd = 1.0;
constexpr std::array<double, kTethers> kPrior_mm{200.0, 80.0, 100.0};

MotionParameters with_logs(MotionParameters parameters, const double* logs) {
  parameters.tether_mm = std::exp(logs[0]);
  parameters.cubital_tether_mm = std::exp(logs[1]);
  parameters.hand_tether_mm = std::exp(logs[2]);
  return parameters;
}

// All residuals at once: the beds are bent anew for each try.
struct Residuals {
  const MotionModel* model;
  const std::vector<const MotionMeasure*>* measures;
  const MotionParameters* start;

  bool operator()(double const* const* logs, double* residual) const {
    const MotionParameters parameters = with_logs(*start, logs[0]);
    for (std::size_t i = 0; i < measures->size(); ++i) {
      const MotionMeasure& m = *(*measures)[i];
      // Bounded, so that one study that others contradict does not rule.
      const double z = (model->read(m, parameters) - published_middle(m)) / published_sd(m);
      residual[i] = std::copysign(std::sqrt(std::log1p(z * z)), z);
    }
    for (int k = 0; k < kTethers; ++k) {
      residual[measures->size() + static_cast<std::size_t>(k)] =
          (logs[0][k] - std::log(kPrior_mm[static_cast<std::size_t>(k)])) / kPriorLogSd;
    }
    return true;
  }
};

Expected<MotionParameters> fit(const MotionModel& model,
                               const std::vector<const MotionMeasure*>& measures,
                               const MotionParameters& start) {
  std::array<double, kTethers> logs{};
  for (std::size_t k = 0; k < kTethers; ++k) logs[k] = std::log(kPrior_mm[k]);
  ceres::NumericDiffOptions differences;
  differences.relative_step_size = 1e-3;
  auto* cost = new ceres::DynamicNumericDiffCostFunction<Residuals>(
      new Residuals{&model, &measures, &start}, ceres::TAKE_OWNERSHIP, differences);
  cost->AddParameterBlock(kTethers);
  cost->SetNumResiduals(static_cast<int>(measures.size()) + kTethers);
  ceres::Problem problem;  // owns the cost
  problem.AddResidualBlock(cost, nullptr, logs.data());
  ceres::Solver::Options options;
  options.max_num_iterations = 60;
  options.logging_type = ceres::SILENT;
  ceres::Solver::Summary summary;
  ceres::Solve(options, &problem, &summary);
  if (!summary.IsSolutionUsable()) {
    return std::unexpected(
        Error{Fault::internal,
              {{"nerve_motion_measures.csv", "the fit of the tether lengths found no answer",
                "Look for a row whose figure or place cannot be."}}});
  }
  return with_logs(start, logs.data());
}

}  // namespace

double published_sd(const MotionMeasure& m) {
  if (std::isfinite(m.sd)) return m.sd;
  return std::abs(m.high - m.low) / (2.0 * limb::kNineInTen);
}

double published_middle(const MotionMeasure& m) {
  return std::isfinite(m.mean) ? m.mean : 0.5 * (m.low + m.high);
}

Expected<MotionFit> fit_motion(const MotionModel& model, const std::vector<MotionMeasure>& measures,
                               const MotionParameters& start) {
  const auto judged_without = [&](const std::string& study) {
    std::vector<const MotionMeasure*> judged;
    for (const MotionMeasure& m : measures) {
      if (m.judged && m.study != study) judged.push_back(&m);
    }
    return judged;
  };
  const auto all = fit(model, judged_without(""), start);
  if (!all) return std::unexpected(all.error());

  MotionFit result{*all, {}};
  std::set<std::string> studies;
  for (const MotionMeasure& m : measures) {
    if (m.judged) studies.insert(m.study);
  }
  std::map<std::string, MotionParameters> without;
  for (const std::string& study : studies) {
    const auto others = fit(model, judged_without(study), start);
    if (!others) return std::unexpected(others.error());
    without.emplace(study, *others);
  }
  double squares = 0.0;
  int count = 0;
  for (const MotionMeasure& m : measures) {
    const auto found = without.find(m.study);
    MotionReading reading{m, model.read(m, *all), 0.0};
    reading.left_out = found == without.end() ? reading.fitted : model.read(m, found->second);
    // Means of excursions only: strains depend on where the gauge lies.
    if (m.judged && m.quantity == MotionQuantity::excursion_mm && std::isfinite(m.mean)) {
      const double log_ratio = std::log(std::abs(m.mean) / std::abs(reading.left_out));
      squares += log_ratio * log_ratio;
      ++count;
    }
    result.readings.push_back(std::move(reading));
  }
  result.parameters.scatter = count > 0 ? std::sqrt(squares / count) : 0.0;
  return result;
}

}  // namespace endplate::calibration
