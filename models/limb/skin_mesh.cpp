#include "models/limb/skin_mesh.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "geometry/mesh_smoothing.hpp"
#include "geometry/mesh_vertices.hpp"
#include "geometry/smooth_step.hpp"
#include "models/limb/skin_shape.hpp"
#include "models/limb/thenar_eminence.hpp"
#include "models/limb/thumb_shares.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using geometry::smooth_step;
using namespace skin_shape;

// Across the palm, 0 at its radial edge to 4 at its ulnar one: a finger a unit.
double across_mm(double cell) {
  const auto k = std::min<std::size_t>(3, static_cast<std::size_t>(cell));
  return std::lerp(kCells_mm[k], kCells_mm[k + 1], cell - static_cast<double>(k));
}
// The inverse; beyond the palm's edges they count.
double cell_at(double across) {
  std::size_t k = 0;
  while (k < 3 && across < kCells_mm[k + 1]) ++k;
  const double part = (kCells_mm[k] - across) / (kCells_mm[k] - kCells_mm[k + 1]);
  return std::clamp(static_cast<double>(k) + part, 0.0, 4.0);
}
double web_level(double cell) {
  const std::array<double, 6> places{0.0, 0.5, 1.5, 2.5, 3.5, 4.0};
  const std::array<double, 6> levels{kRadialWeb,
                                     kFingers[0].web_level,
                                     kFingers[1].web_level,
                                     kFingers[2].web_level,
                                     kFingers[3].web_level,
                                     kUlnarWeb};
  std::size_t k = 0;
  while (k < 4 && cell > places[k + 1]) ++k;
  return std::lerp(levels[k], levels[k + 1], (cell - places[k]) / (places[k + 1] - places[k]));
}

// `part` of the way from the wrist to the web.
FingerShares shares_at(double cell, double part) {
  FingerShares result;
  if (part <= kFingersFrom) return result;
  const double middle = std::clamp(cell - 0.5, 0.0, 3.0);
  const auto k = std::min<std::size_t>(2, static_cast<std::size_t>(middle));
  result.share[k] = 1.0 - (middle - static_cast<double>(k));
  result.share[k + 1] = middle - static_cast<double>(k);
  return result;
}

class SkinMaker {
 public:
  SkinMaker(const SegmentFrames& frames, const BodyEnvelope& envelope, const LimbJoints& joints,
            int fineness)
      : frames_(frames.scale(), Side::right),
        left_(frames.side() == Side::left),
        breadth_(frames.scale().breadth),
        envelope_(envelope),
        joints_(joints),
        n_(fineness) {}

  SkinMesh make() {
    top();
    arm_and_forearm();
    hand();
    fingers();
    thumb();
    // The window has corners, and the web beside it is sharp.
    geometry::smooth_near(skin_.mesh, thumb_root_, kRoundedRings * n_.fineness,
                          kRounds * n_.fineness * n_.fineness);
    raise_thenar_eminence(skin_.mesh, frames_, joints_);
    geometry::smooth_near(skin_.mesh, thumb_root_, kRoundedRings * n_.fineness,
                          kEminenceRounds * n_.fineness * n_.fineness);
    share_thumb(skin_, thumb_root_, thumb_first_, n_.fineness, frames_, joints_);
    drop_unused();
    if (left_) mirror();
    return std::move(skin_);
  }

 private:
  using Ring = std::vector<std::uint32_t>;

  std::uint32_t add(const Vector3d& p, const FingerShares& shares = {}) {
    skin_.mesh.vertices_mm.push_back(p);
    skin_.fingers.push_back(shares);
    return static_cast<std::uint32_t>(skin_.mesh.vertices_mm.size() - 1);
  }
  const Vector3d& at(std::uint32_t vertex) const { return skin_.mesh.vertices_mm[vertex]; }

  void triangle(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    skin_.mesh.triangles.push_back({a, b, c});
  }
  // Two rings of the same number; `leave` says which edges are left open.
  template <class Leave>
  void join(const Ring& from, const Ring& to, const Leave& leave) {
    for (std::size_t i = 0; i < from.size(); ++i) {
      if (leave(i)) continue;
      const std::size_t j = (i + 1) % from.size();
      triangle(from[i], to[i], from[j]);
      triangle(from[j], to[i], to[j]);
    }
  }
  void join(const Ring& from, const Ring& to) {
    join(from, to, [](std::size_t) { return false; });
  }
  void close(const Ring& ring, std::uint32_t pole, bool towards_end) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const std::size_t j = (i + 1) % ring.size();
      towards_end ? triangle(ring[i], pole, ring[j]) : triangle(ring[j], pole, ring[i]);
    }
  }

  // Angle of a vertex of a ring, from the front to the radial side. The ring runs from the radial
  // edge of the front to the ulnar one, over the back and home.
  double angle(int i) const {
    const double step = 2.0 * std::numbers::pi / n_.ring;
    return step * (2.0 * n_.cell - i);
  }

  SkinSection section(Segment segment, double fraction) const {
    const auto& all = envelope_.skin(segment);
    const double f = std::clamp(fraction, all.front().fraction, all.back().fraction);
    const auto above = std::ranges::upper_bound(all, f, {}, &SkinSection::fraction);
    const auto k = std::clamp<std::ptrdiff_t>(above - all.begin(), 1, std::ssize(all) - 1);
    const SkinSection& low = all[static_cast<std::size_t>(k - 1)];
    const SkinSection& high = all[static_cast<std::size_t>(k)];
    const double t = (f - low.fraction) / (high.fraction - low.fraction);
    const double stout = frames_.scale().skin.at(segment, fraction);
    return {f, std::lerp(low.centre_x_mm, high.centre_x_mm, t),
            stout * std::lerp(low.half_depth_mm, high.half_depth_mm, t),
            stout * std::lerp(low.half_width_mm, high.half_width_mm, t)};
  }

  Ring ellipse(const Vector3d& centre, const Vector3d& front, const Vector3d& side,
               const SkinSection& shape, double size = 1.0) {
    Ring ring;
    for (int i = 0; i < n_.ring; ++i) {
      const double a = angle(i);
      ring.push_back(
          add(centre +
              breadth_ * ((shape.centre_x_mm + size * shape.half_depth_mm * std::cos(a)) * front +
                          size * shape.half_width_mm * std::sin(a) * side)));
    }
    return ring;
  }

  // The axis of arm and forearm, s mm beyond the elbow (negative in the arm), with the carrying
  // angle rounded: where it is, and how far the limb has turned outwards.
  struct OnAxis {
    Vector3d centre;
    Vector3d side;
  };
  OnAxis on_axis(double s_mm) const {
    const double half = kElbowBlend_mm * breadth_;
    const double turned = std::clamp((s_mm + half) / (2.0 * half), 0.0, 1.0);
    const double tilt = SegmentFrames::kCarryingAngle_rad * turned;
    OnAxis result;
    result.side = Vector3d(0.0, std::sin(tilt), std::cos(tilt));
    if (s_mm <= -half) {
      result.centre = -s_mm * frames_.proximal(Segment::humerus);
    } else if (s_mm >= half) {
      result.centre = -s_mm * frames_.proximal(Segment::forearm);
    } else {
      // A circle that touches both axes.
      const double radius = 2.0 * half / SegmentFrames::kCarryingAngle_rad;
      result.centre =
          Vector3d(0.0, half - radius * std::sin(tilt), radius * (1.0 - std::cos(tilt)));
    }
    return result;
  }

  void top() {
    const double arm_mm = frames_.length_mm(Segment::humerus);
    const Vector3d front = frames_.anterior(Segment::humerus);
    const SkinSection widest = section(Segment::humerus, kTopFrom);
    const std::uint32_t pole = add(frames_.to_limb(Segment::humerus, kTopLevel, 0.0, 0.0));
    for (int row = 1; row <= n_.cap; ++row) {
      const double a = 0.5 * std::numbers::pi * row / n_.cap;
      const double level = kTopFrom + (kTopLevel - kTopFrom) * std::cos(a);
      const OnAxis axis = on_axis(-level * arm_mm);
      Ring ring = ellipse(axis.centre, front, axis.side, widest, std::sin(a));
      if (row == 1) {
        close(ring, pole, false);
      } else {
        join(last_, ring);
      }
      last_ = std::move(ring);
    }
  }

  void arm_and_forearm() {
    const double arm_mm = frames_.length_mm(Segment::humerus);
    const double forearm_mm = frames_.length_mm(Segment::forearm);
    const Vector3d front = frames_.anterior(Segment::humerus);
    const double end_mm = -frames_.proximal(Segment::forearm).dot(frames_.origin(Segment::hand));
    const double start_mm = -kTopFrom * arm_mm;
    const int rows = n_.arm + n_.forearm;
    for (int row = 1; row <= rows; ++row) {
      const double s = std::lerp(start_mm, end_mm, static_cast<double>(row) / rows);
      const OnAxis axis = on_axis(s);
      // Sections are given above the elbow and below it; between the nearest two they blend.
      const double below = envelope_.skin(Segment::forearm).front().fraction * forearm_mm;
      SkinSection shape = section(Segment::humerus, -s / arm_mm);
      if (s > 0.0) {
        const SkinSection distal = section(Segment::forearm, s / forearm_mm);
        const double t = smooth_step(s / below);
        shape = {0.0, std::lerp(shape.centre_x_mm, distal.centre_x_mm, t),
                 std::lerp(shape.half_depth_mm, distal.half_depth_mm, t),
                 std::lerp(shape.half_width_mm, distal.half_width_mm, t)};
      }
      Ring ring = ellipse(axis.centre, front, axis.side, shape);
      join(last_, ring);
      last_ = std::move(ring);
    }
  }

  // Of vertex i of a ring of the hand: where across it lies, and on which face (1 palm, -1 back,
  // between on the sides).
  struct OnPalm {
    double cell;
    double face;
  };
  OnPalm on_palm(int i) const {
    const int width = 4 * n_.cell;
    if (i <= width) return {static_cast<double>(i) / n_.cell, 1.0};
    i -= width;
    if (i <= n_.side) return {4.0, 1.0 - 2.0 * i / n_.side};
    i -= n_.side;
    if (i <= width) return {4.0 - static_cast<double>(i) / n_.cell, -1.0};
    i -= width;
    return {0.0, -1.0 + 2.0 * i / n_.side};
  }
  Vector3d web_point_mm(const OnPalm& place) const {
    // Rounded toward the sides, and a little between the fingers.
    const double to_edge = std::abs(place.cell - 2.0) / 2.0;
    const double depth = kWebHalfDepth_mm * (1.0 - 0.28 * std::pow(to_edge, 4.0));
    return {depth * place.face, 0.0, across_mm(place.cell)};
  }
  void hand() {
    const Vector3d front = frames_.anterior(Segment::hand);
    const Vector3d side = frames_.lateral(Segment::hand);
    thumb_from_ = static_cast<int>(std::lround(kThumbFrom / kFingers[0].web_level * n_.hand));
    thumb_to_ = static_cast<int>(std::lround(kThumbTo / kFingers[0].web_level * n_.hand));
    for (int row = 1; row <= n_.hand; ++row) {
      const double part = static_cast<double>(row) / n_.hand;
      const double flat = smooth_step((part - 0.35) / 0.55);
      Ring ring;
      for (int i = 0; i < n_.ring; ++i) {
        const OnPalm place = on_palm(i);
        const double level = part * web_level(place.cell);
        const SkinSection shape = section(Segment::hand, level);
        const double a = angle(i);
        const Vector3d round(shape.centre_x_mm + shape.half_depth_mm * std::cos(a), 0.0,
                             shape.half_width_mm * std::sin(a));
        const Vector3d offset = (1.0 - flat) * round + flat * web_point_mm(place);
        const Vector3d axis = frames_.to_limb(Segment::hand, level, 0.0, 0.0);
        ring.push_back(add(axis + breadth_ * (offset.x() * front + offset.z() * side),
                           shares_at(place.cell, part)));
      }
      const int window_row = row - 1;
      join(last_, ring, [&](std::size_t i) {
        return window_row >= thumb_from_ && window_row < thumb_to_ && in_window(i);
      });
      hand_rows_.push_back(ring);
      last_ = std::move(ring);
    }
  }

  // The window reaches from the second quarter of the first finger's palm over the radial side to
  // the first quarter of its back.
  int window_first() const { return n_.ring - n_.side - n_.cell / 4; }
  int window_width() const { return n_.side + n_.cell / 4 + (3 * n_.cell) / 4; }
  bool in_window(std::size_t i) const {
    const int offset = (static_cast<int>(i) - window_first() + n_.ring) % n_.ring;
    return offset < window_width();
  }

  void fingers() {
    const Ring& palm = hand_rows_.back();
    const int width = 4 * n_.cell;
    // Webs: between the faces at the edges of the cells; at the outer edges the palm's own sides.
    std::array<Ring, 5> webs;  // from palm to back
    for (int edge = 0; edge <= 4; ++edge) {
      const std::uint32_t front = palm[static_cast<std::size_t>(edge * n_.cell)];
      const std::uint32_t back =
          palm[static_cast<std::size_t>(width + n_.side + (4 - edge) * n_.cell) % palm.size()];
      Ring& web = webs[static_cast<std::size_t>(edge)];
      web.push_back(front);
      for (int k = 1; k < n_.side; ++k) {
        if (edge == 4) {
          web.push_back(palm[static_cast<std::size_t>(width + k)]);
        } else if (edge == 0) {
          web.push_back(palm[static_cast<std::size_t>(n_.ring - k)]);
        } else {
          const double t = static_cast<double>(k) / n_.side;
          web.push_back(add((1.0 - t) * at(front) + t * at(back), skin_.fingers[front]));
        }
      }
      web.push_back(back);
    }
    for (int f = 0; f < 4; ++f)
      finger(f, webs[static_cast<std::size_t>(f)], webs[static_cast<std::size_t>(f + 1)]);
  }

  void finger(int f, const Ring& radial_web, const Ring& ulnar_web) {
    const Ring& palm = hand_rows_.back();
    const FingerShape& shape = kFingers[static_cast<std::size_t>(f)];
    Ring root;
    for (int i = 0; i <= n_.cell; ++i) {
      root.push_back(palm[static_cast<std::size_t>(f * n_.cell + i)]);
    }
    for (int k = 1; k < n_.side; ++k) root.push_back(ulnar_web[static_cast<std::size_t>(k)]);
    for (int i = 0; i <= n_.cell; ++i) {
      const int along_back = (4 - f - 1) * n_.cell + i;
      root.push_back(
          palm[static_cast<std::size_t>(4 * n_.cell + n_.side + along_back) % palm.size()]);
    }
    for (int k = n_.side - 1; k > 0; --k) root.push_back(radial_web[static_cast<std::size_t>(k)]);

    const std::string name = shape.name;
    const Vector3d tip = joints_.centre_mm(name + " tip", frames_);
    const Vector3d knuckle = joints_.centre_mm(name + " metacarpophalangeal", frames_);
    const Vector3d front = frames_.anterior(Segment::hand);
    const Vector3d side = frames_.lateral(Segment::hand);
    const Vector3d up = frames_.proximal(Segment::hand);
    FingerShares own;
    own.share[static_cast<std::size_t>(f)] = 1.0;
    const double tip_mm = kFingerTip_mm * breadth_;
    Ring before = root;
    for (int row = 1; row < n_.finger + n_.cap; ++row) {
      // Rows as far as the rounded end, then those of the end.
      Ring ring;
      for (std::size_t i = 0; i < root.size(); ++i) {
        const Vector3d start = at(root[i]);
        const double start_mm = (start - tip).dot(up);  // distance from the tip
        double away_mm = 0.0;
        double size = 1.0;
        if (row <= n_.finger) {
          away_mm = std::lerp(start_mm, tip_mm, static_cast<double>(row) / n_.finger);
        } else {
          const double a = 0.5 * std::numbers::pi * (row - n_.finger) / n_.cap;
          away_mm = tip_mm * (1.0 - std::sin(a));
          size = std::cos(a);
        }
        const double grown_mm = start_mm - away_mm;
        const double along = std::clamp(grown_mm / (start_mm - tip_mm), 0.0, 1.0);
        const double taper = size * std::lerp(1.0, kTipShare, along) * breadth_;
        const double a = root_angle(static_cast<int>(i), static_cast<int>(root.size()));
        const Vector3d round = taper * (shape.half_depth_mm * std::cos(a) * front +
                                        shape.half_width_mm * std::sin(a) * side);
        const Vector3d rough = start - knuckle - (start - knuckle).dot(up) * up;
        const double own_shape = smooth_step(grown_mm / (kFingerRoot_mm * breadth_));
        const Vector3d axis = tip + away_mm * up;
        const double level = (knuckle - axis).dot(front);
        ring.push_back(add(axis + level * front + (1.0 - own_shape) * rough + own_shape * round,
                           own_shape > 0.5 ? own : skin_.fingers[root[i]]));
      }
      join(before, ring);
      before = std::move(ring);
    }
    close(before, add(tip, own), true);
  }
  // Of a finger's ring, which runs as the palm's does.
  double root_angle(int i, int count) const {
    const double step = 2.0 * std::numbers::pi / count;
    return step * (0.5 * n_.cell - i);
  }

  void thumb() {
    // Round the window, seen from outside: along its proximal edge, its back edge, its distal edge
    // and its palmar edge.
    const auto vertex = [&](int row, int offset) {
      const int i = (window_first() + offset) % n_.ring;
      return hand_rows_[static_cast<std::size_t>(row - 1)][static_cast<std::size_t>(i)];
    };
    const int width = window_width();
    Ring root;
    for (int k = 0; k < width; ++k) root.push_back(vertex(thumb_from_, k));
    for (int r = thumb_from_; r < thumb_to_; ++r) root.push_back(vertex(r, width));
    for (int k = width; k > 0; --k) root.push_back(vertex(thumb_to_, k));
    for (int r = thumb_to_; r > thumb_from_; --r) root.push_back(vertex(r, 0));

    thumb_root_ = root;
    thumb_first_ = static_cast<std::uint32_t>(skin_.mesh.vertices_mm.size());
    Vector3d centre = Vector3d::Zero();
    for (const std::uint32_t v : root) centre += at(v) / static_cast<double>(root.size());
    const Vector3d first = joints_.centre_mm("thumb carpometacarpal", frames_);
    const Vector3d tip = joints_.centre_mm("thumb tip", frames_);
    const Vector3d direction = (tip - first).normalized();
    // Across the thumb: its ring starts where the window's first corner lies.
    const Vector3d corner = at(root.front()) - centre;
    Vector3d across = corner - corner.dot(direction) * direction;
    across.normalize();
    const Vector3d other = direction.cross(across);
    // The window may run either way round the thumb.
    const double first_turn = (at(root[root.size() / 4]) - centre).dot(other) > 0.0 ? 1.0 : -1.0;
    const double tip_mm = kFingerTip_mm * breadth_;
    // The axis goes from the middle of the window to the thumb's own line.
    const Vector3d bottom = first + 0.45 * (tip - first);
    Ring before = root;
    for (int row = 1; row < n_.thumb + n_.cap; ++row) {
      const double part = std::min(1.0, static_cast<double>(row) / n_.thumb);
      const double a_end = 0.5 * std::numbers::pi * std::max(0, row - n_.thumb) / n_.cap;
      const Vector3d straight = row <= n_.thumb
                                    ? Vector3d(tip - tip_mm * direction)
                                    : Vector3d(tip - tip_mm * (1.0 - std::sin(a_end)) * direction);
      // Bezier: leaves the window outwards and joins the line of the thumb.
      const Vector3d axis =
          row <= n_.thumb ? Vector3d((1.0 - part) * (1.0 - part) * centre +
                                     2.0 * part * (1.0 - part) * bottom + part * part * straight)
                          : straight;
      const double own_shape = smooth_step(part / 0.55);
      const double taper = std::cos(a_end) * std::lerp(1.12, 0.85, part) * breadth_;
      Ring ring;
      for (std::size_t i = 0; i < root.size(); ++i) {
        const double a = first_turn * 2.0 * std::numbers::pi * static_cast<double>(i) /
                         static_cast<double>(root.size());
        const Vector3d round = taper * (kThumbHalfWidth_mm * std::cos(a) * across +
                                        kThumbHalfDepth_mm * std::sin(a) * other);
        const Vector3d rough = at(root[i]) - centre;
        ring.push_back(add(axis + (1.0 - own_shape) * rough + own_shape * round));
      }
      join(before, ring);
      before = std::move(ring);
    }
    close(before, add(tip), true);
  }
  // The vertices within the thumb's window belong to no triangle.
  void drop_unused() {
    std::vector<bool> used(skin_.fingers.size(), false);
    for (const auto& triangle : skin_.mesh.triangles) {
      for (const std::uint32_t v : triangle) used[v] = true;
    }
    std::vector<FingerShares> kept;
    for (std::size_t v = 0; v < used.size(); ++v) {
      if (used[v]) kept.push_back(skin_.fingers[v]);
    }
    skin_.fingers = std::move(kept);
    geometry::drop_unused_vertices(skin_.mesh);
  }

  void mirror() {
    for (Vector3d& p : skin_.mesh.vertices_mm) p.z() = -p.z();
    for (auto& t : skin_.mesh.triangles) std::swap(t[1], t[2]);
  }

  SegmentFrames frames_;  // of the right limb
  bool left_;
  double breadth_;
  const BodyEnvelope& envelope_;
  const LimbJoints& joints_;
  Counts n_;
  SkinMesh skin_;
  Ring last_;
  std::vector<Ring> hand_rows_;
  Ring thumb_root_;
  std::uint32_t thumb_first_ = 0;  // vertex of its own
  int thumb_from_ = 0;
  int thumb_to_ = 0;
};

}  // namespace

FingerShares finger_shares(const SegmentFrames& frames, const Vector3d& neutral_mm) {
  const SegmentPoint place = frames.from_limb(Segment::hand, neutral_mm);
  const double cell = cell_at(place.z_mm);
  return shares_at(cell, place.fraction / web_level(cell));
}

double top_narrowing(double level) {
  const double up = std::clamp((level - kTopFrom) / (kTopLevel - kTopFrom), 0.0, 1.0);
  return std::sqrt(1.0 - up * up);
}

SkinMesh make_skin(const SegmentFrames& frames, const BodyEnvelope& envelope,
                   const LimbJoints& joints, int fineness) {
  return SkinMaker(frames, envelope, joints, fineness).make();
}

std::vector<Eigen::Vector3d> posed_vertices_mm(const SkinMesh& skin, const PosedSpace& space) {
  std::vector<Eigen::Vector3d> posed(skin.mesh.vertices_mm.size());
  for (std::size_t i = 0; i < posed.size(); ++i) {
    const Vector3d& p = skin.mesh.vertices_mm[i];
    Vector3d sum = Vector3d::Zero();
    double total = 0.0;
    for (std::size_t f = 0; f < 4; ++f) {
      const double share = skin.fingers[i].share[f];
      if (share <= 0.0) continue;
      sum += share * space.flesh_of_thumb(p, skin.fingers[i].thumb, static_cast<Finger>(f));
      total += share;
    }
    posed[i] = total > 0.0 ? Vector3d(sum / total) : space.flesh_of_thumb(p, skin.fingers[i].thumb);
  }
  return posed;
}

}  // namespace endplate::limb
