#pragma once
// Eight numbers side by side, and distances reckoned eight at once; for .cpp files of geometry/
// only.
//
// The compiler turns operations on them into the machine's own, number by number and without
// contraction, so that every machine has the same digits. All functions are inlined into the one
// that names its instruction set (target_clones); results go through references, since the way a
// call would return them depends on the instruction set.
#include <cstring>

namespace endplate::geometry::eight {

using Eight = float __attribute__((vector_size(32)));
using Mask = int __attribute__((vector_size(32)));

#define ENDPLATE_EIGHT [[gnu::always_inline]] inline

// Below this a length squared gives no direction.
inline constexpr float kPoint_mm2 = 1e-8F;

struct Three {
  Eight x{};
  Eight y{};
  Eight z{};
};

ENDPLATE_EIGHT void load(Eight& to, const float* from) {
  std::memcpy(&to, from, sizeof to);
}

ENDPLATE_EIGHT void load(Three& to, const float (*from)[8]) {
  load(to.x, from[0]);
  load(to.y, from[1]);
  load(to.z, from[2]);
}

ENDPLATE_EIGHT void fill(Eight& to, float value) {
  to = Eight{value, value, value, value, value, value, value, value};
}

ENDPLATE_EIGHT void fill(Three& to, float x, float y, float z) {
  fill(to.x, x);
  fill(to.y, y);
  fill(to.z, z);
}

// One of eight numbers to all lanes. Filled with a number read from memory, g++ 12 would put it
// into one lane after another.
ENDPLATE_EIGHT void spread(Eight& to, const Eight& from, int k) {
#ifdef __clang__
  fill(to, from[k]);
#else
  to = __builtin_shuffle(from, Mask{k, k, k, k, k, k, k, k});
#endif
}

ENDPLATE_EIGHT void clamp_share(Eight& share) {
  const Eight zero{};
  Eight one;
  fill(one, 1.0F);
  share = share > zero ? share : zero;
  share = share < one ? share : one;
}

// The lanes that hold, as bits.
ENDPLATE_EIGHT unsigned bits(const Mask& holds) {
#ifdef __SSE__
  using Four = float __attribute__((vector_size(16)));
  Four halves[2];
  std::memcpy(halves, &holds, sizeof halves);
  return static_cast<unsigned>(__builtin_ia32_movmskps(halves[0])) |
         static_cast<unsigned>(__builtin_ia32_movmskps(halves[1])) << 4U;
#else
  unsigned result = 0;
  for (unsigned k = 0; k < 8; ++k) result |= static_cast<unsigned>(holds[k] & 1) << k;
  return result;
#endif
}

// The squared distances of points and segments. `p`, `v`, `inverse`: where a segment begins, its
// way, and one over its length squared.
ENDPLATE_EIGHT void point_segment_mm2(const Three& point, const Three& p, const Three& v,
                                      const Eight& inverse, Eight& squared) {
  Eight x = point.x - p.x;
  Eight y = point.y - p.y;
  Eight z = point.z - p.z;
  Eight share = (x * v.x + y * v.y + z * v.z) * inverse;
  clamp_share(share);
  x -= share * v.x;
  y -= share * v.y;
  z -= share * v.z;
  squared = x * x + y * y + z * z;
}

// And of tracks (from `from` along `u`) and segments: the nearest places of their lines, moved to
// where the segments end. `inverse_u`, `inverse_v`: one over the lengths squared.
ENDPLATE_EIGHT void track_segment_mm2(const Three& from, const Three& u, const Eight& inverse_u,
                                      const Three& p, const Three& v, const Eight& inverse_v,
                                      Eight& squared) {
  Eight tiny;
  fill(tiny, kPoint_mm2);
  const Eight rx = from.x - p.x;
  const Eight ry = from.y - p.y;
  const Eight rz = from.z - p.z;
  const Eight a = u.x * u.x + u.y * u.y + u.z * u.z;
  const Eight e = v.x * v.x + v.y * v.y + v.z * v.z;
  const Eight b = u.x * v.x + u.y * v.y + u.z * v.z;
  const Eight c = u.x * rx + u.y * ry + u.z * rz;
  const Eight f = v.x * rx + v.y * ry + v.z * rz;
  Eight determinant = a * e - b * b;
  determinant = determinant > tiny ? determinant : tiny;
  Eight s = (b * f - c * e) / determinant;
  clamp_share(s);
  Eight t = (b * s + f) * inverse_v;
  clamp_share(t);
  s = (b * t - c) * inverse_u;
  clamp_share(s);
  const Eight dx = rx + u.x * s - v.x * t;
  const Eight dy = ry + u.y * s - v.y * t;
  const Eight dz = rz + u.z * s - v.z * t;
  squared = dx * dx + dy * dy + dz * dz;
}

}  // namespace endplate::geometry::eight
