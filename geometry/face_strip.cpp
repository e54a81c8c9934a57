#include "geometry/face_strip.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/plane.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector2d;

constexpr std::uint32_t kNone = FlatFaces::kNone;
constexpr int kMostRounds = 200;
// Less than this is not worth moving a row for.
constexpr double kLeastTurn_rad = 1e-7;

struct Gate {
  Vector2d right, left;
  std::uint32_t right_vertex, left_vertex;
};

struct Unfolded {
  Vector2d from, to;
  std::vector<Gate> gates;
};

// A bend of the shortest line, or one of its ends (vertex kNone).
struct Bend {
  Vector2d place;
  std::uint32_t vertex;
  std::size_t gate;
  bool on_left;
};

template <class Goal>
std::optional<std::vector<std::uint32_t>> go_round(const FlatFaces& faces, const Rotation& rotation,
                                                   Goal reached) {
  std::vector<std::uint32_t> gates;
  std::uint32_t h = 3 * rotation.from;
  while (faces.origin(h) != rotation.vertex) ++h;
  for (std::size_t i = 0; i <= faces.leaving(rotation.vertex).size(); ++i) {
    if (reached(h / 3)) return gates;
    const std::uint32_t gate = rotation.counter_clockwise ? FlatFaces::previous(h) : h;
    const std::uint32_t twin = faces.twin(gate);
    if (twin == kNone) return std::nullopt;
    gates.push_back(gate);
    h = rotation.counter_clockwise ? twin : FlatFaces::next(twin);
  }
  return std::nullopt;
}

Vector2d place_of(const FlatFaces& faces, const StripEnd& end, std::uint32_t triangle,
                  const std::array<Vector2d, 3>& corners) {
  if (const auto* point = std::get_if<SurfacePoint>(&end))
    return point->weights[0] * corners[0] + point->weights[1] * corners[1] +
           point->weights[2] * corners[2];
  std::uint32_t k = 0;
  while (k < 2 && faces.origin(3 * triangle + k) != std::get<std::uint32_t>(end)) ++k;
  return corners[k];
}

Unfolded unfold(const FlatFaces& faces, const FaceStrip& strip) {
  Unfolded flat;
  std::uint32_t triangle = strip.first_triangle;
  std::array<Vector2d, 3> corners = lay_triangle(faces, triangle);
  flat.from = place_of(faces, strip.from, triangle, corners);
  for (const std::uint32_t h : strip.gates) {
    const Gate gate{corners[h % 3], corners[(h + 1) % 3], faces.origin(h),
                    faces.origin(FlatFaces::next(h))};
    flat.gates.push_back(gate);
    const std::uint32_t twin = faces.twin(h);
    triangle = twin / 3;
    corners[twin % 3] = gate.left;
    corners[(twin + 1) % 3] = gate.right;
    corners[(twin + 2) % 3] = lay_apex(faces.apex(twin), gate.left, gate.right);
  }
  flat.to = place_of(faces, strip.to, triangle, corners);
  return flat;
}

// The taut string between the ends, as its ends and bends in order.
std::vector<Bend> pull_string(const Unfolded& flat) {
  const std::size_t count = flat.gates.size();
  const auto right_at = [&](std::size_t i) { return i < count ? flat.gates[i].right : flat.to; };
  const auto left_at = [&](std::size_t i) { return i < count ? flat.gates[i].left : flat.to; };
  std::vector<Bend> bends{{flat.from, kNone, 0, false}};
  Vector2d apex = flat.from;
  std::size_t right = 0;
  std::size_t left = 0;
  std::size_t i = 1;
  // A side that leaves the apex at no length says nothing yet.
  const auto inside = [&](const Vector2d& a, const Vector2d& b) { return cross(a, b) >= 0.0; };
  while (i <= count) {
    const Vector2d to_right = right_at(right) - apex;
    const Vector2d to_left = left_at(left) - apex;
    const Vector2d new_right = right_at(i) - apex;
    const Vector2d new_left = left_at(i) - apex;
    const auto bend_at = [&](bool on_left) {
      const std::size_t gate = on_left ? left : right;
      apex = on_left ? flat.gates[gate].left : flat.gates[gate].right;
      const std::uint32_t vertex =
          on_left ? flat.gates[gate].left_vertex : flat.gates[gate].right_vertex;
      bends.push_back({apex, vertex, gate, on_left});
      // The next gate that does not end at this vertex.
      std::size_t after = gate + 1;
      while (after < count &&
             (on_left ? flat.gates[after].left_vertex : flat.gates[after].right_vertex) == vertex)
        ++after;
      right = left = after;
      i = after + 1;
    };
    if (inside(to_right, new_right)) {
      if (right == i || inside(new_right, to_left) || to_right.isZero(0.0)) {
        right = i;
      } else {
        bend_at(true);
        continue;
      }
    }
    if (inside(new_left, to_left)) {
      if (inside(right_at(right) - apex, new_left) || to_left.isZero(0.0)) {
        left = i;
      } else {
        bend_at(false);
        continue;
      }
    }
    ++i;
  }
  bends.push_back({flat.to, kNone, count, false});
  return bends;
}

double length_of(const std::vector<Bend>& bends) {
  double length = 0.0;
  for (std::size_t i = 1; i < bends.size(); ++i)
    length += (bends[i].place - bends[i - 1].place).norm();
  return length;
}

bool ends_at(const Gate& gate, std::uint32_t vertex) {
  return gate.left_vertex == vertex || gate.right_vertex == vertex;
}

// The gates about a bend's vertex.
std::pair<std::size_t, std::size_t> gates_about(const Unfolded& flat, const Bend& bend) {
  std::size_t first = bend.gate;
  std::size_t last = bend.gate;
  while (first > 0 && ends_at(flat.gates[first - 1], bend.vertex)) --first;
  while (last + 1 < flat.gates.size() && ends_at(flat.gates[last + 1], bend.vertex)) ++last;
  return {first, last};
}

// Angle between the two legs of a bend, on the side of the row.
double angle_in_row(const Unfolded& flat, const Bend& bend, const Vector2d& before,
                    const Vector2d& after) {
  const auto [first, last] = gates_about(flat, bend);
  const double sign = bend.on_left ? 1.0 : -1.0;
  Vector2d arm = before - bend.place;
  double sum = 0.0;
  for (std::size_t i = first; i <= last; ++i) {
    const Gate& gate = flat.gates[i];
    const Vector2d other = (gate.left_vertex == bend.vertex ? gate.right : gate.left) - bend.place;
    sum += sign * angle(arm, other);
    arm = other;
  }
  return sum + sign * angle(arm, after - bend.place);
}

// Moves the row to the other side of every vertex where that side is less than straight.
bool move_over_vertices(const FlatFaces& faces, const Unfolded& flat,
                        const std::vector<Bend>& bends, std::vector<std::uint32_t>& gates) {
  bool moved = false;
  std::size_t untouched = gates.size();
  for (std::size_t b = bends.size() - 1; b-- > 1;) {
    const Bend& bend = bends[b];
    if (!faces.closed(bend.vertex)) continue;
    const auto [first, last] = gates_about(flat, bend);
    if (last >= untouched) continue;
    const double beyond = faces.total_angle(bend.vertex) -
                          angle_in_row(flat, bend, bends[b - 1].place, bends[b + 1].place);
    if (beyond > std::numbers::pi - kLeastTurn_rad) continue;
    const auto round = go_round_to_triangle(faces, {bend.vertex, gates[first] / 3, !bend.on_left},
                                            faces.twin(gates[last]) / 3);
    if (!round) continue;
    const auto begin = gates.begin() + static_cast<std::ptrdiff_t>(first);
    const auto place = gates.erase(begin, gates.begin() + static_cast<std::ptrdiff_t>(last) + 1);
    gates.insert(place, round->begin(), round->end());
    untouched = first;
    moved = true;
  }
  return moved;
}

std::vector<double> crossings_of(const Unfolded& flat, const std::vector<Bend>& bends) {
  std::vector<double> crossings;
  std::size_t b = 0;  // the bend behind
  for (std::size_t i = 0; i < flat.gates.size(); ++i) {
    while (b + 2 < bends.size() && bends[b + 1].gate < i &&
           !ends_at(flat.gates[i], bends[b + 1].vertex))
      ++b;
    const Gate& gate = flat.gates[i];
    const auto at_bend = [&](const Bend& bend) {
      return bend.vertex != kNone && ends_at(gate, bend.vertex);
    };
    const Bend& behind = bends[b];
    const Bend& ahead = bends[b + 1];
    if (at_bend(behind)) {
      crossings.push_back(gate.left_vertex == behind.vertex ? 1.0 : 0.0);
    } else if (at_bend(ahead)) {
      crossings.push_back(gate.left_vertex == ahead.vertex ? 1.0 : 0.0);
    } else {
      const Vector2d way = ahead.place - behind.place;
      const double right = cross(way, gate.right - behind.place);
      const double left = cross(way, gate.left - behind.place);
      const double span = left - right;
      crossings.push_back(span != 0.0 ? std::clamp(-right / span, 0.0, 1.0) : 0.5);
    }
  }
  return crossings;
}

}  // namespace

std::optional<std::vector<std::uint32_t>> go_round_to_triangle(const FlatFaces& faces,
                                                               const Rotation& rotation,
                                                               std::uint32_t to) {
  return go_round(faces, rotation, [to](std::uint32_t triangle) { return triangle == to; });
}

std::optional<std::vector<std::uint32_t>> go_round_to_vertex(const FlatFaces& faces,
                                                             const Rotation& rotation,
                                                             std::uint32_t to) {
  return go_round(faces, rotation, [&](std::uint32_t triangle) {
    return faces.origin(3 * triangle) == to || faces.origin(3 * triangle + 1) == to ||
           faces.origin(3 * triangle + 2) == to;
  });
}

void drop_detours(const FlatFaces& faces, std::vector<std::uint32_t>& gates) {
  std::vector<std::uint32_t> kept;
  for (const std::uint32_t gate : gates) {
    if (!kept.empty() && faces.twin(kept.back()) == gate)
      kept.pop_back();
    else
      kept.push_back(gate);
  }
  gates.swap(kept);
}

StripLine tighten(const FlatFaces& faces, FaceStrip& strip) {
  drop_detours(faces, strip.gates);
  Unfolded flat = unfold(faces, strip);
  std::vector<Bend> bends = pull_string(flat);
  double length = length_of(bends);
  for (int round = 0; round < kMostRounds; ++round) {
    FaceStrip next = strip;
    if (!move_over_vertices(faces, flat, bends, next.gates)) break;
    drop_detours(faces, next.gates);
    Unfolded next_flat = unfold(faces, next);
    std::vector<Bend> next_bends = pull_string(next_flat);
    const double next_length = length_of(next_bends);
    if (!(next_length < length)) break;
    strip = std::move(next);
    flat = std::move(next_flat);
    bends = std::move(next_bends);
    length = next_length;
  }
  return {length, crossings_of(flat, bends)};
}

}  // namespace endplate::geometry
