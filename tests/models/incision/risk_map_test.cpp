// The map of risk against brute force with CGAL's distances of segments, over the same limbs.
#include "models/incision/risk_map.hpp"

#include <CGAL/Simple_cartesian.h>
#include <tbb/global_control.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "models/anatomy/anatomy.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;
using Kernel = CGAL::Simple_cartesian<double>;

constexpr int kLimbs = 60;

template <class T>
T value_of(Expected<T> made) {
  if (!made) FAIL(made.error().problems.front().what);
  return std::move(*made);
}

struct Scene {
  geometry::TriangleMesh skin;
  std::vector<limb::SampledLine> lines;
};

Scene scene(Side side) {
  const auto package = value_of(evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets"));
  const auto anatomy = value_of(anatomy::Anatomy::from(package));
  casefile::Limb given;
  given.side = side;
  const auto limb = value_of(limb::CaseLimb::from(package, anatomy.tree(), given));
  const limb::SegmentFrames frames(limb.size().mean_scale(), side);
  const auto pose = value_of(limb::CasePose::from(package, frames, {}));
  return {
      limb::make_skin(frames, pose.envelope, pose.joints, 1).mesh,
      value_of(limb::sample_lines(package, anatomy.tree(), limb, pose, {}, side, 5.0, kLimbs, 7))};
}

const Scene& right_limb() {
  static const Scene made = scene(Side::right);
  return made;
}

struct Prepared {
  explicit Prepared(const Scene& of)
      : skin(of.skin), nerves(value_of(SampledNerves::from(of.lines))) {}
  RiskMap map(const RiskOptions& options) const {
    return value_of(risk_map(skin, nerves, options));
  }
  SkinEntries skin;
  SampledNerves nerves;
};

const Prepared& prepared() {
  static const Prepared made(right_limb());
  return made;
}

Kernel::Point_3 point(const Vector3d& p) {
  return {p.x(), p.y(), p.z()};
}

double nearest_mm(const std::vector<limb::SampledLine>& lines, std::size_t limb,
                  const geometry::Track& track) {
  const Kernel::Segment_3 way(point(track.from_mm), point(track.to_mm));
  double best = std::numeric_limits<double>::max();
  for (const limb::SampledLine& line : lines) {
    const std::size_t places = line.mean_mm.size();
    for (std::size_t k = 0; k + 1 < places; ++k) {
      const Kernel::Segment_3 stretch(point(line.samples_mm[limb * places + k]),
                                      point(line.samples_mm[limb * places + k + 1]));
      best = std::min(best, way.is_degenerate() ? CGAL::squared_distance(way.source(), stretch)
                                                : CGAL::squared_distance(way, stretch));
    }
  }
  return std::sqrt(best);
}

}  // namespace

TEST_CASE("the map of risk is what brute force counts", "[risk map]") {
  const Scene& of = right_limb();
  for (const double depth_mm : {0.0, 10.0}) {
    std::vector<RiskMap> maps;
    const std::vector<double> within{5.0, 10.0};
    for (const double mm : within) maps.push_back(prepared().map({mm, depth_mm, {}}));
    double most = 0.0;
    double sum = 0.0;
    for (std::size_t v = 0; v < prepared().skin.size(); v += 37) {
      std::vector<double> count(within.size(), 0.0);
      std::vector<double> unsure(within.size(), 0.0);
      for (std::size_t limb = 0; limb < kLimbs; ++limb) {
        const double mm = nearest_mm(of.lines, limb, prepared().skin.track(v, depth_mm));
        for (std::size_t d = 0; d < within.size(); ++d) {
          count[d] += mm <= within[d] ? 1.0 : 0.0;
          unsure[d] += std::abs(mm - within[d]) <= geometry::LineBundle::kStraight_mm ? 1.0 : 0.0;
        }
      }
      for (std::size_t d = 0; d < within.size(); ++d) {
        // One of so few limbs is more than a percentage point: only those at the very distance may
        // fall either way. Over 1,000 limbs: tests/benchmarks/risk_map.cpp.
        REQUIRE(std::abs(maps[d].chance[v] * kLimbs - count[d]) <= unsure[d] + 1e-9);
        most = std::max(most, maps[d].chance[v]);
        sum += maps[d].chance[v];
      }
    }
    CHECK(most > 0.9);
    CHECK(sum > 0.0);
  }
}

TEST_CASE("any nerve is near no less often than each of them", "[risk map]") {
  const RiskMap any = prepared().map({8.0, 5.0, {}});
  bool more = false;
  for (const anatomy::NodeIndex nerve : prepared().nerves.nerves()) {
    const RiskMap one = prepared().map({8.0, 5.0, {nerve}});
    for (std::size_t v = 0; v < any.chance.size(); ++v) {
      REQUIRE(any.chance[v] >= one.chance[v]);
      more = more || (one.chance[v] > 0.0 && any.chance[v] > one.chance[v]);
    }
  }
  CHECK(more);
}

TEST_CASE("risk grows with the distance and with the depth", "[risk map]") {
  RiskMap before = prepared().map({2.0, 5.0, {}});
  for (const double mm : {4.0, 8.0, 16.0, 32.0}) {
    RiskMap farther = prepared().map({mm, 5.0, {}});
    for (std::size_t v = 0; v < before.chance.size(); ++v) {
      REQUIRE(farther.chance[v] >= before.chance[v]);
    }
    CHECK(farther.chance != before.chance);
    before = std::move(farther);
  }
  before = prepared().map({6.0, 0.0, {}});
  for (const double depth_mm : {3.0, 10.0, 30.0}) {
    RiskMap deeper = prepared().map({6.0, depth_mm, {}});
    for (std::size_t v = 0; v < before.chance.size(); ++v) {
      // A limb at the very distance may be rounded away.
      REQUIRE(deeper.chance[v] >= before.chance[v] - 1.01 / kLimbs);
    }
    CHECK(deeper.chance != before.chance);
    before = std::move(deeper);
  }
}

TEST_CASE("the left limb's map is that of the right one", "[risk map]") {
  const Prepared left(scene(Side::left));
  const RiskMap of_left = left.map({6.0, 8.0, {}});
  const RiskMap of_right = prepared().map({6.0, 8.0, {}});
  REQUIRE(of_left.chance.size() == of_right.chance.size());
  for (std::size_t v = 0; v < of_left.chance.size(); ++v) {
    REQUIRE(of_left.chance[v] == Approx(of_right.chance[v]).margin(1.01 / kLimbs));
  }
}

TEST_CASE("a map has the same digits on any number of threads", "[risk map]") {
  const RiskOptions options{7.0, 6.0, {}};
  const RiskMap many = prepared().map(options);
  const NearestMap nearest = value_of(nearest_map(prepared().skin, prepared().nerves, options));
  const tbb::global_control one(tbb::global_control::max_allowed_parallelism, 1);
  CHECK(prepared().map(options).chance == many.chance);
  const NearestMap alone = value_of(nearest_map(prepared().skin, prepared().nerves, options));
  CHECK(alone.median_mm == nearest.median_mm);
  CHECK(alone.nerve == nearest.nerve);
}

TEST_CASE("half of the limbs have the nearest nerve within its median", "[risk map]") {
  const NearestMap nearest =
      value_of(nearest_map(prepared().skin, prepared().nerves, {1.0, 4.0, {}}));
  for (std::size_t v = 0; v < prepared().skin.size(); v += 501) {
    std::vector<double> mm;
    for (std::size_t limb = 0; limb < kLimbs; ++limb) {
      mm.push_back(nearest_mm(right_limb().lines, limb, prepared().skin.track(v, 4.0)));
    }
    std::ranges::sort(mm);
    REQUIRE(nearest.median_mm[v] == Approx(mm[kLimbs / 2]).margin(0.2));
  }
}

TEST_CASE("a map refuses what is no question", "[risk map]") {
  const auto place = [](const RiskOptions& options) {
    const auto map = risk_map(prepared().skin, prepared().nerves, options);
    return map ? std::string("answered") : map.error().problems.front().place;
  };
  CHECK(place({0.0, 0.0, {}}) == "/within_mm");
  CHECK(place({std::nan(""), 0.0, {}}) == "/within_mm");
  CHECK(place({5.0, -1.0, {}}) == "/depth_mm");
  CHECK(place({5.0, 0.0, {anatomy::NodeIndex{1000000}}}) == "/nerves/0");
  CHECK(place({5.0, 0.0, {}}) == "answered");
  CHECK(!SampledNerves::from({}));
}

}  // namespace endplate::incision
