#include "geometry/line_samples.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;
using Eigen::Vector3f;

// Eight numbers side by side. The compiler turns operations on them into the machine's own, number
// by number and without contraction, so that every machine has the same digits.
using Eight = float __attribute__((vector_size(32)));
using Mask = int __attribute__((vector_size(32)));

// Below this a length squared gives no direction.
constexpr float kPoint_mm2 = 1e-8F;

struct FloatTrack {
  explicit FloatTrack(const Track& track)
      : from(track.from_mm.cast<float>()),
        along((track.to_mm - track.from_mm).cast<float>()),
        squared(std::max(along.squaredNorm(), kPoint_mm2)) {}

  Vector3f from;
  Vector3f along;
  float squared;
};

float distance_mm(const FloatTrack& track, const Vector3f& p) {
  const Vector3f v = p - track.from;
  const float share = std::clamp(v.dot(track.along) / track.squared, 0.0F, 1.0F);
  return (v - share * track.along).norm();
}

// Where samples stand side by side: in rows along the axis in which the piece varies most, and in
// each row along the next axis.
std::vector<unsigned> side_by_side(const Eigen::MatrixX3d& middles, std::size_t row) {
  const Eigen::MatrixX3d centred = middles.rowwise() - middles.colwise().mean();
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> axes(centred.transpose() * centred);
  const Eigen::VectorXd first = centred * axes.eigenvectors().col(2);
  const Eigen::VectorXd second = centred * axes.eigenvectors().col(1);
  std::vector<unsigned> order(static_cast<std::size_t>(middles.rows()));
  std::iota(order.begin(), order.end(), 0U);
  std::ranges::stable_sort(order, {}, [&](unsigned s) { return first[s]; });
  for (std::size_t from = 0; from < order.size(); from += row) {
    const auto to = std::min(from + row, order.size());
    std::ranges::stable_sort(order.begin() + static_cast<std::ptrdiff_t>(from),
                             order.begin() + static_cast<std::ptrdiff_t>(to), {},
                             [&](unsigned s) { return second[s]; });
  }
  return order;
}

}  // namespace

// The work on one track.
struct LineSamples::Reckoning {
  FloatTrack track;
  float enough_mm;

  // Which of the balls a track comes near enough to, as bits; near: one of them wholly.
  __attribute__((always_inline)) unsigned open_stretches(const Balls& balls, bool& near) const {
    Eight x, y, z, radius;
    __builtin_memcpy(&x, balls.x, sizeof x);
    __builtin_memcpy(&y, balls.y, sizeof y);
    __builtin_memcpy(&z, balls.z, sizeof z);
    __builtin_memcpy(&radius, balls.radius, sizeof radius);
    x -= track.from.x();
    y -= track.from.y();
    z -= track.from.z();
    Eight s = (x * track.along.x() + y * track.along.y() + z * track.along.z()) / track.squared;
    const Eight zero = Eight{} + 0.0F;
    const Eight one = Eight{} + 1.0F;
    s = s > zero ? s : zero;
    s = s < one ? s : one;
    x -= s * track.along.x();
    y -= s * track.along.y();
    z -= s * track.along.z();
    const Eight squared = x * x + y * y + z * z;
    const Eight reach = radius + enough_mm;
    const Mask open = squared <= reach * reach;
    const Eight inner = enough_mm - radius;
    const Mask wholly = (inner >= zero) & (squared <= inner * inner);
    unsigned bits = 0;
    unsigned inside = 0;
    for (unsigned k = 0; k < kStretches; ++k) {
      bits |= static_cast<unsigned>(open[k] & 1) << k;
      inside |= static_cast<unsigned>(wholly[k] & 1);
    }
    near = inside != 0;
    return bits;
  }

  // The smallest squared distances of a stretch of eight samples and the track: the nearest places
  // of their lines, moved to where the segments end.
  __attribute__((always_inline)) void stretch(const Group& group, std::size_t k, Eight& best,
                                              const Eight* moved = nullptr) const {
    const Eight zero = Eight{} + 0.0F;
    const Eight one = Eight{} + 1.0F;
    const Eight tiny = Eight{} + kPoint_mm2;
    Eight px, py, pz, vx, vy, vz;
    __builtin_memcpy(&px, group.xyz[k][0], sizeof px);
    __builtin_memcpy(&py, group.xyz[k][1], sizeof py);
    __builtin_memcpy(&pz, group.xyz[k][2], sizeof pz);
    __builtin_memcpy(&vx, group.xyz[k + 1][0], sizeof vx);
    __builtin_memcpy(&vy, group.xyz[k + 1][1], sizeof vy);
    __builtin_memcpy(&vz, group.xyz[k + 1][2], sizeof vz);
    vx -= px;
    vy -= py;
    vz -= pz;
    if (moved != nullptr) {
      px += moved[0];
      py += moved[1];
      pz += moved[2];
    }
    const Eight rx = track.from.x() - px;
    const Eight ry = track.from.y() - py;
    const Eight rz = track.from.z() - pz;
    const float ux = track.along.x();
    const float uy = track.along.y();
    const float uz = track.along.z();
    Eight e = vx * vx + vy * vy + vz * vz;
    e = e > tiny ? e : tiny;
    const Eight b = ux * vx + uy * vy + uz * vz;
    const Eight c = ux * rx + uy * ry + uz * rz;
    const Eight f = vx * rx + vy * ry + vz * rz;
    Eight determinant = track.squared * e - b * b;
    determinant = determinant > tiny ? determinant : tiny;
    Eight s = (b * f - c * e) / determinant;
    s = s > zero ? s : zero;
    s = s < one ? s : one;
    Eight t = (b * s + f) / e;
    t = t > zero ? t : zero;
    t = t < one ? t : one;
    s = (b * t - c) / track.squared;
    s = s > zero ? s : zero;
    s = s < one ? s : one;
    const Eight dx = rx + ux * s - vx * t;
    const Eight dy = ry + uy * s - vy * t;
    const Eight dz = rz + uz * s - vz * t;
    const Eight squared = dx * dx + dy * dy + dz * dz;
    best = squared < best ? squared : best;
  }

  __attribute__((always_inline)) void lower(const Piece& piece, std::size_t g, const Eight& found,
                                            std::span<float> best_mm2) const {
    for (std::size_t k = 0; k < kGroup; ++k) {
      const std::size_t at = g * kGroup + k;
      if (at >= piece.sample.size()) return;
      float& best = best_mm2[piece.sample[at]];
      best = std::min(best, found[k]);
    }
  }

  __attribute__((target_clones("avx2", "default"), optimize("fp-contract=off"))) void all(
      const Piece& piece, std::size_t stretches, const Vector3f& direction,
      std::span<const float> moved_mm, std::span<float> best_mm2) const {
    for (std::size_t g = 0; g < piece.groups.size(); ++g) {
      Eight best = Eight{} + std::numeric_limits<float>::max();
      Eight along{};
      for (std::size_t k = 0; k < kGroup && !moved_mm.empty(); ++k) {
        along[k] = moved_mm[piece.sample[std::min(g * kGroup + k, piece.sample.size() - 1)]];
      }
      const Eight moved[3] = {along * direction.x(), along * direction.y(), along * direction.z()};
      for (std::size_t k = 0; k < stretches; ++k) stretch(piece.groups[g], k, best, moved);
      lower(piece, g, best, best_mm2);
    }
  }

  __attribute__((target_clones("avx2", "default"), optimize("fp-contract=off"))) void near(
      const Piece& piece, std::span<float> best_mm2) const {
    for (std::size_t block = 0; block < piece.of_block.size(); ++block) {
      bool wholly = false;
      const unsigned of_block = open_stretches(piece.of_block[block], wholly);
      if (of_block == 0) continue;
      const std::size_t to = std::min((block + 1) * kBlock, piece.groups.size());
      for (std::size_t g = block * kBlock; g < to; ++g) {
        Eight best = Eight{} + std::numeric_limits<float>::max();
        if (wholly) {
          best = Eight{} + 0.0F;
        } else {
          bool group_near = false;
          unsigned open = of_block & open_stretches(piece.of_group[g], group_near);
          if (group_near) {
            best = Eight{} + 0.0F;
          } else if (open == 0) {
            continue;
          }
          for (; open != 0 && !group_near; open &= open - 1) {
            stretch(piece.groups[g], static_cast<std::size_t>(__builtin_ctz(open)), best);
          }
        }
        lower(piece, g, best, best_mm2);
      }
    }
  }
};

LineSamples::LineSamples(std::size_t places, std::span<const Vector3d> positions_mm)
    : places_(places), samples_(positions_mm.size() / places) {
  for (std::size_t first = 0; first + 1 < places_; first += kStretches) {
    pieces_.push_back(piece(first, positions_mm));
  }
}

LineSamples::Piece LineSamples::piece(std::size_t first_place,
                                      std::span<const Vector3d> positions_mm) const {
  // A piece that ends early stays where the line ends.
  const auto at = [&](std::size_t sample, std::size_t place) -> const Vector3d& {
    return positions_mm[sample * places_ + std::min(first_place + place, places_ - 1)];
  };
  const std::size_t middle = std::min(kStretches, places_ - 1 - first_place) / 2;
  Eigen::MatrixX3d middles(static_cast<Eigen::Index>(samples_), 3);
  for (std::size_t s = 0; s < samples_; ++s) {
    middles.row(static_cast<Eigen::Index>(s)) = at(s, middle).transpose();
  }
  Piece made;
  made.sample = side_by_side(middles, kGroup * kBlock);
  const auto balls = [&](std::size_t from, std::size_t to) {
    Balls result{};
    for (std::size_t k = 0; k < kStretches; ++k) {
      Vector3d sum = Vector3d::Zero();
      for (std::size_t s = from; s < to; ++s) {
        sum += at(made.sample[s], k) + at(made.sample[s], k + 1);
      }
      const Vector3d centre = sum / (2.0 * static_cast<double>(to - from));
      double squared = 0.0;
      for (std::size_t s = from; s < to; ++s) {
        squared = std::max({squared, (at(made.sample[s], k) - centre).squaredNorm(),
                            (at(made.sample[s], k + 1) - centre).squaredNorm()});
      }
      result.x[k] = static_cast<float>(centre.x());
      result.y[k] = static_cast<float>(centre.y());
      result.z[k] = static_cast<float>(centre.z());
      result.radius[k] = static_cast<float>(std::sqrt(squared));
    }
    return result;
  };
  for (std::size_t from = 0; from < samples_; from += kGroup) {
    const std::size_t to = std::min(from + kGroup, samples_);
    Group group{};
    for (std::size_t k = 0; k <= kStretches; ++k) {
      for (std::size_t s = 0; s < kGroup; ++s) {
        const Vector3d& p = at(made.sample[std::min(from + s, samples_ - 1)], k);
        for (int axis = 0; axis < 3; ++axis) group.xyz[k][axis][s] = static_cast<float>(p[axis]);
      }
    }
    made.groups.push_back(group);
    made.of_group.push_back(balls(from, to));
  }
  for (std::size_t from = 0; from < samples_; from += kGroup * kBlock) {
    made.of_block.push_back(balls(from, std::min(from + kGroup * kBlock, samples_)));
  }
  Vector3d sum = Vector3d::Zero();
  for (std::size_t s = 0; s < samples_; ++s) sum += at(s, middle);
  const Vector3d centre = sum / static_cast<double>(samples_);
  double squared = 0.0;
  for (std::size_t s = 0; s < samples_; ++s) {
    for (std::size_t k = 0; k <= kStretches; ++k) {
      squared = std::max(squared, (at(s, k) - centre).squaredNorm());
    }
  }
  made.centre = centre.cast<float>();
  made.radius = static_cast<float>(std::sqrt(squared));
  return made;
}

void LineSamples::nearest(const Track& track, std::span<float> best_mm2) const {
  nearest(track, Vector3d::Zero(), {}, best_mm2);
}

void LineSamples::nearest(const Track& track, const Vector3d& direction,
                          std::span<const float> moved_mm, std::span<float> best_mm2) const {
  const Reckoning reckoning{FloatTrack(track), 0.0F};
  std::size_t left = places_ - 1;
  for (const Piece& piece : pieces_) {
    const std::size_t stretches = std::min(left, kStretches);
    reckoning.all(piece, stretches, direction.cast<float>(), moved_mm, best_mm2);
    left -= stretches;
  }
}

void LineSamples::within(const Track& track, double enough_mm, std::span<float> best_mm2) const {
  const auto enough = static_cast<float>(enough_mm);
  const Reckoning reckoning{FloatTrack(track), enough};
  for (const Piece& piece : pieces_) {
    if (distance_mm(reckoning.track, piece.centre) > piece.radius + enough) continue;
    reckoning.near(piece, best_mm2);
  }
}

}  // namespace endplate::geometry
