#pragma once
// The options by which a command takes a scanned surface.
#include <memory>
#include <optional>
#include <string>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/scan/scan_answer.hpp"

namespace CLI {
class App;
}

namespace endplate::cli {

struct ScanOptions {
  std::string surface;  // empty: no scan
  std::string unit;
  std::string landmarks;
};

// Adds --scan, --scan-unit and --scan-landmarks; what is typed ends in the returned options.
std::shared_ptr<const ScanOptions> add_scan_options(CLI::App& command);

// The standard anatomy on the scan; nothing when none was named.
Expected<std::optional<scan::ScanAnswer>> load_scan(const ScanOptions& options,
                                                    const evidence::DataPackage& package,
                                                    const casefile::Limb& limb);

}  // namespace endplate::cli
