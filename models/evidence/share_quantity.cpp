#include "models/evidence/share_quantity.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "models/evidence/quantity.hpp"

namespace endplate::evidence {
namespace {

void finish(ShareRow& row) {
  if (!row.left_out.empty()) return;
  if (!row.share) {
    row.left_out = "no single figure is printed";
  } else if (!row.count) {
    row.left_out = "the number behind it is not stated";
  }
}

void add(std::vector<ShareQuantity>& all, std::map<std::string, std::size_t>& index_of,
         ShareQuantity head, ShareRow row) {
  finish(row);
  const auto [found, added] = index_of.emplace(head.table + '\n' + head.name, all.size());
  if (added) all.push_back(std::move(head));
  auto& rows = all[found->second].rows;
  // The same count of the same study entered twice is one observation.
  for (const ShareRow& other : rows) {
    if (row.left_out.empty() && other.left_out.empty() && other.study == row.study &&
        other.share == row.share && other.n == row.n) {
      row.left_out = "the same measurement as " + other.id;
    }
  }
  rows.push_back(std::move(row));
}

ShareRow share_row(const Row& row, std::string_view share, std::string_view events) {
  ShareRow result;
  result.id = row.text("id");
  result.study = row.text("study");
  result.provenance = provenance_from(row.text("provenance")).value_or(Provenance::assumed);
  result.share = row.number(share);
  result.n = row.number("n");
  const auto count = row.number(events);
  if (count && result.n) result.count = Count{*count, *result.n};
  result.left_out = row.text("stand_in");
  return result;
}

std::vector<Count> counts_by_study(const ShareQuantity& quantity,
                                   std::vector<std::string>* studies = nullptr) {
  std::vector<std::pair<std::string, Count>> found;
  for (const ShareRow& row : quantity.rows) {
    if (!row.left_out.empty()) continue;
    auto study = std::ranges::find(found, row.study, &std::pair<std::string, Count>::first);
    if (study == found.end()) study = found.insert(found.end(), {row.study, {}});
    study->second.events += row.count->events;
    study->second.n += row.count->n;
  }
  std::vector<Count> counts;
  for (auto& [study, count] : found) {
    counts.push_back(count);
    if (studies != nullptr) studies->push_back(std::move(study));
  }
  return counts;
}

}  // namespace

std::vector<ShareQuantity> share_quantities(const DataPackage& package) {
  std::vector<ShareQuantity> all;
  std::map<std::string, std::size_t> index_of;

  for (const Quantity& quantity : quantities(package.table("landmark_distances"))) {
    if (quantity.measure != Measure::prevalence) continue;
    ShareQuantity head{"landmark_distances", quantity.name(), {quantity.tree_node}, {}, {}};
    for (const Measurement& m : quantity.rows) {
      ShareRow row{m.id, m.study, m.population, m.provenance, m.share, m.n, {}, m.left_out};
      // The table states the share; the rows whose share fits no whole number are flagged in it.
      if (m.share && m.n) row.count = Count{std::round(*m.share * *m.n), *m.n};
      add(all, index_of, head, std::move(row));
    }
  }
  for (const Row row : package.table("variants")) {
    add(all, index_of, {"variants", std::string(row.text("variant")), {}, {}, {}},
        share_row(row, "prevalence_fraction", "prevalence_count"));
  }
  for (const Row row : package.table("outcomes")) {
    const auto scale = outcome_scale_from(row.text("outcome_scale"));
    ShareQuantity head{
        "outcomes",
        std::string(row.text("condition")) + " [" + std::string(row.text("outcome_scale")) + "]",
        {},
        scale,
        {}};
    ShareRow result = share_row(row, "outcome_fraction", "outcome_count");
    result.population = row.text("species_population");
    add(all, index_of, std::move(head), std::move(result));
  }
  return all;
}

double share_floor_tau(const std::vector<ShareQuantity>& quantities) {
  // A prevalence may stand in two tables; its studies say what they say once.
  std::vector<std::vector<Count>> groups;
  for (const ShareQuantity& quantity : quantities) {
    auto counts = counts_by_study(quantity);
    std::ranges::sort(counts, [](const Count& a, const Count& b) {
      return std::pair(a.n, a.events) < std::pair(b.n, b.events);
    });
    const bool seen = std::ranges::any_of(groups, [&](const auto& group) {
      return std::ranges::equal(group, counts, [](const Count& a, const Count& b) {
        return a.n == b.n && a.events == b.events;
      });
    });
    if (!seen) groups.push_back(std::move(counts));
  }
  return common_tau(groups);
}

std::optional<PooledShare> pool(const ShareQuantity& quantity, double floor_tau, double level) {
  PooledShare result;
  result.counts = counts_by_study(quantity, &result.studies);
  if (result.counts.empty()) return std::nullopt;
  result.pooled = pool_proportions(result.counts, floor_tau, level);
  return result;
}

}  // namespace endplate::evidence
