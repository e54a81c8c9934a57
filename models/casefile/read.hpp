#pragma once
// Reads a case file: JSON with `endplate_case: 1`, described by datasets/case.schema.json.
//
// Nothing is guessed: an unknown key, a value out of range, a word outside its list or a name that
// cannot be understood is a problem with its place as a JSON Pointer and its mend, and all problems
// are reported at once. Where the file leaves a choice that changes an answer (a spelling slip with
// one reading, a root without its level), the choice stands in Case::assumptions.
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "models/anatomy/nerve_tree.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::casefile {

// How far a joint of a pose may go, in degrees, by the key of the pose. From the largest published
// range of each movement in joints.csv (kind "range of motion"); 0 where no opposite movement is
// published. Pronation counts from full supination, the anatomical position, so it goes up to the
// largest arc of supination and pronation that one study found.
struct PoseLimit {
  double low_deg = 0.0;
  double high_deg = 0.0;
  std::string rows{};     // of joints.csv behind the two: "JT_146 and JT_153"
  std::string meaning{};  // of the angle: "negative is wrist flexion"
};
using PoseLimits = std::map<std::string, PoseLimit, std::less<>>;
PoseLimits pose_limits(const evidence::DataPackage& package);

struct ReadRules {
  PoseLimits pose;
  // Where given, a branch that does not hang on the nerve it is said to belong to is refused.
  const anatomy::NerveTree* tree = nullptr;
  // Where given, nothing but a planned operation may lie after it.
  std::optional<Date> today;
};

// Without `rules.pose` no joint is known, so any pose is refused.
Expected<Case> read_case(std::string_view text, const anatomy::Terms& terms,
                         const ReadRules& rules);

// The same for an answer about the patient: without a side the limb is shown as a right one, and
// the assumptions say so.
Expected<Case> read_patient(std::string_view text, const anatomy::Terms& terms,
                            const ReadRules& rules);

}  // namespace endplate::casefile
