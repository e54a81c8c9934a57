#include "output/distance_views.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using limb::Distance;

std::string_view to_string(limb::Basis basis) {
  switch (basis) {
    case limb::Basis::studies:
      return "studies";
    case limb::Basis::studies_and_model:
      return "studies and model";
    case limb::Basis::model:
      return "model";
  }
  return "";
}

Json optional_summary(const std::optional<Summary>& summary) {
  return summary ? to_json(*summary) : Json(nullptr);
}

// The figure that the studies measured, or the model's along the limb.
const Summary& main_figure(const Distance& d) {
  if (d.definition == "along" || d.definition == "length") return *d.along_nerve_mm;
  if (d.along_limb_mm) return *d.along_limb_mm;
  if (d.across_limb_mm) return *d.across_limb_mm;
  return *d.straight_mm;
}

std::string kind_of(const Distance& d) {
  if (d.definition == "along" || d.definition == "length") return "along nerve";
  if (d.along_limb_mm) return "along limb";
  if (d.across_limb_mm) return "across limb";
  return "straight";
}

std::string side_line(Side side) {
  return fmt::format("{} LIMB", side == Side::right ? "RIGHT" : "LEFT");
}

}  // namespace

Json distance_json(const CommonOptions& common, Side side, const limb::DistanceAnswer& answer) {
  std::set<std::string> sources;
  for (const Distance& d : answer.distances) sources.insert(d.sources.begin(), d.sources.end());
  Json document =
      envelope("distance", common, side, answer.assumptions,
               std::vector<std::string>(sources.begin(), sources.end()), answer.warnings);
  Json list = Json::array();
  for (const Distance& d : answer.distances) {
    Json item;
    item["nerve"] = d.nerve;
    item["point"] = d.point;
    item["from"] = d.landmark;
    item["direction"] = d.direction;
    item["posture"] = d.posture.empty() ? "anatomical position" : d.posture;
    item["along_nerve_mm"] = optional_summary(d.along_nerve_mm);
    item["straight_mm"] = optional_summary(d.straight_mm);
    item["along_limb_mm"] = optional_summary(d.along_limb_mm);
    item["across_limb_mm"] = optional_summary(d.across_limb_mm);
    // The tape's way over the skin needs a skin, which the model does not have yet.
    item["over_skin_mm"] = nullptr;
    item["measured_as"] = d.definition;
    item["mean_interval_90_mm"] = {d.mean_low_mm, d.mean_high_mm};
    item["basis"] = to_string(d.basis);
    item["studies"] = d.studies;
    item["provenance"] = evidence::to_string(d.provenance);
    if (!d.assumed.empty()) item["assumed"] = d.assumed;
    item["sources"] = d.sources;
    list.push_back(std::move(item));
  }
  document["distances"] = std::move(list);
  return document;
}

std::string distance_text(Side side, const limb::DistanceAnswer& answer) {
  std::string out =
      side_line(side) + ": points of the nerves from landmarks, anatomical position\n";
  using Align = TextTable::Align;
  std::string nerve;
  std::optional<TextTable> table;
  const auto finish = [&] {
    if (table) out += table->to_string();
  };
  for (const Distance& d : answer.distances) {
    if (d.nerve != nerve) {
      finish();
      nerve = d.nerve;
      out += "\n";
      for (const std::string& line : wrap(nerve, 98)) out += line + "\n";
      table.emplace(std::vector<TextTable::Column>{{"point", Align::left, 26},
                                                   {"from", Align::left, 20},
                                                   {"direction", Align::left, 9},
                                                   {"mm", Align::right, 5},
                                                   {"90 % of limbs, mm", Align::right, 17},
                                                   {"measured", Align::left, 11}});
    }
    const Summary& figure = main_figure(d);
    table->add_row({d.posture.empty() ? d.point : d.point + " (" + d.posture + ")", d.landmark,
                    d.direction, fmt::format("{:.0f}", figure.mean),
                    fmt::format("{:.0f} to {:.0f}", figure.p05, figure.p95), kind_of(d)});
  }
  finish();
  out +=
      "\nA negative end of an interval lies on the other side of the landmark. --json has the\n"
      "sources; endplate evidence shows the rows behind each figure.\n";
  out += warnings_text(answer.warnings);
  for (const std::string& assumption : answer.assumptions) {
    const auto lines = wrap("assumed: " + assumption, 98);
    for (const std::string& line : lines) out += line + "\n";
  }
  for (const std::string& line : wrap(std::string(standing_caution()), 98)) out += line + "\n";
  return out;
}

}  // namespace endplate::cli
