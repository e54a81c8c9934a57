#include "models/limb/limb_size.hpp"

#include <Random123/philox.h>
#include <fmt/format.h>
#include <Random123/boxmuller.hpp>
#include <Random123/uniform.hpp>

#include <Eigen/Cholesky>
#include <algorithm>
#include <array>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <limits>
#include <set>

#include "models/limb/size_assumptions.hpp"
#include "models/limb/size_observation.hpp"

namespace endplate::limb {
namespace {

using casefile::Sex;

constexpr const char* kArm = "acromion to lateral epicondyle";
constexpr const char* kForearm = "interepicondylar line to bistyloid line";
constexpr const char* kHand = "distal wrist crease to middle fingertip";
constexpr const char* kArmGirth = "mid-arm circumference";
constexpr const char* kForearmGirth = "forearm circumference";
constexpr const char* kWristGirth = "wrist circumference";
// Girths of the ledger limb's skin as skin_outline.csv draws it: mid arm, thickest forearm, level
// of the styloids (perimeters of its ellipses).
constexpr double kOutlineArm_mm = 284.3;
constexpr double kOutlineForearm_mm = 267.3;
constexpr double kOutlineWrist_mm = 153.5;
// Keeps these random numbers apart from those of other questions asked with the same seed.
constexpr std::uint64_t kStream = 0x6c696d6273697a65;

Gaussian prior_of(const SizePrior& prior, const casefile::Limb& limb, Sex sex) {
  if (is_ledger_limb(limb)) return prior.ledger(sex);
  return is_child(limb) ? prior.child(sex, *limb.age_years) : prior.adult(sex);
}

}  // namespace

Expected<LimbSize> LimbSize::from(const evidence::DataPackage& package,
                                  const casefile::Limb& limb) {
  auto prior = SizePrior::from(package);
  if (!prior) return std::unexpected(prior.error());
  auto vocabulary = MeasureVocabulary::from(package, prior->measures());
  if (!vocabulary) return std::unexpected(vocabulary.error());

  LimbSize size;
  size.prior_ = std::make_shared<const SizePrior>(std::move(*prior));
  size.vocabulary_ = std::make_shared<const MeasureVocabulary>(std::move(*vocabulary));

  std::vector<Gaussian> priors;
  std::vector<Sex> sexes{Sex::female, Sex::male};
  if (limb.sex) sexes = {*limb.sex};
  if (const auto age = check_age(limb); !age) return std::unexpected(age.error());
  for (const Sex sex : sexes) priors.push_back(prior_of(*size.prior_, limb, sex));
  const auto observation = observe(limb, *size.vocabulary_, priors);
  if (!observation) return std::unexpected(observation.error());

  double most_likely = -std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < sexes.size(); ++i) {
    Conditioning conditioning(priors[i], *observation);
    most_likely = std::max(most_likely, conditioning.log_density());
    Gaussian posterior = conditioning.posterior(priors[i]);
    size.components_.push_back({sexes[i], 1.0, priors[i],
                                Eigen::LLT<Eigen::MatrixXd>(priors[i].covariance).matrixL(),
                                std::move(conditioning), std::move(posterior)});
  }
  double total = 0.0;
  for (Component& component : size.components_) {
    component.weight = std::exp(component.conditioning.log_density() - most_likely);
    total += component.weight;
  }
  for (Component& component : size.components_) component.weight /= total;

  std::vector<const Conditioning*> conditionings;
  std::set<std::string> ids;
  for (const Component& component : size.components_) {
    conditionings.push_back(&component.conditioning);
    const auto own = size.prior_->sources(component.sex, is_child(limb));
    ids.insert(own.begin(), own.end());
  }
  if (auto agreed = check_agreement(limb, conditionings); !agreed) {
    return std::unexpected(agreed.error());
  }
  size.assumptions_ = size_assumptions(limb, *size.prior_, size.chance_female(), conditionings);
  size.sources_.assign(ids.begin(), ids.end());
  return size;
}

double LimbSize::mean_mm(const Eigen::VectorXd& weights) const {
  double mean = 0.0;
  for (const Component& c : components_) mean += c.weight * c.posterior.mean_of(weights);
  return mean;
}

double LimbSize::sd_mm(const Eigen::VectorXd& weights) const {
  const double mean = mean_mm(weights);
  double variance = 0.0;
  for (const Component& c : components_) {
    const double apart = c.posterior.mean_of(weights) - mean;
    const double sd = c.posterior.sd_of(weights);
    variance += c.weight * (sd * sd + apart * apart);
  }
  return std::sqrt(variance);
}

Summary LimbSize::summary(const Eigen::VectorXd& weights) const {
  const double mean = mean_mm(weights);
  const double sd = sd_mm(weights);
  // What was measured has no spread but rounding.
  if (sd < 1e-6 * std::abs(mean)) return {mean, 0.0, mean, mean, mean};
  if (components_.size() == 1) return summarise_normal(mean, sd);

  const auto chance_below = [&](double value) {
    double chance = 0.0;
    for (const Component& c : components_) {
      const double component_sd = std::max(c.posterior.sd_of(weights), 1e-9);
      chance +=
          c.weight *
          boost::math::cdf(boost::math::normal(c.posterior.mean_of(weights), component_sd), value);
    }
    return chance;
  };
  const auto percentile = [&](double p) {
    const auto bracket = boost::math::tools::bisect(
        [&](double value) { return chance_below(value) - p; }, mean - 8.0 * sd, mean + 8.0 * sd,
        boost::math::tools::eps_tolerance<double>(40));
    return 0.5 * (bracket.first + bracket.second);
  };
  return {mean, sd, percentile(0.05), percentile(0.50), percentile(0.95)};
}

Gaussian LimbSize::moments() const {
  const Eigen::Index count = components_.front().posterior.mean.size();
  Gaussian result{Eigen::VectorXd::Zero(count), Eigen::MatrixXd::Zero(count, count)};
  for (const Component& c : components_) result.mean += c.weight * c.posterior.mean;
  for (const Component& c : components_) {
    const Eigen::VectorXd apart = c.posterior.mean - result.mean;
    result.covariance += c.weight * (c.posterior.covariance + apart * apart.transpose());
  }
  return result;
}

SegmentScale LimbSize::scale_of(const Eigen::VectorXd& measures_mm) const {
  const auto of = [&](const char* measure) {
    return vocabulary_->at(measure).weights.dot(measures_mm);
  };
  SegmentScale scale{of(kArm) / kLedgerArm_mm, of(kForearm) / kLedgerForearm_mm,
                     of(kHand) / kLedgerHand_mm, prior_->breadth_weights().dot(measures_mm)};
  scale.skin = {of(kArmGirth) / (scale.breadth * kOutlineArm_mm),
                of(kForearmGirth) / (scale.breadth * kOutlineForearm_mm),
                of(kWristGirth) / (scale.breadth * kOutlineWrist_mm)};
  return scale;
}

SegmentScale LimbSize::mean_scale() const {
  return scale_of(moments().mean);
}

std::vector<SizedLimb> LimbSize::sample(int count, std::uint64_t seed) const {
  const Eigen::Index size = components_.front().prior.mean.size();
  r123::Philox4x64 philox;
  const r123::Philox4x64::key_type key{{seed, kStream}};
  std::vector<SizedLimb> limbs;
  limbs.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    const auto draw = [&](std::uint64_t block) {
      return philox({{static_cast<std::uint64_t>(i), block, 0, 0}}, key);
    };
    const double chosen = r123::u01<double>(draw(0)[0]);
    const Component* component = &components_.front();
    if (components_.size() == 2 && chosen > component->weight) component = &components_.back();

    Eigen::VectorXd standard(size);
    for (Eigen::Index k = 0; k < size; k += 4) {
      const auto words = draw(1 + static_cast<std::uint64_t>(k) / 4);
      const auto first = r123::boxmuller(words[0], words[1]);
      const auto second = r123::boxmuller(words[2], words[3]);
      const std::array<double, 4> normal{first.x, first.y, second.x, second.y};
      for (Eigen::Index j = 0; j < 4 && k + j < size; ++j) {
        standard[k + j] = normal[static_cast<std::size_t>(j)];
      }
    }
    const Eigen::VectorXd prior_draw = component->prior.mean + component->prior_root * standard;
    SizedLimb limb{component->conditioning.correct(prior_draw), {}};
    limb.scale = scale_of(limb.measures_mm);
    limbs.push_back(std::move(limb));
  }
  return limbs;
}

double LimbSize::chance_female() const {
  double chance = 0.0;
  for (const Component& c : components_) {
    if (c.sex == Sex::female) chance += c.weight;
  }
  return chance;
}

}  // namespace endplate::limb
