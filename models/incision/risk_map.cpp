#include "models/incision/risk_map.hpp"

#include <tbb/enumerable_thread_specific.h>
#include <tbb/parallel_for.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "geometry/triangle_tree.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;
using geometry::LineBundle;
using geometry::Track;

constexpr std::size_t kTracks = LineBundle::kTracks;
// Neighbours are found by tracks of this depth: on a sharp edge of the skin two places may lie
// together and their tracks part.
constexpr double kSorted_mm = 10.0;
// Begun a little inside, so that the skin of the entry is no exit.
constexpr double kInside_mm = 0.5;

using Ends = Eigen::Matrix<double, 6, 1>;  // where a track begins and where it ends

// Halves a range across its longest side until it is one block, and blocks until they are leaves.
void put_together(std::span<std::uint32_t> order, const std::vector<Ends>& ends) {
  if (order.size() <= LineBundle::kLeaf) return;
  const std::size_t unit = order.size() > kTracks ? kTracks : LineBundle::kLeaf;
  Ends low = ends[order.front()];
  Ends high = low;
  for (const std::uint32_t k : order) {
    low = low.cwiseMin(ends[k]);
    high = high.cwiseMax(ends[k]);
  }
  Eigen::Index side = 0;
  (high - low).maxCoeff(&side);
  const std::size_t units = (order.size() + unit - 1) / unit;
  const std::size_t half = units / 2 * unit;
  std::ranges::nth_element(order, order.begin() + static_cast<std::ptrdiff_t>(half),
                           [&](std::uint32_t a, std::uint32_t b) {
                             return ends[a][side] < ends[b][side] ||
                                    (ends[a][side] == ends[b][side] && a < b);
                           });
  put_together(order.first(half), ends);
  put_together(order.subspan(half), ends);
}

// How many of the words have each bit.
std::array<std::uint32_t, kTracks> counts(std::span<const std::uint64_t> words) {
  constexpr std::uint64_t kLow = 0x0101010101010101;
  constexpr std::size_t kMost = 255;  // that a byte counts to
  std::array<std::uint32_t, kTracks> total{};
  for (std::size_t from = 0; from < words.size(); from += kMost) {
    std::array<std::uint64_t, 8> bytes{};
    for (const std::uint64_t word : words.subspan(from, std::min(kMost, words.size() - from))) {
      for (unsigned bit = 0; bit < 8; ++bit) bytes[bit] += word >> bit & kLow;
    }
    for (std::size_t k = 0; k < kTracks; ++k) {
      total[k] += static_cast<std::uint32_t>(bytes[k % 8] >> (8 * (k / 8)) & 0xFFU);
    }
  }
  return total;
}

Expected<std::vector<std::uint8_t>> checked(const SampledNerves& nerves,
                                            const RiskOptions& options) {
  if (!(options.depth_mm >= 0.0) || std::isinf(options.depth_mm)) {
    return std::unexpected(Error::input({"/depth_mm", "this is no depth under the skin",
                                         "Give the depth in mm, 0 for the skin itself."}));
  }
  return nerves.chosen(options.nerves);
}

// Of each block of vertices its tracks and their vertices.
template <class Work>
void by_block(const SkinEntries& skin, double depth_mm, const Work& work) {
  const std::span<const std::uint32_t> order(skin.order());
  const std::size_t blocks = (order.size() + kTracks - 1) / kTracks;
  tbb::parallel_for(std::size_t{0}, blocks, [&](std::size_t block) {
    const auto vertices =
        order.subspan(block * kTracks, std::min(kTracks, order.size() - block * kTracks));
    std::array<Track, kTracks> tracks;
    for (std::size_t k = 0; k < vertices.size(); ++k) {
      tracks[k] = skin.track(vertices[k], depth_mm);
    }
    work(std::span<const Track>(tracks).first(vertices.size()), vertices);
  });
}

}  // namespace

SkinEntries::SkinEntries(const geometry::TriangleMesh& skin)
    : from_mm_(skin.vertices_mm),
      inward_(skin.vertices_mm.size(), Vector3d::Zero()),
      through_mm_(skin.vertices_mm.size(), 0.0),
      order_(skin.vertices_mm.size()) {
  for (const auto& corners : skin.triangles) {
    const auto corner = [&](std::size_t k) { return from_mm_[corners[k]]; };
    const Vector3d inward = -(corner(1) - corner(0)).cross(corner(2) - corner(0));
    for (const std::uint32_t k : corners) inward_[k] += inward;
  }
  for (Vector3d& inward : inward_) inward.normalize();
  const geometry::TriangleTree tree(skin);
  tbb::parallel_for(std::size_t{0}, from_mm_.size(), [&](std::size_t k) {
    const auto hits = tree.along(from_mm_[k] + kInside_mm * inward_[k], inward_[k]);
    through_mm_[k] = hits.empty() ? 0.0 : hits.front().distance_mm + kInside_mm;
  });
  std::vector<Ends> ends(from_mm_.size());
  for (std::size_t k = 0; k < ends.size(); ++k) {
    const Track of = track(k, kSorted_mm);
    ends[k] << of.from_mm, of.to_mm;
  }
  std::iota(order_.begin(), order_.end(), 0U);
  put_together(order_, ends);
}

Track SkinEntries::track(std::size_t vertex, double depth_mm) const {
  return {from_mm_[vertex],
          from_mm_[vertex] + std::min(depth_mm, through_mm_[vertex]) * inward_[vertex]};
}

Expected<RiskMap> risk_map(const SkinEntries& skin, const SampledNerves& nerves,
                           const RiskOptions& options) {
  const auto within_mm = checked_within_mm(options.within_mm);
  if (!within_mm) return std::unexpected(within_mm.error());
  const auto chosen = checked(nerves, options);
  if (!chosen) return std::unexpected(chosen.error());
  RiskMap map;
  map.limbs = nerves.limbs();
  map.chance.resize(skin.size());
  tbb::enumerable_thread_specific<std::vector<std::uint64_t>> words(nerves.limbs());
  by_block(skin, options.depth_mm,
           [&](std::span<const Track> tracks, std::span<const std::uint32_t> vertices) {
             std::vector<std::uint64_t>& near = words.local();
             nerves.bundle().within(tracks, *within_mm, *chosen, near);
             const auto count = counts(near);
             for (std::size_t k = 0; k < vertices.size(); ++k) {
               map.chance[vertices[k]] =
                   static_cast<double>(count[k]) / static_cast<double>(nerves.limbs());
             }
           });
  return map;
}

Expected<NearestMap> nearest_map(const SkinEntries& skin, const SampledNerves& nerves,
                                 const RiskOptions& options) {
  const auto chosen = checked(nerves, options);
  if (!chosen) return std::unexpected(chosen.error());
  const std::size_t limbs = nerves.limbs();
  NearestMap map;
  map.median_mm.resize(skin.size());
  map.nerve.resize(skin.size());
  struct Buffers {
    std::vector<float> squared_mm2;
    std::vector<std::int32_t> line;
    std::vector<float> of_vertex;
    std::vector<std::uint32_t> times;
  };
  tbb::enumerable_thread_specific<Buffers> all_buffers([&] {
    return Buffers{std::vector<float>(limbs * kTracks), std::vector<std::int32_t>(limbs * kTracks),
                   std::vector<float>(limbs), std::vector<std::uint32_t>(nerves.nerves().size())};
  });
  by_block(skin, options.depth_mm,
           [&](std::span<const Track> tracks, std::span<const std::uint32_t> vertices) {
             Buffers& buffers = all_buffers.local();
             nerves.bundle().nearest(tracks, *chosen, buffers.squared_mm2, buffers.line);
             for (std::size_t k = 0; k < vertices.size(); ++k) {
               std::ranges::fill(buffers.times, 0U);
               for (std::size_t s = 0; s < limbs; ++s) {
                 buffers.of_vertex[s] = buffers.squared_mm2[s * kTracks + k];
                 ++buffers.times[static_cast<std::size_t>(buffers.line[s * kTracks + k])];
               }
               const auto middle =
                   buffers.of_vertex.begin() + static_cast<std::ptrdiff_t>(limbs / 2);
               std::ranges::nth_element(buffers.of_vertex, middle);
               map.median_mm[vertices[k]] = std::sqrt(static_cast<double>(*middle));
               const auto most = std::ranges::max_element(buffers.times) - buffers.times.begin();
               map.nerve[vertices[k]] = nerves.nerves()[static_cast<std::size_t>(most)];
             }
           });
  return map;
}

}  // namespace endplate::incision
