#include "output/scan_views.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <vector>

#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using scan::ScanAnswer;
using Align = TextTable::Align;

Json vector_json(const Eigen::Vector3d& v) {
  return Json::array({v.x(), v.y(), v.z()});
}

std::string landmarks_text(const ScanAnswer& answer) {
  TextTable table({{"landmark", Align::left},
                   {"similarity mm", Align::right},
                   {"fitted mm", Align::right},
                   {"if left out mm", Align::right}});
  for (const scan::LandmarkResidual& landmark : answer.landmarks) {
    table.add_row({landmark.name, fmt::format("{:.1f}", landmark.before_mm),
                   fmt::format("{:.1f}", landmark.after_mm),
                   landmark.left_out_mm ? fmt::format("{:.1f}", *landmark.left_out_mm) : "-"});
  }
  return table.to_string();
}

// Points of one nerve and segment together; --json has them singly.
std::string lengths_text(const ScanAnswer& answer) {
  TextTable table({{"length", Align::left},
                   {"fitted mm", Align::right},
                   {"+- mm", Align::right},
                   {"expected mm", Align::right},
                   {"+- mm", Align::right},
                   {"known from", Align::left}});
  for (const scan::FittedLength& length : answer.lengths) {
    table.add_row({length.measure, fmt::format("{:.0f}", length.length_mm),
                   fmt::format("{:.0f}", length.sd_mm), fmt::format("{:.0f}", length.expected_mm),
                   fmt::format("{:.0f}", length.expected_sd_mm),
                   length.given      ? "the case"
                   : length.measured ? "the scan"
                                     : "neither"});
  }
  return table.to_string();
}

std::string nerves_text(const ScanAnswer& answer) {
  std::vector<std::pair<std::string, limb::Segment>> order;
  std::map<std::pair<std::string, limb::Segment>, std::vector<double>> groups;
  for (const scan::NervePlace& place : answer.nerves) {
    // The trunk's name stands before " branch": the branches of a trunk go with it.
    std::string nerve = place.nerve.substr(0, place.nerve.find(';'));
    const std::size_t branch = nerve.find(" branch to ");
    if (branch != std::string::npos)
      nerve = nerve.substr(0, branch) + " nerve, branches to muscles";
    const std::pair key(nerve, place.segment);
    if (!groups.contains(key)) order.push_back(key);
    groups[key].push_back(place.added_sd_mm);
  }
  TextTable table({{"nerve", Align::left, 52},
                   {"in", Align::left},
                   {"points", Align::right},
                   {"added +- mm", Align::right}});
  for (const auto& key : order) {
    const auto [least, most] = std::ranges::minmax(groups[key]);
    const std::string low = fmt::format("{:.1f}", least);
    const std::string high = fmt::format("{:.1f}", most);
    table.add_row({key.first, std::string(limb::to_string(key.second)),
                   std::to_string(groups[key].size()),
                   low == high ? low : fmt::format("{} to {}", low, high)});
  }
  return table.to_string();
}

void add_item(std::string& text, const std::string& words) {
  const auto lines = wrap(words, 96);
  for (std::size_t i = 0; i < lines.size(); ++i) text += (i == 0 ? "- " : "  ") + lines[i] + '\n';
}

}  // namespace

Json scan_json(const ScanAnswer& answer) {
  Json document;
  document["side"] = to_string(answer.side);
  document["unit"] = scan::to_string(answer.unit);
  document["frame"] = "that of the scan's file, in mm";
  document["triangles"] = answer.triangles;
  document["notes"] = answer.notes;
  document["warnings"] = answer.warnings;
  document["fitted_scale"] = {{"arm", answer.scale.arm},
                              {"forearm", answer.scale.forearm},
                              {"hand", answer.scale.hand},
                              {"breadth", answer.scale.breadth}};
  Json pose;
  for (const auto& [key, angle_deg] : answer.pose_deg) pose[key] = angle_deg;
  document["fitted_pose"] = std::move(pose);
  document["matched_share"] = answer.matched_share;
  document["surface_rms_mm"] = answer.surface_rms_mm;
  document["surface_p95_mm"] = answer.surface_p95_mm;
  Json lengths = Json::array();
  for (const scan::FittedLength& length : answer.lengths) {
    lengths.push_back({{"measure", length.measure},
                       {"length_mm", length.length_mm},
                       {"sd_mm", length.sd_mm},
                       {"expected_mm", length.expected_mm},
                       {"expected_sd_mm", length.expected_sd_mm},
                       {"given", length.given},
                       {"measured", length.measured}});
  }
  document["lengths"] = std::move(lengths);
  document["widened_by"] = answer.widened_by;
  Json landmarks = Json::array();
  for (const scan::LandmarkResidual& landmark : answer.landmarks) {
    landmarks.push_back(
        {{"landmark", landmark.name},
         {"position_mm", vector_json(landmark.position_mm)},
         {"pick_from_surface_mm", landmark.from_surface_mm},
         {"residual_before_mm", landmark.before_mm},
         {"residual_after_mm", landmark.after_mm},
         {"residual_left_out_mm", landmark.left_out_mm ? Json(*landmark.left_out_mm) : Json()}});
  }
  document["landmarks"] = std::move(landmarks);
  Json nerves = Json::array();
  for (const scan::NervePlace& place : answer.nerves) {
    nerves.push_back({{"id", place.id},
                      {"nerve", place.nerve},
                      {"point", place.point},
                      {"segment", limb::to_string(place.segment)},
                      {"position_mm", vector_json(place.position_mm)},
                      {"added_sd_mm", place.added_sd_mm}});
  }
  document["nerve_points"] = std::move(nerves);
  return document;
}

std::string scan_text(const ScanAnswer& answer, bool quiet) {
  std::string text = fmt::format(
      "SCAN of the {} limb: {} triangles, unit {}; the fitted skin lies {:.1f} mm off (root mean\n"
      "square), 95 in 100 of its places within {:.1f} mm\n\n",
      answer.side == Side::right ? "RIGHT" : "LEFT", answer.triangles, scan::to_string(answer.unit),
      answer.surface_rms_mm, answer.surface_p95_mm);
  text += landmarks_text(answer) + '\n' + lengths_text(answer) + '\n' + nerves_text(answer);
  for (const std::string& line :
       wrap("+- is one standard deviation in each direction that the fit to the scan adds; how "
            "nerves differ between limbs comes on top.",
            98)) {
    text += line + '\n';
  }
  text += '\n';
  for (const std::string& warning : answer.warnings) add_item(text, "Warning: " + warning);
  if (!quiet) {
    for (const std::string& note : answer.notes) add_item(text, "Scan: " + note + ".");
    std::string pose;
    for (const auto& [key, angle_deg] : answer.pose_deg) {
      pose += fmt::format("{}{} {:.0f}", pose.empty() ? "" : ", ", key, angle_deg + 0.0);
    }
    add_item(text, "Pose as fitted: " + pose + ".");
  }
  if (!text.ends_with("\n\n")) text += '\n';
  return text;
}

}  // namespace endplate::cli
