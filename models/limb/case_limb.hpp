#pragma once
// The limb of one case in the anatomical position, as lengths along its nerves.
#include <cstdint>
#include <string>
#include <vector>

#include "models/anatomy/lesion.hpp"
#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::limb {

class CaseLimb {
 public:
  static Expected<CaseLimb> from(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb);

  // Of the mean limb.
  const anatomy::NerveMetrics& metrics() const { return metrics_; }
  // Of sampled limbs; the same seed gives the same limbs whatever the number asked for.
  std::vector<anatomy::NerveMetrics> sample(int count, std::uint64_t seed) const;
  // Where an injury of a case file lies on the tree. A place outside the nerve or its segment is
  // refused with the range that would be accepted.
  Expected<anatomy::Lesion> place(const std::string& nerve, const casefile::Place& at) const;
  // What was not given and therefore taken, in words.
  const std::vector<std::string>& assumptions() const { return assumptions_; }
  // Ids of the published rows behind the position of a nerve's beginning and end.
  std::vector<std::string> sources(anatomy::NodeIndex nerve) const;

 private:
  const anatomy::NerveTree* tree_ = nullptr;
  anatomy::NerveMetrics metrics_;
  std::vector<std::string> assumptions_;
};

}  // namespace endplate::limb
