#include "output/text_table.hpp"

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace endplate::cli {
namespace {

// Code points: the tables hold Latin text without combining marks.
std::size_t display_width(const std::string& text) {
  return static_cast<std::size_t>(std::ranges::count_if(
      text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string pad(const std::string& text, std::size_t width, TextTable::Align align) {
  const std::size_t used = display_width(text);
  const std::string blanks(width > used ? width - used : 0, ' ');
  return align == TextTable::Align::left ? text + blanks : blanks + text;
}

}  // namespace

std::vector<std::string> wrap(const std::string& text, std::size_t width) {
  std::vector<std::string> lines;
  std::istringstream words(text);
  std::string word;
  std::string line;
  while (words >> word) {
    if (!line.empty() && display_width(line) + 1 + display_width(word) > width) {
      lines.push_back(std::move(line));
      line.clear();
    }
    if (!line.empty()) line += ' ';
    line += word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
  return lines;
}

void TextTable::add_row(std::vector<std::string> cells) {
  if (cells.size() != columns_.size()) throw std::invalid_argument("a row has one cell a column");
  rows_.push_back(std::move(cells));
}

std::string TextTable::to_string() const {
  using Cell = std::vector<std::string>;  // wrapped lines
  std::vector<std::vector<Cell>> wrapped;
  std::vector<std::size_t> widths;
  for (const Column& column : columns_) widths.push_back(display_width(column.head));
  for (const auto& row : rows_) {
    auto& cells = wrapped.emplace_back();
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      cells.push_back(wrap(row[i], columns_[i].widest));
      for (const std::string& line : cells.back())
        widths[i] = std::max(widths[i], display_width(line));
    }
  }

  std::string out;
  const auto write_line = [&](const auto& cell_of) {
    std::string line;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (i > 0) line += "  ";
      line += pad(cell_of(i), widths[i], columns_[i].align);
    }
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + '\n';
  };
  write_line([&](std::size_t i) { return columns_[i].head; });
  write_line([&](std::size_t i) { return std::string(widths[i], '-'); });
  for (const auto& row : wrapped) {
    std::size_t height = 1;
    for (const Cell& cell : row) height = std::max(height, cell.size());
    for (std::size_t line = 0; line < height; ++line) {
      write_line(
          [&](std::size_t i) { return line < row[i].size() ? row[i][line] : std::string(); });
    }
  }
  return out;
}

std::string labelled(const std::string& label, const std::string& text) {
  constexpr std::size_t kIndent = 12;  // wider than any label
  std::string out;
  std::string head = label + std::string(kIndent - label.size(), ' ');
  for (const std::string& line : wrap(text, kTerminalWidth - kIndent)) {
    out += head + line + '\n';
    head.assign(kIndent, ' ');
  }
  return out;
}

}  // namespace endplate::cli
