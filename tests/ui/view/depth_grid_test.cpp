#include "ui/view/depth_grid.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

namespace endplate::ui {

TEST_CASE("A surface hides what lies behind it and nothing else", "[view]") {
  DepthGrid grid({200, 100});
  grid.add(
      {Eigen::Vector3d(20, 10, 50), Eigen::Vector3d(120, 10, 50), Eigen::Vector3d(20, 90, 50)});
  CHECK(grid.hides({40, 30, 60}, 3.0));
  CHECK_FALSE(grid.hides({40, 30, 52}, 3.0));  // on it
  CHECK_FALSE(grid.hides({40, 30, 40}, 3.0));  // before it
  CHECK_FALSE(grid.hides({150, 80, 60}, 3.0));
  CHECK_FALSE(grid.hides({-5, 30, 60}, 3.0));
  CHECK_FALSE(grid.hides({400, 300, 60}, 3.0));
}

TEST_CASE("The nearest of many surfaces hides, as a ray to each says", "[view]") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(0.0, 200.0);
  std::uniform_real_distribution<double> y(0.0, 100.0);
  std::uniform_real_distribution<double> depth(-80.0, 80.0);
  DepthGrid grid({200, 100});
  std::vector<std::array<Eigen::Vector3d, 3>> triangles;
  for (int k = 0; k < 40; ++k) {
    // None so steep that a cell's width of 2 pixels makes a difference of more than the slack.
    const double level = depth(random);
    std::array<Eigen::Vector3d, 3> corners;
    for (Eigen::Vector3d& corner : corners) corner = {x(random), y(random), level};
    triangles.push_back(corners);
    grid.add(corners);
  }
  int agreed = 0;
  constexpr int kPoints = 2000;
  for (int k = 0; k < kPoints; ++k) {
    const Eigen::Vector3d point(x(random), y(random), depth(random));
    bool hidden = false;
    for (const auto& [a, b, c] : triangles) {
      const auto side = [&](const Eigen::Vector3d& p, const Eigen::Vector3d& q) {
        return (q.x() - p.x()) * (point.y() - p.y()) - (q.y() - p.y()) * (point.x() - p.x());
      };
      const double ab = side(a, b);
      const double bc = side(b, c);
      const double ca = side(c, a);
      const bool within = (ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0);
      hidden = hidden || (within && a.z() < point.z() - 3.0);
    }
    agreed += grid.hides(point, 3.0) == hidden ? 1 : 0;
  }
  // A cell at an edge belongs to one side or the other.
  CHECK(agreed > 0.97 * kPoints);
}

}  // namespace endplate::ui
