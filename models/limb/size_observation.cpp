#include "models/limb/size_observation.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>
#include <set>

namespace endplate::limb {
namespace {

using casefile::Sex;

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

// The name as the case file has it, which may be another than the standard one.
std::string place_of(const char* key, const std::string& name,
                     const std::map<std::string, std::string>& written_as) {
  const auto written = written_as.find(name);
  return fmt::format("/limb/{}/{}", key,
                     escaped(written == written_as.end() ? name : written->second));
}

class Reader {
 public:
  Reader(const casefile::Limb& limb, const MeasureVocabulary& vocabulary,
         const SizePrior& population, const std::vector<Sex>& sexes,
         const std::vector<Gaussian>& priors)
      : limb_(limb),
        vocabulary_(vocabulary),
        population_(population),
        sexes_(sexes),
        priors_(priors),
        variables_(priors.front().mean.size()) {
    given_.against_other_side = Eigen::VectorXd::Ones(variables_);
  }

  Expected<GivenSize> read() {
    read_stature();
    for (const auto& [name, value_mm] : limb_.other_side_mm) {
      const std::string place = place_of("measured_other_side", name, limb_.other_side_as);
      if (const Measure* measure = find(place, name)) {
        if (is_believable(place, measure->weights, value_mm)) {
          observe(measure->weights, value_mm);
        }
      }
    }
    for (const auto& [name, value_mm] : limb_.measured_mm) {
      const std::string place = place_of("measured", name, limb_.measured_as);
      if (const Measure* measure = find(place, name)) {
        if (is_believable(place, measure->weights, value_mm)) take(place, *measure, value_mm);
      }
    }
    if (!problems_.empty()) return std::unexpected(Error{Fault::input, std::move(problems_)});
    fill_observation();
    return std::move(given_);
  }

 private:
  void read_stature() {
    const Eigen::VectorXd weights = Eigen::VectorXd::Unit(variables_, 0);
    if (limb_.stature_mm) {
      if (is_believable("/limb/stature_mm", weights, *limb_.stature_mm)) {
        observe(weights, *limb_.stature_mm);
      }
      return;
    }
    if (!limb_.stature_percentile) return;
    const double percentile = *limb_.stature_percentile;
    if (sexes_.size() != 1) {
      problems_.push_back({"/limb/stature_percentile",
                           "a percentile is one of people of a sex, which is not given",
                           "Give sex, or stature_mm instead."});
      return;
    }
    if (!(percentile > 0.0 && percentile < 100.0)) {
      problems_.push_back({"/limb/stature_percentile",
                           fmt::format("{:g} is no percentile", percentile),
                           "Give more than 0 and less than 100, or stature_mm instead."});
      return;
    }
    const Gaussian& prior = priors_.front();
    const double stature_mm = boost::math::quantile(
        boost::math::normal(prior.mean[0], prior.sd_of(weights)), percentile / 100.0);
    observe(weights, stature_mm);
    given_.assumptions.push_back(fmt::format(
        "Stature is that of percentile {:g} of {}: {:.0f} mm (normal spread: mean {:.0f}, SD "
        "{:.0f} mm).",
        percentile, whom(), stature_mm, prior.mean[0], prior.sd_of(weights)));
  }

  const Measure* find(const std::string& place, const std::string& name) {
    const Measure* measure = vocabulary_.find(name);
    if (measure == nullptr) {
      problems_.push_back(
          {place, fmt::format("'{}' is not a known measure", name),
           fmt::format("Nearest: {}.", fmt::join(vocabulary_.nearest(name), "; "))});
    }
    return measure;
  }

  // Refuses what only another unit explains, and warns of what nobody published.
  bool is_believable(const std::string& place, const Eigen::VectorXd& weights, double value_mm) {
    double lowest_mm = std::numeric_limits<double>::infinity();
    double highest_mm = 0.0;
    double least_mm = std::numeric_limits<double>::infinity();
    double most_mm = 0.0;
    for (const Gaussian& prior : priors_) {
      const double mean_mm = prior.mean_of(weights);
      const double reach_mm = kPublished_sd * prior.sd_of(weights);
      lowest_mm = std::min(lowest_mm, mean_mm - reach_mm);
      highest_mm = std::max(highest_mm, mean_mm + reach_mm);
      least_mm = std::min(least_mm, kLeast * mean_mm);
      most_mm = std::max(most_mm, kMost * mean_mm);
    }
    const char* give_age = limb_.age_years ? "" : "; give age_years if it is a child's limb";
    if (!(value_mm >= least_mm && value_mm <= most_mm)) {
      problems_.push_back(
          {place, fmt::format("{:g} mm is no length of {}", value_mm, whom()),
           fmt::format("Lengths are in mm (1 cm is 10 mm, 1 inch 25.4 mm); {:.0f} to {:.0f} is "
                       "usual here{}.",
                       lowest_mm, highest_mm, give_age)});
      return false;
    }
    if (value_mm >= lowest_mm && value_mm <= highest_mm) return true;
    const bool is_stature = weights[0] != 0.0;
    given_.warnings.push_back(fmt::format(
        "{}: {:g} mm is outside the published range of {}, {:.0f} to {:.0f} mm (mean and {:g} "
        "standard deviations; {}). It is believed as given; what follows from it for the rest of "
        "the limb goes beyond the people who were measured{}{}.",
        place, value_mm, whom(), lowest_mm, highest_mm, kPublished_sd, source_of(weights),
        is_stature && limb_.measured_mm.empty()
            ? ", and in disproportionate short or tall stature the segments do not follow stature: "
              "measure arm, forearm and hand"
            : "",
        give_age));
    return true;
  }

  // A length of this limb: where the other side's is known too, the difference is this limb's own.
  void take(const std::string& place, const Measure& measure, double value_mm) {
    const double* other_mm = nullptr;
    for (const auto& [name, other] : limb_.other_side_mm) {
      if (vocabulary_.find(name) == &measure) other_mm = &other;
    }
    if (other_mm == nullptr) {
      observe(measure.weights, value_mm);
      return;
    }
    for (Eigen::Index i = 0; i < variables_; ++i) {
      if (measure.weights[i] == 0.0) continue;
      if (!compared_.insert(i).second) {
        problems_.push_back(
            {place,
             fmt::format("'{}' and another length that differs between the sides share a part",
                         measure.name),
             "Compare the sides by the whole length or by its parts, not by both."});
        return;
      }
      given_.against_other_side[i] = value_mm / *other_mm;
    }
    const double per_cent = 100.0 * (value_mm / *other_mm - 1.0);
    if (std::abs(value_mm - *other_mm) < 0.5) return;
    given_.assumptions.push_back(
        fmt::format("{}: this limb is {:.0f} mm ({:.0f} %) {} than the other; what was not "
                    "measured is as on the "
                    "other side, and the nerves are as long as in a limb of this size.",
                    measure.name, std::abs(value_mm - *other_mm), std::abs(per_cent),
                    per_cent < 0.0 ? "shorter" : "longer"));
  }

  void observe(const Eigen::VectorXd& weights, double value_mm) {
    weights_.push_back(weights);
    values_.push_back(value_mm);
  }

  void fill_observation() {
    Observation& observation = given_.observation;
    observation.combinations.resize(static_cast<Eigen::Index>(values_.size()), variables_);
    observation.values.resize(static_cast<Eigen::Index>(values_.size()));
    for (std::size_t i = 0; i < values_.size(); ++i) {
      observation.combinations.row(static_cast<Eigen::Index>(i)) = weights_[i].transpose();
      observation.values[static_cast<Eigen::Index>(i)] = values_[i];
    }
  }

  std::string whom() const {
    const bool child = is_child(limb_);
    const std::string people = !limb_.sex                ? child ? "boys and girls" : "adults"
                               : *limb_.sex == Sex::male ? child ? "boys" : "men"
                               : child                   ? "girls"
                                                         : "women";
    return child ? fmt::format("{} at {:g} years", people, *limb_.age_years) : people;
  }

  std::string source_of(const Eigen::VectorXd& weights) const {
    if (is_child(limb_)) return "Snyder et al. 1977, Fryar et al. 2025, limb_growth.csv";
    std::set<std::string> rows;
    for (Eigen::Index i = 0; i < variables_; ++i) {
      if (weights[i] == 0.0) continue;
      for (const Sex sex : sexes_) {
        const auto own = population_.adult_sources(sex, i);
        rows.insert(own.begin(), own.end());
      }
    }
    return fmt::format("anthropometry.csv, {}", fmt::join(rows, ", "));
  }

  const casefile::Limb& limb_;
  const MeasureVocabulary& vocabulary_;
  const SizePrior& population_;
  const std::vector<Sex>& sexes_;
  const std::vector<Gaussian>& priors_;
  Eigen::Index variables_;
  std::vector<Eigen::VectorXd> weights_;
  std::vector<double> values_;
  std::set<Eigen::Index> compared_;
  std::vector<Problem> problems_;
  GivenSize given_;
};

}  // namespace

bool is_ledger_limb(const casefile::Limb& limb) {
  return !limb.sex && !limb.age_years && !limb.stature_mm && !limb.stature_percentile &&
         limb.measured_mm.empty() && limb.other_side_mm.empty();
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

Expected<GivenSize> read_given_size(const casefile::Limb& limb, const MeasureVocabulary& vocabulary,
                                    const SizePrior& population, const std::vector<Sex>& sexes,
                                    const std::vector<Gaussian>& priors) {
  return Reader(limb, vocabulary, population, sexes, priors).read();
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
  for (const auto& [name, value_mm] : limb.other_side_mm) {
    names.push_back(name + " of the other side");
  }
  return std::unexpected(
      Error::input({"/limb/measured",
                    fmt::format("the lengths contradict each other by {:.0f} mm", contradiction_mm),
                    fmt::format("Correct or leave out one of: {}.", fmt::join(names, "; "))}));
}

}  // namespace endplate::limb
