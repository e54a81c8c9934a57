#include "models/limb/fit_summary.hpp"

#include <cmath>

namespace endplate::limb {

FitSummary FitSummary::from(const evidence::DataPackage& package) {
  FitSummary summary;
  for (const evidence::Row row : package.table("fit_summary")) {
    const double value = row.number("value").value_or(0.0);
    const std::string_view name = row.text("name");
    if (name == "inflation") summary.inflation = value;
    if (name == "between studies at zero") summary.between_studies.at_zero = value;
    if (name == "between studies slope") summary.between_studies.slope = value;
    if (name == "between limbs at zero") summary.between_limbs.at_zero = value;
    if (name == "between limbs slope") summary.between_limbs.slope = value;
  }
  for (const evidence::Row row : package.table("fitted_measures")) {
    summary.measures.emplace(
        std::string(row.text("measure")),
        FittedMeasure{*row.number("model_mm"), *row.number("model_sd_mm"),
                      static_cast<std::size_t>(*row.number("studies")), *row.number("pooled_mm"),
                      *row.number("pooled_se_mm"), *row.number("limb_sd_mm")});
  }
  for (const evidence::Row row : package.table("fitted_points")) {
    summary.knot_sd_mm.emplace(std::string(row.text("point")), *row.number("knot_sd_mm"));
  }
  return summary;
}

double FitSummary::model_error_mm(double model_sd_mm, double d_mm) const {
  return inflation * std::hypot(model_sd_mm, between_studies.at(std::abs(d_mm)));
}

}  // namespace endplate::limb
