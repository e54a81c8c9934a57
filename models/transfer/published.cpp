#include "models/transfer/published.hpp"

#include <stdexcept>

namespace endplate::transfer {

using evidence::Row;

Row row_with_id(const evidence::Table& table, std::string_view id) {
  for (const Row row : table) {
    if (row.text("id") == id) return row;
  }
  throw std::out_of_range(std::string(id));
}

std::vector<PublishedResult> published_transfer(const Row& row) {
  if (!row.number("outcome_fraction") || row.text("outcome_scale").empty()) return {};
  PublishedResult result;
  result.row = row.text("id");
  result.entry = without_stop(row.text("prerequisites"));
  result.scale = row.text("outcome_scale");
  result.share = row.number("outcome_fraction");
  result.count = row.number("outcome_count");
  result.n = row.number("outcome_n");
  result.study = row.text("study");
  result.provenance = row.text("provenance");
  return {result};
}

}  // namespace endplate::transfer
