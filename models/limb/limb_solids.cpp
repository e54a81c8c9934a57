#include "models/limb/limb_solids.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <numbers>
#include <utility>

#include "geometry/swept_solid.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180.0;

// The schema allows these words only.
Vector3d direction_of(std::string_view word) {
  if (word == "anterior") return Vector3d::UnitX();
  if (word == "proximal") return Vector3d::UnitY();
  return Vector3d::UnitZ();
}

std::optional<Vector3d> normal_of(std::string_view plane) {
  if (plane == "transverse") return Vector3d::UnitY();
  if (plane == "sagittal") return Vector3d::UnitZ();
  return std::nullopt;
}

// Reads one table of rings, which stand in the order of the solids' paths.
class ShapeReader {
 public:
  ShapeReader(SolidKind kind, std::vector<SolidShape>& shapes, std::vector<Problem>& problems)
      : kind_(kind), shapes_(shapes), problems_(problems) {}

  void read(const evidence::Row& row, const std::string& file, const std::string& name,
            std::string_view id) {
    const std::string part(row.text("part"));
    const bool begins =
        shapes_.empty() || shapes_.back().name != name || shapes_.back().part != part;
    if (begins) {
      for (const SolidShape& shape : shapes_) {
        if (shape.name != name || shape.part != part) continue;
        problems_.push_back(
            {fmt::format("{}, row {}", file, row.line()),
             fmt::format("the rings of '{}', {}, do not stand together", name, part),
             "Move the row to the solid's other rings."});
      }
      shapes_.push_back({name, part, std::string(id), kind_, {}});
    }
    const auto carrier = solid_carrier_from(row.text("moves_with"));
    if (!carrier) {
      problems_.push_back({fmt::format("{}, row {}, column moves_with", file, row.line()),
                           fmt::format("nothing is called '{}'", row.text("moves_with")),
                           "Name a bone or the flesh."});
      return;
    }
    shapes_.back().rings.push_back(
        {segment_from(row.text("segment")).value(),
         {row.number("fraction").value(), row.number("x_mm").value(), row.number("z_mm").value()},
         row.number("half_a_mm").value(),
         row.number("half_b_mm").value(),
         direction_of(row.text("a_toward")),
         kDegree * row.number("turn_deg").value_or(0.0),
         normal_of(row.text("plane")),
         *carrier});
  }

 private:
  SolidKind kind_;
  std::vector<SolidShape>& shapes_;
  std::vector<Problem>& problems_;
};

// Muscles are called as muscles.csv calls them: "biceps brachii, short head".
std::map<std::string, std::string, std::less<>> muscle_names(const evidence::DataPackage& package) {
  std::map<std::string, std::string, std::less<>> names;
  for (const evidence::Row row : package.table("muscles")) {
    const auto part = row.text("part");
    names.emplace(row.text("id"), part == "whole"
                                      ? std::string(row.text("muscle"))
                                      : fmt::format("{}, {}", row.text("muscle"), part));
  }
  return names;
}

// The rings of a solid in the limb frame of a right limb.
std::vector<geometry::SweptRing> rings_of(const SolidShape& shape, const SegmentFrames& frames) {
  std::vector<geometry::SweptRing> rings;
  for (const SolidRing& ring : shape.rings) {
    const auto in_limb = [&](const Vector3d& v) {
      return Vector3d(v.x() * frames.anterior(ring.segment) +
                      v.y() * frames.proximal(ring.segment) + v.z() * frames.lateral(ring.segment));
    };
    const double breadth = frames.scale().breadth;
    rings.push_back({frames.to_limb(ring.segment, ring.place), breadth * ring.half_a_mm,
                     breadth * ring.half_b_mm, in_limb(ring.toward),
                     ring.normal.transform(in_limb)});
  }
  for (std::size_t i = 0; i < rings.size(); ++i) {
    const Vector3d& before = rings[i == 0 ? 0 : i - 1].centre_mm;
    const Vector3d& after = rings[std::min(i + 1, rings.size() - 1)].centre_mm;
    const Eigen::AngleAxisd turn(shape.rings[i].turn_rad, (after - before).normalized());
    rings[i].toward = turn * rings[i].toward;
  }
  return rings;
}

double length_mm(const std::vector<geometry::SweptRing>& rings) {
  double sum = 0.0;
  for (std::size_t i = 1; i < rings.size(); ++i) {
    sum += (rings[i].centre_mm - rings[i - 1].centre_mm).norm();
  }
  return sum;
}

}  // namespace

Expected<SolidShapes> SolidShapes::from(const evidence::DataPackage& package) {
  SolidShapes result;
  std::vector<Problem> problems;
  ShapeReader bones(SolidKind::bone, result.shapes_, problems);
  for (const evidence::Row row : package.table("bone_solids")) {
    bones.read(row, "bone_solids.csv", std::string(row.text("bone")), "");
  }
  ShapeReader muscles(SolidKind::muscle, result.shapes_, problems);
  const auto names = muscle_names(package);
  for (const evidence::Row row : package.table("muscle_solids")) {
    // The schema allows muscles of muscles.csv only.
    muscles.read(row, "muscle_solids.csv", names.find(row.text("muscle"))->second,
                 row.text("muscle"));
  }
  for (const SolidShape& shape : result.shapes_) {
    if (shape.rings.size() >= 2) continue;
    problems.push_back({shape.kind == SolidKind::bone ? "bone_solids.csv" : "muscle_solids.csv",
                        fmt::format("'{}', {}, has fewer than two rings", shape.name, shape.part),
                        "Give the solid at least two rings."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

std::vector<LimbSolid> make_solids(const SegmentFrames& frames, const SolidShapes& shapes,
                                   int fineness) {
  // Made on the right and mirrored, so that the sides are alike to the last digit.
  const SegmentFrames right(frames.scale(), Side::right);
  const SegmentFrames ledger;
  const geometry::SweepFineness fine{12 * fineness, 3 * fineness, 6.0 / fineness};
  std::vector<LimbSolid> solids;
  solids.reserve(shapes.all().size());
  for (const SolidShape& shape : shapes.all()) {
    geometry::SweptSolid swept =
        geometry::sweep(rings_of(shape, right), fine, length_mm(rings_of(shape, ledger)));
    LimbSolid solid{shape.name, shape.part, shape.id, shape.kind, std::move(swept.mesh), {}, {}};
    for (const SolidRing& ring : shape.rings) solid.carriers.push_back(ring.carrier);
    for (const double along : swept.along) {
      const auto ring = std::min(static_cast<std::uint32_t>(along),
                                 static_cast<std::uint32_t>(shape.rings.size() - 2));
      solid.carried.push_back({ring, along - ring});
    }
    if (frames.side() == Side::left) {
      for (Vector3d& p : solid.mesh.vertices_mm) p.z() = -p.z();
      for (auto& t : solid.mesh.triangles) std::swap(t[1], t[2]);
    }
    solids.push_back(std::move(solid));
  }
  return solids;
}

std::vector<Vector3d> posed_vertices_mm(const LimbSolid& solid, const PosedSpace& space) {
  std::vector<Vector3d> posed(solid.mesh.vertices_mm.size());
  for (std::size_t v = 0; v < posed.size(); ++v) {
    const Vector3d& p = solid.mesh.vertices_mm[v];
    const auto& [ring, next] = solid.carried[v];
    const SolidCarrier& first = solid.carriers[ring];
    const SolidCarrier& second = solid.carriers[ring + 1];
    posed[v] = carried(first, p, space);
    if (next > 0.0 && !(first == second)) {
      posed[v] = (1.0 - next) * posed[v] + next * carried(second, p, space);
    }
  }
  return posed;
}

}  // namespace endplate::limb
