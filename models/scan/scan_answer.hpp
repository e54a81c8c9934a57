#pragma once
// The standard anatomy on one patient's scanned surface, and how far to trust it: the answer as
// plain data.
#include <Eigen/Core>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "geometry/mesh_unit.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/scan/fitted_lengths.hpp"
#include "models/scan/scan_fit.hpp"
#include "models/scan/scan_surface.hpp"

namespace endplate::scan {

struct ScanRequest {
  std::filesystem::path surface;
  std::optional<geometry::LengthUnit> unit;
  std::filesystem::path landmarks;
};

struct LandmarkResidual {
  std::string name;
  Eigen::Vector3d position_mm;   // picked, on the surface
  double from_surface_mm = 0.0;  // of the pick as it stands in the file
  double before_mm = 0.0;        // after the similarity alone
  double after_mm = 0.0;         // after the whole fit
  // What the fit would have missed it by had it not been picked; none where too few are left.
  std::optional<double> left_out_mm;
};

struct NervePlace {
  std::string id;
  std::string nerve;
  std::string point;
  limb::Segment segment = limb::Segment::humerus;
  Eigen::Vector3d position_mm;  // in the frame of the scan
  double added_sd_mm = 0.0;  // in each direction, by the fit; the spread between limbs is not in it
};

struct ScanAnswer {
  Side side = Side::right;
  geometry::LengthUnit unit = geometry::LengthUnit::mm;
  std::size_t triangles = 0;
  std::vector<std::string> notes;  // what was odd about the file and was mended
  std::vector<LandmarkResidual> landmarks;
  std::vector<NervePlace> nerves;
  limb::SegmentScale scale;                // as fitted
  std::map<std::string, double> pose_deg;  // as fitted, by the keys of a case file
  double matched_share = 0.0;              // of our skin that has a place on the scan
  double surface_rms_mm = 0.0;
  double surface_p95_mm = 0.0;  // 95 in 100 such places lie within this distance
  std::vector<FittedLength> lengths;
  // By which landmarks left out were missed more than the model of the errors expects; 1 if not.
  // It is in every added_sd_mm.
  double widened_by = 1.0;
  std::vector<std::string> warnings;
};

// From picks as they stand in the file to places on the surface. A pick far from it is refused.
Expected<std::vector<Pick>> picks_on_surface(const std::vector<PickedLandmark>& picked,
                                             geometry::LengthUnit unit,
                                             const geometry::NearestSurface& surface,
                                             const ScanLandmarks& landmarks);

// `surface` in mm. A side whose mirror image fits far better is refused.
Expected<ScanAnswer> warp_onto_scan(const evidence::DataPackage& package,
                                    const casefile::Limb& limb, const ScanSurface& surface,
                                    const std::vector<PickedLandmark>& picked);

// The whole chain: file, unit, check, repair, landmarks, fit. The case must name the side.
Expected<ScanAnswer> answer_scan(const evidence::DataPackage& package, const casefile::Limb& limb,
                                 const ScanRequest& request);

}  // namespace endplate::scan
