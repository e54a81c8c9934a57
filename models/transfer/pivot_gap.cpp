#include "models/transfer/pivot_gap.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>
#include <variant>

#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/nerve_route.hpp"
#include "models/limb/posed_space.hpp"

namespace endplate::transfer {

using Eigen::Vector3d;
using limb::Pose;

struct PivotGap::Parts {
  limb::Atlas atlas;
  limb::LimbJoints joints;
  limb::BodyEnvelope envelope;
  limb::SegmentFrames frames;
  std::vector<std::string> course_of;  // by node of the tree
};

namespace {

// A joint lies between two places when it changes their distance by more than this.
constexpr double kMoves_mm = 0.1;
// Of the postures so many with the widest gaps are tried in every sampled limb.
constexpr std::size_t kTried = 6;
// The places of all limbs along a nerve, in the postures: one every so many mm.
constexpr double kStep_mm = 4.0;

// Where a place goes when the joints bend: with the course that it lies on, or with the bones of
// the girdle round it.
using MovedPlace = std::variant<limb::NervePlace, limb::GirdlePlace>;

MovedPlace moved_place(const BranchPlaces& places, anatomy::NodeIndex carrier, double arc_mm,
                       const std::string& course, const limb::SegmentFrames& frames) {
  if (auto on_girdle = places.on_girdle(carrier, arc_mm)) return *std::move(on_girdle);
  return limb::nerve_place(course, frames, places.position_mm(carrier, arc_mm));
}

class Posture {
 public:
  Posture(const limb::Atlas& atlas, const limb::BodyEnvelope& envelope,
          const limb::SegmentFrames& frames, const limb::LimbJoints& joints, const Pose& pose)
      : atlas_(atlas), envelope_(envelope), frames_(frames), space_(frames, joints, pose) {}
  Posture(const Posture&) = delete;  // nerves_ refers to space_

  Vector3d operator()(const MovedPlace& place) {
    if (const auto* on_girdle = std::get_if<limb::GirdlePlace>(&place)) {
      return on_girdle->posed_mm(space_);
    }
    // Made at the first place that needs it: bones and skin cost more than the rest.
    if (!nerves_) nerves_.emplace(atlas_.landmarks(), envelope_, frames_, space_);
    return (*nerves_)(std::get<limb::NervePlace>(place));
  }

 private:
  const limb::Atlas& atlas_;
  const limb::BodyEnvelope& envelope_;
  const limb::SegmentFrames& frames_;
  limb::PosedSpace space_;
  std::optional<limb::PosedNerves> nerves_;
};

// A stretch of a nerve on the mean limb, and where it lies in a posture.
class PosedStretch {
 public:
  PosedStretch(const BranchPlaces& places, anatomy::NodeIndex carrier, double from_mm, double to_mm,
               const std::string& course, const limb::SegmentFrames& frames)
      : from_mm_(from_mm) {
    const int steps = std::max(1, static_cast<int>(std::ceil((to_mm - from_mm) / kStep_mm)));
    step_mm_ = std::max((to_mm - from_mm) / steps, 1e-6);
    for (int k = 0; k <= steps; ++k) {
      places_.push_back(moved_place(places, carrier, from_mm + k * step_mm_, course, frames));
    }
    posed_.resize(places_.size());
  }

  void move(Posture& posture) {
    std::ranges::transform(places_, posed_.begin(), std::ref(posture));
  }

  Vector3d at(double arc_mm) const {
    const double steps =
        std::clamp((arc_mm - from_mm_) / step_mm_, 0.0, static_cast<double>(posed_.size() - 1));
    const auto k = std::min(static_cast<std::size_t>(steps), posed_.size() - 2);
    return posed_[k] + (steps - static_cast<double>(k)) * (posed_[k + 1] - posed_[k]);
  }

 private:
  double from_mm_;
  double step_mm_;
  std::vector<MovedPlace> places_;
  std::vector<Vector3d> posed_;
};

}  // namespace

Expected<PivotGap> PivotGap::from(const evidence::DataPackage& package,
                                  const anatomy::NerveTree& tree,
                                  const limb::SegmentFrames& frames) {
  auto atlas = limb::Atlas::fitted(package);
  if (!atlas) return std::unexpected(std::move(atlas.error()));
  auto joints = limb::LimbJoints::from(package);
  if (!joints) return std::unexpected(std::move(joints.error()));
  auto envelope = limb::BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(std::move(envelope.error()));
  const auto routes = limb::read_nerve_routes(package, tree);
  if (!routes) return std::unexpected(routes.error());
  std::vector<std::string> course_of;
  for (const limb::NerveRoute& route : *routes) course_of.push_back(route.follows);
  PivotGap result;
  result.parts_ = std::make_shared<const Parts>(Parts{
      std::move(*atlas), std::move(*joints), std::move(*envelope), frames, std::move(course_of)});
  return result;
}

WorstGap PivotGap::worst(const BranchPlaces& places, std::span<const PlacePair> pairs) const {
  const Parts& parts = *parts_;
  const auto in_pose = [&](const Pose& pose, const auto& use) {
    Posture posture(parts.atlas, parts.envelope, parts.frames, parts.joints, pose);
    use(posture);
  };
  const auto place_of = [&](const CarriedPlace& at) {
    return moved_place(places, at.carrier, at.arc_mm, parts.course_of[at.carrier], parts.frames);
  };
  const MovedPlace donor = place_of(pairs.front().donor);
  const MovedPlace recipient = place_of(pairs.front().recipient);
  const auto gap_in = [&](const Pose& pose) {
    double gap_mm = 0.0;
    in_pose(pose, [&](Posture& posture) { gap_mm = (posture(donor) - posture(recipient)).norm(); });
    return gap_mm;
  };

  WorstGap result;
  std::vector<JointRange> between;
  const double straight_mm = gap_in({});
  for (const JointRange& range : postoperative_range()) {
    const auto alone = postures({range});
    if (std::ranges::any_of(alone, [&](const Pose& pose) {
          return std::abs(gap_in(pose) - straight_mm) > kMoves_mm;
        })) {
      between.push_back(range);
      result.joints_between.push_back(range.joint);
    }
  }
  const std::vector<Pose> poses = postures(between);
  std::vector<double> gaps_mm;
  for (const Pose& pose : poses) gaps_mm.push_back(gap_in(pose));
  std::vector<std::size_t> order(poses.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, std::ranges::greater{},
                           [&](std::size_t k) { return gaps_mm[k]; });
  result.worst = poses[order.front()];

  // Each sampled limb's places lie a little further up or down the same nerves.
  const auto stretch = [&](CarriedPlace PlacePair::*side) {
    double from_mm = std::numeric_limits<double>::infinity();
    double to_mm = 0.0;
    for (const PlacePair& pair : pairs) {
      from_mm = std::min(from_mm, (pair.*side).arc_mm);
      to_mm = std::max(to_mm, (pair.*side).arc_mm);
    }
    const auto carrier = (pairs.front().*side).carrier;
    return PosedStretch(places, carrier, from_mm, to_mm, parts.course_of[carrier], parts.frames);
  };
  PosedStretch donors = stretch(&PlacePair::donor);
  PosedStretch recipients = stretch(&PlacePair::recipient);
  const auto gaps_in = [&](const Pose& pose) {
    std::vector<double> gap_mm;
    in_pose(pose, [&](Posture& posture) {
      donors.move(posture);
      recipients.move(posture);
      for (const PlacePair& pair : pairs) {
        gap_mm.push_back(
            (donors.at(pair.donor.arc_mm) - recipients.at(pair.recipient.arc_mm)).norm());
      }
    });
    return gap_mm;
  };
  result.at_rest_mm = gaps_in({});
  result.gap_mm = result.at_rest_mm;
  for (std::size_t k = 0; k < std::min(kTried, order.size()); ++k) {
    const std::vector<double> gap_mm = gaps_in(poses[order[k]]);
    std::ranges::transform(result.gap_mm, gap_mm, result.gap_mm.begin(),
                           [](double a, double b) { return std::max(a, b); });
  }
  return result;
}

}  // namespace endplate::transfer
