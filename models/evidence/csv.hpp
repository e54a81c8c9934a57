#pragma once
// Comma-separated text (RFC 4180) to cells, by libcsv.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/cell.hpp"

namespace endplate::evidence {

struct CsvText {
  std::vector<std::string> header;
  Cells cells;                     // header.size() a row
  std::vector<std::size_t> lines;  // of the file, where each row begins
};

// `file` names the place of a problem. A row with too few or too many cells is a problem.
Expected<CsvText> parse_csv(std::string_view text, const std::string& file);

}  // namespace endplate::evidence
