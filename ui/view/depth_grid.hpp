#pragma once
// How near to the eye the nearest surface is, in small cells all over a picture: what lies behind
// it is hidden.
#include <Eigen/Core>
#include <QSize>
#include <array>
#include <vector>

namespace endplate::ui {

class DepthGrid {
 public:
  // `pixels`: of the picture; > 0 each way.
  explicit DepthGrid(const QSize& pixels);

  // Corners in pixels of the picture from its upper left corner, and the depth of each, mm, larger
  // farther from the eye.
  void add(const std::array<Eigen::Vector3d, 3>& corners);
  // Whether a surface lies more than `slack_mm` before the point. Outside the picture: never.
  bool hides(const Eigen::Vector3d& point, double slack_mm) const;

 private:
  int columns_ = 0;
  int rows_ = 0;
  std::vector<float> depth_mm_;  // row by row
};

}  // namespace endplate::ui
