#include "models/anatomy/movement.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/anatomy/table_names.hpp"

namespace endplate::anatomy {

Expected<std::vector<Movement>> read_movements(const evidence::DataPackage& package,
                                               const std::vector<Muscle>& muscles) {
  constexpr std::string_view kFile = "movements.csv";
  std::vector<Movement> movements;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("movements")) {
    std::set<std::size_t> named;
    const auto indices = [&](std::string_view column) {
      std::vector<std::size_t> result;
      for (const std::string& id : row.list(column)) {
        const auto found = std::ranges::find(muscles, id, &Muscle::id);
        if (found == muscles.end()) {
          problems.push_back({cell_place(kFile, row, column),
                              fmt::format("'{}' is not a muscle", id),
                              "Use an abbreviation of muscles.csv."});
          continue;
        }
        const auto index = static_cast<std::size_t>(found - muscles.begin());
        if (!named.insert(index).second) {
          problems.push_back({cell_place(kFile, row, column),
                              fmt::format("'{}' stands twice in this movement", id),
                              "Name a muscle as prime mover or as substitute, once."});
        }
        result.push_back(index);
      }
      return result;
    };
    Movement movement;
    movement.name = row.text("movement");
    movement.region = row.text("region");
    movement.prime_movers = indices("prime_movers");
    movement.substitutes = indices("substitutes");
    movement.how_substituted = row.text("how_substituted");
    movement.source = row.text("source");
    movement.provenance = *evidence::provenance_from(row.text("provenance"));
    movements.push_back(std::move(movement));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return movements;
}

}  // namespace endplate::anatomy
