#include "ui/document/findings.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>
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

// Where the entry of one name stands; one for several names is split first.
std::optional<std::size_t> own_entry(Json& list, FindingKind kind, const std::string& name,
                                     const anatomy::Terms& terms) {
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto names = named(list[i], kind, terms);
    if (std::ranges::find(names, name) == names.end()) continue;
    if (names.size() == 1) return i;
    split(list, i, kind, names);
    return own_entry(list, kind, name, terms);
  }
  return std::nullopt;
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

std::map<std::string, AreaDetail> area_details(const Json& visit, const anatomy::Terms& terms) {
  std::map<std::string, AreaDetail> found;
  const Keys keys = keys_of(FindingKind::area);
  if (!visit.is_object() || !visit.contains(keys.list) || !visit[keys.list].is_array()) {
    return found;
  }
  const auto written = [](const Json& entry, const char* key) {
    if (!entry.contains(key)) return std::string();
    return entry[key].is_string() ? entry[key].get<std::string>() : entry[key].dump();
  };
  for (const Json& entry : visit[keys.list]) {
    for (const std::string& name : named(entry, FindingKind::area, terms)) {
      found.emplace(name, AreaDetail{written(entry, "s_grade"), written(entry, "two_point_mm")});
    }
  }
  return found;
}

void set_area_detail(Json& visit, const std::string& area, const std::string& key,
                     const Json& value, const anatomy::Terms& terms) {
  const Keys keys = keys_of(FindingKind::area);
  Json& list = visit[keys.list];
  if (!list.is_array()) list = Json::array();
  const auto at = own_entry(list, FindingKind::area, area, terms);
  if (at && value.is_null()) {
    list[*at].erase(key);
    if (list[*at].size() == 1) list.erase(*at);  // the name alone is no finding
  } else if (at) {
    list[*at][key] = value;
  } else if (!value.is_null()) {
    list.push_back(Json{{keys.name, area}, {key, value}});
  }
  if (list.empty()) visit.erase(keys.list);
}

void set_finding(Json& visit, FindingKind kind, const std::string& name, const std::string& value,
                 const anatomy::Terms& terms) {
  const Keys keys = keys_of(kind);
  Json& list = visit[keys.list];
  if (!list.is_array()) list = Json::array();
  const auto at = own_entry(list, kind, name, terms);
  if (at && value.empty()) {
    list.erase(*at);
  } else if (at) {
    list[*at][keys.value] = as_written(kind, value);
  } else if (!value.empty()) {
    list.push_back(Json{{keys.name, name}, {keys.value, as_written(kind, value)}});
  }
  if (list.empty()) visit.erase(keys.list);
}

}  // namespace endplate::ui
