#pragma once
// When axons that are led into a nerve today come to its muscles, through models/recovery.
#include <vector>

#include "models/anatomy/limb_columns.hpp"
#include "models/limb/case_limb.hpp"
#include "models/plan/answer.hpp"
#include "models/recovery/parameters.hpp"
#include "models/recovery/targets.hpp"

namespace endplate::plan {

struct Regrown {
  std::optional<FirstMovement> first_movement;
  std::optional<ModelChance> chance;
};

// The first movement and the mean chance over whole muscles (areas where there is no muscle).
Regrown summarise(const recovery::RecoveryAnswer& answer, std::string_view how);

class Regrowth {
 public:
  Regrowth(const anatomy::NerveTree& tree, const evidence::DataPackage& package,
           const recovery::Parameters& parameters, const limb::CaseLimb& limb,
           const std::vector<anatomy::NerveMetrics>& limbs)
      : tree_(tree),
        parameters_(parameters),
        limb_(limb),
        limbs_(limbs),
        limb_columns_(limbs),
        targets_(recovery::all_targets(tree, package)) {}

  // One coaptation at the beginning of each of `recipients`, done `days` after the injury. Only
  // the muscles named in `wanted` (keys) count. `donor`: LesionModel::donor.
  Regrown into(const std::vector<anatomy::NodeIndex>& recipients,
               const std::vector<std::string>& wanted, std::string_view donor, double days,
               std::optional<double> age_years, std::uint64_t seed) const;

 private:
  const anatomy::NerveTree& tree_;
  const recovery::Parameters& parameters_;
  const limb::CaseLimb& limb_;
  const std::vector<anatomy::NerveMetrics>& limbs_;
  anatomy::LimbColumns limb_columns_;
  std::vector<recovery::Target> targets_;
};

}  // namespace endplate::plan
