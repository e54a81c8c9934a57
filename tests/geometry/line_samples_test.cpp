// Samples of a line against CGAL's distance of two segments.
#include <CGAL/Simple_cartesian.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include "geometry/line_samples.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;
using Kernel = CGAL::Simple_cartesian<double>;

struct Cloud {
  std::size_t places;
  std::vector<Vector3d> positions_mm;
};

// Bent lines beside one another, as those of a nerve in many limbs.
Cloud cloud(std::size_t places, std::size_t samples, unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> normal;
  Cloud made{places, {}};
  for (std::size_t s = 0; s < samples; ++s) {
    const Vector3d moved(3.5 * normal(random), 8.0 * normal(random), 3.5 * normal(random));
    for (std::size_t k = 0; k < places; ++k) {
      const double along = 5.0 * static_cast<double>(k);
      made.positions_mm.emplace_back(moved +
                                     Vector3d(6.0 * std::sin(0.02 * along), along, 0.03 * along));
    }
  }
  return made;
}

Kernel::Point_3 point(const Vector3d& p) {
  return {p.x(), p.y(), p.z()};
}

double reference_mm2(const Track& track, const Cloud& of, std::size_t sample,
                     const Vector3d& moved = Vector3d::Zero()) {
  double best = std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k + 1 < of.places; ++k) {
    const Kernel::Segment_3 stretch(point(of.positions_mm[sample * of.places + k] + moved),
                                    point(of.positions_mm[sample * of.places + k + 1] + moved));
    const double squared =
        track.from_mm == track.to_mm
            ? CGAL::to_double(CGAL::squared_distance(point(track.from_mm), stretch))
            : CGAL::to_double(CGAL::squared_distance(
                  Kernel::Segment_3(point(track.from_mm), point(track.to_mm)), stretch));
    best = std::min(best, squared);
  }
  return best;
}

std::vector<Track> tracks(int count) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> along(-20.0, 120.0);
  std::uniform_real_distribution<double> across(-25.0, 25.0);
  std::vector<Track> made;
  for (int k = 0; k < count; ++k) {
    const Vector3d from(across(random), along(random), across(random));
    const Vector3d way(across(random), 0.3 * across(random), across(random));
    made.push_back({from, k % 3 == 0 ? from : Vector3d(from + 0.6 * way)});
  }
  return made;
}

}  // namespace

TEST_CASE("samples of a line are as far from a track as CGAL has it", "[line samples]") {
  // Whole and broken groups; a line of one stretch, of eight and of more.
  for (const std::size_t places : {2U, 9U, 10U, 24U}) {
    for (const std::size_t samples : {1U, 8U, 9U, 130U}) {
      const Cloud of = cloud(places, samples, 3);
      const LineSamples lines(places, of.positions_mm);
      for (const Track& track : tracks(30)) {
        std::vector<float> best(samples, std::numeric_limits<float>::max());
        lines.nearest(track, best);
        for (std::size_t s = 0; s < samples; ++s) {
          const double mm = std::sqrt(reference_mm2(track, of, s));
          REQUIRE(std::sqrt(static_cast<double>(best[s])) == Approx(mm).margin(1e-3));
        }
      }
    }
  }
}

TEST_CASE("a sample moved along a direction is as far as the moved line", "[line samples]") {
  const Cloud of = cloud(20, 33, 5);
  const LineSamples lines(20, of.positions_mm);
  const Vector3d direction = Vector3d(0.6, 0.8, 0.0);
  std::vector<float> moved_mm;
  for (int s = 0; s < 33; ++s) moved_mm.push_back(static_cast<float>(s - 16));
  for (const Track& track : tracks(30)) {
    std::vector<float> best(33, std::numeric_limits<float>::max());
    lines.nearest(track, direction, moved_mm, best);
    for (std::size_t s = 0; s < 33; ++s) {
      const double mm =
          std::sqrt(reference_mm2(track, of, s, static_cast<double>(moved_mm[s]) * direction));
      REQUIRE(std::sqrt(static_cast<double>(best[s])) == Approx(mm).margin(1e-3));
    }
  }
}

TEST_CASE("a number that is smaller already stays", "[line samples]") {
  const Cloud of = cloud(5, 10, 1);
  const LineSamples lines(5, of.positions_mm);
  std::vector<float> best(10, 0.25F);
  lines.nearest({Vector3d(200.0, 0.0, 0.0), Vector3d(200.0, 0.0, 0.0)}, best);
  for (const float squared : best) CHECK(squared == 0.25F);
}

}  // namespace endplate::geometry
