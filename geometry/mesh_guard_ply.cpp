#include <cmath>
#include <cstring>

#include "geometry/mesh_guard.hpp"
#include "geometry/ply_header.hpp"
#include "geometry/text_scanner.hpp"

namespace endplate::geometry {

namespace {

std::unexpected<GeometryProblem> cut_off(const PlyElement& element, std::uint64_t item) {
  return std::unexpected(
      GeometryProblem{"the file ends at " + element.name + " " + std::to_string(item + 1) +
                          " of the " + std::to_string(element.count) + " that its header announces",
                      "copy or export the file again"});
}

std::unexpected<GeometryProblem> bad_list(const PlyElement& element, std::uint64_t item) {
  return std::unexpected(GeometryProblem{
      element.name + " " + std::to_string(item + 1) + " has a list of a length that is no count",
      "export the file again"});
}

// Length of a list, whatever the type of its count and the order of its bytes; below 0 if negative.
std::int64_t length_at(const char* bytes, const PlyType& type, PlyFormat format) {
  std::uint64_t value = 0;
  for (std::size_t i = 0; i < type.bytes; ++i) {
    const std::size_t place = format == PlyFormat::big_endian ? type.bytes - 1 - i : i;
    value |= static_cast<std::uint64_t>(static_cast<unsigned char>(bytes[place])) << (8 * i);
  }
  const char highest = bytes[format == PlyFormat::big_endian ? 0 : type.bytes - 1];
  if (type.is_signed && (static_cast<unsigned char>(highest) & 0x80U) != 0) return -1;
  return static_cast<std::int64_t>(value);
}

// Walks the binary body; the offset of its end.
GeometryResult<std::size_t> walk_binary(const std::string& bytes, const PlyHeader& header) {
  std::size_t at = header.body_offset;
  for (const PlyElement& element : header.elements) {
    std::size_t stride = 0;
    bool has_list = false;
    for (const PlyProperty& property : element.properties) {
      stride += property.type.bytes;
      has_list = has_list || property.list;
    }
    if (!has_list && stride > 0) {
      const std::uint64_t room = (bytes.size() - at) / stride;
      if (element.count > room) return cut_off(element, room);
      at += static_cast<std::size_t>(element.count) * stride;
      continue;
    }
    if (element.properties.empty()) continue;
    for (std::uint64_t item = 0; item < element.count; ++item) {
      for (const PlyProperty& property : element.properties) {
        std::uint64_t values = 1;
        if (property.list) {
          if (property.count_type.bytes > bytes.size() - at) return cut_off(element, item);
          const auto length = length_at(bytes.data() + at, property.count_type, header.format);
          if (length < 0) return bad_list(element, item);
          values = static_cast<std::uint64_t>(length);
          at += property.count_type.bytes;
        }
        if (values > (bytes.size() - at) / property.type.bytes) return cut_off(element, item);
        at += static_cast<std::size_t>(values) * property.type.bytes;
      }
    }
  }
  return at;
}

// Walks the words of an ASCII body; the offset of its end.
GeometryResult<std::size_t> walk_text(const std::string& bytes, const PlyHeader& header) {
  TextScanner scanner(std::string_view(bytes).substr(header.body_offset));
  for (const PlyElement& element : header.elements) {
    if (element.properties.empty()) continue;
    for (std::uint64_t item = 0; item < element.count; ++item) {
      for (const PlyProperty& property : element.properties) {
        std::uint64_t values = 1;
        if (property.list) {
          const std::string_view word = scanner.word();
          if (word.empty()) return cut_off(element, item);
          const auto length = number_of<std::uint64_t>(word);
          if (!length) return bad_list(element, item);
          values = *length;
        }
        for (std::uint64_t i = 0; i < values; ++i) {
          const std::string_view word = scanner.word();
          if (word.empty()) return cut_off(element, item);
          if (!is_vertex(element) || !is_coordinate(property)) continue;
          const std::size_t line = header.body_line + scanner.line() - 1;
          if (const auto fault = fault_of_coordinate(word, line); !fault.empty()) {
            return std::unexpected(GeometryProblem{fault, "export the file again"});
          }
        }
      }
    }
  }
  return header.body_offset + scanner.offset();
}

// The header with the names that are needed; every other property is only skipped by its size.
std::string plain_header(const PlyHeader& header) {
  std::string text = "ply\nformat ";
  text += header.format == PlyFormat::ascii           ? "ascii"
          : header.format == PlyFormat::little_endian ? "binary_little_endian"
                                                      : "binary_big_endian";
  text += " 1.0\n";
  for (const PlyElement& element : header.elements) {
    if (element.properties.empty()) continue;
    const bool vertex = is_vertex(element);
    const bool face = is_face(element);
    text.append("element ").append(vertex ? "vertex" : face ? "face" : "other");
    text.append(" ").append(std::to_string(element.count)).append("\n");
    for (const PlyProperty& property : element.properties) {
      text += "property ";
      if (property.list) text.append("list ").append(property.count_type.name).append(" ");
      text.append(property.type.name).append(" ");
      if (vertex && is_coordinate(property)) {
        text += property.name;
      } else {
        text += face && is_index_list(property) ? "vertex_indices" : "other";
      }
      text += '\n';
    }
  }
  return text + "end_header\n";
}

}  // namespace

GeometryResult<GuardedBytes> guarded_ply(const std::string& bytes) {
  const auto header = parse_ply_header(bytes);
  if (!header) return std::unexpected(header.error());
  const auto end =
      header->format == PlyFormat::ascii ? walk_text(bytes, *header) : walk_binary(bytes, *header);
  if (!end) return std::unexpected(end.error());
  GuardedBytes guarded{plain_header(*header), {}};
  guarded.bytes.append(bytes, header->body_offset, *end - header->body_offset);
  const bool text = header->format == PlyFormat::ascii;
  const bool more = text ? !TextScanner(std::string_view(bytes).substr(*end)).word().empty()
                         : *end < bytes.size();
  if (more) {
    guarded.notes.push_back("left out " + std::to_string(bytes.size() - *end) +
                            " bytes after the last element that the header announces");
  }
  guarded.bytes += '\n';
  return guarded;
}

}  // namespace endplate::geometry
