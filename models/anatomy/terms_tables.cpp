// How the tables fill the vocabularies of Terms.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "models/anatomy/terms.hpp"

namespace endplate::anatomy {
namespace {

constexpr std::array<std::pair<std::string_view, TermKind>, 7> kKinds{{
    {"nerve", TermKind::nerve},
    {"muscle", TermKind::muscle},
    {"area", TermKind::area},
    {"landmark", TermKind::landmark},
    {"variant", TermKind::variant},
    {"movement", TermKind::movement},
    {"graft_donor", TermKind::graft_donor},
}};

// "clavicular (anterior)" -> {"clavicular", "anterior"}: either word names the part.
std::vector<std::string> part_names(std::string_view part) {
  const std::size_t open = part.find('(');
  if (open == std::string_view::npos) return {std::string(part)};
  const std::size_t close = part.find(')', open);
  return {std::string(part.substr(0, open)), std::string(part.substr(open + 1, close - open - 1))};
}

}  // namespace

Expected<Terms> Terms::from(const evidence::DataPackage& package) {
  Terms terms;
  terms.add_nerves(package);
  terms.add_muscles(package);
  terms.add_areas(package);
  terms.add_landmarks(package);
  terms.add_variants(package);
  if (package.tables().contains("movements")) {
    terms.add_column(package, TermKind::movement, "movements", "movement");
  } else {
    for (const evidence::Row row : package.table("joints")) {
      const std::string item(row.text("item"));
      if (row.text("kind") != "range of motion" || !item.starts_with(row.text("joint"))) continue;
      terms.add(TermKind::movement, item, {item});
    }
  }
  terms.add_column(package, TermKind::graft_donor, "graft_donors", "nerve");
  if (package.tables().contains("limb_measures")) {
    for (const evidence::Row row : package.table("limb_measures")) {
      const std::string name(row.text("name"));
      terms.add(TermKind::measure, name, {name});
      for (const std::string& alias : row.list("aliases")) {
        terms.add(TermKind::measure, alias, {name});
      }
    }
  } else {
    terms.add_column(package, TermKind::measure, "anthropometry", "measure");
  }
  for (auto& [kind, vocabulary] : terms.vocabularies_) {
    std::set<std::string> seen;
    for (const Key& key : vocabulary.keys) {
      for (const std::string& name : key.names) {
        if (seen.insert(name).second) vocabulary.standard.push_back(name);
      }
    }
  }
  auto problems = terms.add_aliases(package);
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return terms;
}

void Terms::add_column(const evidence::DataPackage& package, TermKind kind, std::string_view table,
                       std::string_view column) {
  std::set<std::string, std::less<>> seen;
  for (const evidence::Row row : package.table(table)) {
    const std::string name(row.text(column));
    if (seen.insert(name).second) add(kind, name, {name});
  }
}

void Terms::add_nerves(const evidence::DataPackage& package) {
  add_column(package, TermKind::nerve, "nerve_tree", "child");
}

void Terms::add_muscles(const evidence::DataPackage& package) {
  constexpr auto kMuscle = TermKind::muscle;
  std::map<std::string, Names> parts_of_muscle;
  std::map<std::string, Names> parts_of_family;  // FDP-I, FDP-M -> "FDP"
  std::set<std::string, std::less<>> abbreviations;
  for (const evidence::Row row : package.table("muscles")) {
    const std::string key(row.text("abbreviation"));
    abbreviations.insert(key);
    parts_of_muscle[std::string(row.text("muscle"))].push_back(key);
    if (const std::size_t hyphen = key.find('-'); hyphen != std::string::npos) {
      parts_of_family[key.substr(0, hyphen)].push_back(key);
    }
  }
  for (const evidence::Row row : package.table("muscles")) {
    const std::string key(row.text("abbreviation"));
    const std::string muscle(row.text("muscle"));
    add(kMuscle, key, {key});
    const bool one_of_several = parts_of_muscle[muscle].size() > 1;
    of(kMuscle).full_names[key] = one_of_several
                                      ? fmt::format("{}, {} ({})", muscle, row.text("part"), key)
                                      : fmt::format("{} ({})", muscle, key);
    if (!one_of_several) continue;
    for (const std::string& part : part_names(row.text("part"))) {
      add(kMuscle, fmt::format("{} {}", muscle, part), {key});
      if (const std::size_t hyphen = key.find('-'); hyphen != std::string::npos) {
        add(kMuscle, fmt::format("{} {}", key.substr(0, hyphen), part), {key});
      }
    }
  }
  for (const auto& [muscle, keys] : parts_of_muscle) add(kMuscle, muscle, keys);
  for (const auto& [family, keys] : parts_of_family) {
    if (!abbreviations.contains(family)) add(kMuscle, family, keys);
  }
}

void Terms::add_areas(const evidence::DataPackage& package) {
  std::map<std::string, Names> former;
  for (const evidence::Row row : package.table("skin_areas")) {
    const std::string area(row.text("area"));
    if (area.starts_with("no skin")) continue;
    add(TermKind::area, area, {area});
    if (!row.text("former_name").empty())
      former[std::string(row.text("former_name"))].push_back(area);
  }
  for (const auto& [name, areas] : former) add(TermKind::area, name, areas);
}

void Terms::add_landmarks(const evidence::DataPackage& package) {
  for (const evidence::Row row : package.table("landmarks")) {
    const std::string name(row.text("landmark_std"));
    // Words for a row without a landmark.
    if (name == "none" || name == "own origin") continue;
    add(TermKind::landmark, name, {name});
  }
}

void Terms::add_variants(const evidence::DataPackage& package) {
  constexpr auto kVariant = TermKind::variant;
  std::set<std::string, std::less<>> seen;
  if (package.tables().contains("variant_effects")) {
    for (const evidence::Row row : package.table("variant_effects")) {
      const std::string name(row.text("variant"));
      if (!seen.insert(name).second) continue;
      add(kVariant, name, {name});
      for (const std::string& other : row.list("also_called")) {
        if (seen.insert(other).second) add(kVariant, other, {name});
      }
    }
  }
  for (const evidence::Row row : package.table("variants")) {
    const std::string name(row.text("variant"));
    if (seen.insert(name).second) add(kVariant, name, {name});
  }
}

std::vector<Problem> Terms::add_aliases(const evidence::DataPackage& package) {
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("aliases")) {
    const auto place = [&](std::string_view column) {
      return fmt::format("aliases.csv, row {}, column {}", row.line(), column);
    };
    const auto* named =
        std::ranges::find(kKinds, row.text("kind"), &decltype(kKinds)::value_type::first);
    if (named == kKinds.end()) {
      problems.push_back({place("kind"), fmt::format("unknown kind '{}'", row.text("kind")),
                          "Use a kind of the table's schema."});
      continue;
    }
    const TermKind kind = named->second;
    // A package that lacks the movements knows fewer names; then its aliases have nothing to name.
    if (kind == TermKind::movement && !package.tables().contains("movements")) continue;
    Names names;
    for (const std::string& standard : row.list("standard")) {
      const auto& vocabulary = of(kind);
      const auto known = vocabulary.exact_case.find(standard);
      if (known == vocabulary.exact_case.end()) {
        problems.push_back({place("standard"),
                            fmt::format("'{}' is no name of this kind", standard),
                            "Correct the name or add its row."});
        continue;
      }
      const Names& meaning = *known->second.begin();
      names.insert(names.end(), meaning.begin(), meaning.end());
    }
    const std::string alias(row.text("alias"));
    const auto& phrases = of(kind).phrase;
    const auto same = phrases.find(join_words(term_words(kind, alias)));
    if (same != phrases.end() && !same->second.contains(names)) {
      problems.push_back({place("alias"), fmt::format("'{}' has already another meaning", alias),
                          "Give every alias one meaning."});
      continue;
    }
    if (!names.empty()) add(kind, alias, std::move(names));
  }
  return problems;
}

}  // namespace endplate::anatomy
