#pragma once
// A table of published rows as read from one CSV file and checked against its Table Schema.
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/evidence/cell.hpp"

namespace endplate::evidence {

class Table;

// A view of one row. Valid as long as its table.
class Row {
 public:
  // An empty cell is an empty text. Throws std::out_of_range for a column that the table lacks,
  // which is a fault of the caller, not of the file.
  std::string_view text(std::string_view column) const;
  // An empty cell is no number. The file's cells were checked when it was read.
  std::optional<double> number(std::string_view column) const;
  // The items of a cell of Table Schema type `list`; an empty cell has none.
  std::vector<std::string> list(std::string_view column) const;
  // Line of the row in the file, counting the header as 1.
  std::size_t line() const;

 private:
  friend class Table;
  Row(const Table& table, std::size_t index) : table_(&table), index_(index) {}
  const Table* table_;
  std::size_t index_;
};

class Table {
 public:
  // `cells` holds `columns.size()` texts a row; `lines` the line of each row in its file.
  Table(std::string name, std::vector<std::string> columns, Cells cells,
        std::vector<std::size_t> lines);

  const std::string& name() const { return name_; }
  const std::vector<std::string>& columns() const { return columns_; }
  std::size_t size() const { return lines_.size(); }
  bool has_column(std::string_view column) const;
  Row row(std::size_t index) const { return Row(*this, index); }

  class Iterator {
   public:
    Iterator(const Table& table, std::size_t index) : table_(&table), index_(index) {}
    Row operator*() const { return table_->row(index_); }
    Iterator& operator++() {
      ++index_;
      return *this;
    }
    bool operator!=(const Iterator& other) const { return index_ != other.index_; }

   private:
    const Table* table_;
    std::size_t index_;
  };
  Iterator begin() const { return {*this, 0}; }
  Iterator end() const { return {*this, size()}; }

 private:
  friend class Row;
  std::size_t column_index(std::string_view column) const;

  std::string name_;
  std::vector<std::string> columns_;
  Cells cells_;
  std::vector<std::size_t> lines_;
  std::map<std::string, std::size_t, std::less<>> index_of_;
};

}  // namespace endplate::evidence
