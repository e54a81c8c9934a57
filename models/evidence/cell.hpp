#pragma once
// What a cell's text means.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace endplate::evidence {

// A finite decimal number without blanks, sign "+" or unit; nothing for any other text.
std::optional<double> parse_number(std::string_view cell);

// Items of a list cell; an empty cell has none, "a;;b" has an empty one.
std::vector<std::string_view> split_items(std::string_view cell);

}  // namespace endplate::evidence
