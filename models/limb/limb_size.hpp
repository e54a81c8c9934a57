#pragma once
// How big one patient's limb is: segment lengths, breadths and girths as a joint distribution,
// narrowed by whatever is known of the patient. Lengths in mm.
//
// A given length is taken as exact and conditions all others (closed form, see Conditioning). Where
// the sex is not given the limb is a mixture of both, weighed by how well each explains what was
// given. With nothing given at all it is the ledger limb with the spread of adults of both sexes.
#include <cstdint>
#include <memory>
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
  // Problems stand at their place in a case file ("/limb/measured/NAME"). A length that no limb of
  // that age and sex has is refused with the range that would be accepted: Fault::input where it
  // looks like another unit, else Fault::outside_model.
  static Expected<LimbSize> from(const evidence::DataPackage& package, const casefile::Limb& limb);

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

  // Against the ledger limb.
  SegmentScale mean_scale() const;
  SegmentScale scale_of(const Eigen::VectorXd& measures_mm) const;
  // Limb i is the same whatever the number asked for: it depends on the seed and i alone.
  std::vector<SizedLimb> sample(int count, std::uint64_t seed) const;

  // Chance that the limb is a woman's; 0 or 1 where the sex is given.
  double chance_female() const;
  // Each value that was not given and what was taken instead, in words.
  const std::vector<std::string>& assumptions() const { return assumptions_; }
  // Ids of anthropometry.csv.
  const std::vector<std::string>& sources() const { return sources_; }

 private:
  struct Component {
    casefile::Sex sex = casefile::Sex::female;
    double weight = 1.0;
    Gaussian prior;
    Eigen::MatrixXd prior_root;  // lower Cholesky factor of the prior's covariance
    Conditioning conditioning;
    Gaussian posterior;
  };

  std::shared_ptr<const SizePrior> prior_;
  std::shared_ptr<const MeasureVocabulary> vocabulary_;
  std::vector<Component> components_;  // women before men
  std::vector<std::string> assumptions_;
  std::vector<std::string> sources_;
};

}  // namespace endplate::limb
