#include "tests/benchmarks/risk_scene.hpp"
#include "tests/benchmarks/bench.hpp"

#include <cstdlib>
#include <ctime>
#include <iostream>

#include "models/anatomy/anatomy.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::benchmarks {
namespace {

constexpr double kStep_mm = 5.0;

}  // namespace

RiskScene risk_scene(const std::filesystem::path& datasets, int finest, int limbs) {
  const auto package = need(evidence::DataPackage::read(datasets));
  const auto anatomy = need(anatomy::Anatomy::from(package));
  const casefile::Limb given;
  const auto limb = need(limb::CaseLimb::from(package, anatomy.tree(), given));
  const limb::SegmentFrames frames(limb.size().mean_scale(), given.side);
  const auto pose = need(limb::CasePose::from(package, frames, given.pose_deg));
  const limb::PosedSpace space(frames, pose.joints, pose.pose);
  RiskScene scene;
  for (int fineness = 1; fineness <= finest; ++fineness) {
    limb::SkinMesh skin = limb::make_skin(frames, pose.envelope, pose.joints, fineness);
    skin.mesh.vertices_mm = limb::posed_vertices_mm(skin, space);
    scene.skins.push_back(std::move(skin.mesh));
  }
  scene.lines = need(
      limb::sample_lines(package, anatomy.tree(), limb, pose, {}, given.side, kStep_mm, limbs, 1));
  return scene;
}

std::vector<limb::SampledLine> first_limbs(const std::vector<limb::SampledLine>& lines,
                                           std::size_t limbs) {
  std::vector<limb::SampledLine> first = lines;
  for (limb::SampledLine& line : first) line.samples_mm.resize(line.mean_mm.size() * limbs);
  return first;
}

}  // namespace endplate::benchmarks
