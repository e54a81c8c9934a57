#include "models/limb/drawn_courses.hpp"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <string>
#include <utility>

#include "limb_fixture.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/drawn_limb.hpp"
#include "models/limb/drawn_sample.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/limb/nerve_route.hpp"
#include "models/limb/posed_bones.hpp"

namespace endplate::limb {
namespace {

using anatomy::NodeIndex;
using Eigen::Vector3d;
using Pose_deg = std::map<std::string, double>;

const anatomy::NerveTree& tree() {
  static const auto read = anatomy::NerveTree::from(own_tables()).value();
  return read;
}
const BodyEnvelope& envelope() {
  static const BodyEnvelope read = BodyEnvelope::from(own_tables()).value();
  return read;
}
const LimbJoints& joints() {
  static const LimbJoints read = LimbJoints::from(own_tables()).value();
  return read;
}
const Atlas& atlas() {
  static const Atlas read = Atlas::fitted(own_tables()).value();
  return read;
}

// The drawn nerves of a man's limb.
struct Laid {
  CaseLimb limb = CaseLimb::from(own_tables(), tree(), adult(casefile::Sex::male)).value();
  SegmentFrames frames{limb.size().mean_scale()};
  SkinMesh mesh = make_skin(frames, envelope(), joints(), 1);
  geometry::SurfaceProbe probe{mesh.mesh};
  DrawnSkin skin{mesh, probe, envelope(), DigitSkin(frames, joints())};
  std::vector<DrawnNerve> nerves = drawn_nerves(own_tables(), tree(), limb, skin).value();
};
const Laid& laid() {
  static const Laid made;
  return made;
}

const std::string& name_of(const DrawnNerve& nerve) {
  return tree().node(nerve.nerve).name;
}
const DrawnNerve& nerve(const std::string& name) {
  const auto found = std::ranges::find(laid().nerves, name, name_of);
  INFO(name);
  REQUIRE(found != laid().nerves.end());
  return *found;
}

// Every 3 mm, with the place as the nerve has it.
std::vector<DrawnPlace> places(const DrawnLine& line) {
  const int steps = std::max(1, static_cast<int>(std::ceil(line.length_mm() / 3.0)));
  std::vector<DrawnPlace> result;
  for (int k = 0; k <= steps; ++k) result.push_back(line.at(static_cast<double>(k) / steps));
  return result;
}

double away_mm(const std::vector<Vector3d>& line, const Vector3d& p) {
  double least = 1e9;
  for (const Vector3d& q : line) least = std::min(least, (p - q).norm());
  return least;
}

// Where a nerve of the arm or forearm first comes to a level of a segment.
Vector3d at_level(const std::string& name, Segment segment, double fraction) {
  for (const DrawnPlace& place : places(nerve(name).line)) {
    const double here = laid().frames.from_limb(segment, place.neutral_mm).fraction;
    if (segment == Segment::humerus ? here <= fraction : here >= fraction) return place.neutral_mm;
  }
  FAIL(name + " does not reach that level");
  return Vector3d::Zero();
}

Vector3d landmark(const std::string& name) {
  static const LandmarkSet set = LandmarkSet::from(own_tables()).value();
  return set.position_mm(name, laid().frames).value();
}

double depth_mm(const geometry::SurfaceProbe& probe, const Vector3d& p) {
  const geometry::ProbedPlace at = probe.at(p);
  return at.inside ? at.distance_mm : -at.distance_mm;
}

// Above that the skin is a round end that says nothing (docs/body.md).
bool in_free_limb(const Vector3d& neutral_mm) {
  return laid().frames.from_limb(Segment::humerus, neutral_mm).fraction < 0.7;
}

// In a pose; the nerves and the skin.
struct Posed {
  SegmentFrames frames;
  PosedSpace space;
  PosedNerves nerves;
  PosedBones bones;
  DrawnPlaces drawn;

  explicit Posed(const Pose_deg& pose_deg, Side side = Side::right)
      : frames(laid().limb.size().mean_scale(), side),
        space(frames, joints(), pose_from(pose_deg)),
        nerves(atlas().landmarks(), envelope(), frames, space),
        bones(envelope(), frames, space),
        drawn(laid().nerves, tree(), frames, std::nullopt, 3.0) {}
};

constexpr std::array kFingers{std::pair{Digit::thumb, "thumb"}, std::pair{Digit::index, "index"},
                              std::pair{Digit::middle, "middle finger"},
                              std::pair{Digit::ring, "ring finger"},
                              std::pair{Digit::little, "little finger"}};

}  // namespace

TEST_CASE("Small nerves are drawn as long as was published", "[limb]") {
  static const auto routes = read_nerve_routes(own_tables(), tree()).value();
  int checked = 0;
  for (const DrawnNerve& drawn : laid().nerves) {
    // Others have a length that is itself assumed, or run on beyond the middle of their area.
    if (routes[drawn.nerve].departures.front().provenance != evidence::Provenance::read) continue;
    INFO(name_of(drawn));
    CHECK(drawn.line.length_mm() ==
          Approx(laid().limb.metrics().length_mm[drawn.nerve]).epsilon(0.2));
    ++checked;
  }
  CHECK(checked == 14);
  CHECK(laid().nerves.size() == 72);
}

TEST_CASE("A small nerve begins on its parent", "[limb]") {
  const auto girdle = GirdleCourses::from(own_tables(), tree()).value();
  int on_courses = 0, on_drawn = 0, on_cords = 0;
  for (const DrawnNerve& drawn : laid().nerves) {
    INFO(name_of(drawn));
    const NodeIndex parent = tree().node(drawn.nerve).parents.front();
    std::vector<Vector3d> line = laid().limb.path_mm(parent, 1.0);
    if (!line.empty()) {
      ++on_courses;
    } else if (!girdle.points(parent).empty()) {
      ++on_cords;
      const GirdleLine cord(girdle.points(parent), laid().frames);
      for (int k = 0; k <= 200; ++k) line.push_back(cord.at(k / 200.0).neutral_mm());
    } else {
      ++on_drawn;
      const DrawnLine& of = nerve(tree().node(parent).name).line;
      for (int k = 0; k <= 300; ++k) line.push_back(of.at(k / 300.0).neutral_mm);
    }
    CHECK(away_mm(line, drawn.line.point_mm(0)) < 1.0);
  }
  CHECK(on_courses > 30);
  CHECK(on_drawn > 20);
  CHECK(on_cords == 2);
}

TEST_CASE("The medial antebrachial cutaneous nerve passes the medial epicondyle", "[limb]") {
  const std::string anterior = "anterior branch of medial antebrachial cutaneous nerve";
  const std::string posterior = "posterior branch of medial antebrachial cutaneous nerve";
  const Vector3d epicondyle = landmark("medial epicondyle");
  // Divides 84 mm above the interepicondylar line (mcnf-bifurcation-iel-kim).
  const DrawnLine& trunk = nerve("medial antebrachial cutaneous nerve").line;
  CHECK(trunk.point_mm(trunk.size() - 1).y() ==
        Approx(84.0 * laid().frames.scale().arm).margin(1.0));
  // In front of the epicondyle (textbook; the study of NP_120 in words), under its skin.
  const Vector3d at_elbow = at_level(posterior, Segment::humerus, 0.0);
  CHECK(at_elbow.x() > epicondyle.x() + 3.0);
  CHECK((at_elbow - epicondyle).norm() < 30.0);
  CHECK(depth_mm(laid().probe, at_elbow) == Approx(5.0).margin(1.0));
  // Then round to the back, and medial all along.
  CHECK(laid().frames.from_limb(Segment::forearm, at_level(posterior, Segment::forearm, 0.5)).x_mm <
        -5.0);
  CHECK(laid().frames.from_limb(Segment::forearm, at_level(posterior, Segment::forearm, 0.5)).z_mm <
        -20.0);
  // The anterior branch crosses the elbow between the epicondyle and the biceps tendon and stays in
  // front.
  const Vector3d crease = at_level(anterior, Segment::humerus, 0.0);
  CHECK(crease.z() > epicondyle.z());
  CHECK(crease.z() < landmark("biceps tendon").z());
  CHECK(crease.x() > at_elbow.x() + 5.0);
  CHECK(laid().frames.from_limb(Segment::forearm, at_level(anterior, Segment::forearm, 0.5)).x_mm >
        10.0);
}

TEST_CASE("The posterior branch passes the arch of flexor carpi ulnaris as far off as published",
          "[limb]") {
  // 15.4 mm with the elbow bent 45 degrees, 16.2 at 90 (NP_120, NP_121; 20 limbs) from where the
  // ulnar nerve enters between the heads. The branch was drawn at that distance, elbow straight.
  const auto at_arch = atlas().find_point("uln.fcu");
  REQUIRE(at_arch.has_value());
  const CaseLimbCourse& ulnar = laid().limb.courses()[at_arch->course];
  const Vector3d arch = ulnar.position_at(
      ulnar.arc_at(atlas().courses()[at_arch->course].points[at_arch->point].knot));
  const auto& branch = nerve("posterior branch of medial antebrachial cutaneous nerve");
  const auto n = static_cast<std::size_t>(&branch - laid().nerves.data());
  for (const auto& [bent_deg, published_mm] : {std::pair{45.0, 15.4}, std::pair{90.0, 16.2}}) {
    const Posed posed({{"elbow_flexion_deg", bent_deg}});
    const Vector3d entry = posed.nerves(nerve_place("ulnar", posed.frames, arch));
    INFO(bent_deg);
    CHECK(away_mm(posed.drawn.mean_mm(n, posed.nerves), entry) == Approx(published_mm).margin(5.0));
  }
}

TEST_CASE("Digital nerves run on their own side of their finger", "[limb]") {
  const DigitSkin& digits = laid().skin.digits;
  const auto from_axis = [&](Digit digit, const Vector3d& p) {
    return Vector3d(p - digits.axis_mm(digit, p));
  };
  int palmar = 0, dorsal = 0;
  for (const DrawnNerve& drawn : laid().nerves) {
    const std::string& name = name_of(drawn);
    const bool proper = name.starts_with("proper palmar digital nerve");
    const bool from_radial_or_ulnar = name.starts_with("dorsal digital nerve");
    const bool dorsal_branch = name.starts_with("dorsal branch of proper");
    if (!proper && !from_radial_or_ulnar && !dorsal_branch) continue;
    INFO(name);
    const bool radial = name.ends_with("radial side");
    const auto all = places(drawn.line);
    for (const DrawnPlace& place : all) {
      if (place.on_digit < 1.0 || !digits.covers(*place.digit, place.neutral_mm)) continue;
      const Vector3d off = from_axis(*place.digit, place.neutral_mm);
      // Palmar of the mid-axial line, or on the back; a dorsal branch comes from the one to the
      // other.
      if (proper) CHECK(off.dot(digits.palmar(*place.digit)) > 1.0);
      if (from_radial_or_ulnar) CHECK(off.dot(digits.palmar(*place.digit)) < -1.0);
      CHECK(off.dot(digits.radial(*place.digit)) * (radial ? 1.0 : -1.0) > 1.0);
      ++(proper ? palmar : dorsal);
    }
    const DrawnPlace& end = all.back();
    if (!end.digit) continue;
    CHECK(name.find(std::ranges::find(kFingers, *end.digit, &std::pair<Digit, const char*>::first)
                        ->second) != std::string::npos);
    if (dorsal_branch) {
      CHECK(from_axis(*end.digit, end.neutral_mm).dot(digits.palmar(*end.digit)) < -1.0);
    }
  }
  CHECK(palmar > 100);
  CHECK(dorsal > 50);
}

TEST_CASE("Small nerves lie as deep under the skin as their table says", "[limb]") {
  int checked = 0;
  for (const DrawnNerve& drawn : laid().nerves) {
    for (std::size_t k = 0; k < drawn.points.size(); ++k) {
      if (!drawn.points[k].under_skin_mm) continue;
      INFO(name_of(drawn) << ", point " << k + 1);
      CHECK(depth_mm(laid().probe, drawn.line.point_mm(k + 1)) ==
            Approx(*drawn.points[k].under_skin_mm).margin(0.8));
      ++checked;
    }
  }
  CHECK(checked > 100);
}

TEST_CASE("Small nerves stay under the skin and out of the bones however the limb lies",
          "[limb][motion]") {
  for (const Pose_deg& pose_deg :
       {Pose_deg{}, Pose_deg{{"elbow_flexion_deg", 110.0}},
        Pose_deg{{"forearm_pronation_deg", 70.0}},
        Pose_deg{{"fingers_flexion_deg", 75.0}, {"wrist_extension_deg", -40.0}},
        Pose_deg{{"thumb_palmar_abduction_deg", 30.0},
                 {"thumb_mcp_flexion_deg", 40.0},
                 {"thumb_ip_flexion_deg", 50.0}}}) {
    const Posed posed(pose_deg);
    geometry::TriangleMesh mesh = laid().mesh.mesh;
    mesh.vertices_mm = posed_vertices_mm(laid().mesh, posed.space);
    const geometry::SurfaceProbe probe(mesh);
    for (std::size_t n = 0; n < laid().nerves.size(); ++n) {
      const DrawnNerve& drawn = laid().nerves[n];
      INFO(name_of(drawn) << (pose_deg.empty() ? "" : pose_deg.begin()->first));
      const auto at_rest = places(drawn.line);
      const auto line = posed.drawn.mean_mm(n, posed.nerves);
      REQUIRE(line.size() == at_rest.size());
      for (std::size_t k = 0; k < line.size(); ++k) {
        CHECK(posed.bones.clearance_mm(line[k]) >= kLeastClearance_mm - 1e-6);
        // Where the thumb folds the palm the nearest is 0.9 mm.
        if (in_free_limb(at_rest[k].neutral_mm)) CHECK(depth_mm(probe, line[k]) > 0.7);
      }
    }
  }
}

TEST_CASE("The small nerves of a left limb are the mirror image", "[limb][motion]") {
  const Pose_deg pose_deg{{"elbow_flexion_deg", 60.0},
                          {"forearm_pronation_deg", 30.0},
                          {"fingers_flexion_deg", 40.0},
                          {"thumb_palmar_abduction_deg", 20.0}};
  const Posed right(pose_deg), left(pose_deg, Side::left);
  for (std::size_t n = 0; n < laid().nerves.size(); ++n) {
    INFO(name_of(laid().nerves[n]));
    const auto on_right = right.drawn.mean_mm(n, right.nerves);
    const auto on_left = left.drawn.mean_mm(n, left.nerves);
    for (std::size_t k = 0; k < on_right.size(); ++k) {
      const Vector3d mirrored(on_right[k].x(), on_right[k].y(), -on_right[k].z());
      CHECK((on_left[k] - mirrored).norm() < 1e-9);
    }
  }
}

TEST_CASE("A transposed ulnar nerve takes the beginnings of its branches along", "[limb]") {
  const Posed posed({});
  const DrawnPlaces moved(laid().nerves, tree(), posed.frames, casefile::Layer::subcutaneous, 3.0);
  const auto shifted_mm = [&](const std::string& name, bool end) {
    const auto n = static_cast<std::size_t>(&nerve(name) - laid().nerves.data());
    const auto before = posed.drawn.mean_mm(n, posed.nerves);
    const auto after = moved.mean_mm(n, posed.nerves);
    return end ? (after.back() - before.back()).norm() : (after.front() - before.front()).norm();
  };
  CHECK(shifted_mm("ulnar branch to flexor carpi ulnaris", false) > 8.0);
  CHECK(shifted_mm("ulnar branch to flexor carpi ulnaris", true) < 1e-9);
  CHECK(shifted_mm("ulnar branch to ulnar head of flexor carpi ulnaris", false) > 4.0);
  CHECK(shifted_mm("radial branch to brachialis", false) == 0.0);
}

}  // namespace endplate::limb
