#pragma once
// The question of the incision command: how near does this cut, portal, pin or needle come to each
// nerve, which small skin nerve is met first, where is no modelled nerve near, and which published
// rules speak of it.
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/incision/corridor.hpp"
#include "models/incision/cut.hpp"
#include "models/incision/nearby.hpp"
#include "models/incision/rules_near.hpp"

namespace endplate::incision {

// What is said of every answer: the model holds no vessel and no tendon.
inline constexpr std::string_view kNotModelled =
    "vessels and tendons are not in the model, nor are nerves without a line in it; a place far "
    "from the modelled nerves is not a place without danger";

struct IncisionOptions {
  int samples = 1000;  // limbs, >= 2
  std::uint64_t seed = 1;
  NearbyOptions nearby;
  std::string approach;  // the named one, whose rules apply; empty for a cut of one's own
  std::optional<CorridorOptions> corridor;  // of a line: the one of least risk beside it
};

struct NamedNearby {
  std::string nerve;  // standard term
  NerveNearby near;
};

struct IncisionAnswer {
  std::string label;
  Side side = Side::right;
  std::map<std::string, double> pose_deg;  // as asked; empty in the anatomical position
  CutKind kind = CutKind::line;
  std::vector<std::string> marks;  // in words
  std::string region;              // where it begins
  Cut cut;
  double depth_low_mm = 0.0;  // over its stations
  double depth_high_mm = 0.0;
  bool depth_given = false;
  std::vector<NamedNearby> nerves;  // the nearest first
  // The skin nerve that is met first: of those more likely than not within kMet_mm the one that
  // lies nearest to the skin.
  std::optional<std::string> first_skin_nerve;
  std::vector<ClearStretch> clear;
  std::vector<double> along_chance;  // by station: any nerve within `farther_than_mm`
  double farther_than_mm = 0.0;
  std::vector<QuotedRule> rules;
  std::optional<Corridor> corridor;
  double corridor_within_mm = 0.0;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;
  std::vector<std::string> sources;
};

inline constexpr double kMet_mm = 5.0;

// Problems stand at "/points/INDEX", "/depth_mm" or "/aimed_at", and where CaseLimb and CasePose
// have them.
Expected<IncisionAnswer> answer_incision(const casefile::Case& patient, const PlannedCut& planned,
                                         const evidence::DataPackage& package,
                                         const IncisionOptions& options);

// A cut of a case file.
PlannedCut planned(const casefile::Incision& incision);

}  // namespace endplate::incision
