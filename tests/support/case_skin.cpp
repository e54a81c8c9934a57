#include "tests/support/case_skin.hpp"

#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

#include "models/anatomy/nerve_tree.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::test {
namespace {

template <class T>
T value_of(Expected<T> made) {
  if (!made) throw std::runtime_error(made.error().problems.front().what);
  return std::move(*made);
}

}  // namespace

geometry::TriangleMesh case_skin(const std::filesystem::path& datasets,
                                 const std::filesystem::path& case_file, int fineness,
                                 double elbow_flexion_deg) {
  const auto package = value_of(evidence::DataPackage::read(datasets));
  const auto terms = value_of(anatomy::Terms::from(package));
  std::ifstream in(case_file);
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  const casefile::ReadRules rules{casefile::pose_limits(package), nullptr, std::nullopt};
  const auto patient = value_of(casefile::read_case(text, terms, rules));
  const auto size = value_of(limb::LimbSize::from(package, patient.limb));
  const auto joints = value_of(limb::LimbJoints::from(package));
  const limb::SegmentFrames frames(size.mean_scale());
  auto skin =
      limb::make_skin(frames, value_of(limb::BodyEnvelope::from(package)), joints, fineness);
  const limb::PosedSpace space(frames, joints,
                               limb::pose_from({{"elbow_flexion_deg", elbow_flexion_deg}}));
  skin.mesh.vertices_mm = limb::posed_vertices_mm(skin, space);
  return std::move(skin.mesh);
}

}  // namespace endplate::test
