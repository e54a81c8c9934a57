#pragma once
// Beside a wanted line over the skin: the line near it with the least risk, and how much room there
// is to either side.
//
// What is made least: the chance, over the sampled limbs, that a chosen nerve lies within
// `within_mm` of the cut anywhere along it and down to its depth - of the whole line, not the sum
// of its places. Among lines of the same chance the one that leaves the wanted line least.
//
// Over which lines: those that lie beside the wanted line by an offset across it, at most
// `half_width_mm`, at both ends at most `ends_may_slide_mm`. The offset has a value, a multiple of
// `offset_step_mm`, at each of up to five controls about every kControl_mm, turns smoothly from one
// to the next, and goes off the wanted line at no more than 45 degrees. All of these lines are
// compared (by branch and bound), their places taken to the nearest mm; the kJudged best of them
// are then laid and judged place by place, with the wanted line, and the best stays. So no line
// answered is ever worse than the wanted one on these limbs.
//
// What is not made least: length, scar, tension; what a surgeon has to reach. Vessels, tendons and
// nerves without a course are not in it. The least of many chances over the same limbs is a little
// too low for others (docs/incision-risk.md says by how much).
#include <Eigen/Core>
#include <vector>

#include "models/incision/cut.hpp"
#include "models/incision/sampled_nerves.hpp"
#include "models/incision/theatre.hpp"

namespace endplate::incision {

inline constexpr double kControl_mm = 25.0;
inline constexpr std::size_t kMostControls = 5;
inline constexpr std::size_t kJudged = 8;
inline constexpr double kWidest_mm = 40.0;

struct CorridorOptions {
  double within_mm = 5.0;          // > 0, at most kFarthest_mm
  double half_width_mm = 20.0;     // 1 to kWidest_mm
  double ends_may_slide_mm = 0.0;  // across the line, 0 to half_width_mm
  double place_chance = 0.05;      // 0 to 1: what a place of the corridor may have
  double offset_step_mm = 2.0;     // whole mm, at least 1
  // Each without its branches. None: every modelled nerve.
  std::vector<anatomy::NodeIndex> nerves;
};

// How far a place may move to one side; to_edge: at least so far, where the strip of half_width_mm
// ends.
struct Room {
  double mm = 0.0;
  bool to_edge = false;
};

struct CorridorPlace {
  double offset_mm = 0.0;  // of the line from the wanted one, to the right as seen from outside
  // Unit, to the right as one looks along the wanted line from outside the limb.
  Eigen::Vector3d right = Eigen::Vector3d::UnitX();
  double chance = 0.0;  // of this place alone
  // Across the wanted line, until a place has more than place_chance; none where it has itself.
  Room to_right;
  Room to_left;
};

struct Corridor {
  Cut wanted;
  double wanted_chance = 0.0;  // of the whole line
  // The line of least risk; the wanted one where none is better. Its places are of this limb's own
  // skin: they have no landmark.
  Cut line;
  double chance = 0.0;
  bool moved = false;
  std::vector<CorridorPlace> places;  // by station of `line`
  std::size_t limbs = 0;
};

// The chance that a chosen nerve lies within `within_mm` of the cut, anywhere along it. `chosen` as
// SampledNerves has it.
double whole_chance(const SampledNerves& nerves, const std::vector<std::uint8_t>& chosen,
                    const Cut& cut, double within_mm);

// `planned`: a line. Problems stand as lay_cut has them, or at "/kind", "/within_mm",
// "/half_width_mm", "/ends_may_slide_mm", "/place_chance", "/offset_step_mm" or "/nerves/INDEX".
Expected<Corridor> corridor(const Theatre& theatre, const SampledNerves& nerves,
                            const PlannedCut& planned, const CorridorOptions& options);

}  // namespace endplate::incision
