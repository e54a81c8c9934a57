#include "output/distance_views.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "output/envelope.hpp"
#include "output/pose_text.hpp"
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

// Joints that are bent.
std::map<std::string, double> pose_of(const casefile::Limb& limb) {
  std::map<std::string, double> bent = limb.pose_deg;
  std::erase_if(bent, [](const auto& joint) { return joint.second == 0.0; });
  return bent;
}

std::string posture_of(const Distance& d) {
  if (d.in_pose) return "pose of the case";
  return d.posture.empty() ? "anatomical position" : d.posture;
}

std::string side_line(Side side) {
  return fmt::format("{} LIMB", side == Side::right ? "RIGHT" : "LEFT");
}

}  // namespace

Json distance_json(const CommonOptions& common, const casefile::Limb& limb,
                   const limb::DistanceAnswer& answer) {
  std::set<std::string> sources;
  for (const Distance& d : answer.distances) sources.insert(d.sources.begin(), d.sources.end());
  Json document =
      envelope("distance", common, limb.side, answer.assumptions,
               std::vector<std::string>(sources.begin(), sources.end()), answer.warnings);
  document["pose"] = pose_of(limb);
  Json list = Json::array();
  for (const Distance& d : answer.distances) {
    Json item;
    item["nerve"] = d.nerve;
    item["point"] = d.point;
    item["from"] = d.landmark;
    item["direction"] = d.direction;
    item["posture"] = posture_of(d);
    item["along_nerve_mm"] = optional_summary(d.along_nerve_mm);
    item["straight_mm"] = optional_summary(d.straight_mm);
    item["along_limb_mm"] = optional_summary(d.along_limb_mm);
    item["across_limb_mm"] = optional_summary(d.across_limb_mm);
    item["over_skin_mm"] = optional_summary(d.over_skin_mm);
    if (!d.over_skin_mm) {
      item["over_skin_absent"] =
          d.over_skin_absent.empty()
              ? "not asked for: name a landmark with --from, or give --over-skin"
              : d.over_skin_absent;
    }
    item["moved_by_pose_mm"] = d.moved_mm;
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

std::string distance_text(const casefile::Limb& limb, const limb::DistanceAnswer& answer) {
  const bool bent = !pose_of(limb).empty();
  std::string out = side_line(limb.side) + ": points of the nerves from landmarks" +
                    (bent ? "" : ", anatomical position") + "\n";
  if (bent) {
    for (const std::string& line : wrap("In the pose: " + pose_in_words(limb.pose_deg), 98))
      out += line + "\n";
  }
  const bool skin = std::ranges::any_of(
      answer.distances, [](const Distance& d) { return d.over_skin_mm.has_value(); });
  using Align = TextTable::Align;
  // Widths; the skin's column takes some of them.
  constexpr std::size_t kPoint = 26;
  constexpr std::size_t kFrom = 20;
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
      std::vector<TextTable::Column> columns{{"point", Align::left, skin ? kPoint - 4 : kPoint},
                                             {"from", Align::left, skin ? kFrom - 3 : kFrom},
                                             {"direction", Align::left, 9},
                                             {"mm", Align::right, 5},
                                             {"90 % of limbs, mm", Align::right, 17},
                                             {"measured", Align::left, 11}};
      if (skin) columns.push_back({"skin mm", Align::right, 7});
      table.emplace(std::move(columns));
    }
    const Summary& figure = main_figure(d);
    std::string point = d.point;
    if (!d.posture.empty()) {
      point += " (" + d.posture + ")";
    } else if (bent && !d.in_pose) {
      point += " (anatomical position)";
    }
    std::vector<std::string> cells{std::move(point),
                                   d.landmark,
                                   d.direction,
                                   fmt::format("{:.0f}", figure.mean),
                                   fmt::format("{:.0f} to {:.0f}", figure.p05, figure.p95),
                                   kind_of(d)};
    if (skin) cells.push_back(d.over_skin_mm ? fmt::format("{:.0f}", d.over_skin_mm->mean) : "-");
    table->add_row(std::move(cells));
  }
  finish();
  out +=
      "\nA negative end of an interval lies on the other side of the landmark. --json has the\n"
      "sources; endplate evidence shows the rows behind each figure.\n";
  if (skin)
    out += "skin mm: by a tape over the skin; - where there is none, and --json says why.\n";
  out += warnings_text(answer.warnings);
  for (const std::string& assumption : answer.assumptions) {
    const auto lines = wrap("assumed: " + assumption, 98);
    for (const std::string& line : lines) out += line + "\n";
  }
  for (const std::string& line : wrap(std::string(standing_caution()), 98)) out += line + "\n";
  return out;
}

}  // namespace endplate::cli
