#pragma once
// Where the nerves of one limb may run: each line that has a course, in many sampled limbs of the
// case's mean size, posed.
//
// A limb differs from the mean one of its size by a shift of each course, along the limb's axis and
// across it in both directions. Along: as far as levels on the course differ between limbs
// (LevelSpread). Across: as published distances of kAcross_mm do (assumed: what studies measured
// across the limb is about so long; depth itself is hardly published). Both with the error that
// the model makes on the mean of a study that it did not see. Shifts of places d apart along a
// course have the correlation exp(-d / 100 mm), as its levels; a branch begins with its trunk's. A
// point that ultrasound found takes the shift along the limb with it. The lines stay under the skin
// and out of the bones. All limbs have one size: what is said of places of this limb's own skin
// does not depend on it.
#include <Eigen/Core>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/case_pose.hpp"

namespace endplate::limb {

inline constexpr double kAcross_mm = 10.0;

struct SampledLine {
  anatomy::NodeIndex nerve = 0;
  std::vector<Eigen::Vector3d> mean_mm;     // limb frame of the case's side, in the pose
  std::vector<Eigen::Vector3d> samples_mm;  // the places of the first limb, of the second, ...
};

using WantedLine = std::function<bool(const std::vector<Eigen::Vector3d>& mean_mm)>;

// Every nerve with a course, in the order of the tree, then the small ones drawn in the free limb
// (drawn_limb.hpp), then those drawn round the shoulder girdle (girdle_courses.hpp) but for those
// of the chest wall. Drawn points are as uncertain as their tables say. In steps of at most
// `step_mm`. Limb i depends on the seed and i alone. `pose`: for the frames of the mean limb.
// `wanted`: is asked of the mean line; those it does not want are left out. Absent: all.
Expected<std::vector<SampledLine>> sample_lines(const evidence::DataPackage& package,
                                                const anatomy::NerveTree& tree,
                                                const CaseLimb& limb, const CasePose& pose,
                                                const std::vector<casefile::Operation>& operations,
                                                Side side, double step_mm, int count,
                                                std::uint64_t seed, const WantedLine& wanted = {});

}  // namespace endplate::limb
