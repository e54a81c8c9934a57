#include "models/casefile/object_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/casefile/json_text.hpp"
#include "models/core/edit_distance.hpp"

namespace endplate::casefile {
namespace {

using nlohmann::json;

std::string_view type_in_words(const json& value) {
  switch (value.type()) {
    case json::value_t::null:
      return "null";
    case json::value_t::object:
      return "an object";
    case json::value_t::array:
      return "a list";
    case json::value_t::string:
      return "a text";
    case json::value_t::boolean:
      return "true or false";
    default:
      return "a number";
  }
}

bool only_blanks(const std::string& text) {
  return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) <= 0x20; });
}

}  // namespace

std::string_view kind_in_words(anatomy::TermKind kind) {
  using enum anatomy::TermKind;
  switch (kind) {
    case nerve:
      return "nerve";
    case muscle:
      return "muscle";
    case area:
      return "skin area";
    case landmark:
      return "landmark";
    case variant:
      return "variant";
    case movement:
      return "movement";
    case graft_donor:
      return "graft donor";
    case measure:
      return "measure";
  }
  return "name";
}

std::vector<std::string> Reading::resolve(anatomy::TermKind kind, const std::string& typed,
                                          const std::string& place) {
  const auto found = terms.resolve(kind, typed);
  if (!found) {
    add(place,
        fmt::format("{} is no {} that the tables know", in_quotes(typed), kind_in_words(kind)),
        fmt::format("Nearest names: {}.", fmt::join(found.error().nearest, "; ")));
    return {};
  }
  if (found->slip) {
    std::vector<std::string> full;
    for (const std::string& name : found->names) full.push_back(terms.full_name(kind, name));
    assumptions.push_back(
        fmt::format("{} at {} was read as {}", in_quotes(typed), place, fmt::join(full, "; ")));
  }
  return found->names;
}

std::optional<std::string> Reading::resolve_one(anatomy::TermKind kind, const std::string& typed,
                                                const std::string& place) {
  const auto names = resolve(kind, typed, place);
  if (names.empty()) return std::nullopt;
  if (names.size() == 1) return names.front();
  std::vector<std::string> full;
  for (const std::string& name : names) full.push_back(terms.full_name(kind, name));
  add(place, fmt::format("{} stands for several", in_quotes(typed)),
      fmt::format("Name one of: {}.", fmt::join(full, "; ")));
  return std::nullopt;
}

std::string ObjectReader::place_of(std::string_view key) const {
  return pointer_to(place_, key);
}

const json* ObjectReader::take(std::string_view key) {
  taken_.emplace(key);
  const auto found = object_.find(key);
  return found == object_.end() ? nullptr : &*found;
}

std::vector<std::string> ObjectReader::take_all_keys() {
  std::vector<std::string> keys;
  for (const auto& [key, value] : object_.items()) {
    keys.push_back(key);
    taken_.insert(key);
  }
  return keys;
}

void ObjectReader::wrong_type(std::string_view key, const json& value, std::string_view wanted,
                              std::string_view mend) const {
  if (value.is_null()) {
    add(key, "null is no value", "Leave the key out: what is not given is unknown.");
    return;
  }
  add(key, fmt::format("{} stands where {} belongs", type_in_words(value), wanted),
      std::string(mend));
}

std::optional<double> ObjectReader::number(std::string_view key, double low, double high,
                                           std::string_view unit) {
  const json* value = take(key);
  if (value == nullptr) return std::nullopt;
  if (!value->is_number()) {
    wrong_type(key, *value, "a number", fmt::format("Write a number of {} without quotes.", unit));
    return std::nullopt;
  }
  const double figure = value->get<double>();
  if (!std::isfinite(figure) || figure < low || figure > high) {
    std::string mend = fmt::format("Give {} from {} to {}.", unit, low, high);
    if (unit == "mm" && figure > 0.0 && 10.0 * figure >= low && 10.0 * figure <= high) {
      mend += fmt::format(" Lengths are in mm: {} cm is {} mm.", figure, 10.0 * figure);
    }
    add(key, fmt::format("{} is outside {} to {} {}", value->dump(), low, high, unit),
        std::move(mend));
    return std::nullopt;
  }
  return figure;
}

std::optional<int> ObjectReader::integer(std::string_view key, int low, int high) {
  const json* value = take(key);
  if (value == nullptr) return std::nullopt;
  const std::string mend = fmt::format("Give a whole number from {} to {}.", low, high);
  if (!value->is_number()) {
    wrong_type(key, *value, "a whole number", mend);
    return std::nullopt;
  }
  const double figure = value->get<double>();
  if (figure != std::floor(figure) || figure < low || figure > high) {
    add(key, fmt::format("{} is no whole number from {} to {}", value->dump(), low, high), mend);
    return std::nullopt;
  }
  return static_cast<int>(figure);
}

std::optional<bool> ObjectReader::boolean(std::string_view key) {
  const json* value = take(key);
  if (value == nullptr) return std::nullopt;
  if (!value->is_boolean()) {
    wrong_type(key, *value, "true or false",
               "Write true or false without quotes, or leave the key out when it is unknown.");
    return std::nullopt;
  }
  return value->get<bool>();
}

std::optional<std::string> ObjectReader::text(std::string_view key) {
  const json* value = take(key);
  if (value == nullptr) return std::nullopt;
  if (!value->is_string()) {
    wrong_type(key, *value, "a text", "Write a text in quotes.");
    return std::nullopt;
  }
  auto written = value->get<std::string>();
  if (only_blanks(written)) {
    add(key, "the text is empty", "Fill it in, or leave the key out when it is unknown.");
    return std::nullopt;
  }
  return written;
}

std::optional<Date> ObjectReader::date(std::string_view key, DatedPart::Kind kind) {
  const auto written = text(key);
  if (!written) return std::nullopt;
  const auto day = date_from(*written);
  if (!day) {
    add(key, fmt::format("{} is no day of the calendar from 1900 to 2199", in_quotes(*written)),
        "Write the date as YYYY-MM-DD, such as \"2026-06-01\".");
  } else {
    reading_.dated.push_back({place_of(key), kind, *day});
  }
  return day;
}

std::optional<ObjectReader> ObjectReader::object(std::string_view key) {
  const json* value = take(key);
  if (value == nullptr) return std::nullopt;
  if (!value->is_object()) {
    wrong_type(key, *value, "an object", "Write its keys between { and }.");
    return std::nullopt;
  }
  return ObjectReader(*value, place_of(key), reading_);
}

std::optional<std::string> ObjectReader::term(std::string_view key, anatomy::TermKind kind) {
  const auto typed = text(key);
  if (!typed) return std::nullopt;
  return reading_.resolve_one(kind, *typed, place_of(key));
}

std::vector<std::string> ObjectReader::terms(std::string_view key, anatomy::TermKind kind) {
  const auto typed = text(key);
  if (!typed) return {};
  return reading_.resolve(kind, *typed, place_of(key));
}

std::optional<std::string> ObjectReader::word(std::string_view key,
                                              std::span<const std::string_view> words) {
  const auto written = text(key);
  if (!written) return std::nullopt;
  if (std::ranges::find(words, *written) != words.end()) return written;
  add(key, fmt::format("{} is not one of the words of this key", in_quotes(*written)),
      fmt::format("Write \"{}\", or another of: {}.", nearest(*written, words, 1).front(),
                  fmt::join(words, ", ")));
  return std::nullopt;
}

const json* ObjectReader::take_list(std::string_view key) {
  const json* value = take(key);
  if (value == nullptr) return nullptr;
  if (!value->is_array()) {
    wrong_type(key, *value, "a list", "Write the items between [ and ], even a single one.");
    return nullptr;
  }
  return value;
}

void ObjectReader::each_object(std::string_view key,
                               const std::function<void(ObjectReader&)>& use) {
  const json* list = take_list(key);
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const std::string at = fmt::format("{}/{}", place_of(key), i);
    if (!(*list)[i].is_object()) {
      reading_.add(at, fmt::format("{} stands where an object belongs", type_in_words((*list)[i])),
                   "Write its keys between { and }.");
      continue;
    }
    ObjectReader item((*list)[i], at, reading_);
    use(item);
  }
}

void ObjectReader::each_text(
    std::string_view key,
    const std::function<void(const std::string&, const std::string& place)>& use) {
  const json* list = take_list(key);
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const std::string at = fmt::format("{}/{}", place_of(key), i);
    if (!(*list)[i].is_string() || only_blanks((*list)[i].get<std::string>())) {
      reading_.add(at,
                   (*list)[i].is_string()
                       ? "the text is empty"
                       : fmt::format("{} stands where a text belongs", type_in_words((*list)[i])),
                   "Write a name in quotes.");
      continue;
    }
    use((*list)[i].get<std::string>(), at);
  }
}

void ObjectReader::require(std::string_view key, std::string_view mend) {
  if (has(key)) return;
  taken_.emplace(key);
  add(key, "the key is missing", std::string(mend));
}

void ObjectReader::finish() const {
  const std::vector<std::string_view> known(taken_.begin(), taken_.end());
  for (const auto& [key, value] : object_.items()) {
    if (taken_.contains(key)) continue;
    std::string mend = "Leave it out.";
    if (!known.empty()) {
      mend = fmt::format("Write \"{}\" if that was meant, or leave it out; the keys here are: {}.",
                         nearest(key, known, 1).front(), fmt::join(known, ", "));
    }
    add(key, fmt::format("{} is no key of a case file here", in_quotes(key)), std::move(mend));
  }
}

}  // namespace endplate::casefile
