#include "scan_input.hpp"

#include <CLI/CLI.hpp>

#include "models/scan/scan_surface.hpp"

namespace endplate::cli {

std::shared_ptr<const ScanOptions> add_scan_options(CLI::App& command) {
  auto options = std::make_shared<ScanOptions>();
  CLI::Option* surface =
      command.add_option("--scan", options->surface,
                         "scanned surface of the arm, STL, OBJ or PLY: warp the limb to it");
  command
      .add_option("--scan-unit", options->unit,
                  "unit of the scan: mm, cm or m; without it the likely one is named")
      ->check(CLI::IsMember({"mm", "cm", "m"}))
      ->needs(surface);
  command
      .add_option("--scan-landmarks", options->landmarks,
                  "landmarks picked on the scan, CSV: landmark,x,y,z")
      ->needs(surface);
  return options;
}

Expected<std::optional<scan::ScanAnswer>> load_scan(const ScanOptions& options,
                                                    const evidence::DataPackage& package,
                                                    const casefile::Limb& limb) {
  if (options.surface.empty()) return std::nullopt;
  if (options.landmarks.empty()) {
    return std::unexpected(
        Error::input({"--scan-landmarks", "no landmarks are picked on the scan",
                      "Name a CSV file that begins with the line landmark,x,y,z and gives one "
                      "landmark a line, in the coordinates of the scan."}));
  }
  auto answer = scan::answer_scan(
      package, limb, {options.surface, scan::unit_from(options.unit), options.landmarks});
  if (!answer) return std::unexpected(answer.error());
  return *std::move(answer);
}

}  // namespace endplate::cli
