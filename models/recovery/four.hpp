#pragma once
// Four numbers worked on at once, spelt as g++ and clang spell vectors. Every x86-64 and 64-bit ARM
// processor has registers for them, so there is one path and one answer.
#include <bit>
#include <cstddef>
#include <cstdint>
#include <cstring>

namespace endplate::recovery {

inline constexpr std::size_t kFour = 4;
using FourFloats = float __attribute__((vector_size(16)));
using FourInts = std::int32_t __attribute__((vector_size(16)));
using FourWords = std::uint32_t __attribute__((vector_size(16)));

// The next four of a row, or as many as there are, with zeros after them.
template <class Four, class Value>
Four load_four(const Value* from, std::size_t count = kFour) {
  static_assert(sizeof(Four) == kFour * sizeof(Value));
  Four four{};
  std::memcpy(&four, from, (count < kFour ? count : kFour) * sizeof(Value));
  return four;
}
template <class Four, class Value>
void store_four(Four four, Value* to, std::size_t count = kFour) {
  static_assert(sizeof(Four) == kFour * sizeof(Value));
  std::memcpy(to, &four, (count < kFour ? count : kFour) * sizeof(Value));
}

// The lanes that hold -1 (as comparisons give) as bits 0 to 3; the others hold 0.
inline unsigned lanes_of(FourInts mask) {
#ifdef __SSE2__
  return static_cast<unsigned>(__builtin_ia32_movmskps(std::bit_cast<FourFloats>(mask)));
#else
  const FourInts bits = mask & FourInts{1, 2, 4, 8};
  return static_cast<unsigned>((bits[0] | bits[1]) | (bits[2] | bits[3]));
#endif
}

// Puts first, first + 1, ... of those lanes into `into`, which holds a place for each of four, and
// returns how many they are. Without a branch, which would often be guessed wrongly.
inline std::size_t choose_four(FourInts mask, std::uint32_t first, std::uint32_t* into) {
  static constexpr FourWords kLanes[16] = {{0, 0, 0, 0}, {0, 0, 0, 0}, {1, 0, 0, 0}, {0, 1, 0, 0},
                                           {2, 0, 0, 0}, {0, 2, 0, 0}, {1, 2, 0, 0}, {0, 1, 2, 0},
                                           {3, 0, 0, 0}, {0, 3, 0, 0}, {1, 3, 0, 0}, {0, 1, 3, 0},
                                           {2, 3, 0, 0}, {0, 2, 3, 0}, {1, 2, 3, 0}, {0, 1, 2, 3}};
  static constexpr std::uint8_t kCount[16] = {0, 1, 1, 2, 1, 2, 2, 3, 1, 2, 2, 3, 2, 3, 3, 4};
  const unsigned lanes = lanes_of(mask);
  store_four(kLanes[lanes] + first, into);
  return kCount[lanes];
}

// work(i, count) for each group of four up to n; the last may hold fewer. Groups of four are told
// so by a constant, for which compilers write a single load.
template <class Work>
void by_fours(std::size_t n, const Work& work) {
  std::size_t i = 0;
  for (; i + kFour <= n; i += kFour) work(i, kFour);
  if (i < n) work(i, n - i);
}

}  // namespace endplate::recovery
