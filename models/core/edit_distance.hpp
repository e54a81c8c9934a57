#pragma once
// How far one word is from another, for spelling slips and for the nearest word as a mend.
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace endplate {

// Insertions, deletions, substitutions and swaps of neighbours that turn `a` into `b`, no part
// edited twice (Damerau, Commun ACM 1964;7:171, in the optimal string alignment form). Counts
// bytes; O(|a| |b|).
std::size_t edit_distance(std::string_view a, std::string_view b);

// At most `count` of `candidates`, nearest first, ties in the order given. A candidate that
// begins with what was typed is one edit away. Case does not matter.
std::vector<std::string> nearest(std::string_view typed,
                                 std::span<const std::string_view> candidates, std::size_t count);

}  // namespace endplate
