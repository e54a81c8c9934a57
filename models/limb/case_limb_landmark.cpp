#include "models/limb/case_limb_landmark.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace endplate::limb {
namespace {

using anatomy::NodeIndex;
using casefile::Toward;

// Landmarks this close to a joint, as a share of their segment, are of the joint: at the elbow the
// radial tuberosity is the last, at the wrist the carpal bones and the ends of radius and ulna.
constexpr double kNearElbow = 0.17;
constexpr double kNearWrist = 0.85;
constexpr double kNearWristHand = 0.16;

// A level plane, looking along the offset.
struct LevelLine {
  Eigen::Vector3d landmark;
  Eigen::Vector3d direction;  // unit
  Segment axis = Segment::humerus;
  double room_mm = 0.0;  // from the landmark to the end of the segment

  double offset_of(const Eigen::Vector3d& p) const { return direction.dot(p - landmark); }
};

LevelLine level_line(const Landmark& landmark, Toward toward, const SegmentFrames& frames) {
  LevelLine line;
  line.axis = offset_axis(landmark, toward);
  line.landmark = LandmarkSet::position_mm(landmark, frames);
  const Eigen::Vector3d proximal = frames.proximal(line.axis);
  line.direction = toward == Toward::proximal ? proximal : Eigen::Vector3d(-proximal);
  // The segment as far as its own axis reaches: arm to the acromion, forearm to the crease.
  double top = 0.0;
  double bottom = 1.0;
  if (line.axis == Segment::humerus) {
    top = 1.0;
    bottom = 0.0;
  } else if (line.axis == Segment::forearm) {
    bottom = frames.from_limb(Segment::forearm, frames.origin(Segment::hand)).fraction;
  }
  const double here = frames.from_limb(line.axis, line.landmark).fraction;
  const double there = toward == Toward::proximal ? top : bottom;
  const double away = line.axis == Segment::humerus ? 1.0 : -1.0;
  const double sign = toward == Toward::proximal ? away : -away;
  line.room_mm = std::max(0.0, sign * (there - here) * frames.length_mm(line.axis));
  return line;
}

struct Reach {
  double least_mm = std::numeric_limits<double>::infinity();
  double most_mm = -std::numeric_limits<double>::infinity();
  std::optional<double> arc_mm;  // on the course, where the nerve first crosses the level
};

// Steps of about 1 mm; within one a nerve course is straight to far below 0.01 mm.
Reach reach_of(const CaseLimbCourse& course, double from_mm, double to_mm, const LevelLine& line,
               double offset_mm) {
  Reach reach;
  const int steps = 1 + static_cast<int>(to_mm - from_mm);
  double before = 0.0;
  for (int k = 0; k <= steps; ++k) {
    const double arc = from_mm + (to_mm - from_mm) * k / steps;
    const double here = line.offset_of(course.position_at(arc));
    reach.least_mm = std::min(reach.least_mm, here);
    reach.most_mm = std::max(reach.most_mm, here);
    if (!reach.arc_mm && k > 0 && (before - offset_mm) * (here - offset_mm) <= 0.0 &&
        before != here) {
      const double back = (here - offset_mm) / (here - before);
      reach.arc_mm = arc - back * (to_mm - from_mm) / steps;
    }
    before = here;
  }
  return reach;
}

std::string words(const casefile::AtLandmark& at, const Eigen::Vector3d& position,
                  const SegmentFrames& frames) {
  const std::string level =
      at.offset_mm == 0.0
          ? fmt::format("at the level of the {}", at.landmark)
          : fmt::format("{:.0f} mm {} to the {}", at.offset_mm,
                        at.toward == Toward::proximal ? "proximal" : "distal", at.landmark);
  const Segment segment = segment_of(position, frames);
  if (segment == Segment::hand) return level + ", in the hand";
  const double fraction = frames.from_limb(segment, position).fraction;
  const double down = segment == Segment::humerus ? 1.0 - fraction : fraction;
  const char* third = down < 1.0 / 3.0 ? "proximal" : down < 2.0 / 3.0 ? "middle" : "distal";
  return fmt::format("{}, {} third of the {}", level, third,
                     segment == Segment::humerus ? "arm" : "forearm");
}

}  // namespace

Segment offset_axis(const Landmark& landmark, Toward toward) {
  const bool distal = toward == Toward::distal;
  const double fraction = landmark.place.fraction;
  switch (landmark.segment) {
    case Segment::humerus:
      return distal && fraction <= kNearElbow ? Segment::forearm : Segment::humerus;
    case Segment::forearm:
      if (fraction <= kNearElbow) return distal ? Segment::forearm : Segment::humerus;
      return distal && fraction >= kNearWrist ? Segment::hand : Segment::forearm;
    case Segment::hand:
      return !distal && fraction <= kNearWristHand ? Segment::forearm : Segment::hand;
  }
  return landmark.segment;
}

Expected<double> arc_at_landmark(const Landmark& landmark, const SegmentFrames& frames,
                                 const CaseLimbCourse& course, const casefile::AtLandmark& at,
                                 double near_mm) {
  const LevelLine line = level_line(landmark, at.toward, frames);
  const Reach all = reach_of(course, 0.0, course.length_mm(), line, at.offset_mm);
  const double least = std::max(0.0, std::ceil(all.least_mm));
  const double most = std::floor(std::min(line.room_mm, all.most_mm));
  std::optional<double> nearest_mm;
  if (at.offset_mm <= line.room_mm) {
    // In stretches of 10 mm, so that every crossing of the level is seen.
    constexpr double kStretch_mm = 10.0;
    for (double from_mm = 0.0; from_mm < course.length_mm(); from_mm += kStretch_mm) {
      const double to_mm = std::min(from_mm + kStretch_mm, course.length_mm());
      const auto arc_mm = reach_of(course, from_mm, to_mm, line, at.offset_mm).arc_mm;
      if (!arc_mm) continue;
      if (!nearest_mm || std::abs(*arc_mm - near_mm) < std::abs(*nearest_mm - near_mm)) {
        nearest_mm = arc_mm;
      }
    }
  }
  if (nearest_mm) return *nearest_mm;
  const char* toward = at.toward == Toward::proximal ? "proximal" : "distal";
  return std::unexpected(Error::input(
      {"at",
       fmt::format(
           "{:.0f} mm {} to the {} lies outside the segment, or the nerve does not reach it",
           at.offset_mm, toward, at.landmark),
       least <= most
           ? fmt::format("Give {:.0f} to {:.0f} mm {} to the {}.", least, most, toward, at.landmark)
           : "Give the place from another landmark."}));
}

Expected<anatomy::Lesion> place_at_landmark(const anatomy::NerveTree& tree, const Atlas& atlas,
                                            const SegmentFrames& frames,
                                            const NerveRouteLayout& layout, NodeIndex nerve,
                                            const casefile::AtLandmark& at) {
  const auto refuse = [](std::string what, std::string mend) {
    return std::unexpected(Error::input({"at", std::move(what), std::move(mend)}));
  };
  const std::string& name = tree.node(nerve).name;
  const Landmark* landmark = atlas.landmarks().find(at.landmark);
  if (landmark == nullptr) {
    return std::unexpected(Error::outside_model(
        {"at", fmt::format("the model limb does not hold the landmark '{}'", at.landmark),
         "Give the place from another landmark, such as the lateral epicondyle."}));
  }
  const auto& stretch = layout.stretch(nerve);
  if (!stretch || !stretch->follows) {
    return std::unexpected(Error::outside_model(
        {"at", fmt::format("the course of the '{}' is not modelled, so no level finds it", name),
         "Give the place as this branch and the distance from its origin."}));
  }
  if (!(at.offset_mm >= 0.0)) {
    return refuse("an offset from a landmark is not negative",
                  "Give its size, and proximal or distal.");
  }

  const LevelLine line = level_line(*landmark, at.toward, frames);
  const char* toward = at.toward == Toward::proximal ? "proximal" : "distal";
  const std::vector<Level>& levels = layout.levels();
  const auto reach = [&](const Stretch& s) {
    return reach_of(layout.courses()[s.course], levels[s.from].arc_mm, levels[s.to].arc_mm, line,
                    at.offset_mm);
  };
  const Reach own = reach(*stretch);
  const double least = std::max(0.0, std::ceil(own.least_mm));
  const double most = std::floor(std::min(line.room_mm, own.most_mm));
  const std::string accepted =
      least <= most
          ? fmt::format("Give {:.0f} to {:.0f} mm {} to the {}.", least, most, toward, at.landmark)
          : fmt::format(
                "The {} does not lie {} to the {} within that segment; give the "
                "place from another landmark.",
                name, toward, at.landmark);
  if (at.offset_mm > line.room_mm) {
    return refuse(fmt::format("{:.0f} mm {} to the {} lies outside the segment", at.offset_mm,
                              toward, at.landmark),
                  accepted);
  }
  if (!own.arc_mm) {
    std::vector<std::string> there;
    for (NodeIndex other = 0; other < tree.size(); ++other) {
      const auto& s = layout.stretch(other);
      if (s && s->follows && reach(*s).arc_mm) there.push_back(tree.node(other).name);
    }
    return refuse(fmt::format("the {} does not reach {:.0f} mm {} to the {}; at that level run: {}",
                              name, at.offset_mm, toward, at.landmark, fmt::join(there, ", ")),
                  accepted);
  }
  const CaseLimbCourse& course = layout.courses()[stretch->course];
  return anatomy::Lesion{{nerve, *own.arc_mm - levels[stretch->from].arc_mm},
                         landmark->sd_mm,
                         false,
                         words(at, course.position_at(*own.arc_mm), frames)};
}

}  // namespace endplate::limb
