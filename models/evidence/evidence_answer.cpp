#include "models/evidence/evidence_answer.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <set>

#include "models/evidence/nearest_names.hpp"

namespace endplate::evidence {
namespace {

std::string kind_of(const std::string& point) {
  return point.substr(0, point.find(':'));
}

bool matches_point(const std::string& point, const std::string& wanted) {
  return wanted.empty() || same_name(point, wanted) || same_name(kind_of(point), wanted);
}

bool matches_nerve(const std::vector<std::string>& nodes, const std::string& wanted) {
  return wanted.empty() ||
         std::ranges::any_of(nodes, [&](const auto& node) { return same_name(node, wanted); });
}

std::vector<std::string> nodes_of(const std::string& joined) {
  std::vector<std::string> nodes;
  std::size_t begin = 0;
  while (begin <= joined.size()) {
    const std::size_t end = std::min(joined.find(';', begin), joined.size());
    nodes.push_back(joined.substr(begin, end - begin));
    begin = end + 1;
  }
  return nodes;
}

Expected<void> check_name(const std::string& typed, const std::string& option,
                          const std::string& what, const std::set<std::string>& known) {
  if (typed.empty()) return {};
  const auto is_it = [&](const auto& name) { return same_name(name, typed); };
  if (std::ranges::any_of(known, is_it)) return {};
  const std::vector<std::string> names(known.begin(), known.end());
  return std::unexpected(
      Error::input({option, fmt::format("no {} is called '{}'", what, typed),
                    fmt::format("Nearest: {}.", fmt::join(nearest_names(typed, names, 4), "; "))}));
}

std::set<std::string> column_of(const Table& table, std::string_view column) {
  std::set<std::string> values;
  for (const Row row : table) {
    for (auto& item : row.list(column)) values.insert(std::move(item));
  }
  return values;
}

Expected<void> check_query(const DataPackage& package, const EvidenceQuery& query) {
  const Table& distances = package.table("landmark_distances");
  std::set<std::string> points = column_of(distances, "point_std");
  for (const std::string& point : column_of(distances, "point_std")) points.insert(kind_of(point));
  std::set<std::string> tables;
  std::set<std::string> ids;
  for (const auto& [name, table] : package.tables()) {
    tables.insert(name);
    if (table.has_column("id")) ids.merge(column_of(table, "id"));
  }
  if (auto ok = check_name(query.nerve, "--nerve", "nerve of the tree",
                           column_of(package.table("nerve_tree"), "child"));
      !ok) {
    return ok;
  }
  if (auto ok = check_name(query.point, "--point", "point", points); !ok) return ok;
  if (auto ok = check_name(query.landmark, "--from", "landmark",
                           column_of(package.table("landmarks"), "landmark_std"));
      !ok) {
    return ok;
  }
  if (auto ok = check_name(query.table, "--table", "table", tables); !ok) return ok;
  return check_name(query.id, "--id", "row", ids);
}

template <class Rows>
bool has_row(const Rows& rows, const std::string& id) {
  return id.empty() ||
         std::ranges::any_of(rows, [&](const auto& r) { return same_name(r.id, id); });
}

template <class Rows>
bool has_words(const std::string& name, const Rows& rows, const std::string& words) {
  std::string text = name;
  for (const auto& row : rows) text += ' ' + row.id + ' ' + row.study + ' ' + row.population;
  return contains_words(text, words);
}

bool wants(const EvidenceQuery& query, std::string_view table) {
  return query.table.empty() || same_name(query.table, table);
}

void add_rows(const DataPackage& package, const EvidenceQuery& query, EvidenceAnswer& answer) {
  static const std::set<std::string_view> pooled{"landmark_distances", "variants", "outcomes"};
  for (const auto& [name, table] : package.tables()) {
    const bool by_id = !query.id.empty() && table.has_column("id");
    const bool listed =
        !pooled.contains(name) && !query.table.empty() && wants(query, name) && query.id.empty();
    if (!by_id && !listed) continue;
    for (const Row row : table) {
      if (by_id && !same_name(row.text("id"), query.id)) continue;
      TableRow found{name, {}};
      std::string text;
      for (const std::string& column : table.columns()) {
        const std::string cell(row.text(column));
        text += ' ' + cell;
        if (!cell.empty()) found.cells.emplace_back(column, cell);
      }
      const bool right_nerve =
          query.nerve.empty() ||
          (table.has_column("tree_node") && matches_nerve(row.list("tree_node"), query.nerve));
      if (right_nerve && contains_words(text, query.words)) answer.rows.push_back(std::move(found));
    }
  }
}

}  // namespace

std::string TableRow::cell(std::string_view column) const {
  const auto found = std::ranges::find(cells, column, &std::pair<std::string, std::string>::first);
  return found == cells.end() ? std::string() : found->second;
}

Expected<EvidenceAnswer> answer_evidence(const DataPackage& package, const EvidenceQuery& query) {
  if (auto ok = check_query(package, query); !ok) return std::unexpected(ok.error());

  const auto all = quantities(package.table("landmark_distances"));
  EvidenceAnswer answer;
  answer.spread = SpreadModel::estimate(all);
  for (const Quantity& quantity : all) {
    if (quantity.measure == Measure::prevalence || !wants(query, "landmark_distances") ||
        !matches_nerve(nodes_of(quantity.tree_node), query.nerve) ||
        !matches_point(quantity.point, query.point) ||
        (!query.landmark.empty() && !same_name(quantity.landmark, query.landmark)) ||
        !has_row(quantity.rows, query.id) ||
        !has_words(quantity.name(), quantity.rows, query.words)) {
      continue;
    }
    answer.distances.push_back({quantity, pool(quantity, answer.spread)});
  }
  if (query.point.empty() && query.landmark.empty()) {
    const auto shares = share_quantities(package);
    answer.share_floor_tau = share_floor_tau(shares);
    for (const ShareQuantity& quantity : shares) {
      std::vector<std::string> nodes;
      for (const auto& joined : quantity.tree_nodes) {
        for (auto& node : nodes_of(joined)) nodes.push_back(std::move(node));
      }
      if (!wants(query, quantity.table) || !matches_nerve(nodes, query.nerve) ||
          !has_row(quantity.rows, query.id) ||
          !has_words(quantity.name, quantity.rows, query.words)) {
        continue;
      }
      answer.shares.push_back({quantity, pool(quantity, answer.share_floor_tau, kEvidenceLevel)});
    }
  }
  add_rows(package, query, answer);

  if (answer.distances.empty() && answer.shares.empty() && answer.rows.empty()) {
    return std::unexpected(Error::input({"arguments", "no published row meets all these conditions",
                                         "Give fewer conditions, or search with single words."}));
  }
  return answer;
}

}  // namespace endplate::evidence
