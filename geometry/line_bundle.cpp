#include "geometry/line_bundle.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "geometry/eight.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;
using Eigen::Vector3f;
using eight::Eight;
using eight::Mask;
using eight::Three;

// What is decided for many tracks by one is decided by more than rounding.
constexpr float kSlack_mm = 0.005F;
constexpr float kFar_mm2 = std::numeric_limits<float>::max();

// Eight tracks.
struct Lanes {
  Three from{};
  Three u{};
  Eight inverse_u;
};

// A track in the middle of others, and how far the ends of those lie from its own at most.
struct Middle {
  Vector3f from;
  Vector3f to;
  float radius;
};

Middle middle_of(std::span<const Track> tracks) {
  const auto centre = [&](Vector3d Track::*end) {
    Vector3d low = tracks.front().*end;
    Vector3d high = low;
    for (const Track& track : tracks) {
      low = low.cwiseMin(track.*end);
      high = high.cwiseMax(track.*end);
    }
    return Vector3d(0.5 * (low + high));
  };
  const Vector3d from = centre(&Track::from_mm);
  const Vector3d to = centre(&Track::to_mm);
  double squared = 0.0;
  for (const Track& track : tracks) {
    squared =
        std::max({squared, (track.from_mm - from).squaredNorm(), (track.to_mm - to).squaredNorm()});
  }
  return {from.cast<float>(), to.cast<float>(), static_cast<float>(std::sqrt(squared))};
}

void set_lane(Lanes& lanes, std::size_t k, const Vector3f& from, const Vector3f& to) {
  const Vector3f u = to - from;
  lanes.from.x[k] = from.x();
  lanes.from.y[k] = from.y();
  lanes.from.z[k] = from.z();
  lanes.u.x[k] = u.x();
  lanes.u.y[k] = u.y();
  lanes.u.z[k] = u.z();
  lanes.inverse_u[k] = 1.0F / std::max(u.squaredNorm(), eight::kPoint_mm2);
}

float to_segment_mm(const Vector3f& p, const Vector3f& from, const Vector3f& to) {
  const Vector3f along = to - from;
  const float squared = std::max(along.squaredNorm(), eight::kPoint_mm2);
  const float share = std::clamp((p - from).dot(along) / squared, 0.0F, 1.0F);
  return (p - from - share * along).norm();
}

template <bool kPoints>
ENDPLATE_EIGHT void squared_mm2(const Lanes& tracks, const Three& p, const Three& v,
                                const Eight& inverse_v, Eight& squared) {
  if constexpr (kPoints) {
    eight::point_segment_mm2(tracks.from, p, v, inverse_v, squared);
  } else {
    eight::track_segment_mm2(tracks.from, tracks.u, tracks.inverse_u, p, v, inverse_v, squared);
  }
}

// An Eight that a vector holds: the allocator of one whose alignment is an attribute loses it.
struct alignas(32) Stored {
  float of[8];
};

ENDPLATE_EIGHT void store(Stored& to, const Eight& from) {
  std::memcpy(&to, &from, sizeof to);
}

ENDPLATE_EIGHT float lane(const Eight& of, std::size_t k) {
  return of[k];
}

}  // namespace

struct LineBundle::Block {
  explicit Block(std::span<const Track> tracks) : middle(middle_of(tracks)) {
    points = true;
    for (std::size_t leaf = 0; leaf < kTracks / kLeaf; ++leaf) {
      const std::size_t begin = std::min(leaf * kLeaf, tracks.size() - 1);
      const std::size_t end = std::min(begin + kLeaf, tracks.size());
      const Middle of_leaf = middle_of(tracks.subspan(begin, end - begin));
      set_lane(middles, leaf, of_leaf.from, of_leaf.to);
      radius[leaf] = of_leaf.radius;
      for (std::size_t k = 0; k < kLeaf; ++k) {
        const Track& track = tracks[std::min(begin + k, tracks.size() - 1)];
        set_lane(leaves[leaf], k, track.from_mm.cast<float>(), track.to_mm.cast<float>());
        points = points && (track.to_mm - track.from_mm).squaredNorm() < eight::kPoint_mm2;
      }
    }
    for (std::size_t k = 0; k < kLeaf; ++k) set_lane(all, k, middle.from, middle.to);
    used = tracks.size() == kTracks ? ~std::uint64_t{0} : (std::uint64_t{1} << tracks.size()) - 1;
  }

  Middle middle;
  Lanes all;      // the middle one, eight times
  Lanes middles;  // of the leaves
  Eight radius{};
  std::array<Lanes, kTracks / kLeaf> leaves;
  bool points = false;
  std::uint64_t used = 0;
};

struct LineBundle::NearPiece {
  std::size_t index;
  float mm;  // from the ball that holds it
};

// Of eight bits, those that are set.
struct SetBits {
  std::array<std::uint8_t, 8> place{};  // their numbers, then zeroes
  std::uint64_t bytes = 0;              // a byte of ones for each
  std::uint32_t count = 0;
};

constexpr std::array<SetBits, 256> kSetBits = [] {
  std::array<SetBits, 256> all;
  for (unsigned bits = 0; bits < 256; ++bits) {
    SetBits& set = all[bits];
    for (unsigned k = 0; k < 8; ++k) {
      if ((bits >> k & 1U) == 0) continue;
      set.place[set.count++] = static_cast<std::uint8_t>(k);
      set.bytes |= std::uint64_t{0xFF} << (8 * k);
    }
  }
  return all;
}();

// Which of a word's bytes are all ones, as bits.
ENDPLATE_EIGHT unsigned full_bytes(std::uint64_t word) {
  constexpr std::uint64_t kSeven = 0x7F7F7F7F7F7F7F7F;
  const std::uint64_t absent = ~word;
  const std::uint64_t full = ~(((absent & kSeven) + kSeven) | absent | kSeven) >> 7U;
  return static_cast<unsigned>(full * 0x0102040810204080 >> 56U);
}

// Groups of samples that are taken through all passes together, so that what is noted of them stays
// near the processor.
constexpr std::size_t kChunk = 8;

// The work on one block of tracks.
struct LineBundle::Work {
  const LineBundle& of;
  const Block& block;
  struct OfLine {
    const Stretch* stretch;
    std::size_t line;
  };
  std::vector<NearPiece> pieces = {};
  std::vector<Stored> of_capsules = {};  // squared distances, by piece found
  // Of one sample, by stretch that may matter.
  std::vector<OfLine> stretches = {};
  std::vector<Stored> of_leaves = {};

  // The nearest first: they decide the most.
  void find_pieces(std::span<const std::uint8_t> chosen, float reach_mm) {
    for (std::size_t k = 0; k < of.pieces_.size(); ++k) {
      const Piece& piece = of.pieces_[k];
      if (chosen[piece.line] == 0) continue;
      const float mm =
          to_segment_mm(piece.centre, block.middle.from, block.middle.to) - piece.radius;
      if (mm <= reach_mm) pieces.push_back({k, mm});
    }
    std::ranges::stable_sort(pieces, {}, &NearPiece::mm);
  }

  // Of the pieces found, what lies farther in every sample than another one does at most.
  void drop_far_pieces() {
    float nearest_mm = std::numeric_limits<float>::max();
    for (const NearPiece& near : pieces) {
      nearest_mm = std::min(nearest_mm, near.mm + 2.0F * of.pieces_[near.index].radius);
    }
    const float reach_mm = nearest_mm + 2.0F * block.middle.radius + kSlack_mm;
    std::erase_if(pieces, [&](const NearPiece& near) { return near.mm > reach_mm; });
    of_capsules.resize(pieces.size());
  }

  std::span<const Stretch> of_piece(std::size_t sample, std::size_t piece) const {
    const std::size_t at = piece * of.samples_ + sample;
    return std::span(of.stretches_).subspan(of.begin_[at], of.begin_[at + 1] - of.begin_[at]);
  }

  // Of a piece in eight samples against the middle track.
  template <bool kPoints>
  ENDPLATE_EIGHT void capsule(const Capsules& capsules, Eight& mm2) const {
    Three p{};
    Three v{};
    Eight inverse{};
    eight::load(p, capsules.p);
    eight::load(v, capsules.v);
    eight::load(inverse, capsules.inverse);
    squared_mm2<kPoints>(block.all, p, v, inverse, mm2);
  }

  template <bool kPoints>
  ENDPLATE_EIGHT void stretch(const Lanes& tracks, const Stretch& one, Eight& mm2) const {
    Three p{};
    Three v{};
    Eight inverse{};
    Eight whole{};
    eight::load(whole, one.p);
    eight::spread(p.x, whole, 0);
    eight::spread(p.y, whole, 1);
    eight::spread(p.z, whole, 2);
    eight::spread(v.x, whole, 3);
    eight::spread(v.y, whole, 4);
    eight::spread(v.z, whole, 5);
    eight::spread(inverse, whole, 6);
    squared_mm2<kPoints>(tracks, p, v, inverse, mm2);
  }

  template <bool kPoints>
  ENDPLATE_EIGHT void within(float within_mm, std::span<std::uint64_t> near) const {
    const float outer = within_mm + block.middle.radius + kSlack_mm;
    const float inner = within_mm - block.middle.radius - kSlack_mm;
    const Eight zero{};
    // Of the leaves: beyond the first no track of it is near, within the second all are.
    Eight outer_mm2 = block.radius + (within_mm + kSlack_mm);
    outer_mm2 *= outer_mm2;
    Eight inner_mm2 = (within_mm - kSlack_mm) - block.radius;
    inner_mm2 = inner_mm2 > zero ? inner_mm2 * inner_mm2 : zero - 1.0F;
    Eight limit_mm2{};
    eight::fill(limit_mm2, within_mm * within_mm);
    std::ranges::fill(near, std::uint64_t{0});
    const std::size_t groups = of.groups();
    std::array<std::uint32_t, kGroup * kChunk + kGroup> open_samples;
    std::array<std::uint32_t, kGroup * kChunk * kStretches + kStretches> open_stretches;
    std::array<std::uint32_t, kGroup * kChunk * kStretches * 8 + 8> task_stretch;
    std::array<std::uint8_t, kGroup * kChunk * kStretches * 8 + 8> task_leaf;
    // Piece by piece and in three passes, each a loop without branches: what is open is too hard
    // to foretell for the processor.
    for (const NearPiece& piece : pieces) {
      const Capsules* capsules = of.capsules_.data() + piece.index * groups;
      const std::uint32_t* begin = of.begin_.data() + piece.index * of.samples_;
      for (std::size_t from = 0; from < groups; from += kChunk) {
        std::size_t samples = 0;
        for (std::size_t g = from; g < std::min(from + kChunk, groups); ++g) {
          Eight mm2{};
          Eight radius{};
          capsule<kPoints>(capsules[g], mm2);
          eight::load(radius, capsules[g].radius);
          const Eight reach = radius + outer;
          const Eight all = inner - radius;
          unsigned open = eight::bits(mm2 <= reach * reach);
          const unsigned whole = eight::bits((all >= zero) & (mm2 <= all * all));
          if (g + 1 == groups) open &= of.in_last_group();
          if ((whole & open) != 0) {
            for (unsigned k = whole & open; k != 0; k &= k - 1) {
              near[g * kGroup + static_cast<unsigned>(__builtin_ctz(k))] = ~std::uint64_t{0};
            }
          }
          open &= ~whole;
          const SetBits& set = kSetBits[open];
          for (std::size_t k = 0; k < 8; ++k) {
            open_samples[samples + k] = static_cast<std::uint32_t>(g * kGroup) + set.place[k];
          }
          samples += set.count;
        }
        std::size_t stretches_open = 0;
        for (std::size_t k = 0; k < samples; ++k) {
          const std::uint32_t sample = open_samples[k];
          const std::uint32_t first = begin[sample];
          for (std::uint32_t i = 0; i < kStretches; ++i) {
            open_stretches[stretches_open + i] = first + i;
          }
          stretches_open += near[sample] == ~std::uint64_t{0} ? 0 : begin[sample + 1] - first;
        }
        std::size_t tasks = 0;
        for (std::size_t k = 0; k < stretches_open; ++k) {
          const Stretch& one = of.stretches_[open_stretches[k]];
          Eight mm2{};
          stretch<kPoints>(block.middles, one, mm2);
          const unsigned inside = eight::bits(mm2 <= inner_mm2);
          std::uint64_t& word = near[one.sample];
          word |= kSetBits[inside].bytes;
          const SetBits& set = kSetBits[eight::bits(mm2 <= outer_mm2) & ~full_bytes(word)];
          for (std::size_t i = 0; i < 8; ++i) task_stretch[tasks + i] = open_stretches[k];
          std::memcpy(&task_leaf[tasks], set.place.data(), 8);
          tasks += set.count;
        }
        for (std::size_t k = 0; k < tasks; ++k) {
          const Stretch& one = of.stretches_[task_stretch[k]];
          const unsigned leaf = task_leaf[k];
          Eight mm2{};
          stretch<kPoints>(block.leaves[leaf], one, mm2);
          near[one.sample] |= std::uint64_t{eight::bits(mm2 <= limit_mm2)} << (8U * leaf);
        }
      }
    }
    for (std::uint64_t& word : near) word &= block.used;
  }

  template <bool kPoints>
  ENDPLATE_EIGHT void nearest_of_sample(float* squared_out, std::int32_t* line_out) {
    Eight best{};
    eight::fill(best, kFar_mm2);
    of_leaves.resize(stretches.size());
    for (std::size_t i = 0; i < stretches.size(); ++i) {
      Eight mm2{};
      stretch<kPoints>(block.middles, *stretches[i].stretch, mm2);
      best = mm2 < best ? mm2 : best;
      store(of_leaves[i], mm2);
    }
    for (std::size_t leaf = 0; leaf < kTracks / kLeaf; ++leaf) {
      const float reach = std::sqrt(lane(best, leaf)) + 2.0F * lane(block.radius, leaf) + kSlack_mm;
      const float reach_mm2 = reach * reach;
      Eight nearest{};
      Mask of_line{};
      eight::fill(nearest, kFar_mm2);
      for (std::size_t i = 0; i < stretches.size(); ++i) {
        if (of_leaves[i].of[leaf] > reach_mm2) continue;
        Eight mm2{};
        stretch<kPoints>(block.leaves[leaf], *stretches[i].stretch, mm2);
        const Mask nearer = mm2 < nearest;
        const Mask here = Mask{} + static_cast<int>(stretches[i].line);
        nearest = nearer ? mm2 : nearest;
        of_line = nearer ? here : of_line;
      }
      std::memcpy(squared_out + leaf * kLeaf, &nearest, sizeof nearest);
      std::memcpy(line_out + leaf * kLeaf, &of_line, sizeof of_line);
    }
  }

  template <bool kPoints>
  ENDPLATE_EIGHT void nearest(std::span<float> squared_out, std::span<std::int32_t> line_out) {
    const float wider = 2.0F * block.middle.radius + kSlack_mm;
    const std::size_t groups = of.groups();
    for (std::size_t g = 0; g < groups; ++g) {
      const auto at = [&](std::size_t i) -> const Capsules& {
        return of.capsules_[pieces[i].index * groups + g];
      };
      std::array<float, kGroup> most_mm;  // that the nearest piece may be away
      most_mm.fill(std::numeric_limits<float>::max());
      for (std::size_t i = 0; i < pieces.size(); ++i) {
        Eight mm2{};
        capsule<kPoints>(at(i), mm2);
        store(of_capsules[i], mm2);
        for (std::size_t s = 0; s < kGroup; ++s) {
          float& mm = of_capsules[i].of[s];
          mm = std::sqrt(mm);
          most_mm[s] = std::min(most_mm[s], mm + at(i).radius[s]);
        }
      }
      const std::size_t samples = std::min(kGroup, of.samples_ - g * kGroup);
      for (std::size_t s = 0; s < samples; ++s) {
        stretches.clear();
        for (std::size_t i = 0; i < pieces.size(); ++i) {
          if (of_capsules[i].of[s] - at(i).radius[s] > most_mm[s] + wider) continue;
          for (const Stretch& one : of_piece(g * kGroup + s, pieces[i].index)) {
            stretches.push_back({&one, of.pieces_[pieces[i].index].line});
          }
        }
        const std::size_t out = (g * kGroup + s) * kTracks;
        nearest_of_sample<kPoints>(&squared_out[out], &line_out[out]);
      }
    }
  }

#define ENDPLATE_CLONES __attribute__((target_clones("avx2", "default")))

  ENDPLATE_CLONES void points_within(float within_mm, std::span<std::uint64_t> near) const {
    within<true>(within_mm, near);
  }
  ENDPLATE_CLONES void tracks_within(float within_mm, std::span<std::uint64_t> near) const {
    within<false>(within_mm, near);
  }
  ENDPLATE_CLONES void points_nearest(std::span<float> mm2, std::span<std::int32_t> of_line) {
    nearest<true>(mm2, of_line);
  }
  ENDPLATE_CLONES void tracks_nearest(std::span<float> mm2, std::span<std::int32_t> of_line) {
    nearest<false>(mm2, of_line);
  }
};

LineBundle::LineBundle(std::span<const Line> lines)
    : lines_(lines.size()), samples_(lines.front().positions_mm.size() / lines.front().places) {
  for (std::size_t n = 0; n < lines.size(); ++n) {
    for (std::size_t from = 0; from + 1 < lines[n].places; from += kStretches) {
      add_piece(lines[n], n, from, std::min(from + kStretches, lines[n].places - 1));
    }
  }
  begin_.push_back(static_cast<std::uint32_t>(stretches_.size()));
}

void LineBundle::add_piece(const Line& line, std::size_t number, std::size_t from, std::size_t to) {
  const auto at = [&](std::size_t sample, std::size_t place) {
    return line.positions_mm[std::min(sample, samples_ - 1) * line.places + place];
  };
  // How far the places between lie from the straight way of one to another.
  const auto bent_mm = [&](std::size_t sample, std::size_t a, std::size_t b) {
    const Vector3f begin = at(sample, a).cast<float>();
    const Vector3f end = at(sample, b).cast<float>();
    float most = 0.0F;
    for (std::size_t k = a + 1; k < b; ++k) {
      most = std::max(most, to_segment_mm(at(sample, k).cast<float>(), begin, end));
    }
    return most;
  };
  const auto way = [&](std::size_t sample, std::size_t a, std::size_t b) {
    const Vector3f p = at(sample, a).cast<float>();
    const Vector3f v = at(sample, b).cast<float>() - p;
    return Stretch{{p.x(), p.y(), p.z()},
                   {v.x(), v.y(), v.z()},
                   1.0F / std::max(v.squaredNorm(), eight::kPoint_mm2),
                   static_cast<std::uint32_t>(sample)};
  };
  Vector3d centre = Vector3d::Zero();
  for (std::size_t s = 0; s < samples_; ++s) centre += at(s, (from + to) / 2);
  centre /= static_cast<double>(samples_);
  double squared = 0.0;
  for (std::size_t s = 0; s < groups() * kGroup; ++s) {
    if (s % kGroup == 0) capsules_.emplace_back();
    const Stretch whole = way(s, from, to);
    Capsules& capsules = capsules_.back();
    for (std::size_t axis = 0; axis < 3; ++axis) {
      capsules.p[axis][s % kGroup] = whole.p[axis];
      capsules.v[axis][s % kGroup] = whole.v[axis];
    }
    capsules.inverse[s % kGroup] = whole.inverse;
    capsules.radius[s % kGroup] = bent_mm(s, from, to) + kSlack_mm;
    for (std::size_t k = from; k <= to; ++k) {
      squared = std::max(squared, (at(s, k) - centre).squaredNorm());
    }
  }
  for (std::size_t s = 0; s < samples_; ++s) {
    begin_.push_back(static_cast<std::uint32_t>(stretches_.size()));
    for (std::size_t a = from; a < to;) {
      std::size_t b = a + 1;
      while (b < to && bent_mm(s, a, b + 1) <= static_cast<float>(kStraight_mm)) ++b;
      stretches_.push_back(way(s, a, b));
      a = b;
    }
  }
  pieces_.push_back({number, centre.cast<float>(), static_cast<float>(std::sqrt(squared))});
}

void LineBundle::within(std::span<const Track> tracks, double within_mm,
                        std::span<const std::uint8_t> chosen, std::span<std::uint64_t> near) const {
  const Block block(tracks);
  const auto mm = static_cast<float>(within_mm);
  Work work{*this, block};
  work.find_pieces(chosen, mm + block.middle.radius + kSlack_mm);
  if (work.pieces.empty()) {
    std::ranges::fill(near, std::uint64_t{0});
  } else if (block.points) {
    work.points_within(mm, near);
  } else {
    work.tracks_within(mm, near);
  }
}

void LineBundle::nearest(std::span<const Track> tracks, std::span<const std::uint8_t> chosen,
                         std::span<float> squared_mm2, std::span<std::int32_t> line) const {
  const Block block(tracks);
  Work work{*this, block};
  work.find_pieces(chosen, std::numeric_limits<float>::max());
  work.drop_far_pieces();
  if (block.points) {
    work.points_nearest(squared_mm2, line);
  } else {
    work.tracks_nearest(squared_mm2, line);
  }
}

}  // namespace endplate::geometry
