#include "output/plan_json.hpp"

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/recovery_json.hpp"

namespace endplate::cli {
namespace {

Json optional_number(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json optional_text(const std::string& text) {
  return text.empty() ? Json(nullptr) : Json(text);
}

Json published_json(const plan::PublishedResult& result) {
  return {{"scale", result.scale},
          {"chance", optional_number(result.share)},
          {"low", optional_number(result.low)},
          {"high", optional_number(result.high)},
          {"count", optional_number(result.count)},
          {"n", optional_number(result.n)},
          {"n_is", result.stand_in.empty() ? Json("of this figure") : Json(result.stand_in)},
          {"entry", result.entry},
          {"study", result.study},
          {"row", result.row},
          {"provenance", result.provenance}};
}

// The contract's key holds one published series; the others stand beside it.
Json chance_json(const std::vector<plan::PublishedResult>& published) {
  return published.empty() ? Json(nullptr) : published_json(published.front());
}

Json series_json(const std::vector<plan::PublishedResult>& published) {
  Json list = Json::array();
  for (const plan::PublishedResult& result : published) list.push_back(published_json(result));
  return list;
}

Json model_json(const std::optional<plan::ModelChance>& chance) {
  if (!chance) return nullptr;
  return {{"scale", chance->scale}, {"chance", chance->chance}, {"of", chance->of}};
}

void put_movement(Json& item, const std::optional<plan::FirstMovement>& movement) {
  item["first_movement_days"] = movement ? to_json(movement->days) : Json(nullptr);
  item["first_movement_of"] = movement ? Json(movement->of) : Json(nullptr);
}

Json candidates_json(const std::vector<plan::Candidate>& candidates) {
  Json list = Json::array();
  for (const plan::Candidate& candidate : candidates) {
    Json item = {{"id", candidate.id},
                 {"donor", candidate.donor},
                 {"recipient", candidate.recipient},
                 {"donor_state", plan::to_string(candidate.donor_state)},
                 {"verdict", transfer::to_string(candidate.verdict)},
                 {"examine_first", candidate.examine_first},
                 {"reach", optional_text(candidate.reach)},
                 {"chance_useful", chance_json(candidate.published)},
                 {"published_words", optional_text(candidate.published_words)},
                 {"model_chance_useful", model_json(candidate.model_chance)}};
    put_movement(item, candidate.first_movement);
    item["donor_cost"] = optional_text(candidate.donor_cost);
    item["also_spends"] = candidate.also_spends;
    item["reasons"] = candidate.reasons;
    item["provenance"] = optional_text(candidate.provenance);
    list.push_back(std::move(item));
  }
  return list;
}

Json grafts_json(const std::vector<plan::GraftNeed>& grafts) {
  Json list = Json::array();
  for (const plan::GraftNeed& need : grafts) {
    Json donors = Json::array();
    for (const plan::GraftDonor& donor : need.donors) {
      donors.push_back({{"donor", donor.nerve},
                        {"length_mm", {donor.length_low_mm, donor.length_high_mm}},
                        {"cables", {donor.cables_low, donor.cables_high}},
                        {"covers", donor.covers},
                        {"cost", donor.cost}});
    }
    list.push_back(
        {{"nerve", need.nerve},
         {"gap_mm", optional_number(need.gap_mm)},
         {"gap", need.gap_words},
         {"cables", {need.cables_low, need.cables_high}},
         {"cables_by", need.cables_words},
         {"needed_mm", {optional_number(need.needed_low_mm), optional_number(need.needed_high_mm)}},
         {"needed_for_10_mm_gap_mm", need.needed_for_10_mm},
         {"donors", donors},
         {"unavailable", need.unavailable},
         {"notes", need.notes}});
  }
  return list;
}

Json option_json(const plan::Option& option) {
  Json item = {{"option", option.name},
               {"kind", option.kind},
               {"first_step", option.first},
               {"state", plan::to_string(option.state)},
               {"state_why", optional_text(option.state_words)},
               {"entry_condition", option.entry_condition},
               {"targets", option.targets},
               {"chance_useful", chance_json(option.published)},
               {"published", series_json(option.published)},
               {"model_chance_useful", model_json(option.model_chance)}};
  put_movement(item, option.first_movement);
  item["donor_cost"] = optional_text(option.donor_cost);
  item["spends"] = option.spends;
  item["finds"] = option.finds;
  item["reasons"] = option.reasons;
  item["candidates"] = candidates_json(option.candidates);
  item["grafts"] = grafts_json(option.grafts);
  item["comparable_group"] = option.comparable_group;
  item["entry_source"] = option.source;
  item["provenance"] = option.provenance;
  item["sources"] = option.sources;
  return item;
}

}  // namespace

Json plan_json(const plan::PlanAnswer& answer, const CommonOptions& options, Side side) {
  Json document =
      envelope("plan", options, side, answer.assumptions, answer.sources, answer.recovery.warnings);
  document["today"] = iso_date(options.today);
  document["decision"] = decision_json(answer.recovery.decision);
  if (!answer.not_run.empty()) document["not_run"] = answer.not_run;
  Json list = Json::array();
  for (const plan::Option& option : answer.options) list.push_back(option_json(option));
  document["options"] = std::move(list);
  document["not_ranked"] = answer.not_ranked;
  Json changes = Json::array();
  for (const plan::WhatIf& change : answer.what_if) {
    changes.push_back({{"input", change.input},
                       {"value", change.value},
                       {"becomes", change.becomes},
                       {"rule", change.rule}});
  }
  document["would_change"] = std::move(changes);
  Json rejected = Json::array();
  for (const plan::Rejected& one : answer.rejected) {
    rejected.push_back({{"id", one.id}, {"what", one.what}, {"reason", one.reason}});
  }
  document["rejected"] = std::move(rejected);
  return document;
}

}  // namespace endplate::cli
