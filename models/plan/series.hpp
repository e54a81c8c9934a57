#pragma once
// The published series that speak of an option, from plan_series.csv and the tables it points to.
#include <set>
#include <string>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/plan/answer.hpp"

namespace endplate::plan {

// What a series is asked for: the kind of option, the injured nerves ("plexus" among them for any
// root, trunk or cord), and for a nerve transfer its function.
struct SeriesQuestion {
  std::string kind;
  std::set<std::string> nerves;
  std::set<std::string, std::less<>> mechanisms;  // of the injuries
  std::string function;
  // The ways at hand, the best first: series of other ways are left out, those of the first come
  // before all others.
  std::vector<std::string> transfers;
};

// Those with a count first, by their number of patients; a share without its own count after them.
std::vector<PublishedResult> published_series(const evidence::DataPackage& package,
                                              const SeriesQuestion& question);

// The counted result of a row of tendon_transfers, where it has one.
std::vector<PublishedResult> published_tendon(const evidence::DataPackage& package,
                                              std::string_view tendon_row);

using transfer::row_with_id;

}  // namespace endplate::plan
