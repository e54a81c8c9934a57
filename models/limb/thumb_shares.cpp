#include "models/limb/thumb_shares.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/smooth_step.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using geometry::smooth_step;

// All assumed, and tried until the skin crossed itself nowhere within the published ranges.
// How the thumb draws the skin along: its share at the rim of the window, the edges of fineness 1
// beyond the rim until the skin is wholly the thumb's, and those about the window over which the
// palm's is drawn.
constexpr double kThumbRim = 0.75;
constexpr int kThumbRootRings = 3;
constexpr int kThumbDrawnRings = 7;
constexpr int kThumbShareRounds = 8;  // of levelling at fineness 1
// Distances from the second metacarpal's axis up to which the skin stays with it and from which it
// is free, and in front of it from where it glides.
constexpr double kIndexHeld_mm = 11.0;
constexpr double kIndexFree_mm = 24.0;
constexpr double kFrontFrom_mm = 3.0;
constexpr double kFrontTo_mm = 12.0;

// Edges from the rim, at most `far`.
std::vector<double> edges_from(const std::vector<std::uint32_t>& rim, const SkinMesh& skin,
                               int far) {
  std::vector<double> edges(skin.fingers.size(), far);
  for (const std::uint32_t v : rim) edges[v] = 0.0;
  for (int round = 0; round < far; ++round) {
    for (const auto& t : skin.mesh.triangles) {
      const double nearest = std::min({edges[t[0]], edges[t[1]], edges[t[2]]}) + 1.0;
      for (const std::uint32_t v : t) edges[v] = std::min(edges[v], nearest);
    }
  }
  return edges;
}

// The skin on the back and the radial side of the second metacarpal stays with it: 0 there, 1
// away from it and in front.
double free_of_index(const Vector3d& p, const SegmentFrames& frames, const LimbJoints& joints) {
  const Vector3d knuckle = joints.centre_mm("index metacarpophalangeal", frames);
  const Vector3d axis = (joints.centre_mm("wrist", frames) - knuckle).normalized();
  const Vector3d off = p - knuckle - (p - knuckle).dot(axis) * axis;
  const double breadth = frames.scale().breadth;
  const double front = off.dot(frames.anterior(Segment::hand)) / breadth;
  const double away = off.norm() / breadth;
  return std::lerp(smooth_step((away - kIndexHeld_mm) / (kIndexFree_mm - kIndexHeld_mm)), 1.0,
                   smooth_step((front - kFrontFrom_mm) / (kFrontTo_mm - kFrontFrom_mm)));
}

// Every vertex takes the mean of its neighbours.
void level(SkinMesh& skin) {
  std::vector<double> sum(skin.fingers.size(), 0.0);
  std::vector<int> count(skin.fingers.size(), 0);
  for (const auto& t : skin.mesh.triangles) {
    for (const std::uint32_t v : t) {
      for (const std::uint32_t w : t) sum[v] += skin.fingers[w].thumb;
      count[v] += 3;
    }
  }
  for (std::size_t v = 0; v < sum.size(); ++v) {
    if (count[v] > 0) skin.fingers[v].thumb = sum[v] / count[v];
  }
}

}  // namespace

void share_thumb(SkinMesh& skin, const std::vector<std::uint32_t>& rim,
                 std::uint32_t first_of_thumb, int fineness, const SegmentFrames& frames,
                 const LimbJoints& joints) {
  const int far = kThumbDrawnRings * fineness;
  const std::vector<double> edges = edges_from(rim, skin, far);
  for (std::uint32_t v = 0; v < edges.size(); ++v) {
    skin.fingers[v].thumb =
        v >= first_of_thumb
            ? std::lerp(kThumbRim, 1.0, smooth_step(edges[v] / (kThumbRootRings * fineness)))
            : kThumbRim * smooth_step(1.0 - edges[v] / far) *
                  free_of_index(skin.mesh.vertices_mm[v], frames, joints);
  }
  // In the web the triangles are small and the shares would change from one to the next.
  for (int round = 0; round < kThumbShareRounds * fineness * fineness; ++round) level(skin);
}

}  // namespace endplate::limb
