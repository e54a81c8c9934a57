#include "models/evidence/csv.hpp"

#include <csv.h>
#include <fmt/format.h>

namespace endplate::evidence {
namespace {

struct Collector {
  std::string file;
  CsvText result;
  std::vector<Problem> problems;
  bool have_header = false;
  std::size_t line = 1;          // where the current row begins
  std::size_t next_line = 2;     // where the next one does
  std::size_t cells_before = 0;  // the current row

  void end_cell(std::string_view cell) {
    for (auto at = cell.find('\n'); at != std::string_view::npos; at = cell.find('\n', at + 1)) {
      ++next_line;
    }
    if (have_header) {
      result.cells.push_back(cell);
    } else {
      result.header.emplace_back(cell);
    }
  }

  void end_row() {
    const std::size_t cells = result.cells.size() - cells_before;
    if (!have_header) {
      have_header = true;
    } else if (cells != result.header.size()) {
      problems.push_back(
          {fmt::format("{}, row {}", file, line),
           fmt::format("the row has {} cells, the header {}", cells, result.header.size()),
           "Quote cells that hold a comma, and write every comma of an empty cell."});
      result.cells.shrink(cells_before);
    } else {
      result.lines.push_back(line);
    }
    cells_before = result.cells.size();
    line = next_line;
    ++next_line;
  }
};

}  // namespace

Expected<CsvText> parse_csv(std::string_view text, const std::string& file) {
  Collector collector;
  collector.file = file;
  collector.result.cells.reserve(text.size());
  csv_parser parser{};
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI);
  // By default libcsv drops blanks around a cell; they are for the schema to refuse.
  csv_set_space_func(&parser, [](unsigned char) { return 0; });
  const auto on_cell = [](void* cell, std::size_t size, void* data) {
    static_cast<Collector*>(data)->end_cell({static_cast<const char*>(cell), size});
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
