#include "synthetic_scan.hpp"

#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_simplification/Policies/Edge_collapse/Count_ratio_stop_predicate.h>
#include <CGAL/Surface_mesh_simplification/Policies/Edge_collapse/Edge_length_cost.h>
#include <CGAL/Surface_mesh_simplification/Policies/Edge_collapse/Midpoint_placement.h>
#include <CGAL/Surface_mesh_simplification/edge_collapse.h>

#include <numbers>
#include <random>

#include "../limb/limb_fixture.hpp"
#include "geometry/nearest_surface.hpp"
#include "geometry/surface_mesh_bridge.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::scan {
namespace {

using Eigen::Vector3d;

using Told = std::map<std::string, double>;
const std::array<Told, kPoses> kTold{
    {{},
     {{"elbow_flexion_deg", 90.0}, {"forearm_pronation_deg", 80.0}},
     {{"shoulder_abduction_deg", 80.0},
      {"shoulder_external_rotation_deg", 60.0},
      {"elbow_flexion_deg", 30.0}},
     {{"shoulder_flexion_deg", 60.0},
      {"elbow_flexion_deg", 50.0},
      {"forearm_pronation_deg", 40.0},
      {"wrist_extension_deg", 40.0}},
     {{"shoulder_abduction_deg", 40.0},
      {"forearm_pronation_deg", 150.0},
      {"wrist_extension_deg", -40.0},
      {"wrist_ulnar_deviation_deg", 20.0}},
     {{"shoulder_flexion_deg", 30.0},
      {"elbow_flexion_deg", 120.0},
      {"forearm_pronation_deg", 90.0},
      {"wrist_ulnar_deviation_deg", -10.0}}}};
const std::vector<std::string> kAllAngles{"shoulder_abduction_deg",         "shoulder_flexion_deg",
                                          "shoulder_external_rotation_deg", "elbow_flexion_deg",
                                          "forearm_pronation_deg",          "wrist_extension_deg",
                                          "wrist_ulnar_deviation_deg"};

geometry::TriangleMesh coarsened(const geometry::TriangleMesh& mesh, double share) {
  namespace Simplify = CGAL::Surface_mesh_simplification;
  using Surface = CGAL::Surface_mesh<CGAL::Simple_cartesian<double>::Point_3>;
  auto surface = geometry::to_surface<Surface>(mesh);
  Simplify::edge_collapse(surface, Simplify::Count_ratio_stop_predicate<Surface>(share),
                          CGAL::parameters::get_cost(Simplify::Edge_length_cost<Surface>())
                              .get_placement(Simplify::Midpoint_placement<Surface>()));
  return geometry::from_surface(surface);
}

}  // namespace

SyntheticScan make_scan(const StandardLimb& limb, const limb::LimbSize& size, int pose,
                        std::uint64_t seed, const ScanMaking& making) {
  std::mt19937_64 generator(seed);
  std::normal_distribution<double> normal;
  const auto vector = [&] {
    const double x = normal(generator);
    const double y = normal(generator);
    return Vector3d(x, y, normal(generator));
  };
  SyntheticScan scan;
  Told truth = kTold.at(static_cast<std::size_t>(pose));
  for (const std::string& key : kAllAngles) {
    double& angle = truth[key];
    // Joints do not extend beyond straight, nor does the forearm supinate beyond the start.
    angle = std::max(angle + 4.0 * normal(generator), key.starts_with("wrist") ? -60.0 : 0.0);
    scan.pose_deg[key] = angle + making.pose_error_deg * normal(generator);
  }
  if (making.curled) {
    truth["fingers_flexion_deg"] = std::uniform_real_distribution<double>(0.0, 30.0)(generator);
  }
  scan.truth.scale = size.sample(1, seed).front().scale;
  scan.truth.pose = limb::pose_from(truth);
  scan.truth.humerus_to_scan =
      Eigen::Translation3d(300.0 * vector()) *
      Eigen::Quaterniond(normal(generator), normal(generator), normal(generator), normal(generator))
          .normalized();
  scan.nerve_points_mm = limb.nerve_points_mm(scan.truth);

  const PlacedLimb placed = limb.place(scan.truth);
  static const limb::BodyEnvelope envelope = limb::BodyEnvelope::from(limb::own_tables()).value();
  limb::SkinMesh skin = limb::make_skin(placed.frames, envelope, limb.joints(), 2);
  const double arm = making.girth_sd * normal(generator);
  const double forearm = making.girth_sd * normal(generator);
  if (making.girth_sd > 0.0) {
    // About the axis of the segment, nothing at elbow, wrist and shoulder.
    for (Vector3d& p : skin.mesh.vertices_mm) {
      for (const auto& [segment, more] :
           {std::pair(limb::Segment::humerus, arm), std::pair(limb::Segment::forearm, forearm)}) {
        const limb::SegmentPoint at = placed.frames.from_limb(segment, p);
        if (at.fraction <= 0.0 || at.fraction >= 1.0) continue;
        const double share = std::pow(std::sin(std::numbers::pi * at.fraction), 2.0);
        p += more * share * (p - placed.frames.to_limb(segment, at.fraction, 0.0, 0.0));
      }
    }
  }
  geometry::TriangleMesh whole{limb::posed_vertices_mm(skin, placed.space), skin.mesh.triangles};
  for (Vector3d& p : whole.vertices_mm) p = placed.to_scan * p;
  scan.mesh = coarsened(whole, 0.15);
  for (Vector3d& p : scan.mesh.vertices_mm) p += making.noise_mm * vector();

  const geometry::NearestSurface smooth(whole);
  const geometry::NearestSurface seen(scan.mesh);
  scan.unit = geometry::kLengthUnits[seed % 3];
  const double per_mm = 1.0 / geometry::mm_per(scan.unit);
  for (const char* name : kPickedNames) {
    const std::size_t index = limb.landmarks().find(name).value();
    const Vector3d bone =
        placed.to_scan * limb.landmarks().all()[index].posed_mm(placed.frames, placed.space);
    const Vector3d pick = smooth.nearest(bone).position_mm + making.picking_mm * vector();
    scan.picked.push_back({index, per_mm * seen.nearest(pick).position_mm});
  }
  for (Vector3d& p : scan.mesh.vertices_mm) p *= per_mm;
  return scan;
}

}  // namespace endplate::scan
