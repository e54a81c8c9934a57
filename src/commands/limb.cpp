#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <memory>
#include <optional>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/provenance.hpp"
#include "models/limb/limb_answer.hpp"
#include "output/bed_views.hpp"
#include "output/envelope.hpp"
#include "output/pose_text.hpp"
#include "output/scan_views.hpp"
#include "output/text_table.hpp"
#include "scan_input.hpp"

namespace endplate::cli {
namespace {

using limb::LimbAnswer;
using limb::PlacedLandmark;
using limb::SizedMeasure;

// What fits under a page; --json has them all.
constexpr std::array kMainLandmarks{
    "acromion, lateral edge", "coracoid process tip", "lateral epicondyle", "medial epicondyle",
    "olecranon tip",          "radial styloid",       "ulnar styloid",      "pisiform",
    "hook of hamate"};
constexpr std::array kMainNerves{"musculocutaneous nerve",
                                 "axillary nerve",
                                 "radial nerve",
                                 "superficial branch of radial nerve",
                                 "posterior interosseous nerve",
                                 "median nerve",
                                 "anterior interosseous nerve",
                                 "ulnar nerve"};

template <class Names>
bool is_among(const Names& names, const std::string& name) {
  return std::ranges::find(names, name) != names.end();
}

Json vector_json(const Eigen::Vector3d& v) {
  return Json::array({v.x(), v.y(), v.z()});
}

Json path_json(const std::vector<Eigen::Vector3d>& path) {
  Json list = Json::array();
  for (const Eigen::Vector3d& p : path) list.push_back(vector_json(p));
  return list;
}

Json frames_json(const std::vector<limb::BoneFrame>& frames) {
  Json list = Json::array();
  for (const limb::BoneFrame& frame : frames) {
    list.push_back({{"bone", frame.bone},
                    {"origin_mm", vector_json(frame.origin_mm)},
                    {"anterior", vector_json(frame.anterior)},
                    {"proximal", vector_json(frame.proximal)},
                    {"lateral", vector_json(frame.lateral)}});
  }
  return list;
}

Json percentile_json(const std::optional<double>& percentile) {
  return percentile ? Json(*percentile) : Json(nullptr);
}

Json measures_json(const std::vector<SizedMeasure>& measures, const char* what, const char* size) {
  Json list = Json::array();
  for (const SizedMeasure& measure : measures) {
    Json item{{what, measure.label},
              {size, to_json(measure.size_mm)},
              {"percentile", percentile_json(measure.percentile)},
              {"measure", measure.name},
              {"definition", measure.definition},
              {"provenance", evidence::to_string(measure.provenance)}};
    if (!measure.reason.empty()) item["reason"] = measure.reason;
    list.push_back(std::move(item));
  }
  return list;
}

Json landmarks_json(const std::vector<PlacedLandmark>& landmarks) {
  Json list = Json::array();
  for (const PlacedLandmark& landmark : landmarks) {
    list.push_back({{"landmark", landmark.name},
                    {"position_mm", vector_json(landmark.position_mm)},
                    {"sd_mm", vector_json(landmark.sd_mm)},
                    {"frame", to_string(landmark.segment)},
                    {"provenance", evidence::to_string(landmark.provenance)},
                    {"reason", landmark.reason}});
  }
  return list;
}

Json document_of(const LimbAnswer& answer, const CommonOptions& options) {
  Json document =
      envelope("limb", options, answer.side, answer.assumptions, answer.sources, answer.warnings);
  document["frame"] =
      "origin midway between the epicondyles; x anterior, y proximal, z to the right; mm";
  document["pose"] = answer.pose_deg;
  document["bone_frames"] = frames_json(answer.frames);
  document["stature_mm"] = to_json(answer.stature_mm);
  document["stature_percentile"] = percentile_json(answer.stature_percentile);
  document["segments"] = measures_json(answer.segments, "segment", "length_mm");
  document["breadths"] = measures_json(answer.breadths, "breadth", "breadth_mm");
  document["girths"] = measures_json(answer.girths, "level", "girth_mm");
  document["landmarks"] = landmarks_json(answer.landmarks);
  Json nerves = Json::array();
  for (const limb::NerveLength& nerve : answer.nerves) {
    nerves.push_back({{"nerve", nerve.nerve},
                      {"length_mm", to_json(nerve.length_mm)},
                      {"strain", nerve.strain ? Json(*nerve.strain) : Json(nullptr)},
                      {"path_mm", path_json(nerve.path_mm)},
                      {"sources", nerve.sources}});
  }
  document["nerves"] = std::move(nerves);
  if (!answer.beds.empty()) document["beds"] = beds_json(answer.beds);
  return document;
}

std::string range_text(const Summary& s) {
  return s.sd == 0.0 ? "as given" : fmt::format("{:.0f} to {:.0f}", s.p05, s.p95);
}

// A whole number; "-" where the spread between people is not published.
std::string percentile_text(const std::optional<double>& percentile) {
  if (!percentile) return "-";
  if (*percentile < 1.0) return "< 1";
  if (*percentile > 99.0) return "> 99";
  return fmt::format("{:.0f}", *percentile);
}

std::string measures_text(const LimbAnswer& answer) {
  using Align = TextTable::Align;
  TextTable table({{"what", Align::left, 62},
                   {"mm", Align::right},
                   {"90 in 100 such limbs, mm", Align::left, 14},
                   {"percentile", Align::right}});
  const auto add = [&](const SizedMeasure& measure, const std::string& label) {
    table.add_row({label, fmt::format("{:.0f}", measure.size_mm.mean), range_text(measure.size_mm),
                   percentile_text(measure.percentile)});
  };
  for (const SizedMeasure& segment : answer.segments) {
    add(segment, segment.name.starts_with(segment.label)
                     ? segment.label
                     : fmt::format("{} ({})", segment.label, segment.name));
  }
  for (const SizedMeasure& breadth : answer.breadths) add(breadth, "breadth: " + breadth.label);
  for (const SizedMeasure& girth : answer.girths) add(girth, "girth: " + girth.label);
  return table.to_string();
}

std::string landmarks_text(const LimbAnswer& answer) {
  using Align = TextTable::Align;
  TextTable table({{"landmark (assumed)", Align::left},
                   {"anterior mm", Align::right},
                   {"proximal mm", Align::right},
                   {"right mm", Align::right},
                   {"each +- mm", Align::right}});
  for (const PlacedLandmark& landmark : answer.landmarks) {
    if (!is_among(kMainLandmarks, landmark.name)) continue;
    table.add_row({landmark.name, fmt::format("{:.0f}", landmark.position_mm.x()),
                   fmt::format("{:.0f}", landmark.position_mm.y()),
                   fmt::format("{:.0f}", landmark.position_mm.z()),
                   fmt::format("{:.0f}, {:.0f}, {:.0f}", landmark.sd_mm.x(), landmark.sd_mm.y(),
                               landmark.sd_mm.z())});
  }
  return table.to_string();
}

std::string nerves_text(const LimbAnswer& answer) {
  using Align = TextTable::Align;
  TextTable table({{"nerve", Align::left},
                   {"length mm", Align::right},
                   {"90 in 100 such limbs, mm", Align::left},
                   {"mean strain %", Align::right}});
  for (const limb::NerveLength& nerve : answer.nerves) {
    if (!is_among(kMainNerves, nerve.nerve)) continue;
    table.add_row({nerve.nerve, fmt::format("{:.0f}", nerve.length_mm.mean),
                   fmt::format("{:.0f} to {:.0f}", nerve.length_mm.p05, nerve.length_mm.p95),
                   nerve.strain ? fmt::format("{:.1f}", 100.0 * *nerve.strain + 0.0) : "-"});
  }
  return table.to_string();
}

std::string text_of(const LimbAnswer& answer, const std::optional<scan::ScanAnswer>& scanned,
                    const CommonOptions& options) {
  std::string text =
      fmt::format("{} LIMB: how big it is\n", answer.side == Side::right ? "RIGHT" : "LEFT");
  if (!answer.pose_deg.empty()) {
    for (const std::string& line :
         wrap("Landmarks in the pose: " + pose_in_words(answer.pose_deg), 98))
      text += line + '\n';
  }
  text += '\n';
  text += measures_text(answer) + '\n';
  text += fmt::format("Stature {:.0f} mm, percentile {}. ", answer.stature_mm.mean,
                      percentile_text(answer.stature_percentile));
  text += "Percentiles: among people of that sex and age; - unknown.\n\n";
  text += landmarks_text(answer);
  text += answer.pose_deg.empty() ? "Origin midway between the epicondyles; +- is one standard "
                                    "deviation of size and place.\n\n"
                                  : "Origin midway between the epicondyles of the anatomical "
                                    "position; the thorax stays. +- is "
                                    "one\nstandard deviation of size and place.\n\n";
  text += nerves_text(answer) + '\n';
  if (!answer.beds.empty()) text += beds_text(answer.beds) + '\n';
  if (!answer.warnings.empty()) text += warnings_text(answer.warnings) + '\n';
  if (!options.quiet) {
    for (const std::string& assumption : answer.assumptions) {
      const auto lines = wrap(assumption, 96);
      for (std::size_t i = 0; i < lines.size(); ++i)
        text += (i == 0 ? "- " : "  ") + lines[i] + '\n';
    }
    text += fmt::format(
        "{} published rows stand behind this; --json lists them, all {} landmarks and {} "
        "nerves.\n\n",
        answer.sources.size(), answer.landmarks.size(), answer.nerves.size());
  }
  if (scanned) text += scan_text(*scanned, options.quiet);
  for (const std::string& line : wrap(std::string(standing_caution()), 98)) text += line + '\n';
  return text;
}

Expected<Answer> run_limb(const CommonOptions& options, const ScanOptions& scan_options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  const auto input = load_case(options, *package);
  if (!input) return std::unexpected(input.error());
  const auto scanned = load_scan(scan_options, *package, input->limb);
  if (!scanned) return std::unexpected(scanned.error());
  const auto answer = limb::answer_limb(*package, *tree, input->limb, input->operations,
                                        options.samples, options.seed);
  if (!answer) return std::unexpected(answer.error());
  Answer result{document_of(*answer, options), text_of(*answer, *scanned, options)};
  if (*scanned) result.document["scan"] = scan_json(**scanned);
  return result;
}

}  // namespace

void register_limb(Registry& registry) {
  auto options = std::make_shared<std::shared_ptr<const ScanOptions>>();
  CLI::App* command = registry.add_command(
      "limb", "how big is this limb: segment lengths, girths, landmarks, nerves", true,
      [options](const CommonOptions& common) { return run_limb(common, **options); });
  *options = add_scan_options(*command);
}

}  // namespace endplate::cli
