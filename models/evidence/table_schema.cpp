#include "models/evidence/table_schema.hpp"

#include <fmt/format.h>

#include <charconv>
#include <nlohmann/json.hpp>

namespace endplate::evidence {
namespace {

std::string place(const std::string& file, std::size_t line, const std::string& column) {
  return fmt::format("{}, row {}, column {}", file, line, column);
}

std::optional<double> parse_number(const std::string& cell) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (error != std::errc() || end != cell.data() + cell.size()) return std::nullopt;
  return value;
}

}  // namespace

TableSchema::TableSchema(std::string file, const nlohmann::json& schema) : file_(std::move(file)) {
  for (const auto& item : schema.at("fields")) {
    Field field;
    field.name = item.at("name").get<std::string>();
    const std::string type = item.value("type", "string");
    field.type = type == "number" ? Type::number : type == "list" ? Type::list : Type::text;
    if (item.contains("constraints")) {
      const auto& constraints = item["constraints"];
      field.required = constraints.value("required", false);
      field.unique = constraints.value("unique", false);
      if (constraints.contains("enum")) {
        field.allowed = constraints["enum"].get<std::set<std::string>>();
      }
      if (constraints.contains("minimum")) field.minimum = constraints["minimum"].get<double>();
      if (constraints.contains("maximum")) field.maximum = constraints["maximum"].get<double>();
    }
    fields_.push_back(std::move(field));
  }
  for (const auto& item : schema.value("foreignKeys", nlohmann::json::array())) {
    ForeignKey key;
    key.field = item.at("fields").get<std::string>();
    key.table = item.at("reference").at("resource").get<std::string>();
    key.column = item.at("reference").at("fields").get<std::string>();
    key.also_allowed = item.value("endplate:alsoAllowed", std::set<std::string>());
    foreign_keys_.push_back(std::move(key));
  }
}

void TableSchema::check(const CsvText& csv, std::vector<Problem>& problems) const {
  std::vector<std::string> expected;
  for (const Field& field : fields_) expected.push_back(field.name);
  if (csv.header != expected) {
    problems.push_back({fmt::format("{}, row 1", file_), "the header differs from the table's schema",
                        fmt::format("Write these columns in this order: {}.",
                                    fmt::join(expected, ", "))});
    return;
  }
  for (std::size_t column = 0; column < fields_.size(); ++column) {
    const Field& field = fields_[column];
    std::map<std::string, std::size_t> first_line;
    for (std::size_t row = 0; row < csv.lines.size(); ++row) {
      const std::string& cell = csv.cells[row * fields_.size() + column];
      const std::string where = place(file_, csv.lines[row], field.name);
      check_cell(field, cell, where, problems);
      if (!field.unique || cell.empty()) continue;
      const auto [found, added] = first_line.emplace(cell, csv.lines[row]);
      if (!added) {
        problems.push_back({where, fmt::format("'{}' stands already in row {}", cell, found->second),
                            "Give every row its own value."});
      }
    }
  }
}

void TableSchema::check_cell(const Field& field, const std::string& cell, const std::string& where,
                             std::vector<Problem>& problems) const {
  if (cell.empty()) {
    if (field.required) problems.push_back({where, "the cell is empty", "Fill it in."});
    return;
  }
  if (!field.allowed.empty() && !field.allowed.contains(cell)) {
    problems.push_back({where, fmt::format("'{}' is not one of the words of this column", cell),
                        fmt::format("Use one of: {}.", fmt::join(field.allowed, ", "))});
  }
  if (field.type != Type::number) return;
  const auto value = parse_number(cell);
  if (!value) {
    problems.push_back({where, fmt::format("'{}' is not a number", cell),
                        "Write a decimal number without unit or blanks, or leave the cell empty."});
    return;
  }
  if (field.minimum && *value < *field.minimum) {
    problems.push_back({where, fmt::format("{} is below {}", cell, *field.minimum),
                        "Check the figure and its unit."});
  }
  if (field.maximum && *value > *field.maximum) {
    problems.push_back({where, fmt::format("{} is above {}", cell, *field.maximum),
                        "Check the figure and its unit."});
  }
}

void TableSchema::check_foreign_keys(const std::map<std::string, Table, std::less<>>& tables,
                                     std::vector<Problem>& problems) const {
  for (const ForeignKey& key : foreign_keys_) {
    const Table* own = nullptr;
    for (const auto& [name, table] : tables) {
      if (table.name() + ".csv" == file_) own = &table;
    }
    const auto target = tables.find(key.table);
    if (own == nullptr || target == tables.end()) {
      problems.push_back({file_, fmt::format("the table {} of a foreign key is missing", key.table),
                          "Correct the foreign key in datapackage.json."});
      continue;
    }
    std::set<std::string, std::less<>> known;
    for (const Row row : target->second) known.emplace(row.text(key.column));
    for (const Row row : *own) {
      for (const std::string& item : row.list(key.field)) {
        if (known.contains(item) || key.also_allowed.contains(item)) continue;
        problems.push_back({place(file_, row.line(), key.field),
                            fmt::format("'{}' is not in column {} of {}.csv", item, key.column,
                                        key.table),
                            "Correct the name or add its row."});
      }
    }
  }
}

}  // namespace endplate::evidence
