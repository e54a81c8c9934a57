#pragma once
// The evidence tables: CSV files described by a Frictionless data package (Table Schema).
#include <filesystem>
#include <map>
#include <string>
#include <string_view>

#include "models/core/error.hpp"
#include "models/evidence/table.hpp"

namespace endplate::evidence {

class DataPackage {
 public:
  // Reads `directory`/datapackage.json and every table it lists, strictly: each cell against its
  // field's type and constraints, then keys within and between the tables. All problems are
  // reported at once; `place` is "FILE, row LINE, column NAME".
  static Expected<DataPackage> read(const std::filesystem::path& directory);

  // Throws std::out_of_range for a table that the package lacks.
  const Table& table(std::string_view name) const;
  const std::map<std::string, Table, std::less<>>& tables() const { return tables_; }

 private:
  std::map<std::string, Table, std::less<>> tables_;
};

}  // namespace endplate::evidence
