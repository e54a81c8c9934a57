#pragma once
// A scanned surface: from the file to a checked and repaired mesh in mm.
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/mesh_check.hpp"
#include "geometry/mesh_unit.hpp"
#include "geometry/triangle_mesh.hpp"
#include "models/core/error.hpp"

namespace endplate::scan {

std::string_view to_string(geometry::LengthUnit unit);  // "mm", "cm", "m"
std::optional<geometry::LengthUnit> unit_from(std::string_view word);

struct ScanSurface {
  geometry::TriangleMesh mesh;  // in mm, in the frame of the file, facing outward
  geometry::LengthUnit unit = geometry::LengthUnit::mm;
  geometry::MeshCheck found;       // before the repair
  std::vector<std::string> notes;  // of reading and repair, in words
};

// What a file shows before its unit is confirmed.
struct ScanLook {
  std::size_t triangles = 0;
  double diagonal = 0.0;                       // of the box around it, in the unit of the file
  std::optional<geometry::LengthUnit> likely;  // in which an arm has that size
};

// Problems stand at the file's name.
Expected<ScanLook> look_at_scan(const std::filesystem::path& file);

// `unit`: as the user confirms it; no format names it. Without one the error names the unit that
// the size of the surface suggests. A unit in which no arm has that size is refused too. An arm cut
// from the body may be open where it was cut. Problems stand at the file's name or at --scan-unit.
Expected<ScanSurface> read_scan_surface(const std::filesystem::path& file,
                                        std::optional<geometry::LengthUnit> unit);

}  // namespace endplate::scan
