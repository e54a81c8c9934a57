#pragma once
// The question "what published rows stand behind a number, and how were they pooled?"
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/pool.hpp"
#include "models/evidence/quantity.hpp"
#include "models/evidence/share_quantity.hpp"

namespace endplate::evidence {

// Every condition that is given must hold. Names are matched whole, without regard to case.
struct EvidenceQuery {
  std::string nerve;     // node of the nerve tree
  std::string point;     // standard point, or its kind ("motor entry")
  std::string landmark;  // standard landmark
  std::string id;        // id of a row
  std::string table;     // name of a table
  std::string words;     // all of them must occur in the quantity or in one of its rows
};

struct QuantityAnswer {
  Quantity quantity;
  std::optional<PooledQuantity> pooled;
};

struct ShareAnswer {
  ShareQuantity quantity;
  std::optional<PooledShare> pooled;
};

// A row as it stands, with its columns in the order of the table; empty cells are left away.
struct TableRow {
  std::string table;
  std::vector<std::pair<std::string, std::string>> cells;

  std::string cell(std::string_view column) const;  // empty when the cell is
};

struct EvidenceAnswer {
  std::vector<QuantityAnswer> distances;
  std::vector<ShareAnswer> shares;
  std::vector<TableRow> rows;  // of tables that are not pooled, and the row asked for by its id
  SpreadModel spread;
  double share_floor_tau = 0.0;  // logit
};

// The level of every interval of the answer.
inline constexpr double kEvidenceLevel = 0.90;

// An unknown nerve, point, landmark, id or table is an input error that names the nearest ones.
Expected<EvidenceAnswer> answer_evidence(const DataPackage& package, const EvidenceQuery& query);

}  // namespace endplate::evidence
