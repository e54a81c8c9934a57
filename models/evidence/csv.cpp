#include "models/evidence/csv.hpp"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>

namespace endplate::evidence {
namespace {

struct Collector {
  std::string file;
  CsvText result;
  std::vector<std::string> row;
  std::vector<Problem> problems;
  bool have_header = false;
  std::size_t line = 1;

  void end_row() {
    std::size_t lines_taken = 1;
    for (const std::string& cell : row) {
      for (auto at = cell.find('\n'); at != std::string::npos; at = cell.find('\n', at + 1)) {
        ++lines_taken;
      }
    }

    if (!have_header) {
      result.header = std::move(row);
      have_header = true;
    } else if (row.size() != result.header.size()) {
      problems.push_back(
          {fmt::format("{}, row {}", file, line),
           fmt::format("the row has {} cells, the header {}", row.size(), result.header.size()),
           "Quote cells that hold a comma, and write every comma of an empty cell."});
    } else {
      std::ranges::move(row, std::back_inserter(result.cells));
      result.lines.push_back(line);
    }
    row.clear();
    line += lines_taken;
  }
};

}  // namespace

Expected<CsvText> parse_csv(std::string_view text, const std::string& file) {
  Collector collector;
  collector.file = file;
  csv_parser parser{};
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI);
  // By default libcsv drops blanks around a cell; they are for the schema to refuse.
  csv_set_space_func(&parser, [](unsigned char) { return 0; });
  const auto on_cell = [](void* cell, std::size_t size, void* data) {
    static_cast<Collector*>(data)->row.emplace_back(static_cast<const char*>(cell), size);
  };
  const auto on_row = [](int, void* data) { static_cast<Collector*>(data)->end_row(); };

  const bool parsed =
      csv_parse(&parser, text.data(), text.size(), on_cell, on_row, &collector) == text.size() &&
      csv_fini(&parser, on_cell, on_row, &collector) == 0;
  if (!parsed) {
    collector.problems.push_back({fmt::format("{}, row {}", file, collector.line),
                                  csv_strerror(csv_error(&parser)),
                                  "Close every quote and double the quotes inside a cell."});
  }
  csv_free(&parser);
  if (!collector.problems.empty()) {
    return std::unexpected(Error{Fault::internal, std::move(collector.problems)});
  }
  return std::move(collector.result);
}

}  // namespace endplate::evidence
