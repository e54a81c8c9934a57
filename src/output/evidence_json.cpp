#include <cmath>

#include "models/evidence/provenance.hpp"
#include "output/envelope.hpp"
#include "output/evidence_views.hpp"

namespace endplate::cli {
namespace {

using namespace endplate::evidence;

Json number(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json interval(const Interval& i) {
  return {{"p05", i.low}, {"p95", i.high}};
}

std::string_view axis_word(Axis axis) {
  switch (axis) {
    case Axis::axial:
      return "axial";
    case Axis::transverse:
      return "transverse";
    case Axis::sagittal:
      return "sagittal";
    case Axis::along_nerve:
      return "along the nerve";
    case Axis::unsigned_distance:
      return "unsigned";
  }
  return "";
}

std::string_view spread_word(SpreadSource source) {
  switch (source) {
    case SpreadSource::printed:
      return "printed";
    case SpreadSource::from_range:
      return "from range (Wan 2014)";
    case SpreadSource::imputed:
      return "imputed";
  }
  return "";
}

Json random_effects_json(const RandomEffects& fit) {
  return {{"mean_mm", fit.mean},
          {"standard_error_mm", fit.standard_error},
          {"tau_squared_mm2", fit.tau_squared},
          {"i_squared", fit.i_squared}};
}

Json pooled_json(const PooledQuantity& pooled) {
  Json studies = Json::array();
  for (std::size_t i = 0; i < pooled.studies.size(); ++i) {
    const StudyEffect& s = pooled.studies[i];
    studies.push_back({{"study", s.study},
                       {"rows", s.rows},
                       {"mean_mm", s.mean_mm},
                       {"sd_mm", s.sd_mm},
                       {"sd_source", spread_word(s.sd_source)},
                       {"n", s.n},
                       {"n_assumed", s.n_assumed},
                       {"standard_error_mm", s.standard_error_mm},
                       {"weight", pooled.weights[i]}});
  }
  const auto summary = [&](const Interval& i, double sd) {
    return to_json(
        Summary{pooled.estimate.mean, sd, i.low, pooled.mixture.new_value_median(), i.high});
  };
  const double limb_sd = pooled.estimate.between_limb_sd;
  Json json;
  json["studies"] = std::move(studies);
  json["pooled_mean_mm"] =
      summary(pooled.mixture.mean_interval(kEvidenceLevel), pooled.estimate.standard_error);
  json["new_study_mean_mm"] =
      summary(pooled.mixture.new_study_interval(kEvidenceLevel), pooled.mixture.new_value_sd(0.0));
  json["single_limb_mm"] =
      summary(pooled.limb_interval(kEvidenceLevel), pooled.mixture.new_value_sd(limb_sd));
  json["between_study_sd_mm"] = pooled.estimate.between_study_sd;
  json["between_study_sd_expected_mm"] = pooled.floor_tau_mm;
  json["between_limb_sd_mm"] = limb_sd;
  json["heterogeneity"] = {{"q", pooled.reml.q},
                           {"degrees_of_freedom", pooled.studies.size() - 1},
                           {"p_value", pooled.reml.q_p_value},
                           {"reml", random_effects_json(pooled.reml)},
                           {"dersimonian_laird", random_effects_json(pooled.dersimonian_laird)},
                           {"paule_mandel", random_effects_json(pooled.paule_mandel)}};
  json["provenance"] = to_string(pooled.estimate.provenance);
  json["assumptions"] = pooled.estimate.assumptions;
  return json;
}

Json quantity_json(const QuantityAnswer& answer) {
  const Quantity& q = answer.quantity;
  Json rows = Json::array();
  for (const Measurement& m : q.rows) {
    rows.push_back({{"id", m.id},
                    {"study", m.study},
                    {"population", m.population},
                    {"provenance", to_string(m.provenance)},
                    {"mean_mm", number(m.mean_mm)},
                    {"sd_mm", number(m.sd_mm)},
                    {"min_mm", number(m.min_mm)},
                    {"max_mm", number(m.max_mm)},
                    {"n", number(m.n)},
                    {"from_fraction", m.from_fraction},
                    {"population_line", m.population_line},
                    {"population_line_mm", number(m.population_line_mm)},
                    {"left_out", m.left_out}});
  }
  Json json;
  json["quantity"] = q.name();
  json["nerve"] = q.tree_node;
  json["point"] = q.point;
  json["from"] = q.landmark;
  json["posture"] = q.posture;
  json["axis"] = axis_word(q.axis);
  json["positive_direction"] = direction_word(q.axis, 1.0);
  json["rows"] = std::move(rows);
  json["pooled"] = answer.pooled ? pooled_json(*answer.pooled) : Json(nullptr);
  return json;
}

Json share_json(const ShareAnswer& answer) {
  Json rows = Json::array();
  for (const ShareRow& r : answer.quantity.rows) {
    rows.push_back({{"id", r.id},
                    {"study", r.study},
                    {"population", r.population},
                    {"provenance", to_string(r.provenance)},
                    {"fraction", number(r.share)},
                    {"events", r.count ? Json(r.count->events) : Json(nullptr)},
                    {"n", number(r.n)},
                    {"left_out", r.left_out}});
  }
  Json json;
  json["table"] = answer.quantity.table;
  json["quantity"] = answer.quantity.name;
  json["scale"] = answer.quantity.scale ? Json(to_string(*answer.quantity.scale)) : Json(nullptr);
  json["rows"] = std::move(rows);
  json["pooled"] = nullptr;
  if (answer.pooled) {
    const PooledProportion& p = answer.pooled->pooled;
    json["pooled"] = {{"studies", answer.pooled->studies},
                      {"fraction", p.share},
                      {"mean_fraction", interval(p.mean_interval)},
                      {"new_study_fraction", interval(p.new_study_interval)},
                      {"between_study_sd_logit", p.tau},
                      {"at_floor", p.at_floor},
                      {"maximum_likelihood",
                       {{"logit", p.maximum_likelihood.mean},
                        {"standard_error", p.maximum_likelihood.standard_error},
                        {"tau", p.maximum_likelihood.tau}}}};
  }
  return json;
}

Json curve_json(const ScaleCurve& curve) {
  return {
      {"at_zero_mm", curve.at_zero}, {"slope", curve.slope}, {"log_scatter", curve.log_scatter}};
}

}  // namespace

Json evidence_json(const EvidenceAnswer& answer) {
  Json json;
  json["quantities"] = Json::array();
  for (const QuantityAnswer& a : answer.distances) json["quantities"].push_back(quantity_json(a));
  json["proportions"] = Json::array();
  for (const ShareAnswer& a : answer.shares) json["proportions"].push_back(share_json(a));
  json["rows"] = Json::array();
  for (const TableRow& row : answer.rows) {
    Json cells;
    cells["table"] = row.table;
    for (const auto& [column, cell] : row.cells) cells[column] = cell;
    json["rows"].push_back(std::move(cells));
  }
  json["spread_model"] = {
      {"between_limbs", curve_json(answer.spread.between_limbs())},
      {"between_studies", curve_json(answer.spread.between_studies())},
      {"study_intraclass_correlation", answer.spread.study_intraclass_correlation()},
      {"rows_with_spread", answer.spread.rows_with_spread()},
      {"quantities_with_two_studies", answer.spread.quantities_with_studies()},
      {"share_floor_tau_logit", answer.share_floor_tau}};
  return json;
}

}  // namespace endplate::cli
