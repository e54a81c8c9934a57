#include "models/limb/skin_contact.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>
#include <optional>
#include <string>

#include "geometry/mesh_intersections.hpp"

namespace endplate::limb {
namespace {

constexpr std::array<const char*, 4> kFingers{"index", "middle", "ring", "little"};
constexpr std::size_t kEnough = 2000;  // pairs; all of one contact are alike
// Half of what lies between the bones' axes where the flesh of a bent elbow folds, on the ledger
// limb: bone of 11 mm in front of either axis and some flesh (assumed).
constexpr double kElbowRoom_mm = 13.0;
constexpr int kHalvings = 8;  // of the range of a joint, to a degree

enum class Part { arm, forearm, hand, index, middle, ring, little, thumb };
bool is_finger(Part part) {
  return part >= Part::index && part <= Part::little;
}
std::size_t finger_of(Part part) {
  return static_cast<std::size_t>(part) - static_cast<std::size_t>(Part::index);
}

// Skin that the thumb takes along by at least so much is the thumb.
constexpr double kThumb = 0.9;

// Of each triangle, by its first corner at rest. A finger is what lies beyond its middle joint: at
// its root the web joins it to its neighbours and is stretched when one of them bends alone.
std::vector<Part> parts_of(const SkinMesh& skin, const SegmentFrames& frames,
                           const LimbJoints& joints) {
  std::array<double, 4> middle_joint{};
  for (std::size_t f = 0; f < 4; ++f) {
    const std::string joint = fmt::format("{} proximal interphalangeal", kFingers[f]);
    middle_joint[f] = frames.from_limb(Segment::hand, joints.centre_mm(joint, frames)).fraction;
  }
  std::vector<Part> parts;
  parts.reserve(skin.mesh.triangles.size());
  for (const auto& t : skin.mesh.triangles) {
    const auto& share = skin.fingers[t[0]].share;
    const auto f = static_cast<std::size_t>(std::ranges::max_element(share) - share.begin());
    const Eigen::Vector3d& p = skin.mesh.vertices_mm[t[0]];
    if (skin.fingers[t[0]].thumb >= kThumb) {
      parts.push_back(Part::thumb);
    } else if (share[f] > 0.0 && frames.from_limb(Segment::hand, p).fraction > middle_joint[f]) {
      parts.push_back(static_cast<Part>(static_cast<std::size_t>(Part::index) + f));
    } else if (frames.from_limb(Segment::humerus, p).fraction > 0.0) {
      parts.push_back(Part::arm);
    } else {
      parts.push_back(frames.from_limb(Segment::hand, p).fraction > 0.0 ? Part::hand
                                                                        : Part::forearm);
    }
  }
  return parts;
}

// What meets what: the elbow's doing, the fingers', the thumb's, or nobody's.
struct Meeting {
  std::optional<Part> arm_meets;  // the most distal part that does
  std::array<bool, 4> finger_meets_hand{};
  bool thumb_meets = false;  // a finger, the hand or itself
  bool elsewhere = false;

  bool free() const {
    return !arm_meets && !thumb_meets && !elsewhere &&
           std::ranges::none_of(finger_meets_hand, std::identity());
  }
};

class Judge {
 public:
  Judge(const SkinMesh& skin, const SegmentFrames& frames, const LimbJoints& joints)
      : skin_(skin), frames_(frames), joints_(joints), parts_(parts_of(skin, frames, joints)) {}

  Meeting at(const Pose& pose) const {
    const geometry::TriangleMesh posed{posed_vertices_mm(skin_, PosedSpace(frames_, joints_, pose)),
                                       skin_.mesh.triangles};
    Meeting meeting;
    for (const auto& [a, b] : geometry::crossing_pairs(posed, kEnough)) {
      const auto [near, far] = std::minmax(parts_[a], parts_[b]);
      if (near == Part::arm && far != Part::arm) {
        meeting.arm_meets = std::max(meeting.arm_meets.value_or(far), far);
      } else if (far == Part::thumb && near != Part::forearm) {
        meeting.thumb_meets = true;
      } else if (is_finger(far) && near == Part::hand) {
        meeting.finger_meets_hand[finger_of(far)] = true;
      } else {
        meeting.elsewhere = true;
      }
    }
    return meeting;
  }

 private:
  const SkinMesh& skin_;
  const SegmentFrames& frames_;
  const LimbJoints& joints_;
  std::vector<Part> parts_;
};

// The largest share, in steps, at which `meets` is no longer true.
template <class Meets>
double largest_free(const Meets& meets) {
  double low = 0.0;
  double high = 1.0;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = 0.5 * (low + high);
    (meets(middle) ? high : low) = middle;
  }
  return low;
}

double degrees(double rad) {
  return rad * 180.0 / std::numbers::pi;
}

FingerPose scaled(const FingerPose& finger, double share) {
  return {share * finger.mcp_flexion, share * finger.pip_flexion, share * finger.dip_flexion};
}

ThumbPose scaled(const ThumbPose& thumb, double share) {
  return {share * thumb.palmar_abduction, share * thumb.cmc_flexion, share * thumb.mcp_flexion,
          share * thumb.ip_flexion};
}

std::string in_words(Part part) {
  if (part == Part::thumb) return "the thumb";
  if (is_finger(part)) return fmt::format("the {} finger", kFingers[finger_of(part)]);
  return part == Part::arm ? "the arm" : part == Part::forearm ? "the forearm" : "the hand";
}

}  // namespace

ContactLimit limit_contact(const SkinMesh& skin, const SegmentFrames& frames,
                           const LimbJoints& joints, const Pose& pose) {
  ContactLimit limit{pose, {}, false};
  if (pose.is_neutral()) return limit;
  // Where the elbow folds, bone and a little flesh of either side must find room.
  const double room_mm = kElbowRoom_mm * frames.scale().breadth;
  const double most = 2.0 * std::atan(joints.half_zone_mm("elbow", frames) / room_mm);
  if (pose.elbow_flexion > most) {
    const double held_deg = std::trunc(degrees(most));
    limit.pose.elbow_flexion = held_deg * std::numbers::pi / 180.0;
    limit.contacts.push_back(
        fmt::format("arm and forearm leave the flesh between them no more room: the elbow is bent "
                    "by {:.0f} degrees, not by {:.0f}",
                    held_deg, degrees(pose.elbow_flexion)));
  }
  const Judge judge(skin, frames, joints);
  Meeting meeting = judge.at(limit.pose);
  if (meeting.free()) return limit;

  // Fingers first: once they have given way they may no longer meet the arm.
  for (std::size_t f = 0; f < 4; ++f) {
    if (!meeting.finger_meets_hand[f]) continue;
    const FingerPose asked = pose.fingers[f];
    Pose trial = limit.pose;
    const double share = largest_free([&](double s) {
      trial.fingers[f] = scaled(asked, s);
      return judge.at(trial).finger_meets_hand[f];
    });
    limit.pose.fingers[f] = scaled(asked, share);
    limit.contacts.push_back(
        {fmt::format("the {} finger meets the hand: its joints are bent by {:.0f} % of what the "
                     "case gives",
                     kFingers[f], 100.0 * share)});
    meeting = judge.at(limit.pose);
  }
  if (meeting.thumb_meets) {
    Pose trial = limit.pose;
    const double share = largest_free([&](double s) {
      trial.thumb = scaled(pose.thumb, s);
      return judge.at(trial).thumb_meets;
    });
    limit.pose.thumb = scaled(pose.thumb, share);
    limit.contacts.push_back(
        {fmt::format("the thumb meets the fingers or the hand: its joints are bent by {:.0f} % of "
                     "what the case gives",
                     100.0 * share)});
    meeting = judge.at(limit.pose);
  }
  if (meeting.arm_meets) {
    Pose trial = limit.pose;
    const double most_flexed = limit.pose.elbow_flexion;
    const double share = largest_free([&](double s) {
      trial.elbow_flexion = s * most_flexed;
      return judge.at(trial).arm_meets.has_value();
    });
    const double held_deg = std::trunc(degrees(share * most_flexed));
    limit.pose.elbow_flexion = held_deg * std::numbers::pi / 180.0;
    limit.contacts.push_back(
        {fmt::format("{} meets the arm: the elbow is bent by {:.0f} degrees, not by {:.0f}",
                     in_words(*meeting.arm_meets), held_deg, degrees(pose.elbow_flexion))});
    meeting = judge.at(limit.pose);
  }
  limit.crosses_elsewhere = !meeting.free();
  return limit;
}

}  // namespace endplate::limb
