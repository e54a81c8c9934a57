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
// Of the numbers of a limb: behind those of its measures, however many there are.
constexpr std::uint64_t kErrorBlock = 1000;

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
  size.child_ = is_child(limb);
  size.ledger_ = is_ledger_limb(limb);

  std::vector<Gaussian> priors;
  std::vector<Sex> sexes{Sex::female, Sex::male};
  if (limb.sex) sexes = {*limb.sex};
  if (const auto age = check_age(limb); !age) return std::unexpected(age.error());
  for (const Sex sex : sexes) priors.push_back(prior_of(*size.prior_, limb, sex));
  auto given = read_given_size(limb, *size.vocabulary_, *size.prior_, sexes, priors);
  if (!given) return std::unexpected(given.error());
  size.observation_ = std::move(given->observation);
  size.against_other_side_ = std::move(given->against_other_side);
  size.condition(sexes, std::move(priors));

  std::vector<const Conditioning*> conditionings;
  std::set<std::string> ids;
  for (const Component& component : size.components_) {
    conditionings.push_back(&component.conditioning);
    const auto own = size.prior_->sources(component.sex, size.child_);
    ids.insert(own.begin(), own.end());
  }
  if (auto agreed = check_agreement(limb, conditionings); !agreed) {
    return std::unexpected(agreed.error());
  }
  size.assumptions_ = size_assumptions(limb, size.chance_female());
  size.assumptions_.insert(size.assumptions_.end(), given->assumptions.begin(),
                           given->assumptions.end());
  size.warnings_ = std::move(given->warnings);
  const auto more = size_warnings(limb, *size.prior_, conditionings);
  size.warnings_.insert(size.warnings_.end(), more.begin(), more.end());
  size.sources_.assign(ids.begin(), ids.end());
  return size;
}

void LimbSize::condition(const std::vector<Sex>& sexes, std::vector<Gaussian> priors) {
  components_.clear();
  double most_likely = -std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < sexes.size(); ++i) {
    Conditioning conditioning(priors[i], observation_);
    most_likely = std::max(most_likely, conditioning.log_density());
    Gaussian posterior = conditioning.posterior(priors[i]);
    posterior.mean = against_other_side_.cwiseProduct(posterior.mean);
    posterior.covariance =
        (against_other_side_.asDiagonal() * posterior.covariance * against_other_side_.asDiagonal())
            .eval();
    Eigen::MatrixXd root = Eigen::LLT<Eigen::MatrixXd>(priors[i].covariance).matrixL();
    components_.push_back({sexes[i], 1.0, std::move(priors[i]), std::move(root),
                           std::move(conditioning), std::move(posterior)});
  }
  double total = 0.0;
  for (Component& component : components_) {
    component.weight = std::exp(component.conditioning.log_density() - most_likely);
    total += component.weight;
  }
  for (Component& component : components_) component.weight /= total;
}

LimbSize LimbSize::also_knowing(const Observation& more) const {
  LimbSize result = *this;
  const Eigen::Index before = observation_.values.size();
  const Eigen::Index added = more.values.size();
  const Eigen::Index variables = components_.front().prior.mean.size();
  Observation& all = result.observation_;
  all.combinations = Eigen::MatrixXd::Zero(before + added, variables);
  all.values = Eigen::VectorXd::Zero(before + added);
  all.error = Eigen::MatrixXd::Zero(before + added, before + added);
  all.combinations.topRows(before) = observation_.combinations;
  all.combinations.bottomRows(added) = more.combinations * against_other_side_.asDiagonal();
  all.values.head(before) = observation_.values;
  all.values.tail(added) = more.values;
  if (observation_.error.size() > 0) all.error.topLeftCorner(before, before) = observation_.error;
  all.error.bottomRightCorner(added, added) = more.error;
  result.error_root_ = Eigen::MatrixXd::Zero(before + added, before + added);
  if (error_root_.size() > 0) result.error_root_.topLeftCorner(before, before) = error_root_;
  result.error_root_.bottomRightCorner(added, added) =
      Eigen::MatrixXd(Eigen::LLT<Eigen::MatrixXd>(more.error).matrixL());

  std::vector<Sex> sexes;
  std::vector<Gaussian> priors;
  for (const Component& component : components_) {
    sexes.push_back(component.sex);
    priors.push_back(component.prior);
  }
  result.condition(sexes, std::move(priors));
  return result;
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

std::optional<double> LimbSize::percentile(const Eigen::VectorXd& weights) const {
  if (ledger_) return std::nullopt;
  for (Eigen::Index i = 0; i < weights.size(); ++i) {
    if (weights[i] != 0.0 && !prior_->spread_is_published(i, child_)) return std::nullopt;
  }
  const double value_mm = mean_mm(weights);
  double below = 0.0;
  for (const Component& c : components_) {
    below += boost::math::cdf(boost::math::normal(c.prior.mean_of(weights), c.prior.sd_of(weights)),
                              value_mm);
  }
  return 100.0 * below / static_cast<double>(components_.size());
}

Eigen::MatrixXd LimbSize::segment_weights() const {
  Eigen::MatrixXd weights(3, components_.front().prior.mean.size());
  weights.row(0) = vocabulary_->at(kArm).weights.transpose();
  weights.row(1) = vocabulary_->at(kForearm).weights.transpose();
  weights.row(2) = vocabulary_->at(kHand).weights.transpose();
  return weights;
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
    const auto normals = [&](Eigen::Index n, std::uint64_t first_block) {
      Eigen::VectorXd standard(n);
      for (Eigen::Index k = 0; k < n; k += 4) {
        const auto words = draw(first_block + static_cast<std::uint64_t>(k) / 4);
        const auto first = r123::boxmuller(words[0], words[1]);
        const auto second = r123::boxmuller(words[2], words[3]);
        const std::array<double, 4> normal{first.x, first.y, second.x, second.y};
        for (Eigen::Index j = 0; j < 4 && k + j < n; ++j) {
          standard[k + j] = normal[static_cast<std::size_t>(j)];
        }
      }
      return standard;
    };
    const double chosen = r123::u01<double>(draw(0)[0]);
    const Component* component = &components_.front();
    if (components_.size() == 2 && chosen > component->weight) component = &components_.back();

    const Eigen::VectorXd prior_draw =
        component->prior.mean + component->prior_root * normals(size, 1);
    Eigen::VectorXd error_draw;
    if (error_root_.size() > 0) error_draw = error_root_ * normals(error_root_.rows(), kErrorBlock);
    SizedLimb limb{
        against_other_side_.cwiseProduct(component->conditioning.correct(prior_draw, error_draw)),
        {}};
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
