// Many tracks at once against LineSamples, which is held against CGAL's distances of segments.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include "geometry/line_bundle.hpp"
#include "geometry/line_samples.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;

struct Scene {
  std::vector<std::size_t> places;
  std::vector<std::vector<Vector3d>> positions_mm;
  std::size_t samples;

  LineBundle bundle() const {
    std::vector<LineBundle::Line> lines;
    for (std::size_t n = 0; n < places.size(); ++n) lines.push_back({places[n], positions_mm[n]});
    return LineBundle(lines);
  }
};

// Bent lines beside one another, each moved a little in every sample; the last is one stretch.
Scene scene(std::size_t samples) {
  std::mt19937 random(3);
  std::normal_distribution<double> normal;
  Scene made{{30, 9, 2}, {}, samples};
  for (std::size_t n = 0; n < made.places.size(); ++n) {
    std::vector<Vector3d>& positions = made.positions_mm.emplace_back();
    for (std::size_t s = 0; s < samples; ++s) {
      const Vector3d moved(12.0 * static_cast<double>(n) + 4.0 * normal(random),
                           8.0 * normal(random), 4.0 * normal(random));
      for (std::size_t k = 0; k < made.places[n]; ++k) {
        const double along = 5.0 * static_cast<double>(k);
        positions.push_back(moved + Vector3d(6.0 * std::sin(0.1 * along), along, 0.03 * along));
      }
    }
  }
  return made;
}

// Tracks side by side, as entries of a skin; `depth_mm` 0: points.
std::vector<Track> tracks(std::size_t count, double depth_mm) {
  std::vector<Track> made;
  for (std::size_t k = 0; k < count; ++k) {
    const Vector3d from(3.0 * static_cast<double>(k % 8), 40.0 + 3.0 * static_cast<double>(k / 8),
                        20.0);
    made.push_back({from, from - depth_mm * Vector3d(0.1, 0.2, 1.0).normalized()});
  }
  return made;
}

std::vector<float> exact_mm2(const Scene& of, const Track& track, const std::vector<int>& chosen) {
  std::vector<float> best(of.samples, std::numeric_limits<float>::max());
  for (std::size_t n = 0; n < of.places.size(); ++n) {
    if (chosen[n] == 0) continue;
    LineSamples(of.places[n], of.positions_mm[n]).nearest(track, best);
  }
  return best;
}

}  // namespace

TEST_CASE("a bundle knows which tracks its lines come near to", "[line bundle]") {
  // Whole and broken groups of samples, whole and broken blocks and leaves of tracks.
  for (const std::size_t samples : {1U, 8U, 203U}) {
    const Scene of = scene(samples);
    const LineBundle bundle = of.bundle();
    std::size_t near_ones = 0;
    std::size_t all = 0;
    for (const std::size_t count : {1U, 9U, 64U}) {
      for (const double depth_mm : {0.0, 15.0}) {
        const std::vector<Track> asked = tracks(count, depth_mm);
        for (const std::vector<int>& which : {std::vector{1, 1, 1}, std::vector{0, 1, 0}}) {
          const std::vector<std::uint8_t> chosen(which.begin(), which.end());
          for (const double mm : {2.0, 5.0, 10.0, 20.0}) {
            std::vector<std::uint64_t> near(samples);
            bundle.within(asked, mm, chosen, near);
            for (std::size_t k = 0; k < count; ++k) {
              const std::vector<float> exact = exact_mm2(of, asked[k], which);
              for (std::size_t s = 0; s < samples; ++s) {
                const double exact_mm = std::sqrt(static_cast<double>(exact[s]));
                // A line may be straightened by so much.
                if (std::abs(exact_mm - mm) < LineBundle::kStraight_mm + 1e-3) continue;
                REQUIRE(((near[s] >> k & 1U) != 0) == (exact_mm < mm));
                near_ones += exact_mm < mm ? 1 : 0;
                ++all;
              }
            }
            if (count < 64) {
              for (const std::uint64_t word : near) REQUIRE(word >> count == 0);
            }
          }
        }
      }
    }
    // The question was one with both answers.
    CHECK(near_ones > 0);
    CHECK(near_ones < all);
  }
}

TEST_CASE("a bundle knows the nearest line and how near it is", "[line bundle]") {
  const std::size_t samples = 43;
  const Scene of = scene(samples);
  const LineBundle bundle = of.bundle();
  const std::vector<std::uint8_t> all(3, 1);
  std::vector<float> mm2(samples * LineBundle::kTracks);
  std::vector<std::int32_t> line(samples * LineBundle::kTracks);
  for (const double depth_mm : {0.0, 15.0}) {
    const std::vector<Track> asked = tracks(50, depth_mm);
    bundle.nearest(asked, all, mm2, line);
    for (std::size_t k = 0; k < asked.size(); ++k) {
      const std::vector<float> exact = exact_mm2(of, asked[k], {1, 1, 1});
      for (std::size_t s = 0; s < samples; ++s) {
        const std::size_t at = s * LineBundle::kTracks + k;
        const double mm = std::sqrt(static_cast<double>(mm2[at]));
        REQUIRE(mm == Approx(std::sqrt(static_cast<double>(exact[s])))
                          .margin(LineBundle::kStraight_mm + 1e-3));
        std::vector<int> own(3, 0);
        own[static_cast<std::size_t>(line[at])] = 1;
        REQUIRE(mm == Approx(std::sqrt(static_cast<double>(exact_mm2(of, asked[k], own)[s])))
                          .margin(LineBundle::kStraight_mm + 1e-3));
      }
    }
  }
}

}  // namespace endplate::geometry
