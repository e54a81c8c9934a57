#include "models/transfer/axon_ratio.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace endplate::transfer {
namespace {

using evidence::Row;

constexpr double kZ90 = 1.6448536269514722;  // of the normal distribution, 90 % between both

// The rows of axon_counts that make up a count of transfers.csv, by their study.
struct Counted {
  std::vector<Row> rows;
  double variance = 0.0;  // of the sum; only with a standard deviation in every row
  bool spread_known = true;
};
using ByStudy = std::map<std::string, Counted, std::less<>>;

bool same(double a, double b) {
  return std::abs(a - b) < 0.5;
}  // whole axons

void count(Counted& counted, const Row& row) {
  counted.rows.push_back(row);
  const auto sd = row.number("sd");
  counted.spread_known = counted.spread_known && sd;
  counted.variance += sd ? *sd * *sd : 0.0;
}

// One row with that count, or the rows of one study on the nodes of `nodes` that sum to it.
ByStudy counted_as(double axons, const std::vector<std::string>& nodes,
                   const evidence::Table& table) {
  ByStudy found;
  std::map<std::string, std::pair<double, Counted>, std::less<>> sums;
  for (const Row row : table) {
    const auto counted = row.number("myelinated_axons");
    if (!counted) continue;
    const std::string study(row.text("study"));
    if (same(*counted, axons) && !found.contains(study)) count(found[study], row);
    const auto at = row.list("tree_node");
    if (at.size() == 1 && std::ranges::find(nodes, at.front()) != nodes.end()) {
      auto& [sum, parts] = sums[study];
      sum += *counted;
      count(parts, row);
    }
  }
  if (!found.empty()) return found;
  for (auto& [study, parts] : sums) {
    if (same(parts.first, axons)) found[study] = std::move(parts.second);
  }
  return found;
}

// Every count of a nerve in the table, as its least and its most.
void widen(const std::vector<std::string>& nodes, const evidence::Table& table, double& low,
           double& high) {
  if (nodes.size() != 1) return;
  for (const Row row : table) {
    const auto counted = row.number("myelinated_axons");
    const auto at = row.list("tree_node");
    if (!counted || at.size() != 1 || at.front() != nodes.front()) continue;
    low = std::min(low, *counted);
    high = std::max(high, *counted);
  }
}

}  // namespace

std::optional<AxonRatio> axon_ratio(const Row& transfer, const evidence::DataPackage& package) {
  const auto donor = transfer.number("donor_axons");
  const auto recipient = transfer.number("recipient_axons");
  if (!donor || !recipient || *recipient <= 0.0) return std::nullopt;
  const evidence::Table& table = package.table("axon_counts");
  const auto donor_nodes = transfer.list("donor_node");
  const auto recipient_nodes = transfer.list("recipient_node");
  const ByStudy donors = counted_as(*donor, donor_nodes, table);
  const ByStudy recipients = counted_as(*recipient, recipient_nodes, table);
  AxonRatio answer;
  answer.ratio = *donor / *recipient;
  const auto take = [&](const Counted& counted) {
    for (const Row& row : counted.rows) answer.rows.emplace_back(row.text("id"));
  };
  for (const auto& [study, given] : donors) {
    const auto taken = recipients.find(study);
    if (taken == recipients.end()) continue;
    answer.one_study = true;
    take(given);
    take(taken->second);
    if (!given.spread_known || !taken->second.spread_known) {
      answer.words = fmt::format("both counted in {}; no spread printed", study);
      return answer;
    }
    // Of a quotient of two independent lognormal counts.
    const double log_variance = std::log1p(given.variance / (*donor * *donor)) +
                                std::log1p(taken->second.variance / (*recipient * *recipient));
    const double factor = std::exp(kZ90 * std::sqrt(log_variance));
    answer.low = answer.ratio / factor;
    answer.high = answer.ratio * factor;
    answer.words = fmt::format("both counted in {}; 90 % range between people", study);
    return answer;
  }
  for (const ByStudy* side : {&donors, &recipients}) {
    if (!side->empty()) take(side->begin()->second);
  }
  double donor_low = *donor;
  double donor_high = *donor;
  double recipient_low = *recipient;
  double recipient_high = *recipient;
  widen(donor_nodes, table, donor_low, donor_high);
  widen(recipient_nodes, table, recipient_low, recipient_high);
  answer.words = "across studies: other people, other methods";
  if (donor_low < donor_high || recipient_low < recipient_high) {
    answer.low = donor_low / recipient_high;
    answer.high = donor_high / recipient_low;
    answer.words += "; range of all counts of both";
  }
  return answer;
}

}  // namespace endplate::transfer
