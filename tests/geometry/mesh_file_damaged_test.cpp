// Files that are no surface, or a damaged one: each is refused by a message, none crashes or hangs.
#include <catch2/catch.hpp>
#include <limits>
#include <string>
#include <vector>

#include "../support/meshes.hpp"
#include "geometry/mesh_file.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

namespace {

struct Damaged {
  std::string name;  // its ending is the file's
  std::string bytes;
  std::string what;  // part of the message
};

std::string stl(std::uint32_t count, const std::string& triangles) {
  return std::string(80, ' ') + raw(count) + triangles;
}

std::string stl_triangle(float x) {
  std::string bytes(12, '\0');
  for (const float c : {x, 0.0F, 0.0F, 1.0F, 0.0F, 0.0F, 0.0F, 1.0F, 0.0F}) bytes += raw(c);
  return bytes + std::string(2, '\0');
}

std::string facet(const std::string& last) {
  return "facet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\n" + last +
         "endloop\nendfacet\n";
}

const std::string kVertex = "property float x\nproperty float y\nproperty float z\n";
const std::string kFace = "property list uchar int vertex_indices\n";

std::string ply(const std::string& elements, const std::string& body,
                const std::string& format = "ascii") {
  return "ply\nformat " + format + " 1.0\n" + elements + "end_header\n" + body;
}

std::string vertices(const std::string& count) {
  return "element vertex " + count + "\n" + kVertex;
}
std::string faces(const std::string& count, const std::string& list = kFace) {
  return "element face " + count + "\n" + list;
}

const std::string kThree = "0 0 0\n1 0 0\n0 1 0\n";
const std::string kObj = "v 0 0 0\nv 1 0 0\nv 0 1 0\n";
const std::string kBinary = "binary_little_endian";

std::vector<Damaged> damaged_files() {
  const float not_a_number = std::numeric_limits<float>::quiet_NaN();
  const float infinite = std::numeric_limits<float>::infinity();
  const std::string points(36, '\0');
  return {
      // STL, binary
      {"text.stl", "this is a letter", "no STL file"},
      {"garbage.stl", std::string(300, 'g'), "no STL file"},
      {"header_only.stl", std::string(80, ' '), "no STL file"},
      {"no_triangles.stl", stl(0, ""), "holds no surface"},
      {"cut_off.stl", stl(2, stl_triangle(0) + stl_triangle(1).substr(0, 30)), "room for 1"},
      {"huge_count.stl", stl(0xFFFFFFFFU, stl_triangle(0)), "announces 4294967295 triangles"},
      {"nan.stl", stl(1, stl_triangle(not_a_number)), "not finite"},
      {"infinite.stl", stl(1, stl_triangle(infinite)), "not finite"},
      {"far.stl", stl(1, stl_triangle(1e30F)), "units away"},
      {"one_point.stl", stl(1, std::string(50, '\0')), "no triangles"},
      // STL, ASCII
      {"ascii_cut_off.stl", "solid a\n" + facet("vertex 0 1 0\n"), "without \"endsolid\""},
      {"ascii_in_facet.stl", "solid a\nfacet normal 0 0 1\nvertex 0 0 0\n", "inside the facet"},
      {"ascii_two_corners.stl", "solid a\n" + facet("") + "endsolid a\n", "2 corners"},
      {"ascii_nan.stl", "solid a\n" + facet("vertex 0 nan 0\n") + "endsolid a\n", "line 6"},
      {"ascii_comma.stl", "solid a\n" + facet("vertex 0 1,5 0\n") + "endsolid a\n", "\"1,5\""},
      {"ascii_overflow.stl", "solid a\n" + facet("vertex 0 1e999 0\n") + "endsolid\n", "1e999"},
      {"ascii_words.stl", "solid a\nhello\nendsolid a\n", "line 2"},
      {"ascii_empty.stl", "solid a\nendsolid a\n", "holds no surface"},
      // OBJ
      {"text.obj", "this is a letter\n", "holds no surface"},
      {"binary.obj", std::string(100, '\0'), "zero bytes"},
      {"points_only.obj", kObj, "holds no surface"},
      {"out_of_range.obj", kObj + "f 1 2 4\n", "line 4 names vertex 4"},
      {"zero_index.obj", kObj + "f 0 1 2\nv 3 3 3\n", "names vertex 0"},
      {"far_back.obj", kObj + "f -1 -2 -4\n", "names vertex -4"},
      {"huge_index.obj", kObj + "f 1 2 99999999999999999999\n", "no number"},
      {"word_index.obj", kObj + "f 1 2 c\n", "no number"},
      {"nan.obj", "v 0 0 nan\n" + kObj + "f 2 3 4\n", "line 1"},
      {"short_vertex.obj", "v 0 0\n" + kObj + "f 2 3 4\n", "third coordinate"},
      {"two_corners.obj", kObj + "f 1 2\n", "no triangles"},
      {"one_corner_thrice.obj", kObj + "f 1 1 1\n", "no triangles"},
      // PLY, header
      {"text.ply", "this is a letter\n", "no PLY file"},
      {"header_cut_off.ply", "ply\nformat ascii 1.0\nelement vertex 3\n", "has no end"},
      {"no_format.ply", "ply\n" + vertices("3") + faces("1") + "end_header\n", "without a format"},
      {"other_format.ply", ply(vertices("3"), "", "binary_mixed"), "known format"},
      {"orphan.ply", ply("property float x\n", ""), "before any element"},
      {"type.ply", ply("element vertex 1\nproperty int64 x\n", ""), "unknown type"},
      {"integers.ply",
       ply("element vertex 3\nproperty int x\nproperty int y\nproperty int z\n" + faces("1"),
           kThree + "3 0 1 2\n"),
       "no x of type float"},
      {"flat.ply",
       ply("element vertex 3\nproperty float x\nproperty float y\n" + faces("1"), kThree), "no z"},
      {"negative_count.ply", ply(vertices("-1") + faces("1"), ""), "valid number"},
      {"count_overflow.ply", ply(vertices("99999999999999999999999") + faces("1"), ""), "valid"},
      {"cloud.ply", ply(vertices("3"), kThree), "cloud of points"},
      {"no_list.ply", ply(vertices("3") + faces("1", "property int vertex_indices\n"), kThree),
       "no one list"},
      {"small_indices.ply",
       ply(vertices("3") + faces("1", "property list uchar uchar vertex_indices\n"), kThree),
       "no one list"},
      {"twice.ply", ply(vertices("3") + vertices("3") + faces("1"), kThree), "2 lists of vertices"},
      {"word.ply", ply("elements 3\n", ""), "unknown word"},
      // PLY, body
      {"huge_count.ply", ply(vertices("4000000000") + faces("1"), kThree), "ends at vertex 4"},
      {"huge_binary.ply", ply(vertices("18446744073709551615") + faces("1"), points, kBinary),
       "ends at vertex 4"},
      {"huge_other.ply",
       ply("element hidden 18446744073709551615\nproperty double d\n" + vertices("3") + faces("1"),
           points, kBinary),
       "ends at hidden"},
      {"huge_list.ply",
       ply(vertices("3") + faces("1", "property list uint int vertex_indices\n"),
           points + raw(0xFFFFFFFFU) + points, kBinary),
       "ends at face 1"},
      {"huge_ascii_list.ply", ply(vertices("3") + faces("1"), kThree + "4000000000 0 1 2\n"),
       "ends at face 1"},
      {"negative_list.ply",
       ply(vertices("3") + faces("1", "property list int int vertex_indices\n"),
           points + raw(-3) + points, kBinary),
       "list of a length"},
      {"negative_ascii_list.ply", ply(vertices("3") + faces("1"), kThree + "-3 0 1 2\n"),
       "list of a length"},
      {"vertices_cut_off.ply", ply(vertices("3") + faces("1"), "0 0 0\n1 0\n"), "ends at vertex 2"},
      {"faces_cut_off.ply", ply(vertices("3") + faces("2"), kThree + "3 0 1 2\n"),
       "ends at face 2"},
      {"binary_cut_off.ply", ply(vertices("3") + faces("1"), points + "\x03" + raw(0), kBinary),
       "ends at face 1"},
      {"out_of_range.ply", ply(vertices("3") + faces("1"), kThree + "3 0 1 3\n"),
       "face 1 names a vertex"},
      {"negative_index.ply", ply(vertices("3") + faces("1"), kThree + "3 0 1 -1\n"),
       "face 1 names a vertex"},
      {"nan.ply", ply(vertices("3") + faces("1"), "0 0 0\n1 0 0\n0 nan 0\n3 0 1 2\n"), "line 12"},
      {"inf.ply", ply(vertices("3") + faces("1"), "0 0 0\n1 0 0\n0 -inf 0\n3 0 1 2\n"),
       "not finite"},
      {"binary_nan.ply",
       ply(vertices("3") + faces("1"),
           raw(not_a_number) + points.substr(4) + "\x03" + raw(0) + raw(1) + raw(2), kBinary),
       "not finite"},
      {"no_faces.ply", ply(vertices("3") + faces("0"), kThree), "holds no surface"},
      {"index_overflow.ply", ply(vertices("3") + faces("1"), kThree + "3 0 1 99999999999\n"),
       "holds no surface"},
      // Any
      {"empty.ply", "", "is empty"},
      {"ending.xyz", kObj, "ends in none"},
      {"ending", kObj, "ends in none"},
  };
}

}  // namespace

TEST_CASE("a damaged file is refused by words on what is wrong and how to mend it",
          "[geometry][mesh]") {
  const TestFolder folder;
  for (const Damaged& damaged : damaged_files()) {
    INFO(damaged.name);
    const auto file = read_mesh_file(folder.write(damaged.name, damaged.bytes));
    REQUIRE_FALSE(file.has_value());
    INFO(file.error().what);
    CHECK(file.error().what.find(damaged.what) != std::string::npos);
    CHECK_FALSE(file.error().mend.empty());
  }
}

TEST_CASE("a missing file, a folder and a device are refused", "[geometry][mesh]") {
  const TestFolder folder;
  CHECK(read_mesh_file(folder.at("none.stl")).error().what == "there is no such file");
  std::filesystem::create_directory(folder.at("folder.stl"));
  CHECK(read_mesh_file(folder.at("folder.stl")).error().what == "this is no file");
  std::filesystem::create_symlink("/dev/zero", folder.at("endless.stl"));
  CHECK(read_mesh_file(folder.at("endless.stl")).error().what == "this is no file");
}

// Every beginning of a good file, and every file with one byte changed: a message or a surface.
TEST_CASE("no cut and no changed byte makes the readers fail otherwise", "[geometry][mesh]") {
  const TestFolder folder;
  REQUIRE(write_mesh_file(folder.at("a.stl"), cube()).has_value());
  REQUIRE(write_mesh_file(folder.at("a.ply"), cube()).has_value());
  folder.write("a.obj", kObj + "v 0 0 1\nf 1 2 3\nf -4/1/1 2//3 4\n");
  folder.write("b.ply", ply(vertices("3") + faces("1"), kThree + "3 0 1 2\n"));
  folder.write("b.stl", "solid a\n" + facet("vertex 0 1 0\n") + "endsolid a\n");
  std::size_t read = 0;
  std::size_t refused = 0;
  const auto try_bytes = [&](const std::string& name, const std::string& bytes) {
    const auto file = read_mesh_file(folder.write("x_" + name, bytes));
    ++(file ? read : refused);
    if (!file) CHECK_FALSE(file.error().what.empty());
  };
  for (const std::string name : {"a.stl", "a.ply", "a.obj", "b.ply", "b.stl"}) {
    const std::string good = bytes_of(folder.at(name));
    REQUIRE(read_mesh_file(folder.at(name)).has_value());
    for (std::size_t i = 0; i < good.size(); i += 12) {
      try_bytes(name, good.substr(0, i));
      std::string changed = good;
      changed[i] = static_cast<char>(changed[i] ^ (1 << (i % 8)));
      try_bytes(name, changed);
    }
  }
  CHECK(read > 20);
  CHECK(refused > 20);
}
