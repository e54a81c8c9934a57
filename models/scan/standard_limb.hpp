#pragma once
// The standard limb as a scan is fitted to: its skin, the landmarks picked on it and the named
// points of its nerves, for any size, in any pose, anywhere in space.
#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "geometry/surface_point.hpp"
#include "models/core/error.hpp"
#include "models/core/side.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/skin_mesh.hpp"
#include "models/scan/scan_landmarks.hpp"

namespace endplate::scan {

// A size as numbers: arm, forearm, hand, breadth, and the girths of arm, forearm and wrist beyond
// it.
inline constexpr int kSizes = 7;
using Sizes = Eigen::Matrix<double, kSizes, 1>;
Sizes sizes_of(const limb::SegmentScale& scale);
limb::SegmentScale scale_of(const Sizes& sizes);

// One limb in the frame of a scan, mm.
struct LimbState {
  limb::SegmentScale scale;
  limb::Pose pose;
  // From the limb frame of the arm at the side to the scan: where the humerus lies. The shoulder's
  // angles then move the scapula against it.
  Eigen::Isometry3d humerus_to_scan = Eigen::Isometry3d::Identity();
};

struct NervePoint {
  std::string id;     // of course_points.csv
  std::string nerve;  // standard term; several joined by "; "
  std::string name;   // as landmark_distances.csv names the point
  limb::Segment segment = limb::Segment::humerus;
  limb::PointRef ref;
};

// A state made ready for questions.
struct PlacedLimb {
  limb::SegmentFrames frames;
  limb::PosedSpace space;
  Eigen::Isometry3d to_scan;  // from where `space` places things

  PlacedLimb(const limb::LimbJoints& joints, Side side, const LimbState& state);
};

class StandardLimb {
 public:
  static Expected<StandardLimb> from(const evidence::DataPackage& package, Side side);

  Side side() const { return side_; }
  const limb::LimbJoints& joints() const { return joints_; }
  const ScanLandmarks& landmarks() const { return landmarks_; }
  const std::vector<NervePoint>& nerve_points() const { return nerve_points_; }

  PlacedLimb place(const LimbState& state) const { return {joints_, side_, state}; }
  limb::SkinMesh skin(const limb::SegmentScale& scale) const;
  // Of every nerve point, in the scan.
  std::vector<Eigen::Vector3d> nerve_points_mm(const LimbState& state) const;

 private:
  Side side_ = Side::right;
  limb::LimbJoints joints_;
  limb::BodyEnvelope envelope_;
  limb::Atlas atlas_;
  ScanLandmarks landmarks_;
  std::vector<NervePoint> nerve_points_;
};

// The skin for sizes near one: straight in each measure of the size, which it is but for the bend
// of the elbow and the thumb's root.
class SkinModel {
 public:
  SkinModel(const StandardLimb& limb, const limb::SegmentScale& near);

  const std::vector<std::array<std::uint32_t, 3>>& triangles() const {
    return skin_.mesh.triangles;
  }
  std::size_t size() const { return skin_.mesh.vertices_mm.size(); }
  std::vector<Eigen::Vector3d> placed_mm(const PlacedLimb& limb) const;
  // Some vertices only.
  SkinModel sample(const std::vector<std::uint32_t>& vertices) const;

 private:
  SkinModel() = default;

  Sizes near_ = Sizes::Ones();
  limb::SkinMesh skin_;  // without triangles for a sample
  std::array<std::vector<Eigen::Vector3d>, kSizes> slopes_;
};

// Vertices as far from one another as can be, the first ones farthest, on the ledger limb. All when
// there are no more.
std::vector<std::uint32_t> spread_vertices(const StandardLimb& limb, std::size_t how_many);

}  // namespace endplate::scan
