#pragma once
// Small meshes with areas and volumes known in closed form, and files of any bytes.
#include <unistd.h>

#include <Eigen/Core>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <numbers>
#include <string>

#include "geometry/triangle_mesh.hpp"

namespace endplate::test {

using geometry::TriangleMesh;

// Adds a mesh to another, moved.
inline void add(TriangleMesh& mesh, const TriangleMesh& more,
                const Eigen::Vector3d& by_mm = Eigen::Vector3d::Zero()) {
  const auto first = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  for (const auto& p : more.vertices_mm) mesh.vertices_mm.push_back(p + by_mm);
  for (const auto& [a, b, c] : more.triangles) {
    mesh.triangles.push_back({first + a, first + b, first + c});
  }
}

// A cube of 12 triangles from 0 to `side`, facing outward.
inline TriangleMesh cube(double side_mm = 10.0) {
  TriangleMesh mesh;
  for (int i = 0; i < 8; ++i) {
    mesh.vertices_mm.emplace_back(side_mm * (i & 1), side_mm * ((i >> 1) & 1),
                                  side_mm * ((i >> 2) & 1));
  }
  mesh.triangles = {{0, 2, 3}, {0, 3, 1}, {4, 5, 7}, {4, 7, 6}, {0, 1, 5}, {0, 5, 4},
                    {2, 6, 7}, {2, 7, 3}, {0, 4, 6}, {0, 6, 2}, {1, 3, 7}, {1, 7, 5}};
  return mesh;
}

// The side of a prism along z whose foot is a regular polygon, facing outward, both ends open; or
// with the lower end closed by a fan, as a limb is that was cut from the body at the other end.
inline TriangleMesh tube(double radius_mm, double length_mm, std::uint32_t around,
                         std::uint32_t along, bool closed_below) {
  TriangleMesh mesh;
  for (std::uint32_t i = 0; i <= along; ++i) {
    for (std::uint32_t j = 0; j < around; ++j) {
      const double angle = 2.0 * std::numbers::pi * j / around;
      mesh.vertices_mm.emplace_back(radius_mm * std::cos(angle), radius_mm * std::sin(angle),
                                    length_mm * i / along);
    }
  }
  for (std::uint32_t i = 0; i < along; ++i) {
    for (std::uint32_t j = 0; j < around; ++j) {
      const std::uint32_t a = i * around + j;
      const std::uint32_t b = i * around + (j + 1) % around;
      mesh.triangles.push_back({a, b, b + around});
      mesh.triangles.push_back({a, b + around, a + around});
    }
  }
  if (closed_below) {
    const auto middle = static_cast<std::uint32_t>(mesh.vertices_mm.size());
    mesh.vertices_mm.emplace_back(0.0, 0.0, 0.0);
    for (std::uint32_t j = 0; j < around; ++j) {
      mesh.triangles.push_back({middle, (j + 1) % around, j});
    }
  }
  return mesh;
}

// A folder that is gone with the test.
class TestFolder {
 public:
  TestFolder() {
    static int count = 0;
    path_ = std::filesystem::temp_directory_path() /
            ("endplate_mesh_" + std::to_string(getpid()) + "_" + std::to_string(count++));
    std::filesystem::create_directories(path_);
  }
  ~TestFolder() { std::filesystem::remove_all(path_); }
  TestFolder(const TestFolder&) = delete;
  TestFolder& operator=(const TestFolder&) = delete;
  TestFolder(TestFolder&&) = delete;
  TestFolder& operator=(TestFolder&&) = delete;

  std::filesystem::path write(const std::string& name, const std::string& bytes) const {
    std::ofstream(path_ / name, std::ios::binary) << bytes;
    return path_ / name;
  }
  std::filesystem::path at(const std::string& name) const { return path_ / name; }

 private:
  std::filesystem::path path_;
};

inline std::string bytes_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// The bytes of a number as they lie in memory.
template <class Number>
std::string raw(Number value) {
  std::string bytes(sizeof value, '\0');
  std::memcpy(bytes.data(), &value, sizeof value);
  return bytes;
}

}  // namespace endplate::test
