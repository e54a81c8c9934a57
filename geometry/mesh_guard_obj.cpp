#include <algorithm>
#include <cstdint>
#include <limits>

#include "geometry/mesh_guard.hpp"
#include "geometry/text_scanner.hpp"

namespace endplate::geometry {

namespace {

GeometryProblem bad_line(std::size_t line, const std::string& what) {
  return {"line " + std::to_string(line) + " " + what, "export the file again"};
}

// A statement that ends with a backslash goes on in the next line.
std::string without_continuations(std::string text) {
  for (std::size_t at = text.find('\\'); at != std::string::npos; at = text.find('\\', at + 1)) {
    const std::size_t end = text.compare(at + 1, 2, "\r\n") == 0 ? at + 2 : at + 1;
    if (end < text.size() && text[end] == '\n') {
      std::fill_n(text.begin() + static_cast<std::ptrdiff_t>(at), end - at + 1, ' ');
    }
  }
  return text;
}

}  // namespace

GeometryResult<GuardedBytes> guarded_obj(const std::string& bytes) {
  if (bytes.find('\0') != std::string::npos) {
    return std::unexpected(GeometryProblem{"this is no OBJ file: it holds zero bytes",
                                           "choose an STL, OBJ or PLY file, or export it again"});
  }
  // CGAL's reader counts in int.
  constexpr std::int64_t kMost = std::numeric_limits<std::int32_t>::max();
  GuardedBytes guarded;
  const std::string joined = without_continuations(bytes);
  TextScanner scanner(joined);
  std::int64_t vertices = 0;
  std::int64_t highest_index = 0;
  std::size_t highest_line = 0;
  while (!scanner.at_end()) {
    const std::size_t line = scanner.line();
    const std::string_view statement = scanner.word_of_line();
    if (statement == "v") {
      guarded.bytes += 'v';
      for (int axis = 0; axis < 3; ++axis) {
        const std::string_view coordinate = scanner.word_of_line();
        if (const auto fault = fault_of_coordinate(coordinate, line); !fault.empty()) {
          return std::unexpected(GeometryProblem{fault, "export the file again"});
        }
        guarded.bytes.append(" ").append(coordinate);
      }
      guarded.bytes += '\n';
      ++vertices;
    } else if (statement == "f") {
      guarded.bytes += 'f';
      for (auto word = scanner.word_of_line(); !word.empty() && !word.starts_with('#');
           word = scanner.word_of_line()) {
        const auto index = number_of<std::int64_t>(word.substr(0, word.find('/')));
        if (!index) return std::unexpected(bad_line(line, "has a corner that is no number"));
        // A negative index counts back from the last vertex so far.
        const std::int64_t absolute = *index < 0 ? vertices + *index + 1 : *index;
        if (absolute < 1 || absolute > kMost) {
          return std::unexpected(
              bad_line(line, "names vertex " + std::to_string(*index) + ", which does not exist"));
        }
        if (absolute > highest_index) {
          highest_index = absolute;
          highest_line = line;
        }
        guarded.bytes.append(" ").append(std::to_string(absolute));
      }
      guarded.bytes += '\n';
    }
    scanner.rest_of_line();
  }
  if (highest_index > vertices) {
    return std::unexpected(bad_line(highest_line, "names vertex " + std::to_string(highest_index) +
                                                      " of a file of " + std::to_string(vertices)));
  }
  if (!bytes.empty() && bytes.back() != '\n') {
    guarded.notes.emplace_back("the last line has no end: look whether the file is complete");
  }
  return guarded;
}

}  // namespace endplate::geometry
