#pragma once
// The nerves of drawn_courses.hpp laid on the mean limb of a case: each begins where it leaves its
// parent, on the parent's course or drawn line.
#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/drawn_courses.hpp"

namespace endplate::limb {

struct DrawnNerve {
  // Where the parent lies from which it starts.
  struct OnCourse {
    std::size_t course = 0;  // of the atlas
    double arc_mm = 0.0;     // from the course's own beginning
  };
  struct OnDrawn {
    std::size_t nerve = 0;  // of the row of drawn nerves, before this one
    double share = 0.0;     // of its drawn length
  };

  anatomy::NodeIndex nerve = 0;
  std::vector<DrawnPoint> points;
  std::optional<OnCourse> on_course;
  std::optional<OnDrawn> on_drawn;  // neither: from a cord of the plexus (girdle_courses.hpp)
  DrawnLine line;                   // of the right limb
};

// Parents before children. `skin`: of the mean right limb; it must outlive the lines. A nerve whose
// usual parent is neither on a course nor drawn is Fault::internal.
Expected<std::vector<DrawnNerve>> drawn_nerves(const evidence::DataPackage& package,
                                               const anatomy::NerveTree& tree, const CaseLimb& limb,
                                               const DrawnSkin& skin);

}  // namespace endplate::limb
