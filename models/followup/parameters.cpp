#include "models/followup/parameters.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace endplate::followup {

Expected<FollowupParameters> FollowupParameters::from(const evidence::DataPackage& package) {
  using P = FollowupParameters;
  constexpr std::array<std::pair<std::string_view, double P::*>, 15> kAll{{
      {"tinel_error", &P::tinel_error_mm},
      {"tinel_place_error", &P::tinel_place_error_mm},
      {"tinel_in_block", &P::tinel_in_block},
      {"grade_error", &P::grade_error},
      {"repair_fails", &P::repair_fails},
      {"earliest_call", &P::earliest_call_days},
      {"fewest_visits", &P::fewest_visits},
      {"shortest_gap", &P::shortest_gap_days},
      {"slow_rate", &P::slow_mm_per_day},
      {"fast_rate", &P::fast_mm_per_day},
      {"call_chance", &P::call_chance},
      {"call_evidence", &P::call_evidence},
      {"finding_due", &P::finding_due},
      {"misfit", &P::misfit},
      {"last_look", &P::last_look_days},
  }};
  P parameters;
  std::vector<std::string_view> found;
  for (const evidence::Row row : package.table("followup_parameters")) {
    const auto* known =
        std::ranges::find(kAll, row.text("id"), [](const auto& p) { return p.first; });
    if (known == kAll.end()) continue;
    found.push_back(known->first);
    parameters.*known->second = row.number("value").value_or(0.0);
    for (auto& id : row.list("regeneration_rows")) parameters.rows.push_back(std::move(id));
    if (row.text("provenance") == "assumed") {
      parameters.assumed.push_back(fmt::format("{} ({}) is assumed: {}", row.text("quantity"),
                                               known->first, row.text("reason")));
    }
  }
  std::vector<Problem> problems;
  for (const auto& [id, member] : kAll) {
    if (std::ranges::find(found, id) != found.end()) continue;
    problems.push_back(
        {"followup_parameters.csv", fmt::format("no row {}", id), "Add the row with its reason."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return parameters;
}

}  // namespace endplate::followup
