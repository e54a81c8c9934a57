#pragma once
// Several lines in many samples (the nerves of many limbs), asked about many tracks at once: which
// of the tracks any of the lines comes near to, sample by sample.
//
// Samples of one number belong together, whatever the line. Lengths in mm, single precision. Where
// a line is straight within kStraight_mm its places between are left out; what else is left out,
// is left out because it cannot matter.
//
// Method, this project's own: the distance from a line to a track changes by no more than the
// track's ends move. So sixty-four tracks that lie side by side are judged by the one in their
// middle against capsules that hold a piece of a line, in eight samples at once; then eights of the
// tracks by their middle ones against straight stretches, eight at once; and where that leaves it
// open, the eight tracks themselves.
#include <Eigen/Core>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "geometry/track.hpp"

namespace endplate::geometry {

class LineBundle {
 public:
  struct Line {
    std::size_t places = 0;  // at least two
    // The places of the first sample, of the second, ...
    std::span<const Eigen::Vector3d> positions_mm;
  };
  // So many tracks are asked about at once; eight and eight of them are judged together.
  static constexpr std::size_t kTracks = 64;
  static constexpr std::size_t kLeaf = 8;
  static constexpr double kStraight_mm = 0.05;

  // At least one line; all in as many samples, at least one.
  explicit LineBundle(std::span<const Line> lines);

  std::size_t lines() const { return lines_; }
  std::size_t samples() const { return samples_; }

  // `tracks`: 1 to kTracks, the answer is quick where neighbours in the list lie near one another.
  // `chosen`: one a line, 0 leaves it out. `near`: one word a sample; bit k is set where one of the
  // chosen lines comes within `within_mm` of track k, and no bit beyond the tracks.
  void within(std::span<const Track> tracks, double within_mm, std::span<const std::uint8_t> chosen,
              std::span<std::uint64_t> near) const;

  // Of each sample and track the squared distance to the nearest of the chosen lines (at least one)
  // and that line's number, kTracks of them a sample; those beyond the tracks mean nothing.
  void nearest(std::span<const Track> tracks, std::span<const std::uint8_t> chosen,
               std::span<float> squared_mm2, std::span<std::int32_t> line) const;

 private:
  static constexpr std::size_t kGroup = 8;      // samples reckoned at once
  static constexpr std::size_t kStretches = 4;  // of a piece
  // Stretches of a line that are judged together; a ball holds them in all samples.
  struct Piece {
    std::size_t line = 0;
    Eigen::Vector3f centre = Eigen::Vector3f::Zero();
    float radius = 0.0F;
  };
  // What holds a piece in each of eight samples: from `p` along `v`, so wide.
  struct alignas(32) Capsules {
    float p[3][kGroup];
    float v[3][kGroup];
    float inverse[kGroup];  // of the length of v squared
    float radius[kGroup];
  };
  // Straight within kStraight_mm in one sample.
  struct alignas(32) Stretch {
    float p[3];
    float v[3];
    float inverse;  // of the length of v squared
    std::uint32_t sample;
  };
  struct Block;
  struct NearPiece;
  struct Work;

  void add_piece(const Line& line, std::size_t number, std::size_t from, std::size_t to);
  std::size_t groups() const { return (samples_ + kGroup - 1) / kGroup; }
  // The samples that the last group has, as bits.
  unsigned in_last_group() const { return 0xFFU >> (groups() * kGroup - samples_); }

  std::size_t lines_ = 0;
  std::size_t samples_ = 0;
  std::vector<Piece> pieces_;
  std::vector<Capsules> capsules_;    // by piece, then group of samples
  std::vector<Stretch> stretches_;    // by piece, then sample
  std::vector<std::uint32_t> begin_;  // of a sample's stretches of a piece; one more at the end
};

}  // namespace endplate::geometry
