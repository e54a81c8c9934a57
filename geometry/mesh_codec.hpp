#pragma once
// Mesh files in memory, by CGAL's readers and writers of polygon soups.
#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

enum class MeshFormat { stl, obj, ply };

struct PolygonSoup {
  std::vector<Eigen::Vector3d> points;
  std::vector<std::vector<std::size_t>> polygons;  // indices may be out of range
};

// `bytes`: only what mesh_guard.hpp let through. Nothing when the reader gives up.
std::optional<PolygonSoup> decode_mesh(MeshFormat format, const std::string& bytes);

// Binary; STL in single precision, PLY in double. Nothing for OBJ or when the writer gives up.
std::optional<std::string> encode_mesh(MeshFormat format, const TriangleMesh& mesh);

}  // namespace endplate::geometry
