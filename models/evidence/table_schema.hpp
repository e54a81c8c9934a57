#pragma once
// The part of the Table Schema standard (Frictionless Data) that the tables use, with four
// properties of our own:
//   itemEnum               words that the items of a list may be
//   endplate:orders        groups of columns whose filled cells must not decrease from left to
//   right endplate:requires      pairs of columns: a filled first cell needs a filled second one
//   endplate:uniqueTogether  columns whose cells together occur once
// and, on a foreign key, endplate:alsoAllowed (words that stand for "no row") and
// endplate:itemEndsAt (characters that end the name inside an item such as "FCU>=4").
#include <functional>
#include <map>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/csv.hpp"
#include "models/evidence/table.hpp"

namespace endplate::evidence {

class TableSchema {
 public:
  // `file` is the table's path in the package and stands in the place of every problem. Throws
  // nlohmann::json::exception or std::invalid_argument for a schema that it does not understand.
  TableSchema(std::string file, const nlohmann::json& schema);

  // Checks header, cell types, list items, required, unique, enum, bounds, orders and requirements.
  void check(const CsvText& csv, std::vector<Problem>& problems) const;

  // Checks that each cell (each item, in a list) of a foreign key of `own` names a row of its
  // table.
  void check_foreign_keys(const Table& own, const std::map<std::string, Table, std::less<>>& tables,
                          std::vector<Problem>& problems) const;

 private:
  enum class Type { text, number, integer, list };
  struct Field {
    std::string name;
    Type type = Type::text;
    bool required = false;
    bool unique = false;
    std::set<std::string, std::less<>> allowed;
    std::set<std::string, std::less<>> allowed_items;
    std::optional<double> minimum;
    std::optional<double> exclusive_minimum;
    std::optional<double> maximum;
  };
  struct ForeignKey {
    std::string field;
    std::string table;
    std::string column;
    std::set<std::string, std::less<>> also_allowed;
    std::string item_ends_at;
  };
  using Columns = std::vector<std::size_t>;

  std::size_t field_index(const std::string& name) const;
  void check_column(const CsvText& csv, std::size_t column, std::vector<Problem>& problems) const;
  void check_rows(const CsvText& csv, std::vector<Problem>& problems) const;
  std::string place(std::size_t line, const std::string& column) const;

  std::string file_;
  std::vector<Field> fields_;
  std::vector<ForeignKey> foreign_keys_;
  std::vector<Columns> orders_;
  std::vector<Columns> requirements_;
  Columns unique_together_;
};

}  // namespace endplate::evidence
