// The thin-plate spline against scipy.interpolate.RBFInterpolator (SciPy 1.10 of Debian 12) with
// the kernel -r and an affine part.
#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <random>

#include "../support/meshes.hpp"
#include "geometry/thin_plate_spline.hpp"

using namespace endplate::geometry;

namespace {

using Points = std::vector<Eigen::Vector3d>;

Points scattered(std::mt19937& generator, std::size_t count, const Eigen::Vector3d& middle_mm,
                 const Eigen::Vector3d& half_mm) {
  Points points;
  const auto unit = [&] { return 2.0 * static_cast<double>(generator()) / 4294967296.0 - 1.0; };
  for (std::size_t i = 0; i < count; ++i) {
    const double x = unit();
    const double y = unit();
    points.emplace_back(middle_mm + half_mm.cwiseProduct(Eigen::Vector3d(x, y, unit())));
  }
  return points;
}

}  // namespace

TEST_CASE("the thin-plate spline is that of SciPy", "[published][warp]") {
  std::mt19937 generator(7);
  // Landmarks along a limb far from the origin, their targets moved by some centimetres, and points
  // in and well beyond them.
  const Points from = scattered(generator, 40, {900, -400, 150}, {45, 330, 40});
  Points to = scattered(generator, 40, {-80, 60, 20}, {15, 15, 15});
  std::vector<double> each_mm;
  for (std::size_t i = 0; i < to.size(); ++i) {
    to[i] += from[i];
    each_mm.push_back(i % 3 == 0 ? 0.0 : 7.0 * static_cast<double>(i));
  }
  Points points = scattered(generator, 400, {900, -400, 150}, {90, 500, 90});
  points.insert(points.end(), from.begin(), from.end());
  const endplate::test::TestFolder folder;
  {
    std::ofstream landmarks(folder.at("landmarks"));
    landmarks.precision(17);
    for (std::size_t i = 0; i < from.size(); ++i) {
      landmarks << from[i].transpose() << ' ' << to[i].transpose() << ' ' << each_mm[i] << '\n';
    }
    std::ofstream places(folder.at("points"));
    places.precision(17);
    for (const auto& p : points) places << p.transpose() << '\n';
  }
  const std::string command = ENDPLATE_PYTHON " -B '" ENDPLATE_SOURCE_DIR
                                              "/tests/published/thin_plate_spline_reference.py' '" +
                              folder.at("landmarks").string() + "' '" +
                              folder.at("points").string() + "' '" + folder.at("out").string() +
                              "' 0 0.5 40";
  const int status = std::system(command.c_str());
  if (WEXITSTATUS(status) == 3) {
    WARN("SciPy is not installed: the comparison was left out");
    return;
  }
  REQUIRE(status == 0);
  std::ifstream in(folder.at("out"));
  const std::vector<std::pair<const char*, GeometryResult<ThinPlateSpline>>> warps{
      {"0 mm", ThinPlateSpline::fit(from, to, 0.0)},
      {"0.5 mm", ThinPlateSpline::fit(from, to, 0.5)},
      {"40 mm", ThinPlateSpline::fit(from, to, 40.0)},
      {"one a landmark", ThinPlateSpline::fit(from, to, each_mm)},
      {"one a landmark, no affine part but a shift",
       ThinPlateSpline::fit(from, to, each_mm, AffinePart::identity)}};
  for (const auto& [smoothing, warp] : warps) {
    REQUIRE(warp.has_value());
    const Points ours = (*warp)(points);
    double largest_mm = 0.0;
    for (const auto& p : ours) {
      Eigen::Vector3d theirs;
      REQUIRE(in >> theirs.x() >> theirs.y() >> theirs.z());
      largest_mm = std::max(largest_mm, (p - theirs).norm());
    }
    INFO("smoothing " << smoothing << ", largest difference " << largest_mm << " mm");
    CHECK(largest_mm < 1e-9);
  }
}
