#include "output/forest_plot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace endplate::cli {
namespace {

constexpr std::size_t kLabelWidth = 30;

// Characters of UTF-8 text, one column each: the tables hold Latin text.
std::vector<std::string> characters(const std::string& text) {
  std::vector<std::string> result;
  for (const char c : text) {
    const bool continues = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
    if (continues && !result.empty()) {
      result.back() += c;
    } else {
      result.emplace_back(1, c);
    }
  }
  return result;
}

std::string fit(const std::string& text, std::size_t width) {
  auto letters = characters(text);
  if (letters.size() > width) {
    letters.resize(width);
    letters.back() = "…";
  }
  std::string result;
  for (const std::string& letter : letters) result += letter;
  return result + std::string(width - letters.size(), ' ');
}

struct Axis {
  double low = 0.0;
  double high = 1.0;
  std::size_t columns = 40;

  std::size_t at(double value) const {
    const double share = std::clamp((value - low) / (high - low), 0.0, 1.0);
    return static_cast<std::size_t>(std::lround(share * static_cast<double>(columns - 1)));
  }
};

Axis axis_of(const std::vector<ForestLine>& lines, std::size_t columns) {
  Axis axis{lines.front().low, lines.front().high, columns};
  for (const ForestLine& line : lines) {
    axis.low = std::min({axis.low, line.low, line.centre});
    axis.high = std::max({axis.high, line.high, line.centre});
  }
  if (axis.high - axis.low < 1e-9) {
    axis.low -= 1.0;
    axis.high += 1.0;
  }
  return axis;
}

std::string centre_mark(const ForestLine& line) {
  if (line.kind == ForestLine::Kind::pooled) return "◆";
  return line.weight >= 0.3 ? "■" : line.weight >= 0.1 ? "▪" : "·";
}

std::string drawing(const ForestLine& line, const Axis& axis, std::size_t upright) {
  std::vector<std::string> cells(axis.columns, " ");
  cells[upright] = "┊";
  const std::size_t from = axis.at(line.low);
  const std::size_t to = axis.at(line.high);
  const bool spread = line.kind == ForestLine::Kind::spread;
  const std::string stroke = spread ? "╌" : line.kind == ForestLine::Kind::pooled ? "═" : "─";
  for (std::size_t i = from; i <= to; ++i) cells[i] = stroke;
  if (to > from) {
    cells[from] = spread ? "╾" : line.kind == ForestLine::Kind::pooled ? "╞" : "├";
    cells[to] = spread ? "╼" : line.kind == ForestLine::Kind::pooled ? "╡" : "┤";
  }
  if (!spread) cells[axis.at(line.centre)] = centre_mark(line);
  std::string text;
  for (const std::string& cell : cells) text += cell;
  return text;
}

std::string scale(const Axis& axis, const std::string& unit) {
  const auto figure = [&](double value) {
    return fmt::format("{:.{}f}", value, axis.high - axis.low < 20.0 ? 1 : 0);
  };
  const std::string low = figure(axis.low);
  const std::string middle = figure((axis.low + axis.high) / 2.0) + " " + unit;
  const std::string high = figure(axis.high);
  std::string line = low;
  const std::size_t centre = axis.columns / 2;
  const std::size_t begin = centre > middle.size() / 2 ? centre - middle.size() / 2 : 0;
  line += std::string(begin > line.size() ? begin - line.size() : 1, ' ') + middle;
  const std::size_t end = axis.columns > high.size() ? axis.columns - high.size() : 0;
  return line + std::string(end > line.size() ? end - line.size() : 1, ' ') + high;
}

}  // namespace

std::string forest_plot(const std::vector<ForestLine>& lines, const std::string& unit,
                        std::size_t width) {
  if (lines.empty()) return "";
  if (width < 60) throw std::invalid_argument("a forest plot needs 60 columns");
  std::size_t figures = 0;
  for (const ForestLine& line : lines) figures = std::max(figures, characters(line.figures).size());
  const std::size_t label = std::min(kLabelWidth, width - figures - 4 - 16);
  const Axis axis = axis_of(lines, width - label - figures - 4);

  const auto pooled = std::ranges::find(lines, ForestLine::Kind::pooled, &ForestLine::kind);
  const std::size_t upright =
      axis.at(pooled == lines.end() ? lines.front().centre : pooled->centre);
  std::string out;
  for (const ForestLine& line : lines) {
    std::string text =
        fit(line.label, label) + "  " + drawing(line, axis, upright) + "  " + line.figures;
    text.erase(text.find_last_not_of(' ') + 1);
    out += text + '\n';
  }
  return out + std::string(label + 2, ' ') + scale(axis, unit) + '\n';
}

}  // namespace endplate::cli
