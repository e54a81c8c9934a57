#pragma once
// Bones and muscles of one limb in the anatomical position, as closed swept solids with names.
//
// The shapes stand in bone_solids.csv and muscle_solids.csv, on the ledger limb; docs/body.md says
// how they came about. Every limb has the same solids, vertices and triangles. Solids are drawn
// beside and into one another as flesh and joints are: they may overlap where nothing keeps them
// apart.
#include <Eigen/Core>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "geometry/triangle_mesh.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/solid_carrier.hpp"

namespace endplate::limb {

enum class SolidKind { bone, muscle };

// As the tables give it: one ring of a solid.
struct SolidRing {
  Segment segment = Segment::humerus;
  SegmentPoint place;      // of its centre
  double half_a_mm = 1.0;  // toward `toward`, then turned about the solid's path
  double half_b_mm = 1.0;  // across that
  Eigen::Vector3d toward = Eigen::Vector3d::UnitX();  // in the segment: anterior, proximal, lateral
  double turn_rad = 0.0;  // right-handed about the path, which runs from the first ring to the last
  // Normal of its plane, in the segment; absent where it is perpendicular to the path.
  std::optional<Eigen::Vector3d> normal;
  SolidCarrier carrier;
};

struct SolidShape {
  std::string name;  // "humerus", "biceps brachii, short head"
  std::string part;  // "head of humerus"; "whole" when the solid is all of it
  std::string id;    // of a muscle in muscles.csv; empty for a bone
  SolidKind kind = SolidKind::bone;
  std::vector<SolidRing> rings;
};

// The shapes of the ledger limb.
class SolidShapes {
 public:
  static Expected<SolidShapes> from(const evidence::DataPackage& package);
  const std::vector<SolidShape>& all() const { return shapes_; }

 private:
  std::vector<SolidShape> shapes_;
};

// One bone or muscle, or a part of one, of a limb.
struct LimbSolid {
  std::string name;
  std::string part;
  std::string id;
  SolidKind kind = SolidKind::bone;
  geometry::TriangleMesh mesh;  // closed, facing outward, in the limb frame
  // What takes each vertex along: two neighbouring rings' carriers and the share of the second.
  struct Carried {
    std::uint32_t ring = 0;  // the first
    double next = 0.0;
  };
  std::vector<SolidCarrier> carriers;  // by ring
  std::vector<Carried> carried;        // by vertex
};

// `fineness` 1, 2, 3 ...: 12, 24, 36 vertices round a solid.
std::vector<LimbSolid> make_solids(const SegmentFrames& frames, const SolidShapes& shapes,
                                   int fineness);

// The vertices in a pose; the triangles stay. Bones move as one piece, muscles with the flesh and
// with the bones to which they are attached.
std::vector<Eigen::Vector3d> posed_vertices_mm(const LimbSolid& solid, const PosedSpace& space);

}  // namespace endplate::limb
