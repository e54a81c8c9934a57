#pragma once
// Many samples of one polyline, and how near each of them comes to a straight track.
//
// All samples have the same number of places; place k of one sample is the same place of the line
// as place k of another. Lengths in mm. Single precision: a place is good to some 1e-5 mm.
//
// The line is cut into pieces of eight stretches. Within a piece samples that lie side by side
// stand side by side, so that a ball holds eight of them closely; what no ball can decide is
// reckoned, eight samples at once.
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
  // The same for what asks only whether a sample comes within `enough_mm`: a number below that
  // squared says so and no more, and one above it says only that it does not.
  void within(const Track& track, double enough_mm, std::span<float> best_mm2) const;

 private:
  static constexpr std::size_t kStretches = 8;  // of a piece
  static constexpr std::size_t kGroup = 8;      // samples reckoned at once
  static constexpr std::size_t kBlock = 8;      // groups in a block

  // Balls that hold the stretches of a piece in some samples, one column a stretch.
  struct Balls {
    alignas(32) float x[kStretches];
    alignas(32) float y[kStretches];
    alignas(32) float z[kStretches];
    alignas(32) float radius[kStretches];
  };
  struct Group {  // of samples in a piece: places, then x, y and z, then samples
    alignas(32) float xyz[kStretches + 1][3][kGroup];
  };
  struct Piece {
    std::vector<unsigned> sample;  // that stands there
    std::vector<Group> groups;
    std::vector<Balls> of_group;
    std::vector<Balls> of_block;
    Eigen::Vector3f centre = Eigen::Vector3f::Zero();  // of a ball that holds all
    float radius = 0.0F;
  };
  struct Reckoning;

  Piece piece(std::size_t first_place, std::span<const Eigen::Vector3d> positions_mm) const;

  std::size_t places_;
  std::size_t samples_;
  std::vector<Piece> pieces_;
};

}  // namespace endplate::geometry
