#include "models/limb/nerve_bed.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <ranges>

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

constexpr double kStep_mm = 3.0;
constexpr std::size_t kNoCourse = std::numeric_limits<std::size_t>::max();
// Rounds of the mean of neighbours: corners are rounded over some 7 mm, about what a nerve's own
// stiffness does (assumed).
constexpr int kRoundings = 10;
// About the elbow the ulnar nerve is held from the arcade above the epicondyle to that of the
// flexor carpi ulnaris: 80 mm above and below (8 cm is common practice for the upper one).
constexpr double kCubital_mm = 80.0;

std::vector<double> arc_lengths(const std::vector<Vector3d>& way) {
  std::vector<double> arc(way.size(), 0.0);
  for (std::size_t i = 1; i < way.size(); ++i) arc[i] = arc[i - 1] + (way[i] - way[i - 1]).norm();
  return arc;
}

}  // namespace

Expected<MotionParameters> MotionParameters::from(const evidence::DataPackage& package) {
  MotionParameters result;
  std::vector<Problem> problems;
  const auto read = [&](std::string_view table, std::string_view name, double& value) {
    for (const evidence::Row row : package.table(table)) {
      if (row.text("parameter") != name) continue;
      value = row.number("value").value();
      return;
    }
    problems.push_back(
        {fmt::format("{}.csv", table), fmt::format("'{}' is missing", name), "Add its row."});
  };
  read("fitted_motion", "tether length of arm and forearm", result.tether_mm);
  read("fitted_motion", "tether length of the ulnar nerve about the elbow",
       result.cubital_tether_mm);
  read("fitted_motion", "tether length of the hand", result.hand_tether_mm);
  read("fitted_motion", "scatter", result.scatter);
  constexpr std::string_view kGiven = "nerve_motion_parameters";
  read(kGiven, "digital nerve in front of the knuckle", result.before_knuckle_mm);
  read(kGiven, "digital nerve in front of the middle joint", result.before_middle_joint_mm);
  read(kGiven, "digital nerve in front of the end joint", result.before_end_joint_mm);
  read(kGiven, "dorsal digital nerve behind the knuckle", result.behind_knuckle_mm);
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

Expected<std::vector<BedPlan>> bed_plans(const evidence::DataPackage& package, const Atlas& atlas) {
  std::vector<BedPlan> plans;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("nerve_beds")) {
    BedPlan plan{std::string(row.text("bed")), std::string(row.text("nerve")), {}, {}, false};
    for (const auto part : std::views::split(row.text("courses"), ';')) {
      const std::string_view id(part.begin(), part.end());
      const auto found = std::ranges::find(atlas.courses(), id, &Course::id);
      if (found == atlas.courses().end()) {
        problems.push_back({fmt::format("nerve_beds.csv, row {}, column courses", row.line()),
                            fmt::format("'{}' is no course", id),
                            "Use the courses of fitted_waypoints.csv."});
        continue;
      }
      plan.courses.push_back(static_cast<std::size_t>(found - atlas.courses().begin()));
    }
    // The schema allows these words only.
    const std::string_view digit = row.text("digit");
    if (digit == "middle") plan.finger = Finger::middle;
    if (digit == "little") plan.finger = Finger::little;
    if (digit == "index dorsal") plan.finger = Finger::index;
    plan.dorsal = digit == "index dorsal";
    plans.push_back(std::move(plan));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return plans;
}

NerveBed::NerveBed(const BedPlan& plan, const Atlas& atlas, const SegmentFrames& frames,
                   const LimbJoints& joints, const BodyEnvelope& envelope,
                   const MotionParameters& parameters)
    : nerve_(plan.nerve), foramen_(joints.centre_mm("intervertebral foramen", frames)) {
  for (std::size_t k = 0; k < plan.courses.size(); ++k) {
    const std::size_t course = plan.courses[k];
    const NerveLine line = nerve_line(atlas, course, frames, envelope, kStep_mm);
    double until = std::numeric_limits<double>::infinity();
    if (k + 1 < plan.courses.size()) {
      // The branch that goes on leaves its trunk at a named point.
      const Course& next = atlas.courses()[plan.courses[k + 1]];
      if (const CoursePoint* leaves = atlas.courses()[course].find(next.from_point)) {
        until = leaves->knot;
      }
    }
    for (std::size_t i = 0; i < line.places.size(); ++i) {
      if (line.knots[i] >= until || (k > 0 && i == 0)) continue;
      places_.push_back({line.places[i], 0.0});
      course_of_.push_back(course);
    }
  }
  const Vector3d begin = places_.front().place.neutral_mm;
  const auto roots = static_cast<int>(std::ceil((begin - foramen_).norm() / kStep_mm));
  std::vector<BedPlace> root;
  for (int i = 0; i < roots; ++i) {
    const double share = 1.0 - static_cast<double>(i) / roots;
    root.push_back({{share * foramen_ + (1.0 - share) * begin, {}, 0.0, 0.0}, share});
  }
  places_.insert(places_.begin(), root.begin(), root.end());
  course_of_.insert(course_of_.begin(), root.size(), kNoCourse);
  if (plan.finger) add_finger(plan, frames, joints, parameters);

  const PosedSpace at_rest(frames, joints, {});
  rest_way_mm_ = way_mm(PosedNerves(atlas.landmarks(), envelope, frames, at_rest));
  rest_mm_ = arc_lengths(rest_way_mm_);
  const bool ulnar = plan.bed == "ulnar";
  for (const BedPlace& p : places_) {
    const Vector3d& at = p.place.neutral_mm;
    const bool hand = frames.from_limb(Segment::hand, at).fraction > 0.0;
    const double arm_mm =
        frames.from_limb(Segment::humerus, at).fraction * frames.length_mm(Segment::humerus);
    const double forearm_mm =
        frames.from_limb(Segment::forearm, at).fraction * frames.length_mm(Segment::forearm);
    const double near_mm = kCubital_mm * frames.scale().arm;
    const bool cubital = ulnar && arm_mm < near_mm && forearm_mm < near_mm;
    // A small limb's nerve is thinner in proportion: the tether lengths go with the arm's length.
    tether_mm_.push_back(frames.scale().arm * (hand      ? parameters.hand_tether_mm
                                               : cubital ? parameters.cubital_tether_mm
                                                         : parameters.tether_mm));
  }
}

void NerveBed::add_finger(const BedPlan& plan, const SegmentFrames& frames,
                          const LimbJoints& joints, const MotionParameters& parameters) {
  static constexpr std::array<const char*, 4> kNames{"index", "middle", "ring", "little"};
  const auto finger = static_cast<std::size_t>(*plan.finger);
  const auto beside = [&](const char* joint, double palmar_mm) -> Vector3d {
    return joints.centre_mm(fmt::format("{} {}", kNames[finger], joint), frames) +
           frames.scale().breadth * palmar_mm * frames.anterior(Segment::hand);
  };
  std::vector<Vector3d> corners{places_.back().place.neutral_mm};
  if (plan.dorsal) {
    corners.push_back(beside("metacarpophalangeal", -parameters.behind_knuckle_mm));
    corners.push_back(beside("proximal interphalangeal", -parameters.behind_knuckle_mm));
  } else {
    corners.push_back(beside("metacarpophalangeal", parameters.before_knuckle_mm));
    corners.push_back(beside("proximal interphalangeal", parameters.before_middle_joint_mm));
    corners.push_back(beside("distal interphalangeal", parameters.before_end_joint_mm));
    corners.push_back(beside("tip", 0.0));
  }
  FingerShares own;
  own.share[finger] = 1.0;
  for (std::size_t k = 0; k + 1 < corners.size(); ++k) {
    const Vector3d step = corners[k + 1] - corners[k];
    const int steps = static_cast<int>(std::max(1.0, std::ceil(step.norm() / kStep_mm)));
    for (int i = 1; i <= steps; ++i) {
      const Vector3d p = corners[k] + step * i / steps;
      // As far as the knuckle the palm's own shares, if it has any there.
      const FingerShares palm = k == 0 ? finger_shares(frames, p) : own;
      places_.push_back({{p, palm, 0.0, 0.0}, 0.0});
      course_of_.push_back(kNoCourse);
    }
  }
}

std::vector<Vector3d> NerveBed::rounded(std::vector<Vector3d> way) const {
  for (int round = 0; round < kRoundings; ++round) {
    Vector3d before = way.front();
    for (std::size_t i = 1; i + 1 < way.size(); ++i) {
      const Vector3d here = way[i];
      way[i] = 0.25 * before + 0.5 * here + 0.25 * way[i + 1];
      before = here;
    }
  }
  return way;
}

std::vector<Vector3d> NerveBed::way_mm(const PosedNerves& nerves) const {
  std::vector<Vector3d> way(places_.size());
  Vector3d begin = Vector3d::Zero();
  for (std::size_t i = places_.size(); i-- > 0;) {
    const double root = places_[i].on_root;
    if (root == 0.0) {
      way[i] = nerves(places_[i].place);
      begin = way[i];
    } else {
      way[i] = root * foramen_ + (1.0 - root) * begin;
    }
  }
  return rounded(std::move(way));
}

std::pair<std::size_t, std::size_t> NerveBed::range_of(std::size_t course) const {
  const auto first = std::ranges::find(course_of_, course);
  const auto last =
      std::find_if(first, course_of_.end(), [&](std::size_t c) { return c != course; });
  return {static_cast<std::size_t>(first - course_of_.begin()),
          static_cast<std::size_t>(last - course_of_.begin())};
}

BedMotion motion(const NerveBed& bed, const PosedNerves& nerves) {
  BedMotion result;
  result.way_mm = bed.way_mm(nerves);
  result.arc_mm = arc_lengths(result.way_mm);
  result.lengthening_mm = result.arc_mm.back() - bed.rest_mm().back();
  result.slide = slide(bed.rest_mm(), result.arc_mm, bed.tether_mm());
  return result;
}

}  // namespace endplate::limb
