#include "ui/document/case_json.hpp"

#include <nlohmann/json.hpp>
#include <utility>
#include <vector>

#include "models/casefile/json_text.hpp"

namespace endplate::ui {

Expected<Json> parse_case_json(std::string_view text) {
  std::vector<Problem> duplicates;
  const auto strict = casefile::parse_json_text(text, duplicates);
  if (!strict) {
    auto problems = strict.error().problems;
    problems.insert(problems.end(), duplicates.begin(), duplicates.end());
    return std::unexpected(Error{Fault::input, std::move(problems)});
  }
  if (!duplicates.empty()) return std::unexpected(Error{Fault::input, std::move(duplicates)});
  if (!strict->is_object()) {
    return std::unexpected(Error::input({"case file", "the file is not one JSON object",
                                         "Open a case file: it begins with { \"endplate_case\": "
                                         "1."}));
  }
  return Json::parse(text);
}

std::string case_text(const Json& document) {
  return document.dump(2) + '\n';
}

const Json* value_at(const Json& document, const std::string& pointer) {
  const Json::json_pointer at(pointer);
  return document.contains(at) ? &document.at(at) : nullptr;
}

void put_at(Json& document, const std::string& pointer, Json value) {
  document[Json::json_pointer(pointer)] = std::move(value);
}

void take_at(Json& document, const std::string& pointer) {
  Json::json_pointer at(pointer);
  if (!document.contains(at)) return;
  while (!at.empty()) {
    const std::string key = at.back();
    at.pop_back();
    Json& parent = document[at];
    if (parent.is_array()) {
      parent.erase(static_cast<std::size_t>(std::stoul(key)));
      if (!parent.empty()) return;
    } else {
      parent.erase(key);
      // An item of a list stays, even without a key: taking it away would move its neighbours.
      const bool item = !at.empty() && document[at.parent_pointer()].is_array();
      if (!parent.empty() || item) return;
    }
  }
}

std::size_t count_at(const Json& document, const std::string& pointer) {
  const Json* list = value_at(document, pointer);
  return list != nullptr && list->is_array() ? list->size() : 0;
}

}  // namespace endplate::ui
