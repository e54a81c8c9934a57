#include "models/limb/limb_solids.hpp"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "geometry/mesh_check.hpp"
#include "models/limb/atlas.hpp"
#include "solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180.0;

bool is_bone(const LimbSolid& solid) {
  return solid.kind == SolidKind::bone;
}

Vector3d centre_of(const std::vector<Vector3d>& points) {
  Vector3d sum = Vector3d::Zero();
  for (const Vector3d& p : points) sum += p / static_cast<double>(points.size());
  return sum;
}
Vector3d centre_of(const LimbSolid& solid) {
  return centre_of(solid.mesh.vertices_mm);
}

}  // namespace

TEST_CASE("The limb has all of its bones by their standard terms", "[limb][solids]") {
  std::set<std::string> names;
  for (const LimbSolid& solid : own_solids()) {
    if (is_bone(solid)) names.insert(solid.name);
  }
  std::set<std::string> expected{"clavicle",
                                 "scapula",
                                 "humerus",
                                 "radius",
                                 "ulna",
                                 "scaphoid",
                                 "lunate",
                                 "triquetrum",
                                 "pisiform",
                                 "trapezium",
                                 "trapezoid",
                                 "capitate",
                                 "hamate",
                                 "first metacarpal",
                                 "second metacarpal",
                                 "third metacarpal",
                                 "fourth metacarpal",
                                 "fifth metacarpal",
                                 "proximal phalanx of thumb",
                                 "distal phalanx of thumb"};
  for (const char* finger : {"index", "middle", "ring", "little"}) {
    for (const char* phalanx : {"proximal", "middle", "distal"}) {
      expected.insert(std::string(phalanx) + " phalanx of " + finger + " finger");
    }
  }
  CHECK(names == expected);
}

TEST_CASE("Every solid is closed, in one piece, faces outward and does not cross itself",
          "[limb][solids]") {
  SegmentScale child;
  child.arm = 0.55;
  child.forearm = 0.5;
  child.hand = 0.55;
  child.breadth = 0.65;
  SegmentScale man;
  man.arm = 1.07;
  man.forearm = 1.14;
  man.hand = 1.07;
  man.breadth = 1.07;
  for (const SegmentScale& scale : {SegmentScale{}, child, man}) {
    for (const LimbSolid& solid : make_solids(SegmentFrames(scale), own_shapes(), 1)) {
      const auto check = geometry::check_mesh(solid.mesh).value();
      INFO(solid.name << ", " << solid.part << ", breadth " << scale.breadth);
      CHECK(check.closed);
      CHECK(check.components.size() == 1);
      CHECK(check.facing == geometry::Facing::outward);
      CHECK(check.self_intersections == 0);
      CHECK(check.degenerate_triangles == 0);
    }
  }
}

TEST_CASE("The solids of the left limb are the mirror image and face outward", "[limb][solids]") {
  const auto left = make_solids(SegmentFrames({}, Side::left), own_shapes(), 1);
  REQUIRE(left.size() == own_solids().size());
  for (std::size_t s = 0; s < left.size(); ++s) {
    const auto& right = own_solids()[s].mesh.vertices_mm;
    for (std::size_t v = 0; v < right.size(); ++v) {
      const Vector3d mirrored(right[v].x(), right[v].y(), -right[v].z());
      if ((left[s].mesh.vertices_mm[v] - mirrored).norm() > 1e-9) FAIL(left[s].name);
    }
    CHECK(geometry::check_mesh(left[s].mesh)->facing == geometry::Facing::outward);
  }
}

// Nerves were fitted to lie 1 mm outside of bone_capsules.csv.
TEST_CASE("No nerve of the standard limb runs through a bone", "[limb][solids]") {
  const SegmentFrames frames;
  const Atlas atlas = Atlas::fitted(own_tables()).value();
  int points = 0;
  for (std::size_t c = 0; c < atlas.courses().size(); ++c) {
    const auto curve = atlas.curve(c, frames);
    for (double knot = curve.first_knot(); knot <= curve.last_knot(); knot += 2.0) {
      const Vector3d p = curve.position(knot);
      ++points;
      for (std::size_t s = 0; s < own_solids().size(); ++s) {
        if (!is_bone(own_solids()[s]) || !own_probes()[s].holds(p)) continue;
        FAIL_CHECK(atlas.courses()[c].id << " in " << own_solids()[s].name << " at "
                                         << p.transpose());
      }
    }
  }
  CHECK(points > 1500);
}

TEST_CASE("Bones of the free limb lie within the skin", "[limb][solids]") {
  constexpr double kRounding_mm = 0.5;
  const test::SolidProbe skin(own_skin().mesh);
  int points = 0;
  for (const LimbSolid& solid : own_solids()) {
    if (!is_bone(solid) || solid.name == "scapula" || solid.name == "clavicle") continue;
    for (const Vector3d& p : solid.mesh.vertices_mm) {
      ++points;
      const double out = skin.outside_mm(p);
      if (out > kRounding_mm) FAIL_CHECK(solid.name << " is " << out << " mm out");
    }
  }
  CHECK(points > 5000);
}

TEST_CASE("Joint surfaces meet within 3 mm and do not overlap by more than 2", "[limb][solids]") {
  const auto gap_and_overlap = [](const LimbSolid& a, const LimbSolid& b) {
    const test::SolidProbe in_a(a.mesh);
    const test::SolidProbe in_b(b.mesh);
    double gap = 1e9;
    double overlap = 0.0;
    const auto look = [&](const LimbSolid& from, const test::SolidProbe& into) {
      for (const Vector3d& p : from.mesh.vertices_mm) {
        overlap = std::max(overlap, into.depth_mm(p));
        gap = std::min(gap, into.outside_mm(p));
      }
    };
    look(a, in_b);
    look(b, in_a);
    return std::pair(gap, overlap);
  };
  const auto meet = [&](const LimbSolid& a, const LimbSolid& b) {
    const auto [gap, overlap] = gap_and_overlap(a, b);
    INFO(a.name << " and " << b.name);
    CHECK(gap < 3.0);
    CHECK(overlap < 2.0);
  };
  meet(solid_of("scapula", "glenoid"), solid_of("humerus", "head of humerus"));
  meet(solid_of("clavicle"), solid_of("scapula", "spine of scapula and acromion"));
  meet(solid_of("humerus", "shaft of humerus"), solid_of("ulna"));
  meet(solid_of("humerus", "shaft of humerus"), solid_of("radius", "whole"));
  for (const auto& [a, b] : std::vector<std::pair<std::string, std::string>>{
           {"radius", "scaphoid"},
           {"radius", "lunate"},
           {"scaphoid", "lunate"},
           {"scaphoid", "trapezium"},
           {"scaphoid", "capitate"},
           {"lunate", "capitate"},
           {"lunate", "triquetrum"},
           {"triquetrum", "hamate"},
           {"capitate", "hamate"},
           {"capitate", "trapezoid"},
           {"trapezium", "first metacarpal"},
           {"trapezoid", "second metacarpal"},
           {"capitate", "third metacarpal"},
           {"hamate", "fourth metacarpal"},
           {"hamate", "fifth metacarpal"},
           {"first metacarpal", "proximal phalanx of thumb"},
           {"proximal phalanx of thumb", "distal phalanx of thumb"},
           {"second metacarpal", "proximal phalanx of index finger"},
           {"third metacarpal", "proximal phalanx of middle finger"},
           {"fourth metacarpal", "proximal phalanx of ring finger"},
           {"fifth metacarpal", "proximal phalanx of little finger"},
           {"proximal phalanx of index finger", "middle phalanx of index finger"},
           {"middle phalanx of little finger", "distal phalanx of little finger"}}) {
    meet(solid_of(a), solid_of(b));
  }
  // No two bones at all run through each other.
  for (std::size_t a = 0; a < own_solids().size(); ++a) {
    for (std::size_t b = 0; b < own_solids().size(); ++b) {
      const LimbSolid& one = own_solids()[a];
      const LimbSolid& other = own_solids()[b];
      if (!is_bone(one) || !is_bone(other) || one.name == other.name) continue;
      for (const Vector3d& p : one.mesh.vertices_mm) {
        if (own_probes()[b].depth_mm(p) > 2.0) FAIL_CHECK(one.name << " in " << other.name);
      }
    }
  }
}

TEST_CASE("Bones lie where anatomy has them", "[limb][solids]") {
  const auto at = [](const char* name) { return centre_of(solid_of(name)); };
  // The clavicle in front, the scapula behind; the clavicle bowed forward medially and back
  // laterally.
  CHECK(at("clavicle").x() > 0.0);
  CHECK(at("scapula").x() < -20.0);
  const auto clavicle_x = [](double z) {
    double nearest = 1e9;
    double x = 0.0;
    for (const Vector3d& p : solid_of("clavicle").mesh.vertices_mm) {
      if (std::abs(p.z() - z) > nearest) continue;
      nearest = std::abs(p.z() - z);
      x = p.x();
    }
    return x;
  };
  CHECK(clavicle_x(-105.0) > clavicle_x(-25.0) + 15.0);
  const SegmentFrames frames;
  const auto in_hand = [&](const char* name) { return frames.from_limb(Segment::hand, at(name)); };
  CHECK(at("radius").z() > at("ulna").z());
  for (const char* proximal : {"scaphoid", "lunate", "triquetrum"}) {
    for (const char* distal : {"trapezium", "trapezoid", "capitate", "hamate"}) {
      INFO(proximal << " " << distal);
      CHECK(in_hand(proximal).fraction < in_hand(distal).fraction);
    }
  }
  CHECK(in_hand("scaphoid").z_mm > in_hand("lunate").z_mm);
  CHECK(in_hand("lunate").z_mm > in_hand("triquetrum").z_mm);
  CHECK(in_hand("trapezium").z_mm > in_hand("trapezoid").z_mm);
  CHECK(in_hand("trapezoid").z_mm > in_hand("capitate").z_mm);
  CHECK(in_hand("capitate").z_mm > in_hand("hamate").z_mm);
  CHECK(in_hand("pisiform").x_mm > in_hand("triquetrum").x_mm + 8.0);
}

TEST_CASE("Bones move as one piece", "[limb][solids]") {
  const SegmentFrames frames;
  const PosedSpace space(frames, own_joints(),
                         pose_from({{"shoulder_abduction_deg", 60.0},
                                    {"elbow_flexion_deg", 90.0},
                                    {"forearm_pronation_deg", 120.0},
                                    {"wrist_extension_deg", 40.0},
                                    {"fingers_flexion_deg", 80.0},
                                    {"thumb_palmar_abduction_deg", 30.0},
                                    {"thumb_mcp_flexion_deg", 40.0}}));
  for (const LimbSolid& solid : own_solids()) {
    if (!is_bone(solid)) continue;
    const auto moved = posed_vertices_mm(solid, space);
    const auto& rest = solid.mesh.vertices_mm;
    for (std::size_t v = 1; v < rest.size(); ++v) {
      const double change = (moved[v] - moved[0]).norm() - (rest[v] - rest[0]).norm();
      if (std::abs(change) > 1e-9) FAIL(solid.name << " is bent by " << change);
    }
  }
}

TEST_CASE("In pronation the radius crosses the ulna", "[limb][solids]") {
  const SegmentFrames frames;
  const PosedSpace space(frames, own_joints(), pose_from({{"forearm_pronation_deg", 160.0}}));
  // Lateral offset of a forearm bone's vertices about a level.
  const auto lateral = [&](const char* name, double level) {
    std::vector<Vector3d> near;
    for (const Vector3d& p : posed_vertices_mm(solid_of(name), space)) {
      if (std::abs(frames.from_limb(Segment::forearm, p).fraction - level) < 0.03)
        near.push_back(p);
    }
    REQUIRE(near.size() > 5);
    return frames.from_limb(Segment::forearm, centre_of(near)).z_mm;
  };
  CHECK(lateral("radius", 0.1) > lateral("ulna", 0.1));
  CHECK(lateral("radius", 0.9) < lateral("ulna", 0.9));
}

TEST_CASE("A bent finger keeps its phalanges in a row", "[limb][solids]") {
  const SegmentFrames frames;
  const PosedSpace space(frames, own_joints(), pose_from({{"fingers_flexion_deg", 90.0}}));
  const auto axis = [&](const char* name) {
    const auto moved = posed_vertices_mm(solid_of(name), space);
    return Vector3d((moved.back() - moved.front()).normalized());
  };
  const Vector3d proximal = axis("proximal phalanx of middle finger");
  const Vector3d middle = axis("middle phalanx of middle finger");
  const Vector3d distal = axis("distal phalanx of middle finger");
  CHECK(proximal.dot(frames.anterior(Segment::hand)) == Approx(1.0).margin(0.01));
  CHECK(std::acos(proximal.dot(middle)) == Approx(100.0 * kDegree).margin(0.01));
  CHECK(std::acos(middle.dot(distal)) == Approx(80.0 * kDegree).margin(0.01));
  const Vector3d end =
      posed_vertices_mm(solid_of("proximal phalanx of middle finger"), space).back();
  const Vector3d start =
      posed_vertices_mm(solid_of("middle phalanx of middle finger"), space).front();
  CHECK((end - start).norm() < 1e-6);
}

TEST_CASE("A bone or flesh of no name is refused with its row", "[limb][solids]") {
  CHECK_FALSE(solid_carrier_from("rib"));
  CHECK(solid_carrier_from("middle phalanx of ring finger") ==
        SolidCarrier(FingerPhalanx{Finger::ring, Phalanx::middle}));
  CHECK(solid_carrier_from("flesh of thumb") == SolidCarrier(Flesh{std::nullopt, true}));
}

}  // namespace endplate::limb
