#pragma once
// The text of a case file as JSON, read strictly.
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"

namespace endplate::casefile {

inline constexpr std::size_t kLargestFile_bytes = 1'000'000;
inline constexpr std::size_t kDeepestNesting = 16;

// Problems carry "line L, column C" (columns in characters) for broken JSON, text that is no UTF-8
// and numbers that no double holds, and a JSON Pointer for a key that stands twice in one object.
// Keys that stand twice go to `duplicates`, so that the rest of the file is still looked at.
Expected<nlohmann::json> parse_json_text(std::string_view text, std::vector<Problem>& duplicates);

// One more token of a JSON Pointer (RFC 6901); control characters are shown as '?'.
std::string pointer_to(const std::string& parent, std::string_view key);

// What was written, in quotes, short enough for one line and without control characters.
std::string in_quotes(std::string_view text);

}  // namespace endplate::casefile
