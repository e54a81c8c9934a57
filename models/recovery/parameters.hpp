#pragma once
// The distributions of the forecast, read from recovery_parameters.csv (written by hand) and
// recovery_fitted.csv (written by endplate-calibrate), each with the published
// rows behind it. Days, mm and mm a day; spreads are between patients, not standard errors.
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"

namespace endplate::recovery {

enum class Family { fixed, normal, lognormal, log_logistic, probability, odds_ratio };

struct Parameter {
  std::string id;
  std::string quantity;    // "rate", "coaptation delay", ...
  std::string applies_to;  // a nerve, a mechanism, motor or sensory, or "any"
  std::string treatment;   // "none", "operated" or "any"
  std::string deficit;     // "partial", "complete" or "any"
  Family family = Family::fixed;
  double mean = 0.0;
  double sd = 0.0;
  std::vector<std::string> rows;  // of regeneration.csv and outcomes.csv
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;

  // Of a lognormal: median and standard deviation of the logarithm.
  double median() const;
  double log_sd() const;
  // A fixed, normal (not below 0) or lognormal quantity at the standard normal number z.
  double at(double z) const;
};

// Share of muscles that can still become useful t days after denervation: 1/(1+(t/median)^shape).
struct LogLogistic {
  double median = 0.0;
  double shape = 0.0;
  double survival(double t) const;
};
// Of a log-logistic with this mean and SD (0 < sd). Shape > 2 follows from the SD being finite.
LogLogistic log_logistic_from(double mean, double sd);

class Parameters {
 public:
  static Expected<Parameters> from(const evidence::DataPackage& package);

  // The row that fits best: `applies_to` counts more than `treatment`, that more than `deficit`;
  // "any" fits everything. Throws std::out_of_range when none fits, which `from` rules out for
  // every quantity that the forecast asks for.
  const Parameter& find(std::string_view quantity, std::string_view applies_to,
                        std::string_view treatment, std::string_view deficit = "any") const;
  const Parameter* find_if_any(std::string_view quantity, std::string_view applies_to,
                               std::string_view treatment, std::string_view deficit = "any") const;
  const std::vector<Parameter>& all() const { return all_; }

 private:
  std::vector<Parameter> all_;
};

}  // namespace endplate::recovery
