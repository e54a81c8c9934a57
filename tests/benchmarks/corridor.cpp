// What a corridor costs and gains, on the limbs of the search and on limbs drawn apart.
// usage: endplate-bench-corridor DATASETS [LIMBS]
#include <fmt/format.h>

#include <cstdlib>
#include <iostream>
#include <random>

#include "models/anatomy/anatomy.hpp"
#include "models/incision/corridor.hpp"
#include "tests/benchmarks/bench.hpp"
#include "tests/benchmarks/risk_scene.hpp"

using namespace endplate;
using benchmarks::need;

int main(int argc, char** argv) {
  if (argc < 2) {
    std::cerr << "usage: endplate-bench-corridor DATASETS [LIMBS]\n";
    return 2;
  }
  constexpr int kLines = 200;
  constexpr double kWithin_mm = 5.0;
  const int limbs = argc > 2 ? std::atoi(argv[2]) : 1000;
  const auto package = need(evidence::DataPackage::read(argv[1]));
  const auto anatomy = need(anatomy::Anatomy::from(package));
  const auto theatre = need(incision::Theatre::from(package, anatomy.tree(), {}));
  const auto nerves = [&](std::uint64_t seed) {
    return need(incision::SampledNerves::from(
        need(limb::sample_lines(package, anatomy.tree(), theatre.limb(), theatre.pose(), {},
                                theatre.side(), 5.0, limbs, seed))));
  };
  const incision::SampledNerves sought_on = nerves(1);
  const incision::SampledNerves others = nerves(2);
  const auto chosen = need(others.chosen({}));
  // Lines 40 to 100 mm long between places of the skin, whose chance is worth a search.
  std::mt19937 random(1);
  const auto& vertices = theatre.skin().vertices_mm;
  std::uniform_int_distribution<std::size_t> any(0, vertices.size() - 1);
  double seconds = 0.0;
  double wanted = 0.0;
  double gain = 0.0;
  double gain_on_others = 0.0;
  int moved = 0;
  for (int k = 0; k < kLines;) {
    incision::PlannedCut cut;
    cut.marks.resize(2);
    cut.marks[0].picked_mm = vertices[any(random)];
    cut.marks[1].picked_mm = vertices[any(random)];
    cut.depth_mm = 10.0;
    const double mm = (*cut.marks[0].picked_mm - *cut.marks[1].picked_mm).norm();
    if (mm < 40.0 || mm > 100.0) continue;
    incision::CorridorOptions options;
    options.within_mm = kWithin_mm;
    const double begin = endplate::benchmarks::processor_seconds();
    const auto found = need(incision::corridor(theatre, sought_on, cut, options));
    if (found.wanted_chance < 0.05 || found.wanted_chance > 0.95) continue;
    seconds += endplate::benchmarks::processor_seconds() - begin;
    wanted += found.wanted_chance;
    gain += found.wanted_chance - found.chance;
    gain_on_others += whole_chance(others, chosen, found.wanted, kWithin_mm) -
                      whole_chance(others, chosen, found.line, kWithin_mm);
    moved += found.moved ? 1 : 0;
    ++k;
  }
  fmt::print("lines {}, moved {}\n", kLines, moved);
  fmt::print("processor time a line, s: {:.3f}\n", seconds / kLines);
  fmt::print("chance of the wanted line: {:.4f}\n", wanted / kLines);
  fmt::print("gain on the limbs of the search: {:.4f}, on others: {:.4f}\n", gain / kLines,
             gain_on_others / kLines);
  return 0;
}
