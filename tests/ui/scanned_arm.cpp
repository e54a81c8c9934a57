#include "tests/ui/scanned_arm.hpp"

#include <sstream>
#include <stdexcept>

#include "geometry/mesh_file.hpp"
#include "geometry/nearest_surface.hpp"
#include "models/limb/skin_mesh.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/document/case_file.hpp"

namespace endplate::ui {

ScannedArm write_scanned_arm(const QString& folder) {
  constexpr double kPerMm = 1e-3;
  const auto standard = scan::StandardLimb::from(tables()->package, Side::right);
  if (!standard) throw std::runtime_error("no standard limb");
  scan::LimbState state;
  state.scale.arm = 1.08;
  state.scale.forearm = 1.02;
  state.scale.hand = 0.97;
  state.pose = limb::pose_from({{"elbow_flexion_deg", 30.0}});
  state.humerus_to_scan = Eigen::Translation3d(120.0, -40.0, 300.0) *
                          Eigen::AngleAxisd(0.7, Eigen::Vector3d(1.0, 2.0, -1.0).normalized());
  const scan::PlacedLimb placed = standard->place(state);
  const limb::SkinMesh skin = standard->skin(state.scale);
  geometry::TriangleMesh mesh{limb::posed_vertices_mm(skin, placed.space), skin.mesh.triangles};
  for (Eigen::Vector3d& p : mesh.vertices_mm) p = placed.to_scan * p;

  const geometry::NearestSurface surface(mesh);
  std::ostringstream csv;
  csv.precision(10);
  csv << "landmark,x,y,z\n";
  for (const char* name :
       {"acromion, lateral edge", "acromion, anterior edge", "acromion, posterior edge",
        "lateral epicondyle", "medial epicondyle", "olecranon tip", "radial styloid",
        "ulnar styloid", "pisiform", "fifth metacarpal head", "tip of middle finger"}) {
    const scan::ScanLandmark& landmark =
        standard->landmarks().all().at(standard->landmarks().find(name).value());
    const Eigen::Vector3d pick =
        kPerMm * surface.nearest(placed.to_scan * landmark.posed_mm(placed.frames, placed.space))
                     .position_mm;
    csv << '"' << name << "\"," << pick.x() << ',' << pick.y() << ',' << pick.z() << '\n';
  }
  for (Eigen::Vector3d& p : mesh.vertices_mm) p *= kPerMm;
  ScannedArm arm{folder + "/arm.ply", folder + "/arm.csv", state.scale};
  if (!geometry::write_mesh_file(arm.surface.toStdString(), mesh) ||
      !write_bytes(arm.landmarks, csv.str())) {
    throw std::runtime_error("the scan cannot be written");
  }
  return arm;
}

}  // namespace endplate::ui
