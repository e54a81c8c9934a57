#pragma once
// The limb that the benchmarks of the risk map ask about: an adult right limb at rest.
#include <cstddef>
#include <filesystem>
#include <vector>

#include "geometry/triangle_mesh.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::benchmarks {

struct RiskScene {
  std::vector<geometry::TriangleMesh> skins;  // by fineness: 1, 2, 3 ...
  std::vector<limb::SampledLine> lines;       // places every 5 mm at most
};

// Ends the program with the problem where the tables cannot be read.
RiskScene risk_scene(const std::filesystem::path& datasets, int finest, int limbs);

// The same with the first so many limbs.
std::vector<limb::SampledLine> first_limbs(const std::vector<limb::SampledLine>& lines,
                                           std::size_t limbs);

}  // namespace endplate::benchmarks
