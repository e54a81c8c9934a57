#include "geometry/straight_labels.hpp"

#include <cmath>
#include <limits>
#include <numbers>

namespace endplate::geometry {
namespace {

constexpr float kInfinite = std::numeric_limits<float>::infinity();
// How many steps before its turn the memory of one, which lies anywhere, is asked for.
constexpr std::size_t kAhead = 8;
constexpr float kPi = std::numbers::pi_v<float>;
// How much longer the graph's ways may be than straight ones: a share of all ways, and more near
// the source, where a way has few arcs to choose from. Found by trial: with less, ways over the
// rows and rings of a limb's skin stay too long; from 0.01 on, ways that do go round something are
// pulled straight by more than half a per cent.
constexpr float kAstrayShare = 0.006F;
constexpr float kAstrayNear = 0.1F;

// Taylor's series for the slight bends that nearly all are, to a float's last digits: the library's
// functions took a quarter of the time of a query.
constexpr float kSlight = 0.25F;

float sine(float x) {
  if (x > kSlight) return std::sin(x);
  const float square = x * x;
  return x * (1.0F + square * (-1.0F / 6.0F + square * (1.0F / 120.0F)));
}

float cosine(float x) {
  if (x > kSlight) return std::cos(x);
  const float square = x * x;
  return 1.0F + square * (-0.5F + square * (1.0F / 24.0F - square * (1.0F / 720.0F)));
}

// For y that is not negative.
float arc_tangent(float y, float x) {
  if (!(y <= kSlight * x) || x <= 0.0F) return std::atan2(y, x);
  const float ratio = y / x;
  const float square = ratio * ratio;
  return ratio *
         (1.0F + square * (-1.0F / 3.0F +
                           square * (0.2F + square * (-1.0F / 7.0F + square * (1.0F / 9.0F)))));
}

StraightLabel straight_from(float before_mm, float straight_mm, float arriving_rad) {
  return {before_mm, straight_mm, arriving_rad, 0.0F, 0.0F, 0.0F};
}

// Makes one straight line of `leg_mm` and of what `label` holds, between which the way bends by
// `bend_rad`, more than 0 to the left. How much the line turns about its beginning, likewise.
float pull(StraightLabel& label, float leg_mm, float bend_rad) {
  const float bend = std::abs(bend_rad);
  // The beginning lies `along` and `across` from the end, seen along the line.
  const float along = label.straight_mm + leg_mm * cosine(bend);
  const float across = leg_mm * sine(bend);
  const float turn = arc_tangent(across, along);
  label.straight_mm = std::sqrt(along * along + across * across);
  label.arriving_rad += bend_rad > 0.0F ? turn : -turn;
  return bend_rad > 0.0F ? bend - turn : turn - bend;
}

// A way that is pulled straight by more than the graph can be astray did go round something: it
// bends at the arc's tail after all.
StraightLabel along_arc(const StraightLabel& before, const SightVertex& tail, const WalkStep& step,
                        float leaving_rad, float arriving_rad) {
  const StraightLabel pulled =
      pulled_straight(before, tail, leaving_rad, step.length_mm, arriving_rad);
  const float along_mm = step.along_graph_mm;
  const float astray_mm =
      kAstrayShare * along_mm + kAstrayNear * tail.radius_mm * tail.radius_mm / along_mm;
  if (along_mm - pulled.before_mm - pulled.straight_mm <= astray_mm) return pulled;
  return straight_from(before.before_mm + before.straight_mm, step.length_mm, arriving_rad);
}

}  // namespace

StraightLabel pulled_straight(const StraightLabel& before, const SightVertex& vertex,
                              float leaving_rad, float length_mm, float arriving_rad) {
  const float whole = vertex.whole_rad;
  const float corner_mm = before.before_mm + before.straight_mm;
  if (whole == 0.0F) return straight_from(corner_mm, length_mm, arriving_rad);
  float left = leaving_rad - before.arriving_rad;
  while (left < 0.0F) left += whole;
  while (left >= whole) left -= whole;
  const float right = whole - left;
  if (left >= kPi && right >= kPi) {
    StraightLabel round = straight_from(corner_mm, length_mm, arriving_rad);
    round.leg_mm = before.straight_mm;
    round.spare_left_rad = left - kPi;
    round.spare_right_rad = right - kPi;
    return round;
  }
  StraightLabel pulled = before;
  pulled.straight_mm = length_mm;
  pulled.arriving_rad = arriving_rad;
  const float turn = pull(pulled, before.straight_mm, left < right ? kPi - left : right - kPi);
  if (before.leg_mm == 0.0F) return pulled;
  // The line has turned about the last corner too, and may come free of it.
  pulled.spare_left_rad -= turn;
  pulled.spare_right_rad += turn;
  if (pulled.spare_left_rad >= 0.0F && pulled.spare_right_rad >= 0.0F) return pulled;
  pulled.before_mm -= before.leg_mm;
  pull(pulled, before.leg_mm,
       pulled.spare_left_rad < 0.0F ? -pulled.spare_left_rad : pulled.spare_right_rad);
  pulled.leg_mm = 0.0F;
  return pulled;
}

std::vector<StraightLabel> straight_labels(const SightGraph& graph, const std::vector<Seed>& seeds,
                                           const Walk& walk) {
  std::vector<StraightLabel> straight(walk.labels.size(), straight_from(kInfinite, 0.0F, 0.0F));
  const auto expect = [&](std::size_t i) {
    if (i >= walk.steps.size() || walk.steps[i].came_by >= kSeed) return;
    __builtin_prefetch(&graph.directions[walk.steps[i].came_by]);
  };
  for (std::size_t i = 0; i < walk.steps.size(); ++i) {
    expect(i + kAhead);
    const WalkStep& step = walk.steps[i];
    if (step.came_by >= kSeed) {
      const Seed& seed = seeds[step.came_by - kSeed];
      straight[step.vertex] =
          straight_from(0.0F, static_cast<float>(seed.distance_mm), seed.arriving_rad);
    } else {
      const ArcDirections& directions = graph.directions[step.came_by];
      straight[step.vertex] =
          along_arc(straight[step.came_from], graph.vertices[step.came_from], step,
                    graph.radians(directions.leaving), graph.radians(directions.arriving));
    }
  }
  return straight;
}

}  // namespace endplate::geometry
