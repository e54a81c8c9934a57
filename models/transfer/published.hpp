#pragma once
// Published shares of operations, as their series printed them.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/evidence/table.hpp"

namespace endplate::transfer {

// A share and its n; shares are fractions. Scales are never mixed.
struct PublishedResult {
  std::string row;
  std::string entry;  // who was let in
  std::string scale;  // "M3", "whole-nerve grade", ...
  std::optional<double> share, low, high;
  std::optional<double> count, n;
  std::string stand_in;  // why the n is not that of the share; empty when it is
  std::string study;
  std::string provenance;
};

// The result that a row of transfers holds itself, where it has one.
std::vector<PublishedResult> published_transfer(const evidence::Row& row);

// The row of a table with that id. Throws std::out_of_range when there is none.
evidence::Row row_with_id(const evidence::Table& table, std::string_view id);

// Without the full stop of the table, since it goes into a longer sentence.
inline std::string_view without_stop(std::string_view words) {
  return words.ends_with('.') ? words.substr(0, words.size() - 1) : words;
}

}  // namespace endplate::transfer
