#pragma once
// The header of a PLY file: its elements, how many of each, and the type of every property.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/geometry_problem.hpp"

namespace endplate::geometry {

enum class PlyFormat { ascii, little_endian, big_endian };

struct PlyType {
  std::string_view name;  // as CGAL's reader knows it
  std::size_t bytes = 0;
  bool floating = false;
  bool is_signed = false;
};

struct PlyProperty {
  std::string name;
  PlyType type;
  bool list = false;
  PlyType count_type;  // of a list
};

struct PlyElement {
  std::string name;
  std::uint64_t count = 0;
  std::vector<PlyProperty> properties;
};

struct PlyHeader {
  PlyFormat format = PlyFormat::ascii;
  std::vector<PlyElement> elements;
  std::size_t body_offset = 0;  // of the first byte after the header
  std::size_t body_line = 1;
};

// Refuses a header that is incomplete, has an unknown type or word, or describes no vertices with
// x, y and z of a floating type and no faces with a list of 32-bit indices.
GeometryResult<PlyHeader> parse_ply_header(std::string_view bytes);

bool is_vertex(const PlyElement& element);
bool is_face(const PlyElement& element);
bool is_coordinate(const PlyProperty& property);
bool is_index_list(const PlyProperty& property);

}  // namespace endplate::geometry
