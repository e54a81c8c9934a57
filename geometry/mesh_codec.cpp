#include "geometry/mesh_codec.hpp"

#include <CGAL/IO/OBJ.h>
#include <CGAL/IO/PLY.h>
#include <CGAL/IO/STL.h>
#include <CGAL/Simple_cartesian.h>

#include <locale>
#include <sstream>

namespace endplate::geometry {

namespace {

using Point = CGAL::Simple_cartesian<double>::Point_3;

bool decode(MeshFormat format, std::istream& in, std::vector<Point>& points,
            std::vector<std::vector<std::size_t>>& polygons) {
  switch (format) {
    case MeshFormat::stl:
      return CGAL::IO::read_STL(in, points, polygons);
    case MeshFormat::obj:
      return CGAL::IO::read_OBJ(in, points, polygons);
    case MeshFormat::ply:
      return CGAL::IO::read_PLY(in, points, polygons);
  }
  return false;
}

}  // namespace

std::optional<PolygonSoup> decode_mesh(MeshFormat format, const std::string& bytes) {
  std::istringstream in(bytes, std::ios::binary);
  in.imbue(std::locale::classic());
  std::vector<Point> points;
  PolygonSoup soup;
  if (!decode(format, in, points, soup.polygons)) return {};
  soup.points.reserve(points.size());
  for (const Point& p : points) soup.points.emplace_back(p.x(), p.y(), p.z());
  return soup;
}

std::optional<std::string> encode_mesh(MeshFormat format, const TriangleMesh& mesh) {
  std::vector<Point> points;
  points.reserve(mesh.vertices_mm.size());
  for (const auto& p : mesh.vertices_mm) points.emplace_back(p.x(), p.y(), p.z());
  std::vector<std::vector<std::size_t>> polygons;
  polygons.reserve(mesh.triangles.size());
  for (const auto& t : mesh.triangles) polygons.push_back({t[0], t[1], t[2]});

  std::ostringstream out(std::ios::binary);
  out.imbue(std::locale::classic());
  CGAL::IO::set_binary_mode(out);
  bool written = false;
  if (format == MeshFormat::stl) written = CGAL::IO::write_STL(out, points, polygons);
  if (format == MeshFormat::ply) written = CGAL::IO::write_PLY(out, points, polygons);
  if (!written) return {};
  return out.str();
}

}  // namespace endplate::geometry
