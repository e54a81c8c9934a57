#include "models/incision/nearby.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "geometry/line_samples.hpp"

namespace endplate::incision {
namespace {

using anatomy::NodeKind;
using Eigen::Vector3d;
using geometry::LineSamples;
using limb::SampledLine;

// The depth of a nerve is summed up over so many limbs.
constexpr std::size_t kDepthLimbs = 200;

bool serves_skin_alone(const anatomy::NerveTree& tree, anatomy::NodeIndex nerve) {
  const anatomy::NerveNode& node = tree.node(nerve);
  if (node.kind == NodeKind::motor) return false;
  return std::ranges::all_of(
             node.children,
             [&](anatomy::NodeIndex child) { return serves_skin_alone(tree, child); }) &&
         (!node.children.empty() || node.kind == NodeKind::cutaneous);
}

struct PlaceOnLine {
  std::size_t place = 0;  // of the line, nearest to the cut
  std::size_t station = 0;
  double distance_mm = std::numeric_limits<double>::infinity();
};

double distance_mm(const geometry::Track& track, const Vector3d& p) {
  const Vector3d along = track.to_mm - track.from_mm;
  const double squared = along.squaredNorm();
  const double share =
      squared > 0.0 ? std::clamp((p - track.from_mm).dot(along) / squared, 0.0, 1.0) : 0.0;
  return (track.from_mm + share * along - p).norm();
}

PlaceOnLine nearest_place(const Cut& cut, const std::vector<Vector3d>& line) {
  PlaceOnLine best;
  for (std::size_t s = 0; s < cut.stations.size(); ++s) {
    for (std::size_t k = 0; k < line.size(); ++k) {
      const double mm = distance_mm(cut.stations[s].track, line[k]);
      if (mm < best.distance_mm) best = {k, s, mm};
    }
  }
  return best;
}

// How far the lines of each sampled limb lie distal of where they would on the mean limb, for
// someone who measures a mark from its landmark.
std::vector<float> moved_by_size(const SkinPlace& skin, const std::vector<Vector3d>& size_ratios) {
  std::vector<float> moved;
  if (skin.from_landmark_mm == 0.0) return moved;
  for (const Vector3d& ratio : size_ratios) {
    const double longer = ratio[static_cast<Eigen::Index>(skin.segment)];
    moved.push_back(static_cast<float>(skin.from_landmark_mm * (longer - 1.0)));
  }
  return moved;
}

std::vector<ClearStretch> clear_stretches(const Cut& cut, const std::vector<float>& nearest_mm2,
                                          std::size_t samples, const NearbyOptions& options) {
  const auto limit = static_cast<float>(options.farther_than_mm * options.farther_than_mm);
  const auto farther = [&](std::size_t station, std::size_t sample) {
    return nearest_mm2[station * samples + sample] > limit;
  };
  const auto clear = [&](std::size_t station) {
    std::size_t count = 0;
    for (std::size_t s = 0; s < samples; ++s) count += farther(station, s) ? 1 : 0;
    return static_cast<double>(count) >= options.clear_chance * static_cast<double>(samples);
  };
  std::vector<ClearStretch> stretches;
  const std::size_t stations = cut.stations.size();
  for (std::size_t from = 0; from < stations; ++from) {
    if (!clear(from)) continue;
    std::size_t to = from;
    while (to + 1 < stations && clear(to + 1)) ++to;
    std::size_t all = 0;
    for (std::size_t s = 0; s < samples; ++s) {
      bool whole = true;
      for (std::size_t k = from; k <= to && whole; ++k) whole = farther(k, s);
      all += whole ? 1 : 0;
    }
    stretches.push_back({cut.stations[from].along_mm, cut.stations[to].along_mm,
                         static_cast<double>(all) / static_cast<double>(samples)});
    from = to;
  }
  return stretches;
}

}  // namespace

bool comes_near(const Cut& cut, const std::vector<Vector3d>& mean_mm,
                const NearbyOptions& options) {
  return nearest_place(cut, mean_mm).distance_mm <= options.shown_within_mm;
}

Nearby nearby(const Theatre& theatre, const anatomy::NerveTree& tree, const Cut& cut,
              const std::vector<SampledLine>& lines, const std::vector<Vector3d>& size_ratios,
              const NearbyOptions& options) {
  constexpr float kFar_mm2 = std::numeric_limits<float>::max();
  const std::size_t samples = size_ratios.size();
  const std::size_t stations = cut.stations.size();
  std::vector<std::vector<float>> moved;
  for (const Station& station : cut.stations) {
    moved.push_back(moved_by_size(station.skin, size_ratios));
  }

  std::vector<std::size_t> shown;
  std::vector<PlaceOnLine> nearest;
  for (std::size_t n = 0; n < lines.size(); ++n) {
    const PlaceOnLine place = nearest_place(cut, lines[n].mean_mm);
    if (place.distance_mm > options.shown_within_mm) continue;
    shown.push_back(n);
    nearest.push_back(place);
  }
  // Of each shown nerve: squared distances by station and sample.
  std::vector<std::vector<float>> squared(shown.size());
  tbb::parallel_for(std::size_t{0}, shown.size(), [&](std::size_t i) {
    const SampledLine& line = lines[shown[i]];
    const LineSamples of_line(line.mean_mm.size(), line.samples_mm);
    squared[i].assign(stations * samples, kFar_mm2);
    for (std::size_t s = 0; s < stations; ++s) {
      of_line.nearest(cut.stations[s].track, cut.stations[s].skin.distal, moved[s],
                      std::span(squared[i]).subspan(s * samples, samples));
    }
  });

  Nearby result;
  std::vector<float> of_all(stations * samples, kFar_mm2);
  const auto limit = static_cast<float>(options.farther_than_mm * options.farther_than_mm);
  const auto share_within = [&](std::span<const float> values, float within_mm2) {
    const auto count = std::ranges::count_if(values, [&](float v) { return v <= within_mm2; });
    return static_cast<double>(count) / static_cast<double>(values.size());
  };
  for (std::size_t i = 0; i < shown.size(); ++i) {
    const SampledLine& line = lines[shown[i]];
    NerveNearby nerve;
    nerve.nerve = line.nerve;
    nerve.of_skin = serves_skin_alone(tree, line.nerve);
    std::vector<float> best(samples, kFar_mm2);
    for (std::size_t s = 0; s < stations; ++s) {
      for (std::size_t k = 0; k < samples; ++k) {
        const float v = squared[i][s * samples + k];
        best[k] = std::min(best[k], v);
        of_all[s * samples + k] = std::min(of_all[s * samples + k], v);
      }
      nerve.along_chance.push_back(
          share_within(std::span(squared[i]).subspan(s * samples, samples), limit));
    }
    std::vector<double> distances_mm;
    for (const float v : best) distances_mm.push_back(std::sqrt(static_cast<double>(v)));
    nerve.nearest_mm = summarise_sample(distances_mm);
    for (const double mm : kWithin_mm) {
      nerve.chance_within.push_back({mm, share_within(best, static_cast<float>(mm * mm))});
    }
    nerve.at_along_mm = cut.stations[nearest[i].station].along_mm;
    nerve.nearest_place_mm = line.mean_mm[nearest[i].place];
    std::vector<double> depths_mm;
    for (std::size_t k = 0; k < std::min(samples, kDepthLimbs); ++k) {
      depths_mm.push_back(
          theatre.depth_mm(line.samples_mm[k * line.mean_mm.size() + nearest[i].place]));
    }
    nerve.depth_mm = summarise_sample(depths_mm);
    result.nerves.push_back(std::move(nerve));
  }
  std::ranges::stable_sort(result.nerves, {},
                           [](const NerveNearby& nerve) { return nerve.nearest_mm.p50; });
  for (std::size_t s = 0; s < stations; ++s) {
    result.along_chance.push_back(
        share_within(std::span(of_all).subspan(s * samples, samples), limit));
  }
  result.clear = clear_stretches(cut, of_all, samples, options);
  return result;
}

}  // namespace endplate::incision
