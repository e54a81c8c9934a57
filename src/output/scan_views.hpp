#pragma once
#include <string>

#include "command.hpp"
#include "models/scan/scan_answer.hpp"

namespace endplate::cli {

// The "scan" object of a document.
Json scan_json(const scan::ScanAnswer& answer);

// The part of a page that stands before its caution. `quiet`: tables and warnings only.
std::string scan_text(const scan::ScanAnswer& answer, bool quiet);

}  // namespace endplate::cli
