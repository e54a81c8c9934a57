#include "models/incision/corridor.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <bit>
#include <cmath>

#include "models/incision/corridor_search.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;
using geometry::LineBundle;
using geometry::Track;

// Offsets of the strip; the family's are multiples of it.
constexpr double kOffset_mm = 1.0;
// The skin's triangles are flat: which way is across is the mean of so many stations either side.
constexpr std::size_t kSmoothed = 2;

Expected<int> whole_step(const CorridorOptions& options) {
  const auto bad = [](const char* place, std::string what, std::string mend) {
    return std::unexpected(Error::input({place, std::move(what), std::move(mend)}));
  };
  if (!(options.half_width_mm >= kOffset_mm && options.half_width_mm <= kWidest_mm)) {
    return bad("/half_width_mm", fmt::format("{} mm is no half-width", options.half_width_mm),
               fmt::format("Give 1 to {:.0f} mm.", kWidest_mm));
  }
  if (!(options.ends_may_slide_mm >= 0.0 && options.ends_may_slide_mm <= options.half_width_mm)) {
    return bad("/ends_may_slide_mm", "the ends cannot slide so far",
               "Give 0 mm to the half-width.");
  }
  if (!(options.place_chance >= 0.0 && options.place_chance <= 1.0)) {
    return bad("/place_chance", fmt::format("{} is no chance", options.place_chance),
               "Give a share from 0 to 1.");
  }
  const double steps = options.offset_step_mm / kOffset_mm;
  if (!(steps >= 1.0 && options.offset_step_mm <= options.half_width_mm &&
        steps == std::round(steps))) {
    return bad("/offset_step_mm", "the offset goes in whole mm",
               "Give a whole number of mm, no more than the half-width.");
  }
  return static_cast<int>(steps);
}

// Which way is to the right, by station.
std::vector<Vector3d> rights(const Cut& cut) {
  const auto& stations = cut.stations;
  std::vector<Vector3d> result;
  for (std::size_t k = 0; k < stations.size(); ++k) {
    const std::size_t from = k - std::min(k, kSmoothed);
    const std::size_t to = std::min(k + kSmoothed, stations.size() - 1);
    Vector3d outward = Vector3d::Zero();
    for (std::size_t i = from; i <= to; ++i) outward -= stations[i].skin.inward;
    const Vector3d along = stations[to].skin.position_mm - stations[from].skin.position_mm;
    result.push_back(along.cross(outward).normalized());
  }
  return result;
}

// The place of the skin so far to the right, and its way in to the depth that was planned.
Station beside(const Theatre& theatre, const PlannedCut& wanted, const Station& station,
               const Vector3d& right, double offset_mm) {
  if (offset_mm == 0.0) return station;
  PlannedCut there;
  there.kind = CutKind::portal;
  there.depth_mm = wanted.depth_mm;
  there.marks.emplace_back();
  there.marks.front().picked_mm = station.skin.position_mm + offset_mm * right;
  // A place picked is on the skin, and the depth was good for the wanted line.
  return lay_cut(theatre, there).value().stations.front();
}

Cut laid_beside(const Theatre& theatre, const PlannedCut& planned, const Cut& wanted,
                const std::vector<Vector3d>& right, const std::vector<double>& offsets_mm) {
  Cut cut = wanted;
  tbb::parallel_for(std::size_t{0}, cut.stations.size(), [&](std::size_t k) {
    cut.stations[k] = beside(theatre, planned, wanted.stations[k], right[k], offsets_mm[k]);
  });
  cut.length_mm = 0.0;
  for (std::size_t k = 0; k < cut.stations.size(); ++k) {
    if (k > 0) {
      cut.length_mm +=
          (cut.stations[k].skin.position_mm - cut.stations[k - 1].skin.position_mm).norm();
    }
    cut.stations[k].along_mm = cut.length_mm;
  }
  return cut;
}

// In which limbs each track has a nerve near; one row of words a track.
std::vector<std::uint64_t> near_rows(const SampledNerves& nerves,
                                     const std::vector<std::uint8_t>& chosen,
                                     std::span<const Track> tracks, double within_mm) {
  const std::size_t words = (nerves.limbs() + 63) / 64;
  std::vector<std::uint64_t> rows(tracks.size() * words, 0);
  const std::size_t blocks = (tracks.size() + LineBundle::kTracks - 1) / LineBundle::kTracks;
  tbb::parallel_for(std::size_t{0}, blocks, [&](std::size_t block) {
    const std::size_t first = block * LineBundle::kTracks;
    std::vector<std::uint64_t> near(nerves.limbs());
    nerves.bundle().within(
        tracks.subspan(first, std::min(LineBundle::kTracks, tracks.size() - first)), within_mm,
        chosen, near);
    for (std::size_t limb = 0; limb < near.size(); ++limb) {
      for (std::uint64_t left = near[limb]; left != 0; left &= left - 1) {
        const std::size_t track = first + static_cast<std::size_t>(std::countr_zero(left));
        rows[track * words + limb / 64] |= std::uint64_t{1} << limb % 64;
      }
    }
  });
  return rows;
}

std::uint32_t count(const std::uint64_t* row, std::size_t words) {
  int total = 0;
  for (std::size_t w = 0; w < words; ++w) total += std::popcount(row[w]);
  return static_cast<std::uint32_t>(total);
}

Strip strip_beside(const Theatre& theatre, const SampledNerves& nerves,
                   const std::vector<std::uint8_t>& chosen, const PlannedCut& planned,
                   const Cut& wanted, const std::vector<Vector3d>& right,
                   const CorridorOptions& options) {
  Strip strip;
  strip.stations = wanted.stations.size();
  strip.half = static_cast<int>(options.half_width_mm / kOffset_mm);
  strip.words = (nerves.limbs() + 63) / 64;
  const std::size_t across = 2 * static_cast<std::size_t>(strip.half) + 1;
  std::vector<Track> tracks(strip.stations * across);
  tbb::parallel_for(std::size_t{0}, tracks.size(), [&](std::size_t i) {
    const std::size_t k = i / across;
    const double offset_mm = (static_cast<int>(i % across) - strip.half) * kOffset_mm;
    tracks[i] = beside(theatre, planned, wanted.stations[k], right[k], offset_mm).track;
  });
  strip.near = near_rows(nerves, chosen, tracks, options.within_mm);
  return strip;
}

LineFamily family_beside(const Cut& wanted, const CorridorOptions& options, int step) {
  LineFamily family;
  const std::size_t last = wanted.stations.size() - 1;
  const auto between =
      std::min({static_cast<std::size_t>(std::max(1.0, std::round(wanted.length_mm / kControl_mm))),
                kMostControls, last > 0 ? last - 1 : 0});
  for (std::size_t k = 0; k <= between + 1; ++k) {
    family.controls.push_back(k * last / (between + 1));
  }
  family.step = step;
  family.at_ends = static_cast<int>(options.ends_may_slide_mm / kOffset_mm);
  for (std::size_t k = 0; k + 1 < family.controls.size(); ++k) {
    const double along_mm = wanted.stations[family.controls[k + 1]].along_mm -
                            wanted.stations[family.controls[k]].along_mm;
    // A smooth turn is half as steep again in its middle as on the whole; 45 degrees there.
    family.most_change.push_back(static_cast<int>(along_mm / 1.5 / kOffset_mm));
  }
  return family;
}

Room room(const Strip& strip, std::size_t station, int from, int side, std::uint32_t most) {
  int steps = 0;
  for (int offset = from;; offset += side, ++steps) {
    if (std::abs(offset) > strip.half) return {(steps - 1) * kOffset_mm, true};
    if (count(strip.at(station, offset), strip.words) > most) {
      return {std::max(0, steps - 1) * kOffset_mm, false};
    }
  }
}

}  // namespace

double whole_chance(const SampledNerves& nerves, const std::vector<std::uint8_t>& chosen,
                    const Cut& cut, double within_mm) {
  std::vector<Track> tracks;
  for (const Station& station : cut.stations) tracks.push_back(station.track);
  std::vector<std::uint64_t> near(nerves.limbs());
  std::vector<bool> any(nerves.limbs(), false);
  for (std::size_t from = 0; from < tracks.size(); from += LineBundle::kTracks) {
    nerves.bundle().within(
        std::span(tracks).subspan(from, std::min(LineBundle::kTracks, tracks.size() - from)),
        within_mm, chosen, near);
    for (std::size_t limb = 0; limb < near.size(); ++limb) {
      if (near[limb] != 0) any[limb] = true;
    }
  }
  return static_cast<double>(std::ranges::count(any, true)) / static_cast<double>(nerves.limbs());
}

Expected<Corridor> corridor(const Theatre& theatre, const SampledNerves& nerves,
                            const PlannedCut& planned, const CorridorOptions& options) {
  if (planned.kind != CutKind::line) {
    return std::unexpected(
        Error::input({"/kind", "only a line has a corridor", "Ask about a line over the skin."}));
  }
  const auto within_mm = checked_within_mm(options.within_mm);
  if (!within_mm) return std::unexpected(within_mm.error());
  const auto step = whole_step(options);
  if (!step) return std::unexpected(step.error());
  const auto chosen = nerves.chosen(options.nerves);
  if (!chosen) return std::unexpected(chosen.error());
  auto wanted = lay_cut(theatre, planned);
  if (!wanted) return std::unexpected(std::move(wanted.error()));

  Corridor result;
  result.limbs = nerves.limbs();
  result.wanted_chance = whole_chance(nerves, *chosen, *wanted, *within_mm);
  result.chance = result.wanted_chance;
  result.line = *wanted;
  const std::vector<Vector3d> right = rights(*wanted);
  const Strip strip = strip_beside(theatre, nerves, *chosen, planned, *wanted, right, options);
  std::vector<double> offsets_mm(wanted->stations.size(), 0.0);
  if (wanted->stations.size() > 1) {
    const LineFamily family = family_beside(*wanted, options, *step);
    for (const FoundLine& found : best_lines(strip, family, kJudged)) {
      std::vector<double> of_line = offsets_along(family, found.at_controls);
      for (double& offset : of_line) offset *= kOffset_mm;
      Cut cut = laid_beside(theatre, planned, *wanted, right, of_line);
      const double chance = whole_chance(nerves, *chosen, cut, *within_mm);
      if (chance >= result.chance) continue;
      result.chance = chance;
      result.line = std::move(cut);
      result.moved = true;
      offsets_mm = std::move(of_line);
    }
  }
  const auto most =
      static_cast<std::uint32_t>(options.place_chance * static_cast<double>(nerves.limbs()) + 1e-9);
  for (std::size_t k = 0; k < offsets_mm.size(); ++k) {
    const auto at = static_cast<int>(std::lround(offsets_mm[k] / kOffset_mm));
    result.places.push_back({offsets_mm[k], right[k],
                             static_cast<double>(count(strip.at(k, at), strip.words)) /
                                 static_cast<double>(nerves.limbs()),
                             room(strip, k, at, 1, most), room(strip, k, at, -1, most)});
  }
  result.wanted = std::move(*wanted);
  return result;
}

}  // namespace endplate::incision
