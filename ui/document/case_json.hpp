#pragma once
// A case file's JSON as it is edited: keys keep their order, and nothing that stands in it is lost.
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "models/core/error.hpp"

namespace endplate::ui {

using Json = nlohmann::ordered_json;

// Refuses what could not be written back as it was: broken JSON, a key that stands twice, and
// anything but one object. Whether the case is valid is another question.
Expected<Json> parse_case_json(std::string_view text);

// As a case file is written: two blanks a level, a line feed at the end.
std::string case_text(const Json& document);

// The value at a JSON Pointer, or nothing.
const Json* value_at(const Json& document, const std::string& pointer);

// Sets the value at a JSON Pointer; objects on the way that are missing are made.
void put_at(Json& document, const std::string& pointer, Json value);

// Takes the value at a JSON Pointer away, and objects above it that are left without a key.
void take_at(Json& document, const std::string& pointer);

// How many items stand in the list at a JSON Pointer; 0 where there is none.
std::size_t count_at(const Json& document, const std::string& pointer);

}  // namespace endplate::ui
