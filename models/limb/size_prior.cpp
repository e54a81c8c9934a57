#include "models/limb/size_prior.hpp"

#include <fmt/format.h>

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace endplate::limb {
namespace {

using casefile::Sex;
using evidence::Row;

constexpr std::array kSexes{Sex::male, Sex::female};

bool is_of(const Row& row, Sex sex) {
  const std::string_view word = row.text("sex");
  return word == "both" || word == (sex == Sex::male ? "male" : "female");
}

// Between the points by age; outside them the nearest. `value` reads a point.
template <class Points, class Value>
double interpolate(const Points& points, double age_years, const Value& value) {
  const auto above =
      std::ranges::find_if(points, [&](const auto& point) { return point.age_years >= age_years; });
  if (above == points.begin()) return value(points.front());
  if (above == points.end()) return value(points.back());
  const auto& below = *std::prev(above);
  const double share = (age_years - below.age_years) / (above->age_years - below.age_years);
  return std::lerp(value(below), value(*above), share);
}

}  // namespace

Eigen::Index SizePrior::index_of(std::string_view measure) const {
  const auto found = std::ranges::find(measures_, measure);
  if (found == measures_.end()) throw std::out_of_range("no measure " + std::string(measure));
  return found - measures_.begin();
}

Expected<SizePrior> SizePrior::from(const evidence::DataPackage& package) {
  SizePrior prior;
  for (const Row row : package.table("limb_size")) {
    if (std::ranges::find(prior.measures_, row.text("measure")) == prior.measures_.end()) {
      prior.measures_.emplace_back(row.text("measure"));
    }
  }
  prior.follows_.resize(prior.measures_.size());
  prior.ledger_mm_.resize(prior.measures_.size());
  prior.spread_is_assumed_.resize(prior.measures_.size(), false);
  if (auto read = prior.read_adults(package); !read) return std::unexpected(read.error());
  prior.read_growth(package);
  prior.set_breadth_weights();
  return prior;
}

Expected<void> SizePrior::read_adults(const evidence::DataPackage& package) {
  const auto count = static_cast<Eigen::Index>(measures_.size());
  constexpr double kMissing = std::numeric_limits<double>::quiet_NaN();
  std::vector<Problem> problems;
  for (const Sex sex : kSexes) {
    Eigen::VectorXd mean = Eigen::VectorXd::Constant(count, kMissing);
    Eigen::VectorXd slope = mean;
    Eigen::VectorXd residual = mean;
    double stature_sd_mm = kMissing;
    for (const Row row : package.table("limb_size")) {
      if (!is_of(row, sex)) continue;
      const Eigen::Index i = index_of(row.text("measure"));
      mean[i] = row.number("mean_mm").value();
      slope[i] = row.number("per_stature").value();
      residual[i] = row.number("residual_sd_mm").value();
      if (i == 0) stature_sd_mm = row.number("sd_mm").value();
      if (row.text("provenance") == "assumed")
        spread_is_assumed_[static_cast<std::size_t>(i)] = true;
      measure_sources_[position(sex)][i] = row.list("anthropometry_ids");
      auto& follows = follows_[static_cast<std::size_t>(i)];
      if (!row.text("child_from").empty()) follows.from = index_of(row.text("child_from"));
      if (!row.text("child_less").empty()) follows.less = index_of(row.text("child_less"));
      ledger_mm_[static_cast<std::size_t>(i)] = row.number("ledger_mm").value_or(0.0);
      for (auto& id : row.list("anthropometry_ids")) {
        adult_sources_[position(sex)].insert(std::move(id));
      }
    }
    Eigen::MatrixXd correlation = Eigen::MatrixXd::Constant(count, count, kMissing);
    correlation.diagonal().setOnes();
    correlation.row(0).tail(count - 1).setZero();
    correlation.col(0).tail(count - 1).setZero();
    for (const Row row : package.table("limb_size_correlations")) {
      if (!is_of(row, sex)) continue;
      const Eigen::Index a = index_of(row.text("measure_a"));
      const Eigen::Index b = index_of(row.text("measure_b"));
      correlation(a, b) = correlation(b, a) = row.number("residual_correlation").value();
      for (auto& id : row.list("anthropometry_ids")) {
        adult_sources_[position(sex)].insert(std::move(id));
      }
    }
    const std::string_view word = sex == Sex::male ? "male" : "female";
    if (mean.hasNaN() || correlation.hasNaN()) {
      problems.push_back({"limb_size_correlations.csv",
                          fmt::format("a measure or a pair of measures is missing for {}", word),
                          "Give every measure both sexes and every pair one correlation."});
      continue;
    }
    if (Eigen::LLT<Eigen::MatrixXd>(correlation).info() != Eigen::Success) {
      problems.push_back({"limb_size_correlations.csv",
                          fmt::format("the correlations for {} contradict each other", word),
                          "Lower the assumed ones until the matrix is positive definite."});
      continue;
    }
    Gaussian& adult = adults_[position(sex)];
    adult.mean = mean;
    adult.covariance = slope * slope.transpose() * stature_sd_mm * stature_sd_mm +
                       Eigen::MatrixXd(residual.asDiagonal() * correlation * residual.asDiagonal());
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return {};
}

SizePrior::Growth SizePrior::read_ages(const evidence::DataPackage& package, std::string_view table,
                                       Sex sex) {
  Growth growth;
  for (const Row row : package.table(table)) {
    const double age_years = row.number("age_years").value();
    if (!is_of(row, sex) || age_years >= kAdult_years) continue;
    growth[index_of(row.text("measure"))].push_back(
        {age_years, row.number("mean_mm").value(), row.number("sd_mm").value_or(0.0)});
    child_sources_[position(sex)].emplace(row.text("anthropometry_id"));
  }
  for (auto& [measure, points] : growth) std::ranges::sort(points, {}, &GrowthPoint::age_years);
  return growth;
}

void SizePrior::read_growth(const evidence::DataPackage& package) {
  for (const Sex sex : kSexes) {
    Growth& growth = growth_[position(sex)];
    Growth& spreads = spreads_[position(sex)];
    growth = read_ages(package, "limb_growth", sex);
    spreads = read_ages(package, "limb_growth_spread", sex);
    for (const auto& [measure, points] : growth) {
      if (spreads.contains(measure)) continue;
      for (const GrowthPoint& point : points) {
        if (point.sd_mm > 0.0) spreads[measure].push_back(point);
      }
    }
    const Gaussian& grown = adult(sex);
    for (Growth* ages : {&growth, &spreads}) {
      for (auto& [measure, points] : *ages) {
        points.push_back(
            {kAdult_years, grown.mean[measure], std::sqrt(grown.covariance(measure, measure))});
      }
    }
    youngest_years_ = growth.at(index_of("hand length")).front().age_years;
  }
}

bool SizePrior::spread_is_published(Eigen::Index measure, bool child) const {
  if (!child) return !spread_is_assumed_[static_cast<std::size_t>(measure)];
  return spreads_.front().contains(measure);
}

void SizePrior::set_breadth_weights() {
  breadth_weights_ = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(measures_.size()));
  for (const char* name : {"elbow breadth", "wrist breadth", "hand breadth"}) {
    const Eigen::Index i = index_of(name);
    const double of_both_mm = 0.5 * (adults_[0].mean[i] + adults_[1].mean[i]);
    breadth_weights_[i] = 1.0 / (3.0 * of_both_mm);
  }
}

double SizePrior::child_mean_mm(Sex sex, Eigen::Index measure, double age_years) const {
  const auto& growth = growth_[position(sex)];
  const Eigen::VectorXd& adult = adults_[position(sex)].mean;
  const auto mean_of = [](const GrowthPoint& point) { return point.mean_mm; };
  const auto own = growth.find(measure);
  if (own != growth.end()) {
    const double at_mm = interpolate(own->second, age_years, mean_of);
    const double first_years = own->second.front().age_years;
    if (age_years >= first_years || measure == 0) return at_mm;
    // Younger than its first row a measure shrinks with the length of the body.
    return at_mm * child_mean_mm(sex, 0, age_years) / child_mean_mm(sex, 0, first_years);
  }
  const Follows& follows = follows_[static_cast<std::size_t>(measure)];
  double child_mm = child_mean_mm(sex, follows.from, age_years);
  double adult_mm = adult[follows.from];
  if (follows.less >= 0) {
    child_mm -= child_mean_mm(sex, follows.less, age_years);
    adult_mm -= adult[follows.less];
  }
  return adult[measure] * child_mm / adult_mm;
}

Gaussian SizePrior::child(Sex sex, double age_years) const {
  const double age = std::max(age_years, 0.0);
  const Gaussian& grown = adult(sex);
  const Growth& spreads = spreads_[position(sex)];
  const auto sd_at = [&](Eigen::Index measure) {
    const auto with_sd = spreads.find(measure);
    if (with_sd == spreads.end()) return 0.0;
    // The spread relative to the size: it is what stays alike between neighbouring ages.
    return child_mean_mm(sex, measure, age) *
           interpolate(with_sd->second, age,
                       [](const GrowthPoint& p) { return p.sd_mm / p.mean_mm; });
  };

  const Eigen::Index reference = index_of("forearm-hand length");
  const auto adult_cv = [&](Eigen::Index i) {
    return std::sqrt(grown.covariance(i, i)) / grown.mean[i];
  };
  const double relative =
      sd_at(reference) / child_mean_mm(sex, reference, age) / adult_cv(reference);

  Gaussian result;
  result.mean.resize(grown.mean.size());
  Eigen::VectorXd factor(grown.mean.size());
  for (Eigen::Index i = 0; i < result.mean.size(); ++i) {
    result.mean[i] = child_mean_mm(sex, i, age);
    const double own_sd_mm = sd_at(i);
    const double sd_mm = own_sd_mm > 0.0 ? own_sd_mm : result.mean[i] * adult_cv(i) * relative;
    factor[i] = sd_mm / std::sqrt(grown.covariance(i, i));
  }
  result.covariance = factor.asDiagonal() * grown.covariance * factor.asDiagonal();
  return result;
}

Gaussian SizePrior::ledger(Sex sex) const {
  Gaussian result = adult(sex);
  Eigen::VectorXd factor = Eigen::VectorXd::Ones(result.mean.size());
  for (Eigen::Index i = 0; i < factor.size(); ++i) {
    const double stated_mm = ledger_mm_[static_cast<std::size_t>(i)];
    if (stated_mm > 0.0) {
      factor[i] = stated_mm / (0.5 * (adults_[0].mean[i] + adults_[1].mean[i]));
    }
  }
  result.mean = factor.cwiseProduct(result.mean);
  result.covariance = (factor.asDiagonal() * result.covariance * factor.asDiagonal()).eval();
  return result;
}

std::vector<std::string> SizePrior::sources(Sex sex, bool child) const {
  std::set<std::string> ids = adult_sources_[position(sex)];
  if (child) ids.insert(child_sources_[position(sex)].begin(), child_sources_[position(sex)].end());
  return {ids.begin(), ids.end()};
}

}  // namespace endplate::limb
