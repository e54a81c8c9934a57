#include "geometry/mesh_file.hpp"

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <exception>
#include <fstream>
#include <optional>
#include <system_error>

#include "geometry/mesh_codec.hpp"
#include "geometry/mesh_guard.hpp"
#include "geometry/mesh_vertices.hpp"
#include "geometry/polygon_split.hpp"

namespace endplate::geometry {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t kMost_bytes = std::uintmax_t{512} * 1024 * 1024;

std::unexpected<GeometryProblem> refused(std::string what, std::string mend) {
  return std::unexpected(GeometryProblem{std::move(what), std::move(mend)});
}

std::optional<MeshFormat> format_of(const fs::path& file) {
  std::string ending = file.extension().string();
  std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
  if (ending == ".stl") return MeshFormat::stl;
  if (ending == ".obj") return MeshFormat::obj;
  if (ending == ".ply") return MeshFormat::ply;
  return {};
}

GeometryResult<std::string> read_bytes(const fs::path& file) {
  std::error_code error;
  const fs::file_status status = fs::status(file, error);
  if (!fs::exists(status)) return refused("there is no such file", "check its name and folder");
  if (!fs::is_regular_file(status)) return refused("this is no file", "choose a file");
  const std::uintmax_t size = fs::file_size(file, error);
  if (error) return refused("its size cannot be told: " + error.message(), "check the file");
  if (size == 0) return refused("the file is empty", "copy or export the file again");
  if (size > kMost_bytes) {
    return refused("the file has more than 512 MiB", "export the surface with fewer triangles");
  }
  std::ifstream in(file, std::ios::binary);
  std::string bytes(static_cast<std::size_t>(size), '\0');
  if (!in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()))) {
    return refused("the file cannot be read", "check that you may read it");
  }
  return bytes;
}

GeometryResult<GuardedBytes> guarded(MeshFormat format, const std::string& bytes) {
  switch (format) {
    case MeshFormat::stl:
      return guarded_stl(bytes);
    case MeshFormat::obj:
      return guarded_obj(bytes);
    case MeshFormat::ply:
      break;
  }
  return guarded_ply(bytes);
}

// Corners that follow each other at the same point are one.
std::vector<std::size_t> without_repeats(const PolygonSoup& soup,
                                         std::vector<std::size_t> polygon) {
  const auto same = [&](std::size_t a, std::size_t b) { return soup.points[a] == soup.points[b]; };
  polygon.erase(std::ranges::unique(polygon, same).begin(), polygon.end());
  while (polygon.size() > 1 && same(polygon.front(), polygon.back())) polygon.pop_back();
  return polygon;
}

GeometryResult<MeshFile> mesh_of(const PolygonSoup& soup, std::vector<std::string> notes) {
  MeshFile result;
  result.notes = std::move(notes);
  result.mesh.vertices_mm = soup.points;
  std::size_t with_more_corners = 0;
  std::size_t without_area = 0;
  const auto add = [&](std::size_t a, std::size_t b, std::size_t c) {
    result.mesh.triangles.push_back({static_cast<std::uint32_t>(a), static_cast<std::uint32_t>(b),
                                     static_cast<std::uint32_t>(c)});
  };
  for (std::size_t i = 0; i < soup.polygons.size(); ++i) {
    for (const std::size_t corner : soup.polygons[i]) {
      if (corner < soup.points.size()) continue;
      return refused("face " + std::to_string(i + 1) + " names a vertex that does not exist",
                     "export the file again");
    }
    const auto polygon = without_repeats(soup, soup.polygons[i]);
    if (polygon.size() < 3) {
      ++without_area;
    } else if (polygon.size() == 3) {
      add(polygon[0], polygon[1], polygon[2]);
    } else {
      ++with_more_corners;
      for (const auto& [a, b, c] : split_polygon(soup.points, polygon)) add(a, b, c);
    }
  }
  const auto note = [&](std::size_t count, const char* what) {
    if (count > 0) result.notes.push_back(std::to_string(count) + what);
  };
  note(without_area, " faces with fewer than three different corners left out");
  note(with_more_corners, " faces with more than three corners cut into triangles");
  if (const auto fault = fault_of_arrays(result.mesh)) return std::unexpected(*fault);
  note(merge_identical_vertices(result.mesh), " vertices merged with one at the same point");
  note(drop_unused_vertices(result.mesh), " vertices that no face uses left out");
  return result;
}

GeometryResult<MeshFile> read(const fs::path& file) {
  const auto format = format_of(file);
  if (!format) {
    return refused("the file's name ends in none of .stl, .obj and .ply",
                   "choose a file of one of these formats");
  }
  auto bytes = read_bytes(file);
  if (!bytes) return std::unexpected(bytes.error());
  auto safe = guarded(*format, *bytes);
  if (!safe) return std::unexpected(safe.error());
  bytes->clear();
  bytes->shrink_to_fit();
  const auto soup = decode_mesh(*format, safe->bytes);
  if (!soup || soup->polygons.empty()) {
    return refused("the file holds no surface that can be read", "export the file again");
  }
  return mesh_of(*soup, std::move(safe->notes));
}

std::expected<void, GeometryProblem> write(const fs::path& file, const TriangleMesh& mesh) {
  if (const auto fault = fault_of_arrays(mesh)) return std::unexpected(*fault);
  const auto format = format_of(file);
  if (format != MeshFormat::stl && format != MeshFormat::ply) {
    return refused("surfaces are written as .stl or .ply only", "choose one of these endings");
  }
  const auto bytes = encode_mesh(*format, mesh);
  if (!bytes) return refused("the surface cannot be put into this format", "choose the other one");
  const fs::path unfinished = fs::path(file).concat(".part");
  std::error_code error;
  {
    std::ofstream out(unfinished, std::ios::binary);
    out.write(bytes->data(), static_cast<std::streamsize>(bytes->size()));
    out.close();
    if (!out) {
      fs::remove(unfinished, error);
      return refused("the file cannot be written", "check the folder and the room on the disk");
    }
  }
  fs::rename(unfinished, file, error);
  if (error) {
    const std::string why = error.message();
    fs::remove(unfinished, error);
    return refused("the file cannot be written: " + why, "check the folder");
  }
  return {};
}

// What the libraries below may still throw, memory that is not there included.
template <class Work>
auto without_throwing(const Work& work) -> decltype(work()) {
  try {
    return work();
  } catch (const std::exception& error) {
    return refused("the surface cannot be handled: " + std::string(error.what()),
                   "export it again with fewer triangles");
  }
}

}  // namespace

GeometryResult<MeshFile> read_mesh_file(const fs::path& file) {
  return without_throwing([&] { return read(file); });
}

std::expected<void, GeometryProblem> write_mesh_file(const fs::path& file,
                                                     const TriangleMesh& mesh) {
  return without_throwing([&] { return write(file, mesh); });
}

}  // namespace endplate::geometry
