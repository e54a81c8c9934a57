#include "geometry/line_samples.hpp"

#include <algorithm>
#include <limits>

#include "geometry/eight.hpp"

namespace endplate::geometry {
namespace {

using eight::Eight;
using eight::Three;

struct FloatTrack {
  explicit FloatTrack(const Track& track)
      : from(track.from_mm.cast<float>()), along((track.to_mm - track.from_mm).cast<float>()) {}

  Eigen::Vector3f from;
  Eigen::Vector3f along;
};

// The smallest squared distances of the stretches of a group's lines, moved by `moved`, from the
// track.
__attribute__((target_clones("avx2", "default"))) void group_nearest(const float (*places)[3][8],
                                                                     std::size_t count,
                                                                     const FloatTrack& track,
                                                                     const float (*moved)[8],
                                                                     float* best_mm2) {
  Three from;
  Three along;
  eight::fill(from, track.from.x(), track.from.y(), track.from.z());
  eight::fill(along, track.along.x(), track.along.y(), track.along.z());
  Eight inverse_track;
  eight::fill(inverse_track, 1.0F / std::max(track.along.squaredNorm(), eight::kPoint_mm2));
  Eight tiny;
  eight::fill(tiny, eight::kPoint_mm2);
  Three shift;
  eight::load(shift, moved);
  Three p;
  eight::load(p, places[0]);
  Eight best;
  eight::fill(best, std::numeric_limits<float>::max());
  for (std::size_t k = 1; k < count; ++k) {
    Three next;
    eight::load(next, places[k]);
    const Three v{next.x - p.x, next.y - p.y, next.z - p.z};
    Eight length = v.x * v.x + v.y * v.y + v.z * v.z;
    length = length > tiny ? length : tiny;
    Eight squared;
    eight::track_segment_mm2(from, along, inverse_track,
                             {p.x + shift.x, p.y + shift.y, p.z + shift.z}, v, 1.0F / length,
                             squared);
    best = squared < best ? squared : best;
    p = next;
  }
  std::memcpy(best_mm2, &best, sizeof best);
}

}  // namespace

LineSamples::LineSamples(std::size_t places, std::span<const Eigen::Vector3d> positions_mm)
    : places_(places), samples_(positions_mm.size() / places) {
  const std::size_t groups = (samples_ + kGroup - 1) / kGroup;
  groups_.resize(groups * places_);
  for (std::size_t g = 0; g < groups; ++g) {
    for (std::size_t s = 0; s < kGroup; ++s) {
      // What fills up the last group repeats the last sample.
      const std::size_t sample = std::min(g * kGroup + s, samples_ - 1);
      for (std::size_t k = 0; k < places_; ++k) {
        const Eigen::Vector3d& p = positions_mm[sample * places_ + k];
        for (int axis = 0; axis < 3; ++axis) {
          groups_[g * places_ + k].xyz[axis][s] = static_cast<float>(p[axis]);
        }
      }
    }
  }
}

void LineSamples::nearest(const Track& track, std::span<float> best_mm2) const {
  nearest(track, Eigen::Vector3d::Zero(), {}, best_mm2);
}

void LineSamples::nearest(const Track& track, const Eigen::Vector3d& direction,
                          std::span<const float> moved_mm, std::span<float> best_mm2) const {
  const FloatTrack straight(track);
  const Eigen::Vector3f way = direction.cast<float>();
  for (std::size_t g = 0; g * kGroup < samples_; ++g) {
    const std::size_t first = g * kGroup;
    const std::size_t count = std::min(kGroup, samples_ - first);
    float moved[3][kGroup] = {};
    for (std::size_t s = 0; s < count && !moved_mm.empty(); ++s) {
      for (int axis = 0; axis < 3; ++axis) moved[axis][s] = moved_mm[first + s] * way[axis];
    }
    float found[kGroup];
    group_nearest(&groups_[g * places_].xyz, places_, straight, moved, found);
    for (std::size_t s = 0; s < count; ++s) {
      best_mm2[first + s] = std::min(best_mm2[first + s], found[s]);
    }
  }
}

}  // namespace endplate::geometry
