#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <functional>
#include <iterator>

#include "output/deficit_views.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using namespace examination;

constexpr std::size_t kMostVariants = 3;
constexpr std::size_t kMostTargets = 3;
constexpr std::size_t kMostAreas = 20;

std::string capitals(std::string_view text) {
  std::string result(text);
  std::ranges::transform(result, result.begin(), [](unsigned char c) { return std::toupper(c); });
  return result;
}

// What is lost altogether is grouped by its nerve, the rest by the reason.
struct Group {
  std::string state;
  std::string heading;
  std::vector<std::string> members;
};

void put(std::vector<Group>& groups, std::string_view state, const std::string& heading,
         std::string member) {
  const auto same = [&](const Group& group) {
    return group.state == state && group.heading == heading;
  };
  auto found = std::ranges::find_if(groups, same);
  if (found == groups.end()) {
    groups.push_back({std::string(state), heading, {}});
    found = std::prev(groups.end());
  }
  found->members.push_back(std::move(member));
}

std::string table_of(const std::vector<Group>& groups, const std::string& what) {
  TextTable table({{"Expected", TextTable::Align::left, 12},
                   {"Nerve, or why", TextTable::Align::left, 32},
                   {what, TextTable::Align::left, 52}});
  std::string last;
  for (const Group& group : groups) {
    table.add_row({group.state == last ? "" : group.state, group.heading,
                   fmt::format("{}", fmt::join(group.members, ", "))});
    last = group.state;
  }
  return table.to_string();
}

std::string with_finding(const std::string& name, const std::string& finding) {
  return finding == "not examined" ? name : fmt::format("{} [{}]", name, finding);
}

template <class Row>
std::vector<const Row*> heaviest_first(const std::vector<Row>& rows) {
  std::vector<const Row*> result;
  for (const Row& row : rows) result.push_back(&row);
  std::ranges::stable_sort(result, std::greater<>(), [](const Row* row) { return row->state; });
  return result;
}

std::string muscles_text(const DeficitView& view) {
  std::vector<Group> groups;
  std::vector<std::string> spared_root;
  std::vector<std::string> intact_examined;
  std::size_t intact = 0;
  for (const MuscleDeficit* row : heaviest_first(view.answer.muscles)) {
    const anatomy::Muscle& muscle = view.anatomy.muscles()[row->muscle];
    const std::string finding = examined_words(view.examined.muscles[row->muscle]);
    if (row->state == MuscleState::intact) {
      ++intact;
      if (!row->roots_lost.empty()) {
        spared_root.push_back(fmt::format("{} ({})", muscle.id, fmt::join(row->roots_lost, ", ")));
      }
      if (finding != "not examined") intact_examined.push_back(with_finding(muscle.id, finding));
      continue;
    }
    const std::string& nerve = view.anatomy.tree().node(muscle.nerve).name;
    put(groups, to_string(row->state), row->state == MuscleState::denervated ? nerve : row->why,
        with_finding(muscle.id, finding));
  }
  std::string out = groups.empty() ? "No muscle loses its supply.\n" : table_of(groups, "Muscles");
  std::string rest = fmt::format("{} other muscles and parts", intact);
  if (!intact_examined.empty())
    rest += fmt::format("; examined: {}", fmt::join(intact_examined, ", "));
  if (!spared_root.empty()) {
    rest += fmt::format("; intact but short of a root that they can usually spare: {}",
                        fmt::join(spared_root, ", "));
  }
  return out + labelled("intact", rest);
}

// Of a nerve that has lost every area, only those that decide are named once the list grows long.
void shorten(const DeficitView& view, std::vector<Group>& groups) {
  std::size_t named = 0;
  for (const Group& group : groups) named += group.members.size();
  if (named <= kMostAreas) return;
  for (Group& group : groups) {
    const auto of_nerve = std::ranges::count_if(view.anatomy.areas(), [&](const auto& area) {
      return view.anatomy.tree().node(area.nerve).name == group.heading;
    });
    if (of_nerve != std::ssize(group.members) || of_nerve < 4) continue;
    std::vector<std::string> deciding;
    for (const std::string& member : group.members) {
      if (member.find_first_of("*[") != std::string::npos) deciding.push_back(member);
    }
    std::string all = fmt::format("all of its {} areas", of_nerve);
    if (!deciding.empty()) all += fmt::format("; {}", fmt::join(deciding, ", "));
    group.members = {std::move(all)};
  }
}

std::string areas_text(const DeficitView& view) {
  std::vector<Group> groups;
  std::vector<std::string> intact_examined;
  std::size_t intact = 0;
  for (const AreaDeficit* row : heaviest_first(view.answer.areas)) {
    const anatomy::SkinArea& area = view.anatomy.areas()[row->area];
    const std::string finding = examined_words(view.examined.areas[row->area]);
    if (row->state == AreaState::intact) {
      ++intact;
      if (finding != "not examined") intact_examined.push_back(with_finding(area.name, finding));
      continue;
    }
    const std::string name = area.name + (area.autonomous_zone.empty() ? "" : "*");
    const std::string& nerve = view.anatomy.tree().node(area.nerve).name;
    put(groups, to_string(row->state), row->state == AreaState::absent ? nerve : row->why,
        with_finding(name, finding));
  }
  shorten(view, groups);
  std::string out = groups.empty() ? "No skin area loses its supply.\n"
                                   : table_of(groups, "Skin areas (* autonomous zone)");
  std::string rest = fmt::format("{} other areas", intact);
  if (!intact_examined.empty())
    rest += fmt::format("; examined: {}", fmt::join(intact_examined, ", "));
  return out + labelled("intact", rest);
}

std::string some_of(std::vector<std::string> names) {
  const std::size_t more = names.size() > kMostTargets ? names.size() - kMostTargets : 0;
  names.resize(names.size() - more);
  std::string text = fmt::format("{}", fmt::join(names, ", "));
  return more > 0 ? text + fmt::format(" and {} more", more) : text;
}

// Names of movements; a region that lost every one is named as a whole.
std::vector<std::string> movement_names(const anatomy::Anatomy& anatomy,
                                        const std::vector<MovementDeficit>& rows) {
  const auto region_of = [&](const MovementDeficit& row) {
    return anatomy.movements()[row.movement].region;
  };
  std::vector<std::string> names;
  for (const MovementDeficit& row : rows) {
    const std::string& region = region_of(row);
    const auto here = std::ranges::count(rows, region, region_of);
    const auto all = std::ranges::count(anatomy.movements(), region, &anatomy::Movement::region);
    const std::string name = here == all && all > 1
                                 ? fmt::format("every movement of the {}", region)
                                 : anatomy.movements()[row.movement].name;
    if (std::ranges::count(names, name) == 0) names.push_back(name);
  }
  return names;
}

std::string movements_text(const DeficitView& view) {
  const auto names = [&](const std::vector<MovementDeficit>& rows) {
    return fmt::format("{}", fmt::join(movement_names(view.anatomy, rows), "; "));
  };
  std::string out;
  if (!view.answer.movements_lost.empty()) {
    out += labelled("Lost", names(view.answer.movements_lost));
  }
  std::vector<std::string> kept;
  for (const MovementDeficit& row : view.answer.movements_kept_by_others) {
    std::vector<std::string> by;
    for (const std::size_t muscle : row.kept_by) by.push_back(view.anatomy.muscles()[muscle].id);
    kept.push_back(
        fmt::format("{} ({})", view.anatomy.movements()[row.movement].name, some_of(by)));
  }
  if (!kept.empty()) out += labelled("Kept by", fmt::format("{}", fmt::join(kept, "; ")));
  if (!view.answer.movements_weakened.empty()) {
    out += labelled("Weakened", names(view.answer.movements_weakened));
  }
  return out;
}

// In steps of five per cent.
std::string per_cent(double fraction) {
  const double step = std::round(fraction * 20.0) * 5.0;
  return step < 5.0 ? "under 5" : fmt::format("{:.0f}", step);
}

std::string variants_text(const DeficitView& view) {
  const auto& tests = view.answer.variants_to_test;
  if (tests.empty()) return "";
  TextTable table({{"Variant to test for", TextTable::Align::left, 26},
                   {"Limbs, %", TextTable::Align::right, 14},
                   {"If it is there", TextTable::Align::left, 26},
                   {"How", TextTable::Align::left, 28}});
  for (std::size_t i = 0; i < std::min(tests.size(), kMostVariants); ++i) {
    const anatomy::Variant& variant = view.anatomy.variants()[tests[i].variant];
    std::string share = "not known";
    if (variant.prevalence.pooled) {
      const std::string low = per_cent(*variant.prevalence.lowest);
      const std::string high = per_cent(*variant.prevalence.highest);
      share = per_cent(*variant.prevalence.pooled);
      if (low != high) share += fmt::format(" ({} to {})", low, high);
    }
    std::vector<std::string> changes;
    for (const VariantChange& change : tests[i].changes) {
      const std::string& name = change.is_muscle ? view.anatomy.muscles()[change.target].id
                                                 : view.anatomy.areas()[change.target].name;
      changes.push_back(fmt::format("{} {}", name, change.with));
    }
    table.add_row({variant.name, share, some_of(changes),
                   variant.how_to_test.empty() ? "examine and stimulate" : variant.how_to_test});
  }
  std::string out = table.to_string();
  if (tests.size() > kMostVariants) {
    out += fmt::format("and {} more with --json\n", tests.size() - kMostVariants);
  }
  return out;
}

// Injuries at places of the same words share a line, as the torn roots of a plexus do.
std::string injuries_text(const DeficitView& view) {
  std::vector<Group> groups;
  for (const TreeInjury& injury : view.injuries.injuries) {
    std::string words = injury.lesion.words;
    if (injury.extent == Extent::partial) words += "; partial";
    if (injury.extent == Extent::conduction_block) words += "; conduction block";
    put(groups, "", words, view.anatomy.tree().node(injury.lesion.at.nerve).name);
  }
  std::string out;
  for (const Group& group : groups) {
    // A trunk or a root is its own place.
    const bool said = group.members.size() == 1 && group.heading.contains(group.members.front());
    out += labelled("Injury",
                    said ? group.heading
                         : fmt::format("{}, {}", fmt::join(group.members, ", "), group.heading));
  }
  return out;
}

}  // namespace

std::string deficit_text(const DeficitView& view) {
  std::string out = fmt::format("{} upper limb: what the injury should paralyse and numb\n",
                                capitals(to_string(view.side)));
  out += injuries_text(view);
  if (view.examined.any) {
    out += labelled("Examined", "finding in brackets; a name without brackets was not examined");
  }
  out += '\n' + muscles_text(view) + '\n' + areas_text(view);
  if (const std::string movements = movements_text(view); !movements.empty()) {
    out += "\nMovements\n" + movements;
  }
  if (const std::string variants = variants_text(view); !variants.empty()) out += '\n' + variants;
  out += '\n';
  out += warnings_text(view.warnings);
  for (const std::string& note : view.answer.notes) out += labelled("Note", note);
  for (const std::string& assumption : view.assumptions) out += labelled("Assumed", assumption);
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth))
    out += line + '\n';
  return out;
}

}  // namespace endplate::cli
