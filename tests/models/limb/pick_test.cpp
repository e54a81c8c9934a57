#include "models/limb/pick.hpp"

#include <catch2/catch.hpp>

#include "solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

PickScene scene_in(const Pose& pose) {
  const SegmentFrames frames;
  return {frames, own_joints(), own_skin(), own_solids(), PosedSpace(frames, own_joints(), pose)};
}

const PickScene& neutral() {
  static const PickScene scene = scene_in({});
  return scene;
}

std::vector<std::string> names(const std::vector<PickHit>& hits) {
  std::vector<std::string> result;
  for (const PickHit& hit : hits) result.push_back(hit.name);
  return result;
}

std::size_t position(const std::vector<PickHit>& hits, const std::string& name) {
  const auto all = names(hits);
  const auto found = std::ranges::find(all, name);
  if (found == all.end())
    FAIL("nothing is called " << name << ": "
                              << Catch::StringMaker<std::vector<std::string>>::convert(all));
  return static_cast<std::size_t>(found - all.begin());
}

}  // namespace

TEST_CASE("From the front of the arm a ray meets skin, biceps, brachialis and humerus in turn",
          "[limb][pick]") {
  const Vector3d target = SegmentFrames().to_limb(Segment::humerus, 0.42, 0.0, 4.0);
  const auto hits = neutral().along(target + Vector3d(200.0, 0.0, 0.0), -Vector3d::UnitX());
  CHECK(hits.front().kind == PickKind::skin);
  CHECK(hits.front().name == "anterior arm, middle third");
  const auto brachialis = position(hits, "brachialis, main part");
  const auto humerus = position(hits, "humerus");
  const auto triceps = position(hits, "triceps brachii, medial head");
  CHECK(position(hits, "biceps brachii, long head") < brachialis);
  CHECK(brachialis < humerus);
  CHECK(humerus < triceps);
  CHECK(hits.back().name == "posterior arm, middle third");
  for (std::size_t k = 1; k < hits.size(); ++k) CHECK(hits[k].depth_mm >= hits[k - 1].depth_mm);
  CHECK(hits.front().depth_mm == Approx(200.0 - hits.front().place_mm.x()));
}

TEST_CASE("A ray past the limb meets nothing", "[limb][pick]") {
  CHECK(neutral().along({200.0, 0.0, 500.0}, -Vector3d::UnitX()).empty());
  CHECK(neutral().at({200.0, 0.0, 500.0}).empty());
}

TEST_CASE("A point of a bone lies under the skin and in that bone", "[limb][pick]") {
  const Vector3d middle = SegmentFrames().to_limb(Segment::forearm, 0.45, 0.0, 18.0);
  const auto hits = neutral().at(middle);
  REQUIRE(hits.size() >= 2);
  CHECK(hits.front().kind == PickKind::skin);
  CHECK(hits.front().depth_mm > 5.0);
  CHECK(hits.back().name == "radius");
  CHECK(hits.back().depth_mm == Approx(6.0).margin(0.5));
}

TEST_CASE("What is picked goes with the limb", "[limb][pick]") {
  const PickScene scene = scene_in(pose_from({{"elbow_flexion_deg", 90.0}}));
  // The forearm points forward: from below it shows its back.
  const auto hits = scene.along({140.0, -300.0, 43.0}, Vector3d::UnitY());
  REQUIRE_FALSE(hits.empty());
  CHECK(hits.front().name.starts_with("posterior forearm"));
  CHECK(position(hits, "extensor digitorum") < position(hits, "radius"));
}

TEST_CASE("Without solids a pick still names the skin", "[limb][pick]") {
  const SegmentFrames frames;
  const PickScene scene(frames, own_joints(), own_skin(), {}, PosedSpace(frames, own_joints(), {}));
  CHECK(names(scene.along({200.0, 135.0, 0.0}, -Vector3d::UnitX())) ==
        std::vector<std::string>{"anterior arm, middle third", "posterior arm, middle third"});
}

}  // namespace endplate::limb
