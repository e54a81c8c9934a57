#pragma once
// Scans of our own limb whose nerves are known: resized, posed, coarsened, noisy, moved and in some
// unit.
#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "geometry/mesh_unit.hpp"
#include "geometry/triangle_mesh.hpp"
#include "models/core/side.hpp"
#include "models/limb/limb_size.hpp"
#include "models/scan/scan_fit.hpp"

namespace endplate::scan {

struct ScanMaking {
  double noise_mm = 1.0;        // SD of every coordinate of a vertex
  double picking_mm = 2.0;      // SD of every coordinate of a pick, before it is set on the surface
  double pose_error_deg = 0.0;  // SD of each angle as it is told
  double girth_sd = 0.0;        // of arm and forearm against what size and breadth say, share
  bool curled = false;          // fingers bent by up to 30 degrees, which is not told
};

struct SyntheticScan {
  geometry::TriangleMesh mesh;  // in the unit and frame of its file
  geometry::LengthUnit unit = geometry::LengthUnit::mm;
  std::vector<PickedLandmark> picked;            // likewise
  std::vector<Eigen::Vector3d> nerve_points_mm;  // the truth, in the file's frame
  std::map<std::string, double> pose_deg;        // as it is told
  LimbState truth;
};

inline constexpr int kPoses = 6;
inline constexpr std::array kPickedNames{"acromion, lateral edge",
                                         "acromion, anterior edge",
                                         "acromion, posterior edge",
                                         "deltoid insertion",
                                         "lateral epicondyle",
                                         "medial epicondyle",
                                         "olecranon tip",
                                         "radial styloid",
                                         "ulnar styloid",
                                         "Lister tubercle",
                                         "pisiform",
                                         "fifth metacarpal head",
                                         "digital palmar crease",
                                         "tip of middle finger"};

// Of a limb drawn from `size`, in one of kPoses poses bent a little otherwise each time.
SyntheticScan make_scan(const StandardLimb& limb, const limb::LimbSize& size, int pose,
                        std::uint64_t seed, const ScanMaking& making);

}  // namespace endplate::scan
