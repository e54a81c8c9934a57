#include "geometry/ply_header.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "geometry/text_scanner.hpp"

namespace endplate::geometry {

namespace {

struct NamedType {
  std::string_view other_name;
  PlyType type;
};

constexpr std::array<NamedType, 8> kTypes{{{"int8", {"char", 1, false, true}},
                                           {"uint8", {"uchar", 1, false, false}},
                                           {"int16", {"short", 2, false, true}},
                                           {"uint16", {"ushort", 2, false, false}},
                                           {"int32", {"int", 4, false, true}},
                                           {"uint32", {"uint", 4, false, false}},
                                           {"float32", {"float", 4, true, true}},
                                           {"float64", {"double", 8, true, true}}}};

std::optional<PlyType> type_of(std::string_view word) {
  const auto found = std::ranges::find_if(
      kTypes, [&](const NamedType& t) { return word == t.type.name || word == t.other_name; });
  if (found == kTypes.end()) return {};
  return found->type;
}

std::unexpected<GeometryProblem> bad_header(std::size_t line, const std::string& what) {
  return std::unexpected(GeometryProblem{
      "line " + std::to_string(line) + " of the PLY header " + what, "export the file again"});
}

std::optional<PlyFormat> format_of(std::string_view word) {
  if (word == "ascii") return PlyFormat::ascii;
  if (word == "binary_little_endian") return PlyFormat::little_endian;
  if (word == "binary_big_endian") return PlyFormat::big_endian;
  return {};
}

GeometryResult<PlyProperty> parse_property(TextScanner& scanner) {
  PlyProperty property;
  std::string_view word = scanner.word_of_line();
  if (word == "list") {
    property.list = true;
    const auto count = type_of(scanner.word_of_line());
    if (!count || count->floating) return bad_header(scanner.line(), "has an unknown type");
    property.count_type = *count;
    word = scanner.word_of_line();
  }
  const auto type = type_of(word);
  if (!type) return bad_header(scanner.line(), "has an unknown type");
  property.type = *type;
  property.name = scanner.word_of_line();
  if (property.name.empty()) return bad_header(scanner.line(), "has a property without a name");
  return property;
}

std::string missing_in(const PlyHeader& header) {
  const auto vertices = std::ranges::count_if(header.elements, is_vertex);
  const auto faces = std::ranges::count_if(header.elements, is_face);
  if (vertices != 1) return "the file has " + std::to_string(vertices) + " lists of vertices";
  if (faces == 0) return "the file has no faces: it is a cloud of points, no surface";
  if (faces != 1) return "the file has " + std::to_string(faces) + " lists of faces";
  for (const PlyElement& element : header.elements) {
    if (is_vertex(element)) {
      for (const std::string_view axis : {"x", "y", "z"}) {
        const auto named = [&](const PlyProperty& p) { return p.name == axis; };
        if (std::ranges::count_if(element.properties, named) != 1 ||
            !is_coordinate(*std::ranges::find_if(element.properties, named))) {
          return "the vertices have no " + std::string(axis) + " of type float or double";
        }
      }
    }
    if (is_face(element) && std::ranges::count_if(element.properties, is_index_list) != 1) {
      return "the faces have no one list of 32-bit vertex indices";
    }
  }
  return {};
}

}  // namespace

bool is_vertex(const PlyElement& element) {
  return element.name == "vertex" || element.name == "vertices";
}

bool is_face(const PlyElement& element) {
  return element.name == "face" || element.name == "faces";
}

bool is_coordinate(const PlyProperty& property) {
  return !property.list && property.type.floating &&
         (property.name == "x" || property.name == "y" || property.name == "z");
}

bool is_index_list(const PlyProperty& property) {
  return property.list && (property.name == "vertex_indices" || property.name == "vertex_index") &&
         (property.type.name == "int" || property.type.name == "uint");
}

GeometryResult<PlyHeader> parse_ply_header(std::string_view bytes) {
  TextScanner scanner(bytes);
  if (scanner.rest_of_line() != "ply") {
    return std::unexpected(GeometryProblem{"this is no PLY file: its first line is not \"ply\"",
                                           "choose an STL, OBJ or PLY file, or export it again"});
  }
  PlyHeader header;
  bool has_format = false;
  while (!scanner.at_end()) {
    const std::string_view keyword = scanner.word_of_line();
    if (keyword == "format") {
      const auto format = format_of(scanner.word_of_line());
      if (!format || has_format) return bad_header(scanner.line(), "has no known format");
      header.format = *format;
      has_format = true;
    } else if (keyword == "element") {
      PlyElement element;
      element.name = scanner.word_of_line();
      const auto count = number_of<std::uint64_t>(scanner.word_of_line());
      if (!count) return bad_header(scanner.line(), "has no valid number of elements");
      element.count = *count;
      header.elements.push_back(std::move(element));
    } else if (keyword == "property") {
      if (header.elements.empty()) {
        return bad_header(scanner.line(), "has a property before any element");
      }
      auto property = parse_property(scanner);
      if (!property) return std::unexpected(property.error());
      header.elements.back().properties.push_back(std::move(*property));
    } else if (keyword == "end_header") {
      if (!has_format) return bad_header(scanner.line(), "ends without a format");
      scanner.rest_of_line();
      header.body_offset = scanner.offset();
      header.body_line = scanner.line();
      if (const auto missing = missing_in(header); !missing.empty()) {
        return std::unexpected(GeometryProblem{
            missing, "export a surface with x, y, z as float and faces as lists of int"});
      }
      return header;
    } else if (!keyword.empty() && keyword != "comment" && keyword != "obj_info") {
      return bad_header(scanner.line(), "has an unknown word");
    }
    scanner.rest_of_line();
  }
  return std::unexpected(GeometryProblem{"the PLY header has no end: the file is cut off",
                                         "copy or export the file again"});
}

}  // namespace endplate::geometry
