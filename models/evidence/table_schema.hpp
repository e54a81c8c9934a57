#pragma once
// The part of the Table Schema standard (Frictionless Data) that the tables use.
#include <map>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/csv.hpp"
#include "models/evidence/table.hpp"

namespace endplate::evidence {

class TableSchema {
 public:
  // `file` is the table's path in the package and stands in the place of every problem.
  TableSchema(std::string file, const nlohmann::json& schema);

  // Checks header, cell types, required, unique, enum, minimum and maximum.
  void check(const CsvText& csv, std::vector<Problem>& problems) const;

  // Checks that each cell (each item, in a list) of a foreign key names a row of its table.
  void check_foreign_keys(const std::map<std::string, Table, std::less<>>& tables,
                          std::vector<Problem>& problems) const;

 private:
  enum class Type { text, number, list };
  struct Field {
    std::string name;
    Type type = Type::text;
    bool required = false;
    bool unique = false;
    std::set<std::string> allowed;
    std::optional<double> minimum;
    std::optional<double> maximum;
  };
  struct ForeignKey {
    std::string field;
    std::string table;
    std::string column;
    std::set<std::string> also_allowed;  // words that stand for "no row"
  };

  void check_cell(const Field& field, const std::string& cell, const std::string& where,
                  std::vector<Problem>& problems) const;

  std::string file_;
  std::string name_;
  std::vector<Field> fields_;
  std::vector<ForeignKey> foreign_keys_;
};

}  // namespace endplate::evidence
