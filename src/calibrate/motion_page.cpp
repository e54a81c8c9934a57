#include "calibrate/motion_page.hpp"

#include <fmt/format.h>

#include <cmath>
#include <string_view>

namespace endplate::calibrate {
namespace {

using calibration::MotionReading;
using limb::MotionQuantity;

std::string_view unit_of(MotionQuantity quantity) {
  return quantity == MotionQuantity::excursion_mm || quantity == MotionQuantity::bed_mm ? "mm"
                                                                                        : "%";
}

std::string_view name_of(MotionQuantity quantity) {
  switch (quantity) {
    case MotionQuantity::excursion_mm:
      return "excursion";
    case MotionQuantity::strain_percent:
      return "strain";
    case MotionQuantity::bed_mm:
    case MotionQuantity::bed_percent:
      break;
  }
  return "bed";
}

std::string pose_words(const std::map<std::string, double>& pose_deg) {
  if (pose_deg.empty()) return "anatomical position";
  // The knuckles of all four fingers are one movement.
  std::string out;
  for (const auto& [key, angle] : pose_deg) {
    if (key.ends_with("_mcp_flexion_deg") && !key.starts_with("index")) continue;
    std::string words = key.starts_with("index_mcp") ? "knuckles flexion" : key;
    if (words.ends_with("_deg")) words.resize(words.size() - 4);
    for (char& c : words) c = c == '_' ? ' ' : c;
    out += fmt::format("{}{} {:.0f}", out.empty() ? "" : ", ", words, angle);
  }
  return out;
}

std::string published_words(const limb::MotionMeasure& m) {
  if (std::isfinite(m.mean) && std::isfinite(m.sd))
    return fmt::format("{:.1f} (SD {:.1f})", m.mean, m.sd);
  if (std::isfinite(m.low) && std::isfinite(m.high)) {
    const std::string range = fmt::format("{:.1f} to {:.1f}", m.low, m.high);
    return std::isfinite(m.mean) ? fmt::format("{:.1f} ({})", m.mean, range) : range;
  }
  if (std::isfinite(m.mean)) return fmt::format("{:.1f}", m.mean);
  return fmt::format("up to {:.1f}", std::isfinite(m.high) ? m.high : m.low);
}

std::string line_of(const MotionReading& r) {
  const limb::MotionMeasure& m = r.measure;
  const auto within = limb::within_published(m, r.left_out);
  return fmt::format("| {} | {} | {} at {} | {} | {} | {} | {:.1f} | {:.1f} | {} | {} | {} |\n",
                     m.row, m.bed, name_of(m.quantity), m.place, pose_words(m.from_deg),
                     pose_words(m.to_deg),
                     fmt::format("{} {}", published_words(m), unit_of(m.quantity)), r.fitted,
                     r.left_out, r.right_direction() ? "right" : "WRONG",
                     !m.judged                ? "not judged"
                     : within.value_or(false) ? "yes"
                                              : "no",
                     fmt::format("{}{}{}", m.study, m.note.empty() ? "" : "; ", m.note));
}

}  // namespace

MotionShares motion_shares(const calibration::MotionFit& fit) {
  MotionShares shares;
  for (const MotionReading& r : fit.readings) {
    ++shares.rows;
    shares.right_direction += r.right_direction() ? 1 : 0;
    if (!r.measure.judged) continue;
    ++shares.judged;
    shares.within += limb::within_published(r.measure, r.left_out).value_or(false) ? 1 : 0;
  }
  return shares;
}

std::string motion_page(const calibration::MotionFit& fit) {
  const MotionShares shares = motion_shares(fit);
  std::string out =
      "# Published movements of nerves beside the model's\n"
      "Written by `endplate-calibrate`; do not edit. How the model slides a nerve and what this is "
      "worth stands in [nerve-motion.md](nerve-motion.md).\n\n";
  out += fmt::format(
      "{} published excursions, strains and changes of a bed are read on the ledger limb. The "
      "direction is right in {}. {} have a printed spread between limbs and postures that are told "
      "or span a joint's whole range, and are judged: predicted by a fit without their study, {} "
      "({:.0f} %) lie within it (the mean and 1.645 SD, or the range). The others are shown, with "
      "the reason.\n\n",
      shares.rows, shares.right_direction, shares.judged, shares.within,
      100.0 * shares.within / shares.judged);
  out += fmt::format(
      "Tether lengths: arm and forearm {:.0f} mm, ulnar nerve about the elbow {:.0f} mm, hand "
      "{:.0f} "
      "mm. Published excursions scatter about the predictions by a factor of {:.2f} (one SD of the "
      "log).\n\n",
      fit.parameters.tether_mm, fit.parameters.cubital_tether_mm, fit.parameters.hand_tether_mm,
      std::exp(fit.parameters.scatter));
  out +=
      "Excursions are toward the hand, against the bone at the place; strains are of the nerve; a "
      "minus sign is toward the shoulder or shorter. Degrees.\n\n"
      "| row | bed | what, where | from | to | published | model | without its study | direction | "
      "within spread | study and remark |\n"
      "| --- | --- | --- | --- | --- | ---: | ---: | ---: | --- | --- | --- |\n";
  for (const bool judged : {true, false}) {
    for (const MotionReading& r : fit.readings) {
      if (r.measure.judged == judged) out += line_of(r);
    }
  }
  return out;
}

}  // namespace endplate::calibrate
