#include "models/limb/skin_mesh.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <numbers>

#include "geometry/mesh_intersections.hpp"
#include "geometry/winding_number.hpp"
#include "limb_fixture.hpp"
#include "models/limb/atlas.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

SkinMesh skin_of(const SegmentFrames& frames, int fineness = 1) {
  static const BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  static const LimbJoints joints = LimbJoints::from(own_tables()).value();
  return make_skin(frames, envelope, joints, fineness);
}

double volume_ml(const std::vector<Vector3d>& v,
                 const std::vector<std::array<std::uint32_t, 3>>& triangles) {
  double sum = 0.0;
  for (const auto& t : triangles) sum += v[t[0]].dot(v[t[1]].cross(v[t[2]])) / 6.0;
  return sum / 1000.0;
}

}  // namespace

TEST_CASE("The skin is closed: every edge has two triangles, one each way round", "[limb][skin]") {
  for (const int fineness : {1, 2}) {
    const SkinMesh skin = skin_of(SegmentFrames(), fineness);
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> edges;
    for (const auto& t : skin.mesh.triangles) {
      for (std::size_t k = 0; k < 3; ++k) ++edges[{t[k], t[(k + 1) % 3]}];
    }
    for (const auto& [edge, count] : edges) {
      if (count != 1 || !edges.contains({edge.second, edge.first})) {
        FAIL("edge " << edge.first << " " << edge.second);
      }
    }
    // A sphere with no handle: vertices - edges + faces = 2. No vertex is left over.
    const auto vertices = static_cast<long>(skin.mesh.vertices_mm.size());
    const auto faces = static_cast<long>(skin.mesh.triangles.size());
    CHECK(vertices - static_cast<long>(edges.size()) / 2 + faces == 2);
    CHECK(skin.fingers.size() == skin.mesh.vertices_mm.size());
  }
}

// An arm of this size weighs about 3.5 kg: upper arm, forearm and hand are 2.7, 1.6 and 0.6 per
// cent of a body's mass (de Leva, J Biomech 1996;29:1223, men; recalled), of 70 kg 3.4 kg; flesh
// weighs about as much as water.
TEST_CASE("The skin holds about as much as an arm", "[limb][skin]") {
  const SkinMesh skin = skin_of(SegmentFrames());
  const double volume = volume_ml(skin.mesh.vertices_mm, skin.mesh.triangles);
  CHECK(volume > 2600.0);
  CHECK(volume < 4200.0);
}

TEST_CASE("The skin of the left limb is the mirror image", "[limb][skin]") {
  const SkinMesh right = skin_of(SegmentFrames());
  const SkinMesh left = skin_of(SegmentFrames({}, Side::left));
  REQUIRE(left.mesh.vertices_mm.size() == right.mesh.vertices_mm.size());
  for (std::size_t i = 0; i < left.mesh.vertices_mm.size(); ++i) {
    const Vector3d& p = right.mesh.vertices_mm[i];
    if ((left.mesh.vertices_mm[i] - Vector3d(p.x(), p.y(), -p.z())).norm() > 1e-9) FAIL(i);
  }
  CHECK(volume_ml(left.mesh.vertices_mm, left.mesh.triangles) ==
        Approx(volume_ml(right.mesh.vertices_mm, right.mesh.triangles)));
}

// The mesh rounds the sections of skin_outline.csv where the thumb leaves and the wrist widens, by
// up to a few mm, so what lies just under them is left out.
TEST_CASE("Every nerve course below the shoulder lies within the skin", "[limb][skin]") {
  constexpr double kRounding_mm = 4.0;
  const SegmentFrames frames;
  const SkinMesh skin = skin_of(frames);
  const Atlas atlas = Atlas::fitted(own_tables()).value();
  const BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  int inside = 0;
  for (std::size_t c = 0; c < atlas.courses().size(); ++c) {
    const auto curve = atlas.curve(c, frames);
    for (int k = 0; k <= 30; ++k) {
      const Vector3d p = curve.position(
          std::lerp(curve.first_knot(), curve.last_knot(), static_cast<double>(k) / 30.0));
      if (envelope.depth_mm<double>(frames, p) < kRounding_mm) continue;
      ++inside;
      INFO(atlas.courses()[c].id << " at " << p.transpose());
      CHECK(geometry::winding_number(skin.mesh.vertices_mm, skin.mesh.triangles, p) > 0.5);
    }
  }
  CHECK(inside > 200);
}

// Palmar abduction JT_180 (45), flexion JT_176 and JT_197 (55, mean 59) and JT_178 (80), beyond
// straight JT_177 (10) and JT_179 (15), all read; flexion at the root 15 degrees (American Academy
// of Orthopaedic Surgeons 1965, recalled).
TEST_CASE("The skin does not cross itself wherever the thumb goes", "[limb][skin]") {
  constexpr double kDegree = std::numbers::pi / 180.0;
  const LimbJoints joints = LimbJoints::from(own_tables()).value();
  const SegmentFrames frames;
  const SkinMesh skin = skin_of(frames);
  geometry::TriangleMesh moved = skin.mesh;
  for (const double abduction : {0.0, 22.0, 45.0}) {
    for (const double root : {0.0, 15.0}) {
      for (const double knuckle : {-10.0, 30.0, 60.0}) {
        for (const double end : {-15.0, 40.0, 80.0}) {
          Pose pose;
          pose.thumb = {abduction * kDegree, root * kDegree, knuckle * kDegree, end * kDegree};
          moved.vertices_mm = posed_vertices_mm(skin, PosedSpace(frames, joints, pose));
          INFO(abduction << " " << root << " " << knuckle << " " << end);
          CHECK(geometry::count_self_intersections(moved).pairs == 0);
        }
      }
    }
  }
}

TEST_CASE("The thumb takes its skin along and leaves that of the fingers and the forearm",
          "[limb][skin]") {
  const LimbJoints joints = LimbJoints::from(own_tables()).value();
  const SegmentFrames frames;
  const SkinMesh skin = skin_of(frames);
  Pose pose;
  pose.thumb.palmar_abduction = 0.5;
  const auto moved = posed_vertices_mm(skin, PosedSpace(frames, joints, pose));
  const Vector3d tip = joints.centre_mm("thumb tip", frames);
  double tip_mm = 0.0;
  for (std::size_t v = 0; v < moved.size(); ++v) {
    const Vector3d& p = skin.mesh.vertices_mm[v];
    const double step = (moved[v] - p).norm();
    if ((p - tip).norm() < 5.0) tip_mm = std::max(tip_mm, step);
    const double level = frames.from_limb(Segment::hand, p).fraction;
    if (level < -0.15 || skin.fingers[v].share[2] + skin.fingers[v].share[3] > 0.9) {
      if (step > 0.01) FAIL("moved by " << step << " at " << p.transpose());
    }
  }
  // The chord of half a radian at 103 mm.
  CHECK(tip_mm == Approx(2.0 * 103.0 * std::sin(0.25)).epsilon(0.05));
}

}  // namespace endplate::limb
