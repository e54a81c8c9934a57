#include "models/limb/drawn_courses.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/limb/case_limb_course.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// In search of the depth under the outline that gives a depth under the skin.
constexpr int kRounds = 4;
// Between points whose depth is known the line is brought to it every so many mm.
constexpr double kKnot_mm = 8.0;
// Outward from the axis, in shares of the distance from it.
constexpr double kStep = 1.1;
constexpr int kSteps = 40;
// Level of the hand from which the thumb draws on what lies in it.
constexpr double kThumbDrawsFrom = -0.1;

}  // namespace

Expected<DrawnCourses> DrawnCourses::from(const evidence::DataPackage& package,
                                          const anatomy::NerveTree& tree) {
  DrawnCourses result;
  result.points_.resize(tree.size());
  result.rows_.resize(tree.size());
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("drawn_courses")) {
    const auto nerve = tree.find(row.text("nerve"));
    if (!nerve) continue;  // its foreign key was checked when the table was read
    auto& points = result.points_[*nerve];
    const auto refuse = [&](std::string_view what, std::string_view mend) {
      problems.push_back({fmt::format("drawn_courses.csv, row {}", row.line()),
                          fmt::format("the points of '{}' {}", row.text("nerve"), what),
                          std::string(mend)});
    };
    if (row.number("order").value() != static_cast<double>(points.size() + 1)) {
      refuse("are not in order", "Number them from 1 along the nerve.");
    }
    DrawnPoint point{
        std::string(row.text("structure")),
        segment_from(row.text("segment")).value(),
        {row.number("fraction").value(), row.number("x_mm").value(), row.number("z_mm").value()},
        row.number("under_skin_mm"),
        digit_from(row.text("digit")),
        row.number("sd_mm").value()};
    if (!points.empty() && points.back().digit && points.back().digit != point.digit) {
      refuse("leave the digit they ran on", "Keep to one digit as far as the nerve's end.");
    }
    points.push_back(std::move(point));
    auto& rows = result.rows_[*nerve];
    for (auto& id : row.list("rows")) {
      if (std::ranges::find(rows, id) == rows.end()) rows.emplace_back(id);
    }
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

DrawnLine::DrawnLine(const DrawnPlace& on_parent, const std::vector<DrawnPoint>& points,
                     const SegmentFrames& frames, const DrawnSkin& skin)
    : frames_(frames), skin_(&skin) {
  DrawnPlace start;
  start.neutral_mm = on_parent.neutral_mm;
  start.under_skin_mm = on_parent.under_skin_mm;
  start.outline_mm = on_parent.outline_mm;
  // A branch of a nerve on a digit begins on it.
  const std::optional<Digit> digit = points.front().digit;
  if (digit && skin.digits.covers(*digit, start.neutral_mm)) start.digit = digit;
  start.on_digit = start.digit ? 1.0 : 0.0;
  start.thumb = thumb_at(start);
  digits_.push_back(start.digit);
  at_point_.push_back(0);
  add(start);
  DrawnPlace from = start;
  for (std::size_t k = 0; k < points.size(); ++k) {
    const DrawnPoint& point = points[k];
    DrawnPlace to;
    to.neutral_mm = frames.to_limb(point.segment, point.place);
    to.under_skin_mm = point.under_skin_mm;
    to.digit = point.digit;
    to.on_digit = point.digit ? 1.0 : 0.0;
    settle(to);
    to.thumb = thumb_at(to);
    digits_.push_back(point.digit);
    // The skin between two points is round.
    const double way_mm = (to.neutral_mm - from.neutral_mm).norm();
    const bool known = from.under_skin_mm && to.under_skin_mm && from.on_digit == to.on_digit;
    const int steps = known ? static_cast<int>(std::ceil(way_mm / kKnot_mm)) : 1;
    for (int step = 1; step < steps; ++step) {
      DrawnPlace knot = to;
      knot.index = k;
      knot.share = static_cast<double>(step) / steps;
      knot.neutral_mm = from.neutral_mm + knot.share * (to.neutral_mm - from.neutral_mm);
      knot.under_skin_mm = std::lerp(*from.under_skin_mm, *to.under_skin_mm, knot.share);
      knot.outline_mm = std::lerp(from.outline_mm, to.outline_mm, knot.share);
      settle(knot);
      knot.thumb = thumb_at(knot);
      add(knot);
    }
    to.index = k + 1;
    at_point_.push_back(knots_.size());
    add(to);
    from = to;
  }
}

void DrawnLine::add(const DrawnPlace& knot) {
  along_mm_.push_back(knots_.empty()
                          ? 0.0
                          : along_mm_.back() + (knot.neutral_mm - knots_.back().neutral_mm).norm());
  knots_.push_back(knot);
}

Vector3d DrawnLine::outward(std::size_t k) const {
  const DrawnPlace& knot = knots_[at_point_[k]];
  if (!knot.under_skin_mm) return Vector3d::Zero();
  const Vector3d& p = knot.neutral_mm;
  if (knot.digit) return (p - skin_->digits.axis_mm(*knot.digit, p)).normalized();
  const Segment segment = segment_of(p, frames_);
  const double level = frames_.from_limb(segment, p).fraction;
  return (p - frames_.to_limb(segment, level, 0.0, 0.0)).normalized();
}

void DrawnLine::settle(DrawnPlace& place) const {
  Vector3d p = in_flesh(place, Vector3d::Zero());
  for (int round = 0; place.under_skin_mm && round < kRounds; ++round) {
    const geometry::ProbedPlace probed = skin_->probe.at(p);
    place.outline_mm +=
        *place.under_skin_mm - (probed.inside ? probed.distance_mm : -probed.distance_mm);
    p = in_flesh(place, Vector3d::Zero());
  }
  place.neutral_mm = p;
}

double DrawnLine::thumb_at(const DrawnPlace& place) const {
  if (place.digit) return place.digit == Digit::thumb ? 1.0 : 0.0;
  const Vector3d& p = place.neutral_mm;
  if (frames_.from_limb(Segment::hand, p).fraction < kThumbDrawsFrom) return 0.0;
  const auto& vertices = skin_->mesh.mesh.vertices_mm;
  const auto nearest = std::ranges::min_element(
      vertices, {}, [&](const Vector3d& v) { return (v - p).squaredNorm(); });
  return skin_->mesh.fingers[static_cast<std::size_t>(nearest - vertices.begin())].thumb;
}

DrawnPlace DrawnLine::at(double share) const {
  const double arc_mm = std::clamp(share, 0.0, 1.0) * length_mm();
  const auto next = std::ranges::upper_bound(along_mm_, arc_mm);
  const auto k = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(
      next - along_mm_.begin(), 1, static_cast<std::ptrdiff_t>(along_mm_.size()) - 1));
  const DrawnPlace& from = knots_[k - 1];
  const DrawnPlace& to = knots_[k];
  const double part = (arc_mm - along_mm_[k - 1]) / (along_mm_[k] - along_mm_[k - 1]);
  DrawnPlace place;
  place.index = from.index;
  place.share = std::lerp(from.share, to.index == from.index ? to.share : 1.0, part);
  place.neutral_mm = from.neutral_mm + part * (to.neutral_mm - from.neutral_mm);
  place.thumb = std::lerp(from.thumb, to.thumb, part);
  place.outline_mm = std::lerp(from.outline_mm, to.outline_mm, part);
  if (from.under_skin_mm && to.under_skin_mm) {
    place.under_skin_mm = std::lerp(*from.under_skin_mm, *to.under_skin_mm, part);
  }
  place.digit = digits_[place.index + 1];
  if (place.digit) place.on_digit = digits_[place.index] ? 1.0 : place.share;
  return place;
}

Vector3d DrawnLine::in_flesh(const DrawnPlace& place, const Vector3d& moved_by_mm,
                             double deeper_mm) const {
  const Vector3d p = place.neutral_mm + moved_by_mm;
  const auto depth_of = [&](double least_mm) {
    return std::max(place.under_skin_mm.value_or(0.0) + deeper_mm, least_mm) + place.outline_mm;
  };
  const DigitSkin& digits = skin_->digits;
  if (place.digit && (place.on_digit >= 1.0 || digits.covers(*place.digit, p))) {
    return place.under_skin_mm ? digits.at_depth(*place.digit, p, depth_of(kLeastDigitDepth_mm))
                               : digits.inside(*place.digit, p, kLeastDigitDepth_mm);
  }
  // Between the palm and a thumb's knuckle lies the ball of the thumb, which the outline lacks.
  if (place.digit == Digit::thumb) return p;
  const BodyEnvelope& outline = skin_->outline;
  if (!place.under_skin_mm) return outline.inside(frames_, p, kLeastDepth_mm);
  // Out along the ray from the axis until it is less deep, then back to that depth.
  const double depth_mm = depth_of(kLeastDepth_mm);
  const Segment segment = segment_of(p, frames_);
  const Vector3d axis = frames_.to_limb(segment, frames_.from_limb(segment, p).fraction, 0.0, 0.0);
  Vector3d out = p;
  for (int step = 0; step < kSteps && outline.depth_mm<double>(frames_, out) >= depth_mm; ++step) {
    out = axis + kStep * (out - axis);
  }
  return outline.inside(frames_, out, depth_mm);
}

NervePlace DrawnLine::carried(const DrawnPlace& place, const SegmentFrames& frames,
                              const Vector3d& neutral_mm) {
  NervePlace carried = nerve_place("", frames, neutral_mm);
  carried.fingers.thumb = place.thumb;
  if (!place.digit) return carried;
  if (*place.digit == Digit::thumb) {
    carried.fingers.share = {};
    return carried;
  }
  // The shares sum to 1 on a finger; not all of the palm's do.
  double sum = 0.0;
  for (const double share : carried.fingers.share) sum += share;
  for (double& share : carried.fingers.share) share *= 1.0 - place.on_digit;
  carried.fingers.share[static_cast<std::size_t>(*place.digit)] += sum > 0.0 ? place.on_digit : 1.0;
  return carried;
}

}  // namespace endplate::limb
