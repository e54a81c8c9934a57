#include "models/transfer/functions.hpp"

#include <algorithm>

namespace endplate::transfer {

using evidence::Row;

std::optional<Row> function_row(const evidence::DataPackage& package, std::string_view function) {
  for (const Row row : package.table("plan_functions")) {
    if (row.text("function") == function) return row;
  }
  return std::nullopt;
}

bool is_lost(const Row& function, const Situation& now) {
  const auto muscles = function.list("lost_when");
  return !muscles.empty() && std::ranges::all_of(muscles, [&](const std::string& id) {
    return now.muscle_lost(*now.anatomy().find_muscle(id));
  });
}

bool is_priority(const Row& function, const Situation& now) {
  const auto movements = function.list("movements");
  return std::ranges::any_of(movements, [&](const std::string& movement) {
    return std::ranges::find(now.patient().priorities, movement) != now.patient().priorities.end();
  });
}

std::optional<std::string> tendon_option_words(const evidence::DataPackage& package,
                                               const Row& tendon, const Situation& now) {
  const auto function = function_row(package, tendon.text("function_restored"));
  if (!function || !is_lost(*function, now)) return std::nullopt;
  return std::string(tendon.text("id")) + " (" + std::string(tendon.text("function_restored")) +
         ")";
}

}  // namespace endplate::transfer
