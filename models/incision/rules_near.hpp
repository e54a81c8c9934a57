#pragma once
// The published rules about knife, portal, pin and needle that speak of a cut: those of the named
// approach, or of every approach that is laid beside the cut on the same side of the limb.
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/incision/cut.hpp"

namespace endplate::incision {

struct QuotedRule {
  std::string row;  // of approaches.csv
  std::string approach;
  std::string rule;     // in the words of the table
  std::string nerve;    // standard term
  std::string surface;  // on which it holds, and on no other
  std::string pose;     // of the study, in its words; empty where it is not said
  std::string figure;   // "56.2 mm (SD 6)"; empty where none is printed
  std::string source;
};

// An approach speaks of a cut when its marks, or the straight way between two of them, lie so near
// to it, facing the same way.
inline constexpr double kBeside_mm = 25.0;

// `approach`: the named one; empty for a cut of the user's own.
Expected<std::vector<QuotedRule>> rules_near(const evidence::DataPackage& package,
                                             const Theatre& theatre, const Cut& cut,
                                             std::string_view approach);

}  // namespace endplate::incision
