#pragma once
// A tape laid over the skin of one posed limb, from over one place of the limb to over another.
//
// Each end is the place of the skin nearest to the place under it. Both sides give the same length
// to the last digit. The skin's shape is assumed (docs/pose.md); above four fifths of the arm it is
// a round end that stands for shoulder and chest, and says something on its lateral side alone.
#include <Eigen/Core>
#include <expected>
#include <string>
#include <vector>

#include "geometry/surface_distance.hpp"
#include "geometry/surface_probe.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

class SkinTape {
 public:
  // Prepares the skin in edges of about 5 mm: half a second.
  SkinTape(const SegmentFrames& frames, const BodyEnvelope& envelope, const LimbJoints& joints,
           const Pose& pose);

  // The length of the tape, mm, or in words why there is none. Places in the limb frame of the
  // frames given, in the pose.
  std::expected<double, std::string> between_mm(const Eigen::Vector3d& from_mm,
                                                const Eigen::Vector3d& to_mm) const;
  // The tape itself between two picked places.
  std::expected<geometry::SurfacePath, std::string> line(const Eigen::Vector3d& from_mm,
                                                         const Eigen::Vector3d& to_mm) const;

 private:
  SkinTape(const SegmentFrames& right, bool left, const SkinMesh& skin, const LimbJoints& joints,
           const Pose& pose);
  std::expected<geometry::SurfacePoint, std::string> over(Eigen::Vector3d place_mm,
                                                          const char* which) const;

  bool left_;
  SegmentFrames frames_;                  // of the right limb
  std::vector<Eigen::Vector3d> at_rest_;  // vertices in the anatomical position
  geometry::TriangleMesh skin_;           // in the pose
  geometry::SurfaceProbe probe_;
  geometry::SurfaceDistance distance_;
};

}  // namespace endplate::limb
