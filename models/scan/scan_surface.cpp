#include "models/scan/scan_surface.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/mesh_file.hpp"
#include "geometry/mesh_repair.hpp"

namespace endplate::scan {
namespace {

using geometry::LengthUnit;

// From an infant's forearm and hand to a tall man's arm with some of the shoulder, along the
// diagonal of the box (assumed). Less than a factor of ten, so that one unit at most fits.
constexpr double kLeast_mm = 150.0;
constexpr double kMost_mm = 1400.0;
// Longer rims are the end where the arm was cut from the body: above most fingers, below a wrist
// (assumed).
constexpr double kLongestHole_mm = 110.0;
// Crossing triangles do no harm to a search for the nearest place while they are few: noise folds
// the skin between fingers (assumed).
constexpr double kMostCrossingShare = 0.01;

// Geometry speaks in phrases.
std::string sentence(std::string phrase) {
  if (phrase.empty()) return phrase;
  phrase.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(phrase.front())));
  return phrase + ".";
}

Error at(const std::filesystem::path& file, const geometry::GeometryProblem& problem) {
  return Error::input({file.string(), problem.what, sentence(problem.mend)});
}

Expected<LengthUnit> confirmed_unit(double diagonal, std::optional<LengthUnit> unit) {
  const auto fitting = geometry::plausible_units(diagonal, kLeast_mm, kMost_mm);
  const std::string range = fmt::format("an arm is {:.0f} to {:.0f} mm", kLeast_mm, kMost_mm);
  const auto size = [&](LengthUnit u) {
    return fmt::format("{:.4g} mm", diagonal * geometry::mm_per(u));
  };
  const auto refuse = [](std::string what, std::string mend) {
    return std::unexpected(Error::input({"--scan-unit", std::move(what), std::move(mend)}));
  };
  if (!fitting || fitting->empty()) {
    return refuse(fmt::format("the surface is {:.4g} across in the unit of its file, which is no "
                              "arm in mm, cm or m ({})",
                              diagonal, range),
                  "Export the surface in mm, cm or m, the arm alone.");
  }
  const LengthUnit likely = fitting->front();
  if (!unit) {
    return refuse(fmt::format("the unit of the scan is not confirmed; by its size it is {}",
                              to_string(likely)),
                  fmt::format("Add --scan-unit {} if the surface is {} across.", to_string(likely),
                              size(likely)));
  }
  if (std::ranges::find(*fitting, *unit) == fitting->end()) {
    return refuse(
        fmt::format("in {} the surface is {} across; {}", to_string(*unit), size(*unit), range),
        fmt::format("Give {}, in which it is {} across.", to_string(likely), size(likely)));
  }
  return *unit;
}

}  // namespace

std::string_view to_string(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::mm:
      return "mm";
    case LengthUnit::cm:
      return "cm";
    case LengthUnit::m:
      return "m";
  }
  return "";
}

std::optional<LengthUnit> unit_from(std::string_view word) {
  for (const LengthUnit unit : geometry::kLengthUnits) {
    if (word == to_string(unit)) return unit;
  }
  return std::nullopt;
}

Expected<ScanLook> look_at_scan(const std::filesystem::path& file) {
  const auto read = geometry::read_mesh_file(file);
  if (!read) return std::unexpected(at(file, read.error()));
  ScanLook look{read->mesh.triangles.size(), geometry::diagonal(read->mesh), std::nullopt};
  const auto fitting = geometry::plausible_units(look.diagonal, kLeast_mm, kMost_mm);
  if (fitting && !fitting->empty()) look.likely = fitting->front();
  return look;
}

Expected<ScanSurface> read_scan_surface(const std::filesystem::path& file,
                                        std::optional<LengthUnit> unit) {
  auto read = geometry::read_mesh_file(file);
  if (!read) return std::unexpected(at(file, read.error()));
  const auto confirmed = confirmed_unit(geometry::diagonal(read->mesh), unit);
  if (!confirmed) return std::unexpected(confirmed.error());
  geometry::scale_to_mm(read->mesh, *confirmed);
  auto check = geometry::check_mesh(read->mesh);
  if (!check) return std::unexpected(at(file, check.error()));

  geometry::RepairOptions options;
  options.close_holes_up_to_mm = kLongestHole_mm;
  options.open_end = geometry::OpenEnd::leave_open;
  options.most_self_intersections = static_cast<std::size_t>(
      kMostCrossingShare * static_cast<double>(read->mesh.triangles.size()));
  auto repaired = geometry::repair_mesh(std::move(read->mesh), options);
  if (!repaired) return std::unexpected(at(file, repaired.error()));

  ScanSurface surface{std::move(repaired->mesh), *confirmed, std::move(*check),
                      std::move(read->notes)};
  surface.notes.insert(surface.notes.end(), repaired->done.begin(), repaired->done.end());
  if (surface.found.self_intersections > 0) {
    surface.notes.push_back(
        fmt::format("pairs of triangles that cross left as they are: {}{}",
                    surface.found.self_intersections_complete ? "" : "at least ",
                    surface.found.self_intersections));
  }
  return surface;
}

}  // namespace endplate::scan
