#include "models/evidence/quantity.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>
#include <utility>

namespace endplate::evidence {
namespace {

std::pair<Axis, double> axis_and_sign(std::string_view direction) {
  static const std::map<std::string_view, std::pair<Axis, double>> known{
      {"proximal", {Axis::axial, 1.0}},         {"distal", {Axis::axial, -1.0}},
      {"lateral", {Axis::transverse, 1.0}},     {"radial", {Axis::transverse, 1.0}},
      {"medial", {Axis::transverse, -1.0}},     {"ulnar", {Axis::transverse, -1.0}},
      {"anterior", {Axis::sagittal, 1.0}},      {"posterior", {Axis::sagittal, -1.0}},
      {"along-nerve", {Axis::along_nerve, 1.0}}};
  const auto found = known.find(direction);
  return found == known.end() ? std::pair{Axis::unsigned_distance, 1.0} : found->second;
}

// The anatomical position (arm at the side, elbow straight, forearm supinated) and postures that
// the source says do not matter are pooled with rows that name no posture.
std::string posture_class(std::string_view posture) {
  static constexpr std::array<std::string_view, 9> neutral{"neutral",
                                                           "shoulder neutral rotation",
                                                           "arm at side, neutral rotation",
                                                           "forearm supinated",
                                                           "adduction and neutral rotation",
                                                           "forearm fully supinated",
                                                           "elbow fully extended",
                                                           "unaffected by forearm rotation",
                                                           ""};
  const bool is_neutral = std::ranges::find(neutral, posture) != neutral.end();
  return is_neutral ? std::string() : std::string(posture);
}

Measure measure_of(const Row& row) {
  if (row.text("point_std") == "diameter") return Measure::diameter_mm;
  const bool has_distance = row.number("mean_mm") || row.number("fraction") ||
                            row.number("min_mm") || row.number("max_mm");
  return row.number("prevalence_fraction") && !has_distance ? Measure::prevalence
                                                            : Measure::distance_mm;
}

void set_millimetres(const Row& row, double sign, const LineLength& line_length, Measurement& m) {
  if (const auto mean = row.number("mean_mm")) {
    m.mean_mm = sign * *mean;
    m.sd_mm = row.number("sd_mm");
  } else if (const auto fraction = row.number("fraction")) {
    auto length = m.population_line_mm;
    if (!length && line_length) length = line_length(row.text("fraction_of"));
    if (!length) {
      m.left_out = "a fraction of a line whose length is not stated";
      return;
    }
    m.mean_mm = sign * *fraction * *length;
    if (const auto sd = row.number("fraction_sd")) m.sd_mm = *sd * *length;
    m.from_fraction = true;
  }
  const auto min = row.number("min_mm");
  const auto max = row.number("max_mm");
  const bool mirrored = sign < 0.0;
  const auto& low = mirrored ? max : min;
  const auto& high = mirrored ? min : max;
  if (low) m.min_mm = sign * *low;
  if (high) m.max_mm = sign * *high;
}

Measurement measurement(const Row& row, Measure measure, double sign,
                        const LineLength& line_length) {
  Measurement m;
  m.id = row.text("id");
  m.study = row.text("study");
  m.population = row.text("population");
  m.provenance = provenance_from(row.text("provenance")).value_or(Provenance::assumed);
  m.n = row.number("n");
  m.share = row.number("prevalence_fraction");
  m.population_line = row.text("population_line");
  m.population_line_mm = row.number("population_line_mm");
  if (measure != Measure::prevalence) set_millimetres(row, sign, line_length, m);

  if (const auto stand_in = row.text("stand_in"); !stand_in.empty()) {
    m.left_out = stand_in;
  } else if (m.population.starts_with("fetal")) {
    m.left_out = "fetal limbs";
  } else if (m.left_out.empty() && measure != Measure::prevalence && !m.mean_mm) {
    m.left_out = "no mean is printed";
  } else if (measure == Measure::prevalence && !m.n) {
    m.left_out = "the number of limbs is not stated";
  }
  return m;
}

// The ledger was gathered by region, so that one measurement may stand in two files.
void leave_out_second_entries(Quantity& quantity) {
  for (std::size_t i = 0; i < quantity.rows.size(); ++i) {
    Measurement& later = quantity.rows[i];
    for (std::size_t j = 0; j < i && later.left_out.empty(); ++j) {
      const Measurement& first = quantity.rows[j];
      if (first.left_out.empty() && first.study == later.study && first.n == later.n &&
          first.mean_mm == later.mean_mm && first.sd_mm == later.sd_mm &&
          first.share == later.share) {
        later.left_out = "the same measurement as " + first.id;
      }
    }
  }
}

}  // namespace

std::string_view direction_word(Axis axis, double value) {
  const bool positive = value >= 0.0;
  switch (axis) {
    case Axis::axial:
      return positive ? "proximal" : "distal";
    case Axis::transverse:
      return positive ? "lateral" : "medial";
    case Axis::sagittal:
      return positive ? "anterior" : "posterior";
    case Axis::along_nerve:
      return "along the nerve";
    case Axis::unsigned_distance:
      return "";
  }
  return "";
}

std::string Quantity::name() const {
  std::string text = tree_node + ", " + point;
  if (landmark != "none") text += (landmark == "own origin" ? ", from its " : ", from ") + landmark;
  switch (axis) {
    case Axis::transverse:
      text += ", transverse";
      break;
    case Axis::sagittal:
      text += ", sagittal";
      break;
    case Axis::along_nerve:
      text += ", along the nerve";
      break;
    case Axis::axial:
      text += ", axial";
      break;
    case Axis::unsigned_distance:
      break;
  }
  if (measure == Measure::prevalence && point != "prevalence") text += ", prevalence";
  if (!posture.empty()) text += " (" + posture + ")";
  return text;
}

std::vector<Quantity> quantities(const Table& landmark_distances, const LineLength& line_length) {
  using Key =
      std::tuple<std::string_view, std::string_view, std::string_view, std::string, Axis, Measure>;
  std::vector<Quantity> result;
  std::map<Key, std::size_t> index_of;
  for (const Row row : landmark_distances) {
    const auto [axis, sign] = axis_and_sign(row.text("direction"));
    const Measure measure = measure_of(row);
    const Key key{row.text("tree_node"),
                  row.text("point_std"),
                  row.text("landmark_std"),
                  posture_class(row.text("posture")),
                  measure == Measure::distance_mm ? axis : Axis::unsigned_distance,
                  measure};
    const auto [found, added] = index_of.emplace(key, result.size());
    if (added) {
      Quantity quantity;
      quantity.tree_node = row.text("tree_node");
      quantity.point = row.text("point_std");
      quantity.landmark = row.text("landmark_std");
      quantity.posture = std::get<3>(key);
      quantity.axis = std::get<4>(key);
      quantity.measure = measure;
      result.push_back(std::move(quantity));
    }
    result[found->second].rows.push_back(measurement(row, measure, sign, line_length));
  }
  for (Quantity& quantity : result) leave_out_second_entries(quantity);
  return result;
}

}  // namespace endplate::evidence
