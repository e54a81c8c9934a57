#include "models/calibration/observation.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace endplate::calibration {
namespace {

// Where a study does not say how many limbs it measured: the lower quartile of those that do.
constexpr double kUnknownSize = 10.0;

struct Reading {
  const evidence::Row* row;
  double mean_mm;
  double sd_mm;  // 0 when not printed
  double n;
};

}  // namespace

double Observation::standard_error_mm() const { return limb_sd_mm / std::sqrt(n); }

double imputed_limb_sd_mm(double mean_mm) { return std::hypot(4.5, 0.109 * mean_mm); }

std::vector<Observation> observations(const limb::Atlas& atlas,
                                      const evidence::Table& landmark_distances) {
  std::map<std::string, evidence::Row, std::less<>> row_of;
  for (const evidence::Row row : landmark_distances) {
    row_of.emplace(std::string(row.text("id")), row);
  }
  std::vector<Observation> result;
  for (std::size_t m = 0; m < atlas.measures().size(); ++m) {
    std::map<std::string, std::vector<std::pair<Reading, std::string>>> by_study;
    for (const limb::MeasureRow& use : atlas.measures()[m].rows) {
      const evidence::Row& row = row_of.at(use.row);
      const double unit = use.sign * use.fraction_of_mm.value_or(1.0);
      const auto figure = row.number(use.fraction_of_mm ? "fraction" : "mean_mm");
      if (!figure) continue;
      const auto sd = use.fraction_of_mm ? std::nullopt : row.number("sd_mm");
      by_study[std::string(row.text("study"))].push_back(
          {{&row, unit * *figure, sd.value_or(0.0), row.number("n").value_or(kUnknownSize)},
           use.row});
    }
    for (const auto& [study, readings] : by_study) {
      Observation o;
      o.measure = m;
      o.study = study;
      double variance = 0.0;
      double with_sd = 0.0;
      for (const auto& [reading, id] : readings) {
        o.rows.push_back(id);
        o.mean_mm += reading.n * reading.mean_mm;
        o.n += reading.n;
        if (reading.sd_mm > 0.0) {
          variance += reading.n * reading.sd_mm * reading.sd_mm;
          with_sd += reading.n;
        }
      }
      o.mean_mm /= o.n;
      o.sd_printed = with_sd > 0.0;
      o.limb_sd_mm =
          o.sd_printed ? std::sqrt(variance / with_sd) : imputed_limb_sd_mm(o.mean_mm);
      // Rows of one study share its limbs: the largest row, not the sum, says how many there were.
      double largest = 0.0;
      for (const auto& [reading, id] : readings) largest = std::max(largest, reading.n);
      o.n = largest;
      result.push_back(std::move(o));
    }
  }
  return result;
}

}  // namespace endplate::calibration
