#include "geometry/mesh_file.hpp"

#include <algorithm>
#include <catch2/catch.hpp>

#include "../support/meshes.hpp"
#include "geometry/mesh_check.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

namespace {

// A square pyramid of side 2 and height 3: volume 4.
const std::string kObjPyramid =
    "# a pyramid\nmtllib none.mtl\no pyramid\nv 0 0 0 0.5 0.5 0.5\nv 2 0 0\nv 2 2 0\nv 0 2 0\n"
    "v 1 1 3\nvn 0 0 1\nvt 0 0\ns off\nf 4/1/1 3/1/1 2/1/1 1/1/1\nf 1//1 2//1 5//1\nf 2/1 3/1 5/1\n"
    "f -3 -2 -1\nf 4 1 5\nl 1 2\n";

const std::string kPlyVertices = "0 0 0 255\n2 0 0 255\n2 2 0 0\n0 2 0 0\n1 1 3 7\n";
const std::string kPlyFaces = "4 3 2 1 0\n3 0 1 4\n3 1 2 4\n3 2 3 4\n3 3 0 4\n";
std::string ply_head(const std::string& format) {
  return "ply\nformat " + format +
         " 1.0\ncomment a pyramid\nobj_info none\nelement vertex 5\nproperty float x\n"
         "property float y\nproperty float z\nproperty uchar red\nelement face 5\n"
         "property list uchar int vertex_index\nend_header\n";
}

template <class Number>
std::string big_endian(Number value) {
  std::string bytes = raw(value);
  std::ranges::reverse(bytes);
  return bytes;
}

void check_pyramid(const GeometryResult<MeshFile>& file) {
  REQUIRE(file.has_value());
  CHECK(file->mesh.vertices_mm.size() == 5);
  CHECK(file->mesh.triangles.size() == 6);
  const auto check = check_mesh(file->mesh);
  REQUIRE(check.has_value());
  CHECK(check->closed);
  CHECK(check->facing == Facing::outward);
  REQUIRE(check->volume_mm3.has_value());
  CHECK(*check->volume_mm3 == Approx(4.0));
}

}  // namespace

TEST_CASE("an OBJ file of polygons, comments and relative indices is read", "[geometry][mesh]") {
  const TestFolder folder;
  check_pyramid(read_mesh_file(folder.write("a.obj", kObjPyramid)));
  const auto file = read_mesh_file(folder.at("a.obj"));
  CHECK(file->notes ==
        std::vector<std::string>{"1 faces with more than three corners cut into triangles"});
}

TEST_CASE("a last line without an end is remarked on", "[geometry][mesh]") {
  const TestFolder folder;
  const auto file =
      read_mesh_file(folder.write("a.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\nv 5 5 5\nf 1 2 3"));
  REQUIRE(file.has_value());
  CHECK(file->notes ==
        std::vector<std::string>{"the last line has no end: look whether the file is complete",
                                 "1 vertices that no face uses left out"});
}

TEST_CASE("line ends of other systems, tabs and continued lines change nothing",
          "[geometry][mesh]") {
  const TestFolder folder;
  std::string text = kObjPyramid;
  std::ranges::replace(text, ' ', '\t');
  check_pyramid(read_mesh_file(folder.write("tabs.OBJ", text)));
  std::string crlf;
  for (const char c : kObjPyramid) crlf += c == '\n' ? std::string("\r\n") : std::string(1, c);
  check_pyramid(read_mesh_file(folder.write("crlf.obj", crlf)));
  std::string continued = kObjPyramid;
  continued.replace(continued.find("f 4 1 5"), 7, "f 4 \\\r\n1 5");
  check_pyramid(read_mesh_file(folder.write("continued.obj", continued)));
  std::string ply;
  for (const char c : ply_head("ascii") + kPlyVertices + kPlyFaces) {
    ply += c == '\n' ? std::string("\r\n") : std::string(1, c);
  }
  check_pyramid(read_mesh_file(folder.write("crlf.ply", ply)));
}

TEST_CASE("ASCII, little-endian and big-endian PLY files are one surface", "[geometry][mesh]") {
  const TestFolder folder;
  check_pyramid(
      read_mesh_file(folder.write("a.ply", ply_head("ascii") + kPlyVertices + kPlyFaces)));
  const std::vector<std::array<float, 3>> points{
      {0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {1, 1, 3}};
  const std::vector<std::vector<std::int32_t>> faces{
      {3, 2, 1, 0}, {0, 1, 4}, {1, 2, 4}, {2, 3, 4}, {3, 0, 4}};
  std::string little = ply_head("binary_little_endian");
  std::string big = ply_head("binary_big_endian");
  for (const auto& point : points) {
    for (const float x : point) {
      little += raw(x);
      big += big_endian(x);
    }
    little += '\xff';
    big += '\xff';
  }
  for (const auto& face : faces) {
    little += static_cast<char>(face.size());
    big += static_cast<char>(face.size());
    for (const std::int32_t i : face) {
      little += raw(i);
      big += big_endian(i);
    }
  }
  check_pyramid(read_mesh_file(folder.write("little.ply", little)));
  check_pyramid(read_mesh_file(folder.write("big.ply", big)));
}

TEST_CASE("an ASCII STL file may name its solid after its own words", "[geometry][mesh]") {
  const TestFolder folder;
  std::string text = "solid facet of a vertex\r\n";
  const TriangleMesh mesh = cube();
  for (const auto& triangle : mesh.triangles) {
    text += "FACET NORMAL 0 0 0\r\nOUTER LOOP\r\n";
    for (const auto i : triangle) {
      const auto& p = mesh.vertices_mm[i];
      text += "VERTEX " + std::to_string(p.x()) + " +" + std::to_string(p.y()) + " " +
              std::to_string(p.z()) + "e0\r\n";
    }
    text += "ENDLOOP\r\nENDFACET\r\n";
  }
  const auto file = read_mesh_file(folder.write("a.stl", text + "endsolid facet"));
  REQUIRE(file.has_value());
  CHECK(file->mesh.vertices_mm.size() == 8);
  CHECK(file->mesh.triangles.size() == 12);
  CHECK(check_mesh(file->mesh)->volume_mm3.value() == Approx(1000.0));
}

TEST_CASE("what is written is what is read again", "[geometry][mesh]") {
  const TestFolder folder;
  const TriangleMesh mesh = tube(41.3, 207.1, 17, 9, true);
  for (const std::string name : {"a.stl", "a.ply"}) {
    INFO(name);
    REQUIRE(write_mesh_file(folder.at(name), mesh).has_value());
    CHECK_FALSE(std::filesystem::exists(folder.at(name + ".part")));
    const auto file = read_mesh_file(folder.at(name));
    REQUIRE(file.has_value());
    CHECK(file->notes.empty());
    REQUIRE(file->mesh.triangles.size() == mesh.triangles.size());
    REQUIRE(file->mesh.vertices_mm.size() == mesh.vertices_mm.size());
    const double tolerance_mm = name == "a.stl" ? 2e-5 : 0.0;
    for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
      for (std::size_t i = 0; i < 3; ++i) {
        const auto& written = mesh.vertices_mm[mesh.triangles[t].at(i)];
        const auto& read = file->mesh.vertices_mm[file->mesh.triangles[t].at(i)];
        CHECK((written - read).cwiseAbs().maxCoeff() <= tolerance_mm);
      }
    }
  }
}

TEST_CASE("a binary STL file whose header begins with solid is read as binary",
          "[geometry][mesh]") {
  const TestFolder folder;
  REQUIRE(write_mesh_file(folder.at("a.stl"), cube()).has_value());
  std::string bytes = bytes_of(folder.at("a.stl"));
  bytes.replace(0, 6, "solid ");
  const auto file = read_mesh_file(folder.write("b.stl", bytes));
  REQUIRE(file.has_value());
  CHECK(file->mesh.triangles.size() == 12);
  // With bytes behind it, its size no longer tells, but its zero bytes do.
  const auto longer = read_mesh_file(folder.write("c.stl", bytes + "more"));
  REQUIRE(longer.has_value());
  CHECK(longer->mesh.triangles.size() == 12);
  CHECK(longer->notes == std::vector<std::string>{
                             "left out 4 bytes after the last triangle that the header announces"});
}

// An L of area 3: a fan from its first corner would cover the notch.
TEST_CASE("a concave polygon is cut inside its outline", "[geometry][mesh]") {
  const TestFolder folder;
  const auto file = read_mesh_file(folder.write(
      "a.obj", "v 2 0 0\nv 2 1 0\nv 1 1 0\nv 1 2 0\nv 0 2 0\nv 0 0 0\nf 1 2 3 4 5 6\n"));
  REQUIRE(file.has_value());
  CHECK(file->mesh.triangles.size() == 4);
  CHECK(check_mesh(file->mesh)->area_mm2 == Approx(3.0));
  CHECK(check_mesh(file->mesh)->self_intersections == 0);
}

TEST_CASE("a file that cannot be written leaves nothing behind", "[geometry][mesh]") {
  const TestFolder folder;
  CHECK_FALSE(write_mesh_file(folder.at("none/a.stl"), cube()).has_value());
  CHECK_FALSE(write_mesh_file(folder.at("a.obj"), cube()).has_value());
  CHECK_FALSE(write_mesh_file(folder.at("a.ply"), TriangleMesh{}).has_value());
  TriangleMesh outside = cube();
  outside.triangles[3][1] = 8;
  CHECK_FALSE(write_mesh_file(folder.at("a.ply"), outside).has_value());
  CHECK_FALSE(std::filesystem::exists(folder.at("a.ply")));
}
