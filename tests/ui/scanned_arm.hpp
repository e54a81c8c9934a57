#pragma once
// A scan of our own right arm, bent at the elbow, in metres, with landmarks picked on it.
#include <QString>

#include "models/scan/standard_limb.hpp"

namespace endplate::ui {

struct ScannedArm {
  QString surface;    // arm.ply
  QString landmarks;  // arm.csv, beside it
  limb::SegmentScale scale;
};

// The case that goes with it.
inline constexpr auto kScannedCase = R"({
  "endplate_case": 1,
  "label": "scanned",
  "limb": {
    "side": "right", "sex": "female", "age_years": 34, "pose": {"elbow_flexion_deg": 30}
  }
})";

ScannedArm write_scanned_arm(const QString& folder);

}  // namespace endplate::ui
