#include "src/output/forest_plot.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

using endplate::cli::forest_plot;
using endplate::cli::ForestLine;

namespace {

using Kind = ForestLine::Kind;

std::vector<std::string> lines_of(const std::string& text) {
  std::istringstream in(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::size_t column_of(const std::string& line, const std::string& mark) {
  std::size_t column = 0;
  for (std::size_t i = 0; i < line.find(mark); ++i) {
    column += (static_cast<unsigned char>(line[i]) & 0xC0U) != 0x80U;
  }
  return column;
}

}  // namespace

TEST_CASE("marks of a forest plot stand where their values are", "[cli]") {
  const auto lines = lines_of(forest_plot({{Kind::study, "A", 10, 0, 20, 0.5, "10"},
                                           {Kind::study, "B", 90, 80, 100, 0.5, "90"},
                                           {Kind::pooled, "pooled", 50, 40, 60, 0.0, "50"},
                                           {Kind::spread, "new", 50, 0, 100, 0.0, "0 to 100"}},
                                          "mm"));
  REQUIRE(lines.size() == 5);
  const auto left = column_of(lines[3], "╾");
  const auto right = column_of(lines[3], "╼");
  CHECK(column_of(lines[0], "├") == left);
  CHECK(column_of(lines[1], "┤") == right);
  CHECK(std::max(2 * column_of(lines[2], "◆"), left + right) -
            std::min(2 * column_of(lines[2], "◆"), left + right) <=
        2);
  CHECK(column_of(lines[0], "■") - left == right - column_of(lines[1], "■"));
  CHECK_THAT(lines[4], Catch::Contains("50 mm") && Catch::EndsWith("100"));
}

TEST_CASE("a forest plot keeps to its width whatever the labels", "[cli]") {
  const std::string longish(80, 'x');
  for (const std::size_t width : {60U, 80U, 100U}) {
    for (const auto& line :
         lines_of(forest_plot({{Kind::study, longish, 1, 0, 2, 1.0, "1.00, 100 %"},
                               {Kind::pooled, "p", 1, 0, 2, 0, ""}},
                              "mm", width))) {
      CHECK(column_of(line + "\n", "\n") <= width);
    }
  }
  CHECK_THROWS_AS(forest_plot({{Kind::study, "A", 1, 0, 2, 1.0, ""}}, "mm", 20),
                  std::invalid_argument);
}

TEST_CASE("a value without an interval and an empty plot are drawn too", "[cli]") {
  CHECK(forest_plot({}, "mm").empty());
  CHECK_THAT(forest_plot({{Kind::study, "A", 5, 5, 5, 1.0, "5"}}, "mm"), Catch::Contains("■"));
}
