#pragma once
// Many samples of one polyline, and how near each of them comes to a straight track.
//
// All samples have the same number of places; place k of one sample is the same place of the line
// as place k of another. Lengths in mm. Single precision: a place is good to some 1e-5 mm. For many
// tracks and several lines at once see line_bundle.hpp.
#include <Eigen/Core>
#include <cstddef>
#include <span>
#include <vector>

#include "geometry/track.hpp"

namespace endplate::geometry {

class LineSamples {
 public:
  // `positions_mm`: at least two places of the first sample, as many of the second, and so on; at
  // least one sample.
  LineSamples(std::size_t places, std::span<const Eigen::Vector3d> positions_mm);

  std::size_t places() const { return places_; }
  std::size_t samples() const { return samples_; }

  // Lowers each sample's squared distance to that from the track, where it is nearer. `best_mm2`:
  // one number a sample.
  void nearest(const Track& track, std::span<float> best_mm2) const;
  // The same with each sample's line moved by so many mm along a unit vector; one number a sample.
  void nearest(const Track& track, const Eigen::Vector3d& direction,
               std::span<const float> moved_mm, std::span<float> best_mm2) const;

 private:
  static constexpr std::size_t kGroup = 8;  // samples reckoned at once

  struct Places {  // one place in the samples of a group
    float xyz[3][kGroup];
  };

  std::size_t places_;
  std::size_t samples_;
  std::vector<Places> groups_;  // the places of the first group, of the second, ...
};

}  // namespace endplate::geometry
