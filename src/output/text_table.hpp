#pragma once
// A plain table for a terminal of 100 columns.
#include <string>
#include <vector>

namespace endplate::cli {

class TextTable {
 public:
  enum class Align { left, right };
  struct Column {
    std::string head;  // with its unit
    Align align = Align::left;
    std::size_t widest = 60;  // longer cells wrap at a blank
  };

  explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}
  // One cell a column.
  void add_row(std::vector<std::string> cells);
  bool empty() const { return rows_.empty(); }
  // Widths count characters of UTF-8 text; every line ends with a newline.
  std::string to_string() const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

// Columns of a terminal.
inline constexpr std::size_t kTerminalWidth = 100;

// `text` broken at blanks into lines of at most `width` characters.
std::vector<std::string> wrap(const std::string& text, std::size_t width);

// A short label at the left and the text wrapped beside it; every line ends with a newline.
std::string labelled(const std::string& label, const std::string& text);

}  // namespace endplate::cli
