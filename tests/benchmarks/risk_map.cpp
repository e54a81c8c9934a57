// The map of risk beside general libraries, how far it is from brute force, and what it costs
// against vertices, limbs and nerves.
// usage: endplate-bench-risk DATASETS [FINENESS [LIMBS]]
// Prints comma-separated lines for risk_map.py. Times are processor time, all threads together.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <iostream>

#include "models/incision/risk_map.hpp"
#include "tests/benchmarks/bench.hpp"
#include "tests/benchmarks/risk_rivals.hpp"
#include "tests/benchmarks/risk_scene.hpp"

namespace {

using namespace endplate;
using namespace endplate::benchmarks;
using geometry::Track;

constexpr std::array<double, 4> kWithin_mm{2.0, 5.0, 10.0, 20.0};
constexpr double kDepth_mm = 10.0;
constexpr int kFinest = 4;

// The shortest of some runs, s.
template <class Work>
double seconds_of(int runs, const Work& work) {
  double best = 1e9;
  for (int k = 0; k < runs; ++k) {
    const double begin = processor_seconds();
    work();
    best = std::min(best, processor_seconds() - begin);
  }
  return best;
}

// Every so many blocks of the skin's order: neighbours stay neighbours, as the rivals like it.
struct Subset {
  Subset(const incision::SkinEntries& skin, double depth_mm, std::size_t every) {
    constexpr std::size_t kBlock = 64;
    for (std::size_t k = 0; k < skin.size(); ++k) {
      if (k / kBlock % every != 0) continue;
      vertices.push_back(skin.order()[k]);
      tracks.push_back(skin.track(vertices.back(), depth_mm));
    }
  }
  std::vector<std::uint32_t> vertices;
  std::vector<Track> tracks;
};

double worst(const Subset& subset, const std::vector<std::uint32_t>& counts,
             const incision::RiskMap& map) {
  double most = 0.0;
  for (std::size_t k = 0; k < subset.vertices.size(); ++k) {
    const double chance = static_cast<double>(counts[k]) / static_cast<double>(map.limbs);
    most = std::max(most, std::abs(chance - map.chance[subset.vertices[k]]));
  }
  return most;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::cerr << "usage: endplate-bench-risk DATASETS [FINENESS [LIMBS]]\n";
    return 2;
  }
  const int fineness = argc > 2 ? std::atoi(argv[2]) : 3;
  const int limbs = argc > 3 ? std::atoi(argv[3]) : 1000;
  const RiskScene scene = risk_scene(argv[1], std::max(fineness, kFinest), std::max(limbs, 4000));
  const auto lines = first_limbs(scene.lines, static_cast<std::size_t>(limbs));
  const geometry::TriangleMesh& mesh = scene.skins[static_cast<std::size_t>(fineness) - 1];

  fmt::print("what,question,name,count,value\n");
  double begin = processor_seconds();
  const incision::SkinEntries skin(mesh);
  fmt::print("prepare,skin,,{},{:.3f}\n", skin.size(), processor_seconds() - begin);
  begin = processor_seconds();
  const auto nerves = need(incision::SampledNerves::from(lines));
  fmt::print("prepare,nerves,,{},{:.3f}\n", nerves.nerves().size(), processor_seconds() - begin);

  // Microseconds a vertex.
  const auto per_vertex = [](double seconds, std::size_t vertices) {
    return 1e6 * seconds / static_cast<double>(vertices);
  };
  const auto own = [&](double depth_mm, double within_mm) {
    return need(incision::risk_map(skin, nerves, {within_mm, depth_mm, {}}));
  };
  for (const double depth_mm : {0.0, kDepth_mm}) {
    for (const double mm : kWithin_mm) {
      const double s = seconds_of(3, [&] { own(depth_mm, mm); });
      fmt::print("own,depth {:.0f} within {:.0f},,{},{:.4f}\n", depth_mm, mm, skin.size(),
                 per_vertex(s, skin.size()));
    }
    const double s = seconds_of(2, [&] {
      need(incision::nearest_map(skin, nerves, {1.0, depth_mm, {}}));
    });
    fmt::print("own,depth {:.0f} nearest,,{},{:.4f}\n", depth_mm, skin.size(),
               per_vertex(s, skin.size()));
  }
  std::cout.flush();

  const auto ask = [&](const RiskRival& rival, const Subset& subset, double depth_mm) {
    for (const double mm : kWithin_mm) {
      if (rival.nearest() && mm != kWithin_mm.front()) continue;
      Counts counts;
      const std::span<const double> all(kWithin_mm);
      const auto asked = rival.nearest() ? all : std::span<const double>(&mm, 1);
      const double s = seconds_of(2, [&] { counts = rival.within(subset.tracks, asked); });
      fmt::print("rival,depth {:.0f} {},{},{},{:.4f}\n", depth_mm,
                 rival.nearest() ? "nearest" : fmt::format("within {:.0f}", mm), rival.name(),
                 subset.tracks.size(), per_vertex(s, subset.tracks.size()));
      for (std::size_t d = 0; d < asked.size(); ++d) {
        fmt::print("apart,depth {:.0f} within {:.0f},{},{},{:.5f}\n", depth_mm, asked[d],
                   rival.name(), subset.tracks.size(),
                   worst(subset, counts[d], own(depth_mm, asked[d])));
      }
      std::cout.flush();
    }
  };
  begin = processor_seconds();
  const auto of_points = point_rivals(lines);
  fmt::print("prepare,point rivals,,{},{:.3f}\n", of_points.size(), processor_seconds() - begin);
  const Subset some(skin, 0.0, 40);
  for (const auto& rival : of_points) ask(*rival, some, 0.0);
  const auto of_tracks = track_rivals(lines);
  const Subset some_tracks(skin, kDepth_mm, 40);
  for (const auto& rival : of_tracks) ask(*rival, some_tracks, kDepth_mm);

  // Brute force: one block of vertices in eight on the skin, one in sixteen in depth.
  for (const double depth_mm : {0.0, kDepth_mm}) {
    const Subset subset(skin, depth_mm, depth_mm > 0.0 ? 16 : 8);
    const Counts counts = every_stretch(lines, subset.tracks, kWithin_mm);
    for (std::size_t d = 0; d < kWithin_mm.size(); ++d) {
      fmt::print("apart,depth {:.0f} within {:.0f},every stretch,{},{:.5f}\n", depth_mm,
                 kWithin_mm[d], subset.tracks.size(),
                 worst(subset, counts[d], own(depth_mm, kWithin_mm[d])));
    }
    std::cout.flush();
  }

  // What it costs against each of the three.
  for (const double depth_mm : {0.0, kDepth_mm}) {
    const auto cost = [&](const char* what, std::size_t number, const incision::SkinEntries& on,
                          const incision::SampledNerves& of,
                          const std::vector<anatomy::NodeIndex>& chosen) {
      const double s = seconds_of(3, [&] {
        need(incision::risk_map(on, of, {10.0, depth_mm, chosen}));
      });
      fmt::print("cost,{},depth {:.0f},{},{:.5f}\n", what, depth_mm, number, s);
      std::cout.flush();
    };
    for (const geometry::TriangleMesh& one : scene.skins) {
      const incision::SkinEntries entries(one);
      cost("vertices", entries.size(), entries, nerves, {});
    }
    for (const std::size_t count : {125U, 250U, 500U, 1000U, 2000U, 4000U}) {
      const auto of = need(incision::SampledNerves::from(first_limbs(scene.lines, count)));
      cost("limbs", count, skin, of, {});
    }
    for (std::size_t count = 1; count <= nerves.nerves().size(); count += 3) {
      const std::vector<anatomy::NodeIndex> chosen(
          nerves.nerves().begin(), nerves.nerves().begin() + static_cast<std::ptrdiff_t>(count));
      cost("nerves", count, skin, nerves, chosen);
    }
  }
  return 0;
}
