#include "models/plan/option_rows.hpp"

#include <algorithm>

namespace endplate::plan {
namespace {

using evidence::Row;

bool holds(const std::vector<std::string>& list, std::string_view item) {
  return std::ranges::find(list, item) != list.end();
}

OptionState state_from(std::string_view text) {
  if (text == "open") return OptionState::open;
  if (text == "later") return OptionState::later;
  if (text == "unlikely") return OptionState::unlikely;
  return OptionState::closed;
}

OptionRow read(const Row& row, const recovery::Decision& decision) {
  OptionRow read;
  read.id = row.text("id");
  read.order = row.number("order").value_or(0.0);
  read.first_days_low = row.number("first_days_low");
  read.first_days_high = row.number("first_days_high");
  Option& option = read.option;
  option.kind = row.text("option");
  option.name = row.text("name");
  option.first = holds(row.list("first_for"), decision.rule);
  option.entry_condition = row.text("entry_condition");
  option.donor_cost = row.text("donor_cost");
  if (!row.text("spends").empty()) option.spends.emplace_back(row.text("spends"));
  option.finds = row.list("finds");
  option.comparable_group = row.text("comparable_group");
  option.comparable_words = row.text("comparable_words");
  option.provenance = row.text("provenance");
  option.source = row.text("source");
  if (!row.text("reason").empty()) option.reasons.emplace_back(row.text("reason"));
  if (!option.first && !row.text("later_words").empty()) {
    option.state = OptionState::later;
    option.state_words = row.text("later_words");
  }
  return read;
}

void decide(const evidence::DataPackage& package, const recovery::Decision& decision,
            OptionRow& row) {
  for (const Row closed : package.table("plan_closed")) {
    if (closed.text("option") != row.option.kind) continue;
    if (!holds(closed.list("rules"), decision.rule)) continue;
    row.option.state = state_from(closed.text("state"));
    row.option.state_words = closed.text("words");
    row.decided = true;
    return;
  }
}

}  // namespace

std::vector<OptionRow> option_rows(const evidence::DataPackage& package,
                                   const recovery::Decision& decision, bool adult,
                                   std::string_view mechanism) {
  std::vector<OptionRow> rows;
  for (const Row row : package.table("plan_options")) {
    const auto mechanisms = row.list("mechanism");
    if (adult ? !mechanisms.empty() : !holds(mechanisms, mechanism)) continue;
    OptionRow one = read(row, decision);
    // An emergency is an option only while there is one.
    if (one.option.kind == "emergency first" && !one.option.first) continue;
    decide(package, decision, one);
    rows.push_back(std::move(one));
  }
  std::ranges::stable_sort(rows, {}, &OptionRow::order);
  return rows;
}

}  // namespace endplate::plan
