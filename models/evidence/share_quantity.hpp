#pragma once
// Rows that report the same share: a prevalence or an outcome on one scale.
#include <optional>
#include <string>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/evidence/outcome.hpp"
#include "models/evidence/proportion.hpp"
#include "models/evidence/provenance.hpp"

namespace endplate::evidence {

struct ShareRow {
  std::string id;
  std::string study;
  std::string population;
  Provenance provenance = Provenance::read;
  std::optional<double> share;  // as printed, 0 to 1
  std::optional<double> n;
  std::optional<Count> count;  // what is pooled
  std::string left_out;        // why the row is shown but not pooled; empty when it is pooled
};

struct ShareQuantity {
  std::string table;
  std::string name;
  std::vector<std::string> tree_nodes;  // of a landmark row
  std::optional<OutcomeScale> scale;    // of an outcome
  std::vector<ShareRow> rows;
};

// Prevalences of landmark_distances, then variants by name, then outcomes by scale and condition:
// two scales never share a quantity, nor do two conditions.
std::vector<ShareQuantity> share_quantities(const DataPackage& package);

struct PooledShare {
  std::vector<std::string> studies;
  std::vector<Count> counts;  // one a study
  PooledProportion pooled;
};

// The spread between studies to reckon with at the least, on the logit scale: the common tau of all
// quantities with two or more studies (proportion.hpp).
double share_floor_tau(const std::vector<ShareQuantity>& quantities);

// Nothing when no row can be pooled. Intervals at `level`.
std::optional<PooledShare> pool(const ShareQuantity& quantity, double floor_tau, double level);

}  // namespace endplate::evidence
