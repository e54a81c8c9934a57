#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace endplate::evidence {

// Upper and lower case of ASCII letters are the same.
bool same_name(std::string_view a, std::string_view b);
bool contains_words(std::string_view text, std::string_view words);

// The names nearest to `typed`, best first, without repeats: those that contain it, then those the
// fewest slips away, word by word, then as a whole (restricted Damerau-Levenshtein distance).
std::vector<std::string> nearest_names(std::string_view typed, std::span<const std::string> names,
                                       std::size_t how_many);

}  // namespace endplate::evidence
