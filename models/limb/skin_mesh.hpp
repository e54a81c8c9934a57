#pragma once
// The skin of one limb in the anatomical position as a closed mesh: arm with a round top where it
// meets the body, forearm, hand and five digits.
//
// Rows of rings along the limb; the palm's last ring opens into four fingers that share the webs
// between them, and the thumb stands on a window in the radial side of the hand. Every limb has the
// same vertices and triangles for one fineness, so a vertex is the same place of the skin in all.
#include <Eigen/Core>
#include <array>
#include <vector>

#include "geometry/triangle_mesh.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/posed_space.hpp"

namespace endplate::limb {

// How a place takes part in the bending of the digits: none where all shares are 0.
struct FingerShares {
  std::array<double, 4> share{};  // index to little; sums to 1 or is all 0
  double thumb = 0.0;             // 0 to 1, as ThumbBend::flesh takes it
};

// Of a place of the hand in the anatomical position, proximal of the webs: neighbours bend it
// together, as its skin.
FingerShares finger_shares(const SegmentFrames& frames, const Eigen::Vector3d& neutral_mm);

// How much narrower than at four fifths of the arm the round top is at a level of the arm, 1 to 0.
double top_narrowing(double level);

struct SkinMesh {
  geometry::TriangleMesh mesh;        // in the limb frame of the frames it was made for
  std::vector<FingerShares> fingers;  // by vertex
};

// `fineness` 1, 2, 3 ...: edges of about 5, 2.5, 1.7 mm.
SkinMesh make_skin(const SegmentFrames& frames, const BodyEnvelope& envelope,
                   const LimbJoints& joints, int fineness);

// The vertices in a pose; the triangles stay.
std::vector<Eigen::Vector3d> posed_vertices_mm(const SkinMesh& skin, const PosedSpace& space);

}  // namespace endplate::limb
