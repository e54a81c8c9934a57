#include "models/evidence/table_schema.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <unordered_map>
#include <unordered_set>

#include "models/evidence/cell.hpp"

namespace endplate::evidence {
namespace {

using Words = std::set<std::string, std::less<>>;

std::optional<double> bound(const nlohmann::json& constraints, const char* name) {
  if (!constraints.contains(name)) return std::nullopt;
  return constraints[name].get<double>();
}

bool has_outer_blank(std::string_view cell) {
  const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
  return !cell.empty() && (blank(cell.front()) || blank(cell.back()));
}

}  // namespace

std::string TableSchema::place(std::size_t line, const std::string& column) const {
  return fmt::format("{}, row {}, column {}", file_, line, column);
}

std::size_t TableSchema::field_index(const std::string& name) const {
  const auto found = std::ranges::find(fields_, name, &Field::name);
  if (found == fields_.end()) throw std::invalid_argument("the schema has no field " + name);
  return static_cast<std::size_t>(found - fields_.begin());
}

TableSchema::TableSchema(std::string file, const nlohmann::json& schema) : file_(std::move(file)) {
  static const std::map<std::string, Type> types{{"string", Type::text},
                                                 {"number", Type::number},
                                                 {"integer", Type::integer},
                                                 {"list", Type::list}};
  for (const auto& item : schema.at("fields")) {
    Field field;
    field.name = item.at("name").get<std::string>();
    const auto type = types.find(item.value("type", "string"));
    if (type == types.end()) throw std::invalid_argument("unknown type of field " + field.name);
    field.type = type->second;
    field.allowed_items = item.value("itemEnum", Words());
    if (item.contains("constraints")) {
      const auto& constraints = item["constraints"];
      field.required = constraints.value("required", false);
      field.unique = constraints.value("unique", false);
      field.allowed = constraints.value("enum", Words());
      field.minimum = bound(constraints, "minimum");
      field.exclusive_minimum = bound(constraints, "exclusiveMinimum");
      field.maximum = bound(constraints, "maximum");
    }
    fields_.push_back(std::move(field));
  }
  const auto columns = [&](const nlohmann::json& names) {
    Columns result;
    for (const auto& name : names) result.push_back(field_index(name.get<std::string>()));
    return result;
  };
  const auto none = nlohmann::json::array();
  for (const auto& names : schema.value("endplate:orders", none)) orders_.push_back(columns(names));
  for (const auto& names : schema.value("endplate:requires", none)) {
    requirements_.push_back(columns(names));
    if (requirements_.back().size() != 2) throw std::invalid_argument("a requirement is a pair");
  }
  unique_together_ = columns(schema.value("endplate:uniqueTogether", none));
  for (const auto& item : schema.value("foreignKeys", none)) {
    ForeignKey key;
    key.field = item.at("fields").get<std::string>();
    field_index(key.field);
    key.table = item.at("reference").at("resource").get<std::string>();
    key.column = item.at("reference").at("fields").get<std::string>();
    key.also_allowed = item.value("endplate:alsoAllowed", Words());
    key.item_ends_at = item.value("endplate:itemEndsAt", std::string());
    foreign_keys_.push_back(std::move(key));
  }
}

void TableSchema::check(const CsvText& csv, std::vector<Problem>& problems) const {
  std::vector<std::string> expected;
  for (const Field& field : fields_) expected.push_back(field.name);
  if (csv.header != expected) {
    problems.push_back(
        {fmt::format("{}, row 1", file_), "the header differs from the table's schema",
         fmt::format("Write these columns in this order: {}.", fmt::join(expected, ", "))});
    return;
  }
  for (std::size_t column = 0; column < fields_.size(); ++column) {
    check_column(csv, column, problems);
  }
  check_rows(csv, problems);
}

void TableSchema::check_column(const CsvText& csv, std::size_t column,
                               std::vector<Problem>& problems) const {
  const Field& field = fields_[column];
  std::unordered_map<std::string_view, std::size_t> first_line;
  for (std::size_t row = 0; row < csv.lines.size(); ++row) {
    const std::string_view cell = csv.cells[row * fields_.size() + column];
    // The place is put into words only for a problem: there are some fifty thousand cells.
    const auto report = [&](std::string what, std::string mend) {
      problems.push_back({place(csv.lines[row], field.name), std::move(what), std::move(mend)});
    };
    if (cell.empty()) {
      if (field.required) report("the cell is empty", "Fill it in.");
      continue;
    }
    if (has_outer_blank(cell)) report("the cell begins or ends with a blank", "Take it away.");
    if (field.unique) {
      const auto [found, added] = first_line.emplace(cell, csv.lines[row]);
      if (!added) {
        report(fmt::format("'{}' stands already in row {}", cell, found->second),
               "Give every row its own value.");
      }
    }
    if (!field.allowed.empty() && !field.allowed.contains(cell)) {
      report(fmt::format("'{}' is not one of the words of this column", cell),
             fmt::format("Use one of: {}.", fmt::join(field.allowed, ", ")));
    }
    if (field.type == Type::list) {
      const auto items = split_items(cell);
      for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].empty() || has_outer_blank(items[i])) {
          report("the list has an empty item or a blank beside a semicolon",
                 "Separate items by a single semicolon.");
        } else if (std::find(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(i),
                             items[i]) != items.begin() + static_cast<std::ptrdiff_t>(i)) {
          report(fmt::format("the list names '{}' twice", items[i]), "Name each item once.");
        } else if (!field.allowed_items.empty() && !field.allowed_items.contains(items[i])) {
          report(fmt::format("'{}' is not one of the words of this list", items[i]),
                 fmt::format("Use some of: {}.", fmt::join(field.allowed_items, ", ")));
        }
      }
    }
    if (field.type != Type::number && field.type != Type::integer) continue;
    const auto value = parse_number(cell);
    if (!value) {
      report(fmt::format("'{}' is not a number", cell),
             "Write a decimal number without unit or blanks, or leave the cell empty.");
    } else if (field.type == Type::integer && *value != std::floor(*value)) {
      report(fmt::format("'{}' is not a whole number", cell), "Write a count.");
    } else if (field.minimum && *value < *field.minimum) {
      report(fmt::format("{} is below {}", cell, *field.minimum), "Check the figure and its unit.");
    } else if (field.exclusive_minimum && *value <= *field.exclusive_minimum) {
      report(fmt::format("{} is not above {}", cell, *field.exclusive_minimum),
             "Check the figure and its unit.");
    } else if (field.maximum && *value > *field.maximum) {
      report(fmt::format("{} is above {}", cell, *field.maximum), "Check the figure and its unit.");
    }
  }
}

void TableSchema::check_rows(const CsvText& csv, std::vector<Problem>& problems) const {
  std::unordered_map<std::string, std::size_t> first_line;
  for (std::size_t row = 0; row < csv.lines.size(); ++row) {
    const auto cell = [&](std::size_t column) { return csv.cells[row * fields_.size() + column]; };
    for (const Columns& order : orders_) {
      std::optional<double> last;
      std::size_t last_column = 0;
      for (const std::size_t column : order) {
        const auto value = parse_number(cell(column));
        if (!value) continue;
        if (last && *value < *last) {
          problems.push_back({place(csv.lines[row], fields_[column].name),
                              fmt::format("{} is below {} of column {}", cell(column),
                                          cell(last_column), fields_[last_column].name),
                              "Check both figures and the sign."});
        }
        last = value;
        last_column = column;
      }
    }
    for (const Columns& pair : requirements_) {
      if (cell(pair[0]).empty() || !cell(pair[1]).empty()) continue;
      problems.push_back(
          {place(csv.lines[row], fields_[pair[1]].name),
           fmt::format("the cell is empty though {} is filled", fields_[pair[0]].name),
           "Fill in both or neither."});
    }
    if (unique_together_.empty()) continue;
    std::string together;
    for (const std::size_t column : unique_together_) together.append(cell(column)) += '\n';
    const auto [found, added] = first_line.emplace(together, csv.lines[row]);
    if (!added) {
      problems.push_back({place(csv.lines[row], fields_[unique_together_.front()].name),
                          fmt::format("row {} says the same", found->second),
                          "Take one of the two away."});
    }
  }
}

void TableSchema::check_foreign_keys(const Table& own,
                                     const std::map<std::string, Table, std::less<>>& tables,
                                     std::vector<Problem>& problems) const {
  for (const ForeignKey& key : foreign_keys_) {
    const auto target = tables.find(key.table);
    if (target == tables.end() || !target->second.has_column(key.column)) {
      problems.push_back({file_,
                          fmt::format("column {} of table {}, named by a foreign key, is missing",
                                      key.column, key.table),
                          "Correct the foreign key in datapackage.json."});
      continue;
    }
    std::unordered_set<std::string_view> known;
    for (const Row row : target->second) known.insert(row.text(key.column));
    for (const Row row : own) {
      for (const std::string_view item : split_items(row.text(key.field))) {
        const std::string_view name = item.substr(
            0, key.item_ends_at.empty() ? item.size() : item.find_first_of(key.item_ends_at));
        if (known.contains(name) || key.also_allowed.contains(name)) continue;
        problems.push_back(
            {place(row.line(), key.field),
             fmt::format("'{}' is not in column {} of {}.csv", name, key.column, key.table),
             "Correct the name or add its row."});
      }
    }
  }
}

}  // namespace endplate::evidence
