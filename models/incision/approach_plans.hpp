#pragma once
// The named standard approaches, portals, pins and injections, each with its marks, its pose and
// the side of the limb on which it is laid: approach_plans.csv and approach_marks.csv.
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/incision/cut.hpp"

namespace endplate::incision {

struct ApproachPlan {
  PlannedCut cut;                          // its label is the name of the approach
  std::map<std::string, double> pose_deg;  // as in a case file; empty: the anatomical position
  std::string surface;                     // as approaches.csv names sides: "dorso-ulnar"
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
  std::vector<std::string> rows;  // of approaches.csv
};

// "elbow_flexion_deg=90;forearm_pronation_deg=75"; nothing where the text is no pose.
std::optional<std::map<std::string, double>> pose_from_text(std::string_view text);

class ApproachPlans {
 public:
  // Fault::internal: the tables contradict each other.
  static Expected<ApproachPlans> from(const evidence::DataPackage& package);

  const std::vector<ApproachPlan>& plans() const { return plans_; }
  // By the name of the approach; nullptr where none can be drawn.
  const ApproachPlan* find(std::string_view approach) const;
  // Why an approach of the tables cannot be drawn; empty for the others.
  std::string_view why_not(std::string_view approach) const;

 private:
  std::vector<ApproachPlan> plans_;
  std::map<std::string, std::string, std::less<>> left_out_;
};

// The cut of a named approach, with the limb laid in the pose of that approach; how it is laid is
// added to `assumptions`. `option` names the place of problems: Fault::input for a name that is not
// in the tables, Fault::outside_model for an approach that cannot be drawn.
Expected<PlannedCut> lay_approach(const evidence::DataPackage& package, std::string_view name,
                                  const std::string& option, casefile::Limb& limb,
                                  std::vector<std::string>& assumptions);

}  // namespace endplate::incision
