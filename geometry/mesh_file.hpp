#pragma once
// Surfaces from and to files: STL (ASCII, binary), OBJ, PLY (ASCII, binary). No function throws.
#include <expected>
#include <filesystem>
#include <string>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct MeshFile {
  // Coordinates in the unit and frame of the file, which no format names: mm only after
  // mesh_unit.hpp. Polygons are triangulated, identical vertices merged, unused ones left out. At
  // least one triangle, every index in range, every coordinate finite; nothing else is checked.
  TriangleMesh mesh;
  std::vector<std::string> notes;  // what was odd or left out, in words
};

// The ending of the name tells the format (.stl, .obj, .ply in any case). Colours, normals,
// textures and anything but points and faces are left out. Refuses what is no such file, is cut
// off, has coordinates that are not finite or indices out of range, and a file of more than 512 MiB
// (ten million triangles, far beyond a scan of a limb: `assumed`), which might exhaust the memory.
GeometryResult<MeshFile> read_mesh_file(const std::filesystem::path& file);

// Binary, by the ending: .stl in single precision (six to seven digits), .ply in double. The file
// is whole or not there.
std::expected<void, GeometryProblem> write_mesh_file(const std::filesystem::path& file,
                                                     const TriangleMesh& mesh);

}  // namespace endplate::geometry
