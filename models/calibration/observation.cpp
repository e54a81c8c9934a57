#include "models/calibration/observation.hpp"

#include <cmath>
#include <map>

namespace endplate::calibration {
namespace {

// One row on the scale and with the sign of its measure.
evidence::Measurement reading_of(const evidence::Row& row, const limb::MeasureRow& use) {
  evidence::Measurement reading;
  reading.id = use.row;
  reading.study = row.text("study");
  reading.population = row.text("population");
  reading.n = row.number("n");
  if (const auto figure = row.number(use.column)) reading.mean_mm = use.factor * *figure;
  reading.from_fraction = use.column == "fraction";
  if (reading.from_fraction) return reading;

  const auto scaled = [&](std::string_view column) -> std::optional<double> {
    const auto figure = row.number(column);
    return figure ? std::optional(use.factor * *figure) : std::nullopt;
  };
  if (const auto sd = row.number("sd_mm")) reading.sd_mm = std::abs(use.factor) * *sd;
  reading.min_mm = scaled(use.factor > 0.0 ? "min_mm" : "max_mm");
  reading.max_mm = scaled(use.factor > 0.0 ? "max_mm" : "min_mm");
  return reading;
}

}  // namespace

std::vector<Observation> observations(const limb::Atlas& atlas,
                                      const evidence::Table& landmark_distances,
                                      const evidence::SpreadModel& spread) {
  std::map<std::string, evidence::Row, std::less<>> row_of;
  for (const evidence::Row row : landmark_distances) {
    row_of.emplace(std::string(row.text("id")), row);
  }
  std::vector<Observation> result;
  for (std::size_t m = 0; m < atlas.measures().size(); ++m) {
    const limb::NerveMeasure& measure = atlas.measures()[m];
    evidence::Quantity quantity;
    quantity.tree_node = measure.nerve;
    quantity.point = measure.point_name;
    quantity.landmark = measure.landmark_name;
    for (const limb::MeasureRow& use : measure.rows) {
      quantity.rows.push_back(reading_of(row_of.at(use.row), use));
    }
    for (evidence::StudyEffect& effect : evidence::study_effects(quantity, spread.imputation())) {
      result.push_back({m, std::move(effect)});
    }
  }
  return result;
}

}  // namespace endplate::calibration
