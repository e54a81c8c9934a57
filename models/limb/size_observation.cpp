#include "models/limb/size_observation.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "models/limb/size_prior.hpp"

namespace endplate::limb {
namespace {

struct Range {
  double lowest_mm = std::numeric_limits<double>::infinity();
  double highest_mm = 0.0;
};

Range accepted(const std::vector<Gaussian>& priors, const Eigen::VectorXd& weights) {
  Range range;
  for (const Gaussian& prior : priors) {
    const double reach_mm = kWidest_sd * prior.sd_of(weights);
    range.lowest_mm = std::min(range.lowest_mm, prior.mean_of(weights) - reach_mm);
    range.highest_mm = std::max(range.highest_mm, prior.mean_of(weights) + reach_mm);
  }
  return range;
}

// '~' and '/' of a name inside a JSON Pointer (RFC 6901).
std::string escaped(const std::string& name) {
  std::string result;
  for (const char c : name) {
    if (c == '~') {
      result += "~0";
    } else if (c == '/') {
      result += "~1";
    } else {
      result += c;
    }
  }
  return result;
}

class Observer {
 public:
  Observer(const casefile::Limb& limb, const std::vector<Gaussian>& priors)
      : limb_(limb), priors_(priors) {}

  void add(const std::string& place, const Eigen::VectorXd& weights, double value_mm) {
    const Range range = accepted(priors_, weights);
    const bool covered = value_mm >= range.lowest_mm && value_mm <= range.highest_mm;
    if (!covered) {
      // A tenth or ten times the length is another unit; the rest is a rare or an unstated size.
      const double middle_mm = 0.5 * (range.lowest_mm + range.highest_mm);
      const bool same_unit = value_mm > 0.2 * middle_mm && value_mm < 4.0 * middle_mm;
      auto& problems = same_unit ? outside_ : wrong_;
      problems.push_back(
          {place, fmt::format("{:g} mm is outside what the model covers for {}", value_mm, whom()),
           fmt::format("Lengths are in mm; {:.0f} to {:.0f} is accepted here{}.", range.lowest_mm,
                       range.highest_mm,
                       limb_.age_years ? "" : ", or give age_years if it is a child's limb")});
      return;
    }
    weights_.push_back(weights);
    values_.push_back(value_mm);
  }

  void unknown(Problem problem) { wrong_.push_back(std::move(problem)); }

  Expected<Observation> result(Eigen::Index variables) {
    if (!wrong_.empty()) {
      wrong_.insert(wrong_.end(), outside_.begin(), outside_.end());
      return std::unexpected(Error{Fault::input, std::move(wrong_)});
    }
    if (!outside_.empty()) return std::unexpected(Error{Fault::outside_model, std::move(outside_)});
    Observation observation;
    observation.combinations.resize(static_cast<Eigen::Index>(values_.size()), variables);
    observation.values.resize(static_cast<Eigen::Index>(values_.size()));
    for (std::size_t i = 0; i < values_.size(); ++i) {
      observation.combinations.row(static_cast<Eigen::Index>(i)) = weights_[i].transpose();
      observation.values[static_cast<Eigen::Index>(i)] = values_[i];
    }
    return observation;
  }

 private:
  std::string whom() const {
    const std::string sex = !limb_.sex                            ? "either sex"
                            : *limb_.sex == casefile::Sex::female ? "the female sex"
                                                                  : "the male sex";
    if (is_child(limb_)) return fmt::format("{} at {:g} years", sex, *limb_.age_years);
    return fmt::format("an adult of {}", sex);
  }

  const casefile::Limb& limb_;
  const std::vector<Gaussian>& priors_;
  std::vector<Eigen::VectorXd> weights_;
  std::vector<double> values_;
  std::vector<Problem> wrong_;
  std::vector<Problem> outside_;
};

}  // namespace

bool is_ledger_limb(const casefile::Limb& limb) {
  return !limb.sex && !limb.age_years && !limb.stature_mm && limb.measured_mm.empty();
}

bool is_child(const casefile::Limb& limb) {
  return limb.age_years && *limb.age_years < SizePrior::kAdult_years;
}

Expected<void> check_age(const casefile::Limb& limb) {
  if (!limb.age_years || (*limb.age_years >= 0.0 && *limb.age_years <= 120.0)) return {};
  return std::unexpected(
      Error::input({"/limb/age_years", fmt::format("{:g} years is no age", *limb.age_years),
                    "Give the age in years, 0 to 120, or leave it out."}));
}

Expected<Observation> observe(const casefile::Limb& limb, const MeasureVocabulary& vocabulary,
                              const std::vector<Gaussian>& priors) {
  const Eigen::Index variables = priors.front().mean.size();
  Observer observer(limb, priors);
  if (limb.stature_mm) {
    observer.add("/limb/stature_mm", Eigen::VectorXd::Unit(variables, 0), *limb.stature_mm);
  }
  for (const auto& [name, value_mm] : limb.measured_mm) {
    // The name as the case file has it, which may be another than the standard one.
    const auto written = limb.measured_as.find(name);
    const std::string place =
        "/limb/measured/" + escaped(written == limb.measured_as.end() ? name : written->second);
    if (const Measure* measure = vocabulary.find(name)) {
      observer.add(place, measure->weights, value_mm);
    } else {
      observer.unknown({place, fmt::format("'{}' is not a known measure", name),
                        fmt::format("Nearest: {}.", fmt::join(vocabulary.nearest(name), "; "))});
    }
  }
  return observer.result(variables);
}

Expected<void> check_agreement(const casefile::Limb& limb,
                               const std::vector<const Conditioning*>& conditionings) {
  double contradiction_mm = std::numeric_limits<double>::infinity();
  for (const Conditioning* conditioning : conditionings) {
    contradiction_mm = std::min(contradiction_mm, conditioning->contradiction());
  }
  // Each of several lengths may be read to the nearest millimetre.
  if (contradiction_mm <= 2.0) return {};
  std::vector<std::string> names;
  for (const auto& [name, value_mm] : limb.measured_mm) names.push_back(name);
  return std::unexpected(
      Error::input({"/limb/measured",
                    fmt::format("the lengths contradict each other by {:.0f} mm", contradiction_mm),
                    fmt::format("Correct or leave out one of: {}.", fmt::join(names, "; "))}));
}

}  // namespace endplate::limb
