#include "models/transfer/spends.hpp"

#include <fmt/ranges.h>

#include <algorithm>

#include "models/transfer/combination_parts.hpp"
#include "models/transfer/functions.hpp"

namespace endplate::transfer {
namespace {

using evidence::Row;

// Either the one or a whole of which the other is a part.
bool meets(const std::vector<std::string>& spent, std::string_view donor) {
  return std::ranges::any_of(
      spent, [&](const std::string& one) { return covers(one, donor) || covers(donor, one); });
}

// What a row takes, and what else must be strong for it.
std::vector<std::string> needed_by(const Row& row) {
  std::vector<std::string> needed = row.list("spends");
  const std::vector<std::string> taken = needed;
  for (const std::string& condition : row.list("requires_examined")) {
    const auto end = condition.find(">=");
    if (end == std::string::npos) continue;
    std::string muscle = condition.substr(0, end);
    // The whole muscle is graded for the sake of the parts that are taken.
    if (!meets(taken, muscle)) needed.push_back(std::move(muscle));
  }
  return needed;
}

}  // namespace

std::vector<std::string> tendon_options_spent(const std::vector<std::string>& spent,
                                              std::string_view own,
                                              const evidence::DataPackage& package,
                                              const Situation& now) {
  std::vector<std::string> options;
  for (const Row row : package.table("tendon_transfers")) {
    if (row.text("id") == own) continue;
    std::vector<std::string> fingers;
    bool gone = false;
    for (const std::string& donor : needed_by(row)) {
      if (!meets(spent, donor)) continue;
      gone = true;
      if (const auto slash = donor.find('/'); slash != std::string::npos) {
        fingers.push_back(donor.substr(slash + 1));
      }
    }
    if (!gone) continue;
    auto words = tendon_option_words(package, row, now);
    if (!words) continue;
    if (!fingers.empty()) {
      *words += fmt::format(" by the superficialis of the {} finger", fmt::join(fingers, " and "));
    }
    options.push_back(std::move(*words));
  }
  return options;
}

}  // namespace endplate::transfer
