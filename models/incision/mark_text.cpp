#include "models/incision/mark_text.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <utility>

#include "models/casefile/words.hpp"

namespace endplate::incision {
namespace {

using casefile::Toward;

std::string_view trimmed(std::string_view text) {
  const auto from = text.find_first_not_of(" \t");
  if (from == std::string_view::npos) return {};
  return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

std::vector<std::string_view> parts_of(std::string_view text, char at) {
  std::vector<std::string_view> parts;
  while (true) {
    const auto end = text.find(at);
    parts.push_back(trimmed(text.substr(0, end)));
    if (end == std::string_view::npos) return parts;
    text.remove_prefix(end + 1);
  }
}

std::optional<double> number_in(std::string_view& text) {
  text = trimmed(text);
  double value = 0.0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (fault != std::errc()) return std::nullopt;
  text = trimmed(text.substr(static_cast<std::size_t>(end - text.data())));
  return value;
}

std::optional<Aside> side_from(std::string_view word) {
  for (const auto& side : casefile::kAsides) {
    if (side.text == word) return side.value;
  }
  return std::nullopt;
}

// Takes a part into the mark; false where it is none of the forms, as a word of a landmark's name.
bool take(std::string_view part, AtSkin& mark) {
  if (part.starts_with("on ")) {
    const auto side = side_from(trimmed(part.substr(3)));
    if (side) mark.surface = side;
    return side.has_value();
  }
  const auto mm = number_in(part);
  if (!mm || *mm < 0.0) return false;
  if (part.starts_with("mm ")) part = trimmed(part.substr(3));
  if (part == "proximal" || part == "distal") {
    mark.along_mm = *mm;
    mark.toward = part == "proximal" ? Toward::proximal : Toward::distal;
    return true;
  }
  const auto side = side_from(part);
  if (!side) return false;
  mark.aside_mm = *mm;
  mark.aside = side;
  return true;
}

std::optional<Eigen::Vector3d> picked_in(std::string_view text) {
  if (!text.starts_with("at ")) return std::nullopt;
  text.remove_prefix(3);
  Eigen::Vector3d place;
  for (double& coordinate : place) {
    const auto value = number_in(text);
    if (!value) return std::nullopt;
    coordinate = *value;
    if (text.starts_with(",")) text.remove_prefix(1);
  }
  return text.empty() ? std::optional(place) : std::nullopt;
}

Expected<AtSkin> mark_from(std::string_view text, const std::string& option,
                           const anatomy::Terms& terms, std::vector<std::string>& assumptions) {
  AtSkin mark;
  if (const auto picked = picked_in(text)) {
    mark.picked_mm = picked;
    return mark;
  }
  // Names of landmarks have commas of their own: what stands behind is taken from the end.
  std::vector<std::string_view> parts = parts_of(text, ',');
  while (parts.size() > 1 && take(parts.back(), mark)) parts.pop_back();
  const std::string typed = fmt::format("{}", fmt::join(parts, ", "));
  const auto reading = terms.resolve(anatomy::TermKind::landmark, typed);
  if (!reading) {
    return std::unexpected(Error::input(
        {option, fmt::format("'{}' names no landmark", typed),
         fmt::format(
             "Write a landmark, then for instance \"20 proximal, 10 anterior, on lateral\". "
             "Perhaps one of these is meant: {}.",
             fmt::join(reading.error().nearest, "; "))}));
  }
  if (reading->names.size() > 1) {
    return std::unexpected(
        Error::input({option, fmt::format("'{}' stands for several landmarks", typed),
                      fmt::format("Choose one of: {}.", fmt::join(reading->names, "; "))}));
  }
  if (reading->slip) {
    assumptions.push_back(fmt::format("'{}' was read as '{}'", typed, reading->names.front()));
  }
  mark.landmark = reading->names.front();
  return mark;
}

}  // namespace

Expected<std::vector<AtSkin>> marks_from(std::string_view text, const std::string& option,
                                         const anatomy::Terms& terms,
                                         std::vector<std::string>& assumptions) {
  std::vector<AtSkin> marks;
  for (const std::string_view part : parts_of(text, ';')) {
    auto mark = mark_from(part, option, terms, assumptions);
    if (!mark) return std::unexpected(mark.error());
    marks.push_back(std::move(*mark));
  }
  return marks;
}

std::string in_words(const AtSkin& mark) {
  if (mark.picked_mm) {
    const Eigen::Vector3d& p = *mark.picked_mm;
    return fmt::format("at {:.0f} {:.0f} {:.0f}", p.x(), p.y(), p.z());
  }
  std::string words = mark.landmark;
  if (mark.along_mm > 0.0) {
    words += fmt::format(", {:g} {}", mark.along_mm,
                         mark.toward == Toward::proximal ? "proximal" : "distal");
  }
  if (mark.aside && mark.aside_mm > 0.0) {
    words += fmt::format(", {:g} {}", mark.aside_mm, casefile::to_string(*mark.aside));
  }
  if (mark.surface) words += fmt::format(", on {}", casefile::to_string(*mark.surface));
  return words;
}

}  // namespace endplate::incision
