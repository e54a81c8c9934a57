#pragma once
// What is known of one patient. What was not given is absent, never a default.
//
// Lengths in mm, angles in degrees, dates as calendar days. Names of nerves, muscles, areas and
// landmarks are already the standard terms of the tables.
#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "models/core/side.hpp"

namespace endplate::casefile {

using Date = std::chrono::year_month_day;

enum class Sex { female, male };
enum class Toward { proximal, distal };

// A point on a nerve, in the ways that a case file may give it.
struct AtLandmark {
  std::string landmark;
  double offset_mm = 0.0;  // along the limb, >= 0
  Toward toward = Toward::distal;
};
enum class RootLevel { preganglionic, postganglionic };
struct AtRoot {
  std::string root;  // "C5"
  RootLevel level = RootLevel::postganglionic;
};
struct AtTrunk {
  std::string trunk;  // standard term, "superior trunk"
};
struct AtCord {
  std::string cord;  // "posterior cord"
};
struct AtBranch {
  std::string branch;
  double from_origin_mm = 0.0;
};
using Place = std::variant<AtLandmark, AtRoot, AtTrunk, AtCord, AtBranch>;

// A point of a nerve that ultrasound found at the level of a landmark or so far from it.
struct LocatedPoint {
  std::string nerve;               // standard term: the nerve, or the branch whose point it is
  std::string point;               // as the tables name it, "origin"
  AtLandmark at;                   // where the probe stood, along the limb
  std::optional<double> error_mm;  // standard deviation of the observer's error, > 0
};

struct Limb {
  Side side = Side::right;
  bool side_given = false;
  std::optional<Side> dominant_side;
  std::optional<Sex> sex;
  std::optional<double> age_years;
  std::optional<double> stature_mm;
  // Instead of it: the share of people of that sex and age who are shorter, per cent.
  std::optional<double> stature_percentile;
  std::map<std::string, double> measured_mm;       // by the name of the measure
  std::map<std::string, std::string> measured_as;  // by the same: the name as it was written
  std::map<std::string, double> other_side_mm;     // the same of the other, sound limb
  std::map<std::string, std::string> other_side_as;
  std::vector<LocatedPoint> ultrasound;
  std::map<std::string, double> pose_deg;  // by joint, "elbow_flexion_deg"
};

enum class Mechanism {
  open_sharp,
  open_crush,
  gunshot,
  closed_traction,
  fracture_or_dislocation,
  iatrogenic,
  compression,
  injection,
  inflammatory,
  birth,
  spinal_cord,
  unknown
};

enum class Grade {
  neurapraxia,
  axonotmesis,
  neurotmesis,
  sunderland_1,
  sunderland_2,
  sunderland_3,
  sunderland_4,
  sunderland_5,
  unknown
};

struct Injury {
  std::string nerve;  // empty when the place alone says it (a root, trunk or cord)
  std::optional<Place> at;
  Mechanism mechanism = Mechanism::unknown;
  Grade grade = Grade::unknown;
  std::optional<bool> complete;
  std::optional<bool> nerve_seen;
  std::optional<Date> date;
};

// Medical Research Council grade, 0 to 5, with 4- and 4+ kept apart as 3.67 and 4.33.
struct MrcGrade {
  double value = 0.0;
  std::string text;  // as written, "4-"
};

struct MuscleFinding {
  std::string muscle;  // abbreviation that is the muscle table's key, "ECRL"
  MrcGrade grade;
};
struct MovementFinding {
  std::string movement;
  std::optional<double> active_deg;
  std::optional<double> passive_deg;
};
enum class SensoryState { absent, reduced, normal, hyperaesthetic };
struct SensoryFinding {
  std::string area;
  std::optional<SensoryState> state;
  std::optional<std::string> s_grade;
  std::optional<double> two_point_mm;
};
struct SignFinding {
  std::string sign;
  bool present = false;
};
struct TinelFinding {
  std::string nerve;
  Place at;
};

struct Examination {
  std::optional<Date> date;
  std::vector<MuscleFinding> muscles;
  std::vector<MovementFinding> movements;
  std::vector<SensoryFinding> sensation;
  std::vector<SignFinding> signs;
  std::vector<TinelFinding> tinel;
};

struct Electrodiagnosis {
  std::optional<Date> date;
  std::optional<std::string> muscle;
  std::optional<std::string> nerve;
  std::optional<bool> fibrillation;
  std::optional<std::string> units;
  std::optional<std::string> snap;
  std::optional<std::string> cmap;
  std::optional<std::string> stimulation;
};

enum class OperationState { planned, done };
enum class Layer { subcutaneous, submuscular };
struct Procedure {
  std::string procedure;  // "repair", "graft", "neurolysis", "nerve transfer", "exploration", ...
  std::optional<std::string> nerve;
  std::optional<Place> at;
  std::optional<int> cables;
  std::optional<std::string> donor;
  std::optional<Layer> layer;  // of a transposed ulnar nerve
};
struct Operation {
  std::optional<Date> date;
  OperationState state = OperationState::planned;
  std::optional<std::string> nerve_action_potential;
  std::optional<double> gap_after_resection_mm;
  std::vector<Procedure> done;
};

enum class Aside { anterior, posterior, medial, lateral };

// A mark on the skin: from a landmark along the limb, then across it.
struct SkinMark {
  AtLandmark at;
  double aside_mm = 0.0;  // >= 0
  std::optional<Aside> aside;
  std::optional<Aside> surface;  // the side whose skin is meant; absent: the nearest
};

enum class CutKind { line, portal, pin, injection };

struct Incision {
  std::string label;
  CutKind kind = CutKind::line;
  std::vector<SkinMark> points;      // of anything but a line one
  std::optional<SkinMark> aimed_at;  // of a track
  std::optional<double> depth_mm;    // > 0
};

struct Case {
  std::string label;
  Limb limb;
  std::vector<std::string> variants;
  std::vector<Injury> injuries;
  std::vector<std::string> red_flags;
  std::optional<Examination> examination;
  std::vector<Electrodiagnosis> electrodiagnosis;
  std::vector<Examination> observations;
  std::vector<Operation> operations;
  std::vector<std::string> unavailable;
  std::vector<std::string> priorities;
  std::vector<Incision> incisions;
  // How the file was read where it left a choice: slips, and values taken for missing ones.
  std::vector<std::string> assumptions;
};

}  // namespace endplate::casefile
