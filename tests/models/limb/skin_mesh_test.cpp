#include "models/limb/skin_mesh.hpp"

#include <catch2/catch.hpp>
#include <map>
#include <numbers>

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

// Of the solid angle of the whole skin about a point: 1 inside, 0 outside (van Oosterom and
// Strackee, IEEE Trans Biomed Eng 1983;30:125, recalled).
double winding(const std::vector<Vector3d>& v,
               const std::vector<std::array<std::uint32_t, 3>>& triangles, const Vector3d& p) {
  double sum = 0.0;
  for (const auto& t : triangles) {
    const Vector3d a = v[t[0]] - p;
    const Vector3d b = v[t[1]] - p;
    const Vector3d c = v[t[2]] - p;
    const double la = a.norm();
    const double lb = b.norm();
    const double lc = c.norm();
    sum += 2.0 * std::atan2(a.dot(b.cross(c)),
                            la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return sum / (4.0 * std::numbers::pi);
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
      CHECK(winding(skin.mesh.vertices_mm, skin.mesh.triangles, p) > 0.5);
    }
  }
  CHECK(inside > 200);
}

}  // namespace endplate::limb
