#include "ui/document/findings.hpp"

#include <nlohmann/json.hpp>
#include <utility>
#include <vector>

#include "models/anatomy/terms.hpp"

namespace endplate::ui {
namespace {

struct Keys {
  const char* list;
  const char* name;
  const char* value;
};

Keys keys_of(FindingKind kind) {
  switch (kind) {
    case FindingKind::muscle:
      return {"muscles", "muscle", "mrc"};
    case FindingKind::area:
      return {"sensation", "area", "state"};
    case FindingKind::sign:
      break;
  }
  return {"signs", "sign", "state"};
}

// What an entry speaks of, in standard names; as it is written where the tables do not know it.
std::vector<std::string> named(const Json& entry, FindingKind kind, const anatomy::Terms& terms) {
  const Keys keys = keys_of(kind);
  if (!entry.is_object() || !entry.contains(keys.name) || !entry[keys.name].is_string()) return {};
  const std::string written = entry[keys.name];
  if (kind == FindingKind::sign) return {written};
  const auto found = terms.resolve(
      kind == FindingKind::muscle ? anatomy::TermKind::muscle : anatomy::TermKind::area, written);
  return found ? found->names : std::vector<std::string>{written};
}

std::string value_of(const Json& entry, FindingKind kind) {
  const Keys keys = keys_of(kind);
  if (entry.contains(keys.value)) {
    const Json& value = entry[keys.value];
    return value.is_string() ? value.get<std::string>() : value.dump();
  }
  // An area may be known by its grade alone.
  if (kind == FindingKind::area && entry.contains("s_grade")) return entry["s_grade"];
  if (kind == FindingKind::area && entry.contains("two_point_mm")) {
    return entry["two_point_mm"].dump() + " mm";
  }
  return {};
}

// A grade without a sign is written as a number.
Json as_written(FindingKind kind, const std::string& value) {
  if (kind == FindingKind::muscle && value.size() == 1) return value[0] - '0';
  return value;
}

void split(Json& list, std::size_t at, FindingKind kind, const std::vector<std::string>& names) {
  const Keys keys = keys_of(kind);
  Json whole = list;
  list = Json::array();
  for (std::size_t i = 0; i < whole.size(); ++i) {
    if (i != at) {
      list.push_back(whole[i]);
      continue;
    }
    for (const std::string& name : names) {
      Json part = whole[i];
      part[keys.name] = name;
      list.push_back(std::move(part));
    }
  }
}

}  // namespace

std::map<std::string, std::string> findings(const Json& visit, FindingKind kind,
                                            const anatomy::Terms& terms) {
  std::map<std::string, std::string> found;
  const Keys keys = keys_of(kind);
  if (!visit.is_object() || !visit.contains(keys.list) || !visit[keys.list].is_array()) {
    return found;
  }
  for (const Json& entry : visit[keys.list]) {
    for (const std::string& name : named(entry, kind, terms)) {
      found.emplace(name, value_of(entry, kind));
    }
  }
  return found;
}

void set_finding(Json& visit, FindingKind kind, const std::string& name, const std::string& value,
                 const anatomy::Terms& terms) {
  const Keys keys = keys_of(kind);
  Json& list = visit[keys.list];
  if (!list.is_array()) list = Json::array();
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto names = named(list[i], kind, terms);
    if (std::ranges::find(names, name) == names.end()) continue;
    if (names.size() > 1) {
      split(list, i, kind, names);
      return set_finding(visit, kind, name, value, terms);
    }
    if (value.empty()) {
      list.erase(i);
    } else {
      list[i][keys.value] = as_written(kind, value);
    }
    break;
  }
  if (!value.empty() && !findings(visit, kind, terms).contains(name)) {
    list.push_back(Json{{keys.name, name}, {keys.value, as_written(kind, value)}});
  }
  if (list.empty()) visit.erase(keys.list);
}

}  // namespace endplate::ui
