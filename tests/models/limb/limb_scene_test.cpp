#include "models/limb/limb_scene.hpp"

#include <algorithm>

#include "../../support/solid_probe.hpp"
#include "limb_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

const anatomy::Anatomy& own_anatomy() {
  static const auto anatomy = anatomy::Anatomy::from(own_tables());
  REQUIRE(anatomy.has_value());
  return *anatomy;
}

const SceneLimb& limb_on(Side side) {
  const auto make = [](Side of) {
    casefile::Limb limb;
    limb.side = of;
    return SceneLimb::from(own_tables(), own_anatomy(), limb).value();
  };
  static const SceneLimb right = make(Side::right);
  static const SceneLimb left = make(Side::left);
  return side == Side::right ? right : left;
}

const LimbScene& at_rest() {
  static const LimbScene scene = limb_on(Side::right).in_pose({});
  return scene;
}

std::size_t nerve(const LimbScene& scene, std::string_view name) {
  const auto found = scene.shape->find_nerve(name);
  if (!found) FAIL("no nerve is called " << name);
  return *found;
}

Vector3d landmark(const LimbScene& scene, std::string_view name) {
  const auto found = std::ranges::find(scene.shape->landmarks, name);
  if (found == scene.shape->landmarks.end()) FAIL("no landmark is called " << name);
  return scene.landmarks_mm[static_cast<std::size_t>(found - scene.shape->landmarks.begin())];
}

}  // namespace

TEST_CASE("Every nerve of a scene has a line from its beginning to its end", "[limb][scene]") {
  const LimbScene& scene = at_rest();
  REQUIRE(scene.nerves_mm.size() == scene.shape->nerves.size());
  CHECK(scene.nerves_mm.size() > 120);
  for (std::size_t n = 0; n < scene.nerves_mm.size(); ++n) {
    const SceneNerve& each = scene.shape->nerves[n];
    INFO(each.name);
    REQUIRE(each.arc_mm.size() == scene.nerves_mm[n].size());
    REQUIRE(each.arc_mm.size() >= 2);
    CHECK(each.arc_mm.front() == 0.0);
    CHECK(each.arc_mm.back() == Approx(each.length_mm));
    CHECK(std::ranges::is_sorted(each.arc_mm));
    for (const Vector3d& p : scene.nerves_mm[n]) CHECK(p.allFinite());
    CHECK(scene.place_mm({n, -5.0}) == scene.nerves_mm[n].front());
    CHECK(scene.place_mm({n, 1e6}) == scene.nerves_mm[n].back());
  }
  for (const char* name : {"musculocutaneous nerve", "axillary nerve", "radial nerve",
                           "median nerve", "ulnar nerve"}) {
    CHECK(scene.shape->nerves[nerve(scene, name)].rank == NerveRank::great);
  }
  CHECK(scene.shape->nerves[nerve(scene, "posterior interosseous nerve")].family ==
        NerveFamily::radial);
  CHECK(scene.shape->nerves[nerve(scene, "third intercostal nerve")].rank == NerveRank::chest);
  CHECK(scene.shape->nerves[nerve(scene, "C5 root")].rank == NerveRank::girdle);
}

TEST_CASE("Branches leave and muscles are entered on a nerve of the scene", "[limb][scene]") {
  const LimbScene& scene = at_rest();
  CHECK(scene.shape->branches.size() > 150);
  CHECK(scene.shape->entries.size() > 45);
  for (const SceneBranch& branch : scene.shape->branches) {
    INFO(branch.name);
    CHECK(branch.at.arc_mm <= scene.shape->nerves[branch.at.nerve].length_mm + 1e-6);
    // What has a line of its own begins where it leaves.
    const auto own = scene.shape->find_nerve(branch.name);
    if (!own || scene.shape->nerves[*own].rank != NerveRank::deep) continue;
    CHECK((scene.nerves_mm[*own].front() - scene.place_mm(branch.at)).norm() < 8.0);
  }
  std::vector<std::string> ids;
  for (const SceneEntry& entry : scene.shape->entries) ids.push_back(entry.id);
  CHECK(std::ranges::find(ids, "ECRL") != ids.end());
}

TEST_CASE("The great nerves pass the elbow and the humerus where anatomy has them",
          "[limb][scene]") {
  const LimbScene& scene = at_rest();
  const Vector3d medial = landmark(scene, "medial epicondyle");
  const auto nearest = [&](const char* name, double level_mm) {
    const auto& line = scene.nerves_mm[nerve(scene, name)];
    return *std::ranges::min_element(line, {},
                                     [&](const Vector3d& p) { return std::abs(p.y() - level_mm); });
  };
  CHECK(nearest("ulnar nerve", medial.y()).x() < medial.x());
  CHECK(nearest("median nerve", medial.y()).x() > medial.x());
  const double arm_mm = limb_on(Side::right).frames().length_mm(Segment::humerus);
  CHECK(nearest("radial nerve", 0.55 * arm_mm).x() < -5.0);
}

TEST_CASE("The nerves of the free limb run under its skin, bent or straight", "[limb][scene]") {
  for (const Pose& pose :
       {Pose{}, pose_from({{"elbow_flexion_deg", 90.0}, {"forearm_pronation_deg", 60.0}})}) {
    const LimbScene scene = limb_on(Side::right).in_pose(pose);
    const test::SolidProbe skin({scene.skin_mm, scene.shape->skin});
    std::size_t places = 0;
    std::size_t outside = 0;
    for (const char* name : {"median nerve", "ulnar nerve", "posterior interosseous nerve",
                             "superficial branch of radial nerve"}) {
      const std::size_t n = nerve(scene, name);
      const auto& line = scene.nerves_mm[n];
      for (std::size_t k = line.size() / 4; k < line.size(); ++k) {
        ++places;
        if (!skin.holds(line[k])) ++outside;
      }
    }
    CHECK(static_cast<double>(outside) < 0.01 * static_cast<double>(places));
  }
}

TEST_CASE("The left limb is the mirror image of the right one", "[limb][scene]") {
  const Pose pose = pose_from({{"elbow_flexion_deg", 70.0}, {"shoulder_abduction_deg", 30.0}});
  const LimbScene right = limb_on(Side::right).in_pose(pose);
  const LimbScene left = limb_on(Side::left).in_pose(pose);
  const auto apart = [](const Vector3d& r, const Vector3d& l) {
    return (r - Vector3d(l.x(), l.y(), -l.z())).norm();
  };
  for (std::size_t n = 0; n < right.nerves_mm.size(); ++n) {
    for (std::size_t k = 0; k < right.nerves_mm[n].size(); ++k) {
      CHECK(apart(right.nerves_mm[n][k], left.nerves_mm[n][k]) < 1e-9);
    }
  }
  for (std::size_t i = 0; i < right.landmarks_mm.size(); ++i) {
    CHECK(apart(right.landmarks_mm[i], left.landmarks_mm[i]) < 1e-9);
  }
}

TEST_CASE("Posing keeps the shape and is stopped by the skin when asked", "[limb][scene]") {
  const SceneLimb& limb = limb_on(Side::right);
  const Pose far = pose_from({{"elbow_flexion_deg", 160.0}});
  CHECK(limb.in_pose(far).shape == limb.shape());
  CHECK(limb.held(far).elbow_flexion <= far.elbow_flexion);
  CHECK(limb.held({}).is_neutral());
  CHECK_FALSE(limb.skin_name(0, {0.2, 0.3, 0.5}).empty());
}

}  // namespace endplate::limb
