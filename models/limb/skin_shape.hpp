#pragma once
// Shapes of the hand, its digits and the ends of the skin on the ledger limb, and how finely the
// skin is divided; for skin_mesh.cpp only.
//
// All assumed, from the breadth of the hand and the thickness of a palm and a finger, but for the
// lengths, which follow from the rows named.
#include <array>

namespace endplate::limb::skin_shape {

// Over which the carrying angle is rounded, either side of the elbow.
inline constexpr double kElbowBlend_mm = 45.0;
inline constexpr double kTopLevel = 1.10;         // of the arm, where the round top ends
inline constexpr double kTopFrom = 0.80;          // and where it begins
inline constexpr double kWebHalfDepth_mm = 11.5;  // of the palm where the fingers begin
inline constexpr double kFingerRoot_mm = 12.0;    // over which a finger takes its own round shape
inline constexpr double kFingerTip_mm = 9.0;      // of the rounded end
struct FingerShape {
  const char* name;
  double web_level;      // of the hand's length, at the middle of the finger
  double half_width_mm;  // at the root
  double half_depth_mm;
};
inline constexpr std::array<FingerShape, 4> kFingers{{{"index", 0.594, 8.4, 8.4},
                                                      {"middle", 0.604, 8.5, 8.6},
                                                      {"ring", 0.564, 8.2, 8.2},
                                                      {"little", 0.499, 7.4, 7.2}}};
inline constexpr double kTipShare = 0.78;  // of the width at the root, before the rounded end
// Edges of the palm across, from the radial to the ulnar side, between and beside the fingers.
inline constexpr std::array<double, 5> kCells_mm{36.5, 17.5, -1.5, -20.0, -38.0};
// Of the way from the wrist to the web, from where on the palm's skin goes with the fingers.
inline constexpr double kFingersFrom = 0.35;
inline constexpr double kRadialWeb = 0.575;
inline constexpr double kUlnarWeb = 0.47;

inline constexpr double kThumbFrom = 0.09;  // rows of the hand that the thumb's window spans
inline constexpr double kThumbTo = 0.31;
inline constexpr double kThumbHalfWidth_mm = 10.0;
inline constexpr double kThumbHalfDepth_mm = 9.0;
inline constexpr int kRoundedRings = 7;
inline constexpr int kRounds = 25;
inline constexpr int kEminenceRounds = 6;  // once the ball of the thumb is raised

// Numbers of vertices, all multiples of the fineness.
struct Counts {
  explicit Counts(int fine)
      : fineness(fine),
        cell(5 * fine),
        side(4 * fine),
        ring(8 * cell + 2 * side),
        arm(62 * fine),
        forearm(50 * fine),
        hand(22 * fine),
        finger(16 * fine),
        thumb(18 * fine),
        cap(9 * fine) {}
  int fineness;
  int cell;  // edges across one finger
  int side;  // edges from palm to back
  int ring;
  int arm, forearm, hand;  // rows
  int finger, thumb, cap;
};

}  // namespace endplate::limb::skin_shape
