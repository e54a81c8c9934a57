#include "models/evidence/table.hpp"

#include <stdexcept>

#include "models/evidence/cell.hpp"

namespace endplate::evidence {

std::string_view Row::text(std::string_view column) const {
  return table_->cells_[index_ * table_->columns_.size() + table_->column_index(column)];
}

std::optional<double> Row::number(std::string_view column) const {
  return parse_number(text(column));
}

std::vector<std::string> Row::list(std::string_view column) const {
  const auto items = split_items(text(column));
  return {items.begin(), items.end()};
}

std::size_t Row::line() const {
  return table_->lines_[index_];
}

Table::Table(std::string name, std::vector<std::string> columns, Cells cells,
             std::vector<std::size_t> lines)
    : name_(std::move(name)),
      columns_(std::move(columns)),
      cells_(std::move(cells)),
      lines_(std::move(lines)) {
  for (std::size_t i = 0; i < columns_.size(); ++i) index_of_.emplace(columns_[i], i);
}

bool Table::has_column(std::string_view column) const {
  return index_of_.find(column) != index_of_.end();
}

std::size_t Table::column_index(std::string_view column) const {
  const auto found = index_of_.find(column);
  if (found == index_of_.end()) {
    throw std::out_of_range("table " + name_ + " has no column " + std::string(column));
  }
  return found->second;
}

}  // namespace endplate::evidence
