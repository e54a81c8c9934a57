#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <cstdint>
#include <cstring>

#include "geometry/mesh_guard.hpp"
#include "geometry/text_scanner.hpp"

namespace endplate::geometry {

namespace {

constexpr std::size_t kHeader_bytes = 80;
constexpr std::size_t kPreface_bytes = kHeader_bytes + sizeof(std::uint32_t);
constexpr std::size_t kTriangle_bytes = 50;

std::string lower_case(std::string_view word) {
  std::string lower(word);
  std::ranges::transform(lower, lower.begin(), [](unsigned char c) { return std::tolower(c); });
  return lower;
}

// Little-endian by definition of the format, as are the machines that this is built for.
std::uint32_t triangle_count(const std::string& bytes) {
  std::uint32_t count = 0;
  std::memcpy(&count, bytes.data() + kHeader_bytes, sizeof count);
  return count;
}

GeometryResult<GuardedBytes> guarded_binary(const std::string& bytes) {
  const std::uint64_t count = triangle_count(bytes);
  const std::uint64_t room = (bytes.size() - kPreface_bytes) / kTriangle_bytes;
  if (count > room) {
    return std::unexpected(GeometryProblem{
        "the header announces " + std::to_string(count) + " triangles, but the file has room for " +
            std::to_string(room) + ": it is cut off, or no STL file",
        "copy or export the file again"});
  }
  GuardedBytes guarded{bytes, {}};
  const std::size_t end = kPreface_bytes + static_cast<std::size_t>(count) * kTriangle_bytes;
  if (end < bytes.size()) {
    guarded.bytes.resize(end);
    guarded.notes.push_back("left out " + std::to_string(bytes.size() - end) +
                            " bytes after the last triangle that the header announces");
  }
  // A header that begins with "solid" would be read as text.
  std::fill_n(guarded.bytes.begin(), kHeader_bytes, 'x');
  return guarded;
}

// One facet, after its first word.
GeometryResult<std::string> guarded_facet(TextScanner& scanner) {
  std::string facet = "facet\n";
  const std::size_t first_line = scanner.line();
  int corners = 0;
  for (std::string_view word = scanner.word(); !word.empty(); word = scanner.word()) {
    const std::string lower = lower_case(word);
    if (lower == "endfacet") {
      if (corners == 3) return facet + "endfacet\n";
      return std::unexpected(GeometryProblem{"the facet of line " + std::to_string(first_line) +
                                                 " has " + std::to_string(corners) +
                                                 " corners instead of 3",
                                             "export the file again"});
    }
    if (lower != "vertex") continue;
    facet += "vertex";
    for (int axis = 0; axis < 3; ++axis) {
      const std::string_view coordinate = scanner.word();
      if (const auto fault = fault_of_coordinate(coordinate, scanner.line()); !fault.empty()) {
        return std::unexpected(GeometryProblem{fault, "export the file again"});
      }
      facet.append(" ").append(coordinate);
    }
    facet += '\n';
    ++corners;
  }
  return std::unexpected(
      GeometryProblem{"the file ends inside the facet of line " + std::to_string(first_line),
                      "copy or export the file again"});
}

GeometryResult<GuardedBytes> guarded_text(const std::string& bytes) {
  GuardedBytes guarded;
  TextScanner scanner(bytes);
  bool inside = false;
  for (std::string_view word = scanner.word(); !word.empty(); word = scanner.word()) {
    const std::string lower = lower_case(word);
    if (lower == "solid" && !inside) {
      inside = true;
      scanner.rest_of_line();  // its name, which may hold any word
      guarded.bytes += "solid\n";
    } else if (lower == "endsolid" && inside) {
      inside = false;
      scanner.rest_of_line();
      guarded.bytes += "endsolid\n";
    } else if (lower == "facet" && inside) {
      const auto facet = guarded_facet(scanner);
      if (!facet) return std::unexpected(facet.error());
      guarded.bytes += *facet;
    } else {
      return std::unexpected(GeometryProblem{
          "line " + std::to_string(scanner.line()) + " is no line of an ASCII STL file",
          "export the file again"});
    }
  }
  if (inside) {
    return std::unexpected(GeometryProblem{"the file ends without \"endsolid\": its end is missing",
                                           "copy or export the file again"});
  }
  return guarded;
}

}  // namespace

std::string fault_of_coordinate(std::string_view word, std::size_t line) {
  const std::string place = "line " + std::to_string(line);
  if (word.empty()) return place + " ends before its third coordinate";
  const auto value = number_of<double>(word);
  if (!value) return place + " has \"" + std::string(word.substr(0, 40)) + "\" for a coordinate";
  if (!std::isfinite(*value)) return place + " has a coordinate that is not finite";
  return {};
}

GeometryResult<GuardedBytes> guarded_stl(const std::string& bytes) {
  const bool has_preface = bytes.size() >= kPreface_bytes;
  const bool fits =
      has_preface &&
      bytes.size() == kPreface_bytes + std::uint64_t{triangle_count(bytes)} * kTriangle_bytes;
  const bool says_solid = lower_case(TextScanner(bytes).word()) == "solid";
  // Many exporters begin a binary file with "solid" too; text has no zero bytes.
  const bool text = says_solid && !fits && bytes.find('\0') == std::string::npos;
  if (text) return guarded_text(bytes);
  if (has_preface) return guarded_binary(bytes);
  return std::unexpected(GeometryProblem{
      "this is no STL file: it does not begin with \"solid\" and is too short for a binary one",
      "choose an STL, OBJ or PLY file, or export it again"});
}

}  // namespace endplate::geometry
