#pragma once
// What goes through the skin: a line cut to a depth, or one straight track of a portal, a pin or a
// needle.
#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "geometry/line_samples.hpp"
#include "models/core/error.hpp"
#include "models/incision/skin_place.hpp"
#include "models/incision/theatre.hpp"

namespace endplate::incision {

using casefile::CutKind;

struct PlannedCut {
  std::string label;
  CutKind kind = CutKind::line;
  std::vector<AtSkin> marks;  // in their order; a track has one
  // Straight in from the skin, > 0. Absent: to the first bone, or kNoBone_mm where there is none.
  std::optional<double> depth_mm;
  // Of a track: toward this mark on the other side; absent: straight in.
  std::optional<AtSkin> aimed_at;
};

// Where no bone is met.
inline constexpr double kNoBone_mm = 30.0;
// A needle under the skin, where no depth is given (assumed: the length of a common fine needle's
// half).
inline constexpr double kInjection_mm = 10.0;
// Stations of a line stand so close.
inline constexpr double kStation_mm = 2.0;

struct Station {
  SkinPlace skin;
  double along_mm = 0.0;  // over the skin from the first mark
  geometry::Track track;  // from the skin to its depth
};

struct Cut {
  CutKind kind = CutKind::line;
  std::vector<Station> stations;  // in their order; one of a track
  double length_mm = 0.0;         // over the skin; 0 of a track
  bool depth_given = false;
};

// Problems stand at "/points/INDEX" or "/depth_mm".
Expected<Cut> lay_cut(const Theatre& theatre, const PlannedCut& planned);

}  // namespace endplate::incision
