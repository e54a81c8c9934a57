#include "models/limb/drawn_sample.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <string>

#include "limb_fixture.hpp"
#include "models/limb/case_pose.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

constexpr int kLimbs = 200;

const anatomy::NerveTree& tree() {
  static const auto read = anatomy::NerveTree::from(own_tables()).value();
  return read;
}

struct Sampled {
  CaseLimb limb = CaseLimb::from(own_tables(), tree(), adult(casefile::Sex::female)).value();
  SegmentFrames frames{limb.size().mean_scale()};
  CasePose pose = CasePose::from(own_tables(), frames, {}).value();
  std::vector<SampledLine> lines =
      sample_lines(own_tables(), tree(), limb, pose, {}, Side::right, 5.0, kLimbs, 7).value();
};
const Sampled& sampled() {
  static const Sampled made;
  return made;
}

const SampledLine& line(const std::string& name) {
  const auto node = tree().find(name);
  REQUIRE(node.has_value());
  const auto found = std::ranges::find(sampled().lines, *node, &SampledLine::nerve);
  INFO(name);
  REQUIRE(found != sampled().lines.end());
  return *found;
}
Vector3d place(const SampledLine& of, int limb, std::size_t k) {
  return of.samples_mm[static_cast<std::size_t>(limb) * of.mean_mm.size() + k];
}

}  // namespace

TEST_CASE("Each nerve is sampled once, with a course or drawn", "[limb][drawn]") {
  std::vector<anatomy::NodeIndex> nerves;
  for (const SampledLine& of : sampled().lines) {
    nerves.push_back(of.nerve);
    CHECK(of.samples_mm.size() == kLimbs * of.mean_mm.size());
  }
  std::ranges::sort(nerves);
  CHECK(std::ranges::adjacent_find(nerves) == nerves.end());
  // 22 with a course, 72 drawn in the free limb, 26 round the girdle without the chest wall.
  CHECK(nerves.size() == 120);
}

TEST_CASE("A drawn nerve lies as uncertain as its table says, but at its depth", "[limb][drawn]") {
  // Its points at the elbow are known to 8 mm, and to 1.9 mm in depth (NP_135, NP_136).
  const SampledLine& of = line("posterior branch of medial antebrachial cutaneous nerve");
  const SegmentFrames& frames = sampled().frames;
  std::size_t elbow = 0;
  while (of.mean_mm[elbow].y() > 0.0) ++elbow;
  double square = 0.0, depth = 0.0, depth_square = 0.0;
  for (int i = 0; i < kLimbs; ++i) {
    const Vector3d p = place(of, i, elbow);
    square += (p - of.mean_mm[elbow]).squaredNorm() / kLimbs;
    const double deep = sampled().pose.envelope.depth_mm<double>(frames, p);
    depth += deep / kLimbs;
    depth_square += deep * deep / kLimbs;
  }
  // Over the skin in two directions.
  CHECK(std::sqrt(square / 2.0) == Approx(8.0).margin(2.0));
  CHECK(std::sqrt(depth_square - depth * depth) < 2.5);
}

TEST_CASE("In each sampled limb a branch begins where its nerve runs", "[limb][drawn]") {
  const auto off_mm = [](const std::string& branch, const std::string& trunk) {
    const SampledLine& from = line(branch);
    const SampledLine& of = line(trunk);
    double most = 0.0;
    for (int i = 0; i < kLimbs; ++i) {
      double least = 1e9;
      for (std::size_t k = 1; k < of.mean_mm.size(); ++k) {
        const Vector3d a = place(of, i, k - 1), way = place(of, i, k) - a;
        const Vector3d to = place(from, i, 0) - a;
        const double share = std::clamp(to.dot(way) / way.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (to - share * way).norm());
      }
      most = std::max(most, least);
    }
    return most;
  };
  CHECK(off_mm("anterior branch of medial antebrachial cutaneous nerve",
               "medial antebrachial cutaneous nerve") < 3.0);
  CHECK(off_mm("ulnar branch to flexor carpi ulnaris", "ulnar nerve") < 3.0);
  CHECK(off_mm("dorsal digital nerve of index radial side", "superficial branch of radial nerve") <
        3.0);
}

TEST_CASE("Sampled digital nerves stay in their fingers", "[limb][drawn]") {
  const DigitSkin digits(sampled().frames, sampled().pose.joints);
  for (const auto& [name, digit] :
       {std::pair{"proper palmar digital nerve of index radial side", Digit::index},
        std::pair{"proper palmar digital nerve of little finger ulnar side", Digit::little},
        std::pair{"proper palmar digital nerve of thumb ulnar side", Digit::thumb}}) {
    INFO(name);
    const SampledLine& of = line(name);
    double square = 0.0;
    for (int i = 0; i < kLimbs; ++i) {
      const std::size_t end = of.mean_mm.size() - 1;
      CHECK(digits.depth_mm(digit, place(of, i, end)) > 1.5);
      square += (place(of, i, end) - of.mean_mm[end]).squaredNorm() / kLimbs;
    }
    CHECK(std::sqrt(square) > 1.0);
    CHECK(std::sqrt(square) < 5.0);
  }
}

}  // namespace endplate::limb
