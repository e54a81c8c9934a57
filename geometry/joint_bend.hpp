#pragma once
// How the space about a hinge joint bends: a map of points that turns what lies distal of the joint
// and takes the flesh with it.
//
// Two straight bones meet in `centre` and lie on one line at rest. Bent by an angle t, the distal
// one turns about the axis. In the plane across the axis, with x toward the side to which the limb
// bends and y along the bones, proximal:
//  - on the far side (x < 0) a point keeps its distance from the bones; behind the joint that is a
//    circle about its centre;
//  - on the near side the flesh of a limb is pressed flat before it would cross the plane that
//    halves the angle, and close to the joint it folds along straight lines that meet in one
//    crease, which lies `half_zone_mm` up the bones;
//  - along the axis nothing moves.
// The map is continuous and no two points meet for 0 <= t < pi, so a surface that does not cross
// itself is not made to. Beyond the zone, and where nothing presses, it is rigid on either side.
#include <Eigen/Core>

namespace endplate::geometry {

class JointBend {
 public:
  // `proximal` and `axis`: unit vectors at right angles. The distal side turns by `angle_rad` about
  // the axis by the right-hand rule; |angle_rad| < pi. `half_zone_mm` > 0.
  JointBend(const Eigen::Vector3d& centre_mm, const Eigen::Vector3d& proximal,
            const Eigen::Vector3d& axis, double angle_rad, double half_zone_mm);

  // Where a point at rest comes to lie.
  Eigen::Vector3d operator()(const Eigen::Vector3d& rest_mm) const;
  // The same for a point of a nerve: on the far side it stays rigid with the bone to which it is
  // held, for it slides and is not stretched like the skin behind the joint.
  Eigen::Vector3d held(const Eigen::Vector3d& rest_mm) const;

 private:
  // One side of the joint, in its own plane: x to the near side, y away from the joint, y >= 0.
  Eigen::Vector2d fold(double x, double y) const;
  double pressed(double x, double y) const;
  template <class Side>
  Eigen::Vector3d mapped(const Eigen::Vector3d& rest_mm, const Side& side) const;

  Eigen::Vector3d centre_;
  Eigen::Matrix3d frame_;  // columns near side, proximal, axis
  Eigen::Matrix3d turn_;   // of the distal side, in that frame
  double half_zone_;
  double crease_ = 0.0;     // distance of the crease from the bone's line; unused when straight
  double cotangent_ = 0.0;  // of half the angle
};

}  // namespace endplate::geometry
