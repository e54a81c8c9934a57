#pragma once
// How big one patient's limb is: segment lengths, breadths and girths as a joint distribution,
// narrowed by whatever is known of the patient. Lengths in mm.
//
// A given length is taken as exact and conditions all others (closed form, see Conditioning). Where
// the sex is not given the limb is a mixture of both, weighed by how well each explains what was
// given. With nothing given at all it is the ledger limb with the spread of adults of both sexes.
// Where a length of the other limb is given too, what differs is this limb's own.
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/measure_vocabulary.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/size_prior.hpp"

namespace endplate::limb {

struct SizedLimb {
  Eigen::VectorXd measures_mm;  // in the order of SizePrior::measures()
  SegmentScale scale;
};

class LimbSize {
 public:
  // Problems stand at their place in a case file ("/limb/measured/NAME"): Fault::input. A length
  // outside the published range is believed, with a warning; one that only another unit explains is
  // refused with the usual range.
  static Expected<LimbSize> from(const evidence::DataPackage& package, const casefile::Limb& limb);

  // The same limb when more is known of it: combinations of the measures with errors, whose
  // covariance must be positive definite.
  LimbSize also_knowing(const Observation& more) const;

  const MeasureVocabulary& vocabulary() const { return *vocabulary_; }
  const std::vector<std::string>& measures() const { return prior_->measures(); }

  // Of a weighted sum of the measures: one of the vocabulary, or any other.
  double mean_mm(const Eigen::VectorXd& weights) const;
  double sd_mm(const Eigen::VectorXd& weights) const;
  Summary summary(const Eigen::VectorXd& weights) const;
  double mean_mm(std::string_view name) const { return mean_mm(vocabulary_->at(name).weights); }
  double sd_mm(std::string_view name) const { return sd_mm(vocabulary_->at(name).weights); }
  Summary summary(std::string_view name) const { return summary(vocabulary_->at(name).weights); }
  // Mean and covariance of the measures, over both sexes where the sex is not given.
  Gaussian moments() const;

  // How many in a hundred people of that sex and age have less than the mean of `weights`; people
  // of both sexes, half each, where the sex is not given. Nothing where their spread is not
  // published or nothing is known of the patient.
  std::optional<double> percentile(const Eigen::VectorXd& weights) const;

  // Against the ledger limb.
  SegmentScale mean_scale() const;
  SegmentScale scale_of(const Eigen::VectorXd& measures_mm) const;
  // The lengths of the three segments as weighted sums of the measures: rows arm, forearm, hand.
  Eigen::MatrixXd segment_weights() const;
  // Limb i is the same whatever the number asked for: it depends on the seed and i alone.
  std::vector<SizedLimb> sample(int count, std::uint64_t seed) const;

  // Chance that the limb is a woman's; 0 or 1 where the sex is given.
  double chance_female() const;
  // Each value that was not given and what was taken instead, in words.
  const std::vector<std::string>& assumptions() const { return assumptions_; }
  // What was given or asked lies outside the published range, in words with the source.
  const std::vector<std::string>& warnings() const { return warnings_; }
  // Ids of anthropometry.csv.
  const std::vector<std::string>& sources() const { return sources_; }

 private:
  struct Component {
    casefile::Sex sex = casefile::Sex::female;
    double weight = 1.0;
    Gaussian prior;              // of the people of that sex and age
    Eigen::MatrixXd prior_root;  // lower Cholesky factor of its covariance
    Conditioning conditioning;
    Gaussian posterior;  // of this limb
  };

  // Components and weights from the priors and the observation.
  void condition(const std::vector<casefile::Sex>& sexes, std::vector<Gaussian> priors);

  std::shared_ptr<const SizePrior> prior_;
  std::shared_ptr<const MeasureVocabulary> vocabulary_;
  Observation observation_;
  Eigen::MatrixXd error_root_;          // lower factor of its error; empty when it is exact
  Eigen::VectorXd against_other_side_;  // this limb against a body whose arms are alike
  std::vector<Component> components_;   // women before men
  bool child_ = false;
  bool ledger_ = false;
  std::vector<std::string> assumptions_;
  std::vector<std::string> warnings_;
  std::vector<std::string> sources_;
};

}  // namespace endplate::limb
