#include "models/followup/growth.hpp"

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>
#include <limits>

#include "models/recovery/random.hpp"

namespace endplate::followup {

using State = recovery::Course::State;

std::vector<Growth> growth_of(const recovery::ForecastQuestion& question, std::size_t target) {
  const recovery::Draws draws(question.seed);
  const auto patients = recovery::sample_patients(question, draws);
  const recovery::TargetModel model(question, question.targets[target]);
  double gap_mm = 0.0;
  for (const recovery::LesionModel& lesion : question.lesions) {
    if (lesion.repaired) gap_mm = std::max(gap_mm, lesion.gap_mm);
  }
  std::vector<Growth> growth(patients.size());
  tbb::parallel_for(std::size_t{0}, patients.size(), [&](std::size_t i) {
    const auto course =
        model.course(patients[i], static_cast<std::uint32_t>(i), question.limb(i), draws);
    growth[i] = {course.state, course.arrive - course.transit, course.rate, course.distance_mm,
                 -0.5 * gap_mm};
  });
  return growth;
}

double expected_front_mm(const Growth& growth, double days, const recovery::Slowing& slowing) {
  const double growing = days - growth.ready_days;
  if (growth.state != State::growth || growing <= 0.0) return growth.start_mm;
  return growth.start_mm + std::min(growth.way_mm, slowing.advance_mm(growing, growth.rate));
}

Likelihoods likelihoods(std::span<const Growth> patients, const TinelEvidence& evidence,
                        const recovery::Slowing& slowing, double tinel_in_block) {
  const auto n = static_cast<Eigen::Index>(evidence.days.size());
  const Eigen::LLT<Eigen::MatrixXd> chol(evidence.covariance);
  const Eigen::MatrixXd whitener =
      chol.matrixL().solve(Eigen::MatrixXd::Identity(n, n));  // lower triangular
  Likelihoods result;
  result.relative.assign(patients.size(), 0.0);
  std::vector<double> chi_square(patients.size(), std::numeric_limits<double>::infinity());
  tbb::parallel_for(tbb::blocked_range<std::size_t>(0, patients.size()), [&](const auto& part) {
    Eigen::VectorXd off(n);  // of the points from the patient's front
    for (std::size_t i = part.begin(); i < part.end(); ++i) {
      if (patients[i].state == State::not_below) continue;
      for (std::size_t k = 0; k < evidence.days.size(); ++k) {
        off[static_cast<Eigen::Index>(k)] =
            evidence.advance_mm[k] - expected_front_mm(patients[i], evidence.days[k], slowing);
      }
      double sum = 0.0;
      for (Eigen::Index r = 0; r < n; ++r) {
        double z = 0.0;
        for (Eigen::Index c = 0; c <= r; ++c) z += whitener(r, c) * off[c];
        sum += z * z;
      }
      chi_square[i] = sum;
    }
  });
  result.least_chi_square = std::ranges::min(chi_square);
  if (!std::isfinite(result.least_chi_square)) return result;
  for (std::size_t i = 0; i < patients.size(); ++i) {
    const double silent = patients[i].state == State::block ? tinel_in_block : 1.0;
    result.relative[i] = silent * std::exp(-0.5 * (chi_square[i] - result.least_chi_square));
  }
  return result;
}

std::vector<std::uint32_t> resample(std::span<const double> weights, std::size_t count) {
  double total = 0.0;
  for (const double w : weights) total += w;
  const double step = total / static_cast<double>(count);
  std::vector<std::uint32_t> chosen;
  chosen.reserve(count);
  double passed = weights.front();
  std::size_t i = 0;
  for (std::size_t k = 0; k < count; ++k) {
    const double wanted = step * (static_cast<double>(k) + 0.5);
    while (passed < wanted && i + 1 < weights.size()) passed += weights[++i];
    chosen.push_back(static_cast<std::uint32_t>(i));
  }
  return chosen;
}

}  // namespace endplate::followup
