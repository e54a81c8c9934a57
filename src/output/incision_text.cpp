#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "models/casefile/words.hpp"
#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/incision_views.hpp"
#include "output/pose_text.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using incision::IncisionAnswer;
using incision::NamedNearby;

// Nerves farther than this in the middle limb stand in --json only.
constexpr double kShown_mm = 40.0;
// So many nerves and rules do on a page.
constexpr std::size_t kNerves = 14;
constexpr std::size_t kRules = 6;

std::string range(const Summary& s) {
  return fmt::format("{:.0f} ({:.0f}-{:.0f})", s.p50, s.p05, s.p95);
}

std::string head(const IncisionAnswer& answer) {
  std::string text = fmt::format("{} LIMB: {}{}\n\n", answer.side == Side::left ? "LEFT" : "RIGHT",
                                 casefile::to_string(answer.kind),
                                 answer.label.empty() ? "" : fmt::format(" \"{}\"", answer.label));
  text += labelled("Marks", fmt::format("{}", fmt::join(answer.marks, "; ")));
  text += labelled("Pose", answer.pose_deg.empty() ? "anatomical position, forearm supinated"
                                                   : pose_in_words(answer.pose_deg));
  std::string way = answer.region;
  if (answer.cut.length_mm > 0.0) way += fmt::format("; {:.0f} mm long", answer.cut.length_mm);
  way += fmt::format(", {:.0f}", answer.depth_low_mm);
  if (answer.depth_high_mm - answer.depth_low_mm >= 1.0) {
    way += fmt::format(" to {:.0f}", answer.depth_high_mm);
  }
  way += fmt::format(" mm deep{}", answer.depth_given ? "" : " (not given)");
  text += labelled("Where", way);
  return text;
}

std::string table(const IncisionAnswer& answer) {
  using Align = TextTable::Align;
  TextTable nerves({{"Nerve", Align::left, 34},
                    {"Nearest mm", Align::right},
                    {"At mm", Align::right},
                    {"Deep mm", Align::right},
                    {"<2 mm %", Align::right},
                    {"<5 mm %", Align::right},
                    {"<10 mm %", Align::right},
                    {"<20 mm %", Align::right}});
  std::size_t shown = 0;
  std::size_t more = 0;
  for (const NamedNearby& nerve : answer.nerves) {
    if (nerve.near.nearest_mm.p50 > kShown_mm) continue;
    if (shown == kNerves) {
      ++more;
      continue;
    }
    ++shown;
    std::vector<std::string> cells{nerve.nerve, range(nerve.near.nearest_mm),
                                   fmt::format("{:.0f}", nerve.near.at_along_mm),
                                   fmt::format("{:.0f}", nerve.near.depth_mm.p50)};
    for (const incision::ChanceWithin& within : nerve.near.chance_within) {
      cells.push_back(per_cent(within.chance));
    }
    nerves.add_row(std::move(cells));
  }
  if (nerves.empty()) {
    return fmt::format("No modelled nerve comes within {:.0f} mm.\n", kShown_mm);
  }
  std::string text = nerves.to_string();
  if (more > 0) {
    text += fmt::format("and {} more within {:.0f} mm, with --json\n", more, kShown_mm);
  }
  return text;
}

std::string clear_text(const IncisionAnswer& answer) {
  if (answer.cut.length_mm <= 0.0) return {};
  if (answer.clear.empty()) {
    return labelled("Clear", fmt::format("no stretch is farther than {:g} mm from every modelled "
                                         "nerve in 95 of 100 limbs",
                                         answer.farther_than_mm));
  }
  std::vector<std::string> stretches;
  for (const incision::ClearStretch& stretch : answer.clear) {
    stretches.push_back(fmt::format("{:.0f} to {:.0f} mm along ({} %)", stretch.from_mm,
                                    stretch.to_mm, per_cent(stretch.chance)));
  }
  return labelled("Clear", fmt::format("farther than {:g} mm from every modelled nerve: {}",
                                       answer.farther_than_mm, fmt::join(stretches, "; ")));
}

// Of the line, as one looks along it from outside: this holds in every pose of the limb.
std::string_view side_of(double offset_mm) {
  return offset_mm > 0.0 ? "to its right, seen along it" : "to its left, seen along it";
}

std::string corridor_text(const IncisionAnswer& answer) {
  if (!answer.corridor) return {};
  const incision::Corridor& corridor = *answer.corridor;
  const std::string what = fmt::format("a modelled nerve within {:g} mm of the line: {} %",
                                       answer.corridor_within_mm, per_cent(corridor.wanted_chance));
  if (!corridor.moved) {
    return labelled("Corridor", what + "; no line beside it has less");
  }
  const auto most = std::ranges::max_element(
      corridor.places, {},
      [](const incision::CorridorPlace& place) { return std::abs(place.offset_mm); });
  const auto at = static_cast<std::size_t>(most - corridor.places.begin());
  return labelled("Corridor",
                  fmt::format("{}; {} % on a line that leaves it by up to {:.0f} mm {}, {:.0f} mm "
                              "along (points with --json)",
                              what, per_cent(corridor.chance), std::abs(most->offset_mm),
                              side_of(most->offset_mm), corridor.line.stations[at].along_mm));
}

// Each in quotes, with the side and the pose that it was found in.
std::string rules_text(const IncisionAnswer& answer) {
  if (answer.rules.empty()) return {};
  std::string text =
      "Published rules about this place, as quoted; each holds on its own side and in its own "
      "pose only\n";
  std::size_t shown = 0;
  for (const incision::QuotedRule& rule : answer.rules) {
    if (shown++ == kRules) {
      text += labelled("", fmt::format("and {} more with --json", answer.rules.size() - kRules));
      break;
    }
    std::string words = fmt::format("\"{}\" ({}; {}", rule.rule, rule.nerve, rule.surface);
    for (const std::string& part : {rule.pose, rule.figure, rule.source}) {
      if (!part.empty()) words += "; " + part;
    }
    text += labelled(rule.row, words + ")");
  }
  return text + '\n';
}

}  // namespace

std::string incision_text(const IncisionAnswer& answer) {
  std::string text = head(answer) + '\n' + table(answer) + '\n';
  text += labelled("Met first", answer.first_skin_nerve
                                    ? fmt::format("of the nerves that serve skin alone, the {}",
                                                  *answer.first_skin_nerve)
                                    : fmt::format("no nerve of skin alone within {:g} mm in most "
                                                  "limbs",
                                                  incision::kMet_mm));
  text += clear_text(answer);
  text += corridor_text(answer);
  text += labelled("Not there", std::string(incision::kNotModelled));
  text += '\n' + rules_text(answer);
  for (const std::string& line :
       wrap("Nearest: distance of the cut, to its depth, from the middle of the nerve, 90 per cent "
            "of limbs in brackets; at: along the cut from its first mark; deep: the nerve under "
            "the skin there. Chances are in steps of five per cent. The shape of the skin and the "
            "depth of the nerves are assumed: see before you cut.",
            kTerminalWidth)) {
    text += line + '\n';
  }
  text += warnings_text(answer.warnings);
  text += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth)) {
    text += line + '\n';
  }
  return text;
}

}  // namespace endplate::cli
