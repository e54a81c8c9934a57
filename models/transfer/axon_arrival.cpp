#include "models/transfer/axon_arrival.hpp"

#include <cmath>

#include "models/recovery/growth.hpp"

namespace endplate::transfer {
namespace {

const recovery::Parameter& rate_of(const recovery::Parameters& parameters,
                                   const anatomy::NerveTree& tree, anatomy::NodeIndex node) {
  for (;;) {
    const std::string& name = tree.node(node).name;
    const recovery::Parameter& found = parameters.find("rate", name, "operated");
    if (found.applies_to == name || tree.node(node).parents.empty()) return found;
    node = tree.node(node).parents.front();
  }
}

}  // namespace

Summary axon_arrival_days(const recovery::Parameters& parameters, const anatomy::NerveTree& tree,
                          anatomy::NodeIndex recipient, const Summary& way_mm, int coaptations,
                          double operation_days) {
  const recovery::Parameter& rate = rate_of(parameters, tree, recipient);
  const recovery::Parameter& delay = parameters.find("coaptation delay", "any", "operated");
  const recovery::Slowing slowing{parameters.find("rate reference distance", "any", "any").mean,
                                  parameters.find("slowing length", "any", "any").mean};
  recovery::ArrivalLaw law;
  law.start_days = operation_days;
  law.delay_mean_days = coaptations * delay.mean;
  law.delay_sd_days = std::sqrt(static_cast<double>(coaptations)) * delay.sd;
  law.transit_median_days = slowing.transit_days(std::max(way_mm.p50, 1.0), rate.median());
  const double way_log_sd = way_mm.sd / std::max(way_mm.mean, 1.0);
  law.transit_log_sd = std::hypot(rate.log_sd(), way_log_sd);
  return {law.mean(), law.sd(), law.quantile(0.05), law.quantile(0.5), law.quantile(0.95)};
}

}  // namespace endplate::transfer
