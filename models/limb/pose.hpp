#pragma once
// The angles of one limb's joints, against the anatomical position: arm at the side, elbow
// straight, forearm supinated, wrist, fingers and thumb straight. Radians; all zero is that
// position. Signs and terms as the ISB recommends (Wu et al., J Biomech 2005;38:981), in the
// trade's words.
#include <array>
#include <map>
#include <string>

namespace endplate::limb {

// One of the four fingers.
struct FingerPose {
  double mcp_flexion = 0.0;
  double pip_flexion = 0.0;
  double dip_flexion = 0.0;
};

struct ThumbPose {
  double palmar_abduction = 0.0;  // at the carpometacarpal joint, in front of the palm
  double cmc_flexion = 0.0;       // there, across the palm
  double mcp_flexion = 0.0;
  double ip_flexion = 0.0;
};

struct Pose {
  // Elevation of the arm: the direction and size of (abduction, flexion) as one turn about a
  // horizontal axis, so that either alone is the plain movement and 90 of each points the arm out
  // and forward.
  double shoulder_abduction = 0.0;
  double shoulder_flexion = 0.0;  // negative: extension
  double shoulder_external_rotation = 0.0;
  double elbow_flexion = 0.0;
  double forearm_pronation = 0.0;  // from full supination, the anatomical position
  double wrist_extension = 0.0;    // negative: flexion
  double wrist_ulnar_deviation = 0.0;
  std::array<FingerPose, 4> fingers;  // index to little
  ThumbPose thumb;

  bool is_neutral() const;
};

// Of a case file, whose keys casefile::pose_limits() lists: "elbow_flexion_deg".
// "fingers_flexion_deg" bends all joints of the fingers in proportion, as a fist closes; where a
// joint is given by itself ("index_pip_flexion_deg"), its own angle counts.
Pose pose_from(const std::map<std::string, double>& pose_deg);

}  // namespace endplate::limb
