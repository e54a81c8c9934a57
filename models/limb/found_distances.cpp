#include "models/limb/found_distances.hpp"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>

#include "models/limb/level_spread.hpp"

namespace endplate::limb {
namespace {

// Covariance by the levels that two distances share.
double shared(const DistancePrior& a, const DistancePrior& b) {
  double covariance = 0.0;
  for (const MovingPoint& one : a.moves) {
    for (const MovingPoint& other : b.moves) {
      if (one.point.course != other.point.course) continue;
      covariance += one.per_mm * one.sd_mm * other.per_mm * other.sd_mm *
                    level_correlation(one.arc_mm, other.arc_mm);
    }
  }
  return covariance;
}

// How much of the levels' spread a distance can hold: never more than it has.
double held(const DistancePrior& distance) {
  const double by_levels = std::sqrt(std::max(0.0, shared(distance, distance)));
  return by_levels > distance.sd_mm ? distance.sd_mm / by_levels : 1.0;
}

bool same_point(const DistancePrior& a, const DistancePrior& b) {
  return a.moves.size() == 1 && b.moves.size() == 1 &&
         a.moves[0].point.course == b.moves[0].point.course &&
         a.moves[0].point.point == b.moves[0].point.point;
}

// What is not known of the point of a distance besides the spread of levels, as a variance along
// the nerve.
double beyond_levels(const DistancePrior& distance) {
  const double per_mm = distance.moves[0].per_mm;
  const double rest = distance.sd_mm * distance.sd_mm - shared(distance, distance) -
                      distance.landmark_sd_mm * distance.landmark_sd_mm;
  return per_mm == 0.0 ? 0.0 : std::max(0.0, rest) / (per_mm * per_mm);
}

double covariance(const DistancePrior& a, const DistancePrior& b) {
  const bool same_landmark = !a.landmark.empty() && a.landmark == b.landmark;
  if (same_point(a, b) && same_landmark) return a.sd_mm * b.sd_mm;
  double result = held(a) * held(b) * shared(a, b);
  if (same_point(a, b)) {
    result += a.moves[0].per_mm * b.moves[0].per_mm * std::min(beyond_levels(a), beyond_levels(b));
  }
  return result;
}

}  // namespace

void FoundDistances::add(DistancePrior prior, double read_mm, double error_mm) {
  read_.push_back(std::move(prior));
  read_mm_.push_back(read_mm);
  error_mm_.push_back(error_mm);
}

void FoundDistances::finish() {
  const auto n = static_cast<Eigen::Index>(read_.size());
  own_.resize(n, n);
  surprise_.resize(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const auto at = static_cast<std::size_t>(i);
    surprise_[i] = read_mm_[at] - read_[at].mean_mm;
    for (Eigen::Index j = 0; j < n; ++j) {
      own_(i, j) = covariance(read_[at], read_[static_cast<std::size_t>(j)]);
    }
    own_(i, i) += error_mm_[at] * error_mm_[at];
  }
}

FoundDistances::Narrowed FoundDistances::narrow(const DistancePrior& distance) const {
  if (read_.empty()) return {distance.mean_mm, distance.sd_mm};
  Eigen::VectorXd with(static_cast<Eigen::Index>(read_.size()));
  for (Eigen::Index i = 0; i < with.size(); ++i) {
    with[i] = covariance(distance, read_[static_cast<std::size_t>(i)]);
  }
  const Eigen::VectorXd gain = own_.ldlt().solve(with);
  const double variance = distance.sd_mm * distance.sd_mm - gain.dot(with);
  return {distance.mean_mm + gain.dot(surprise_), std::sqrt(std::max(0.0, variance))};
}

}  // namespace endplate::limb
