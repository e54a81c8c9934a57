#include "output/transfer_json.hpp"

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/transfer_words.hpp"

namespace endplate::cli {
namespace {

using transfer::Candidate;
using transfer::Joined;
using transfer::TransferAnswer;
using transfer::TransferCandidate;

Json optional_number(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json optional_text(const std::string& text) {
  return text.empty() ? Json(nullptr) : Json(text);
}

Json optional_summary(const std::optional<Summary>& summary) {
  return summary ? to_json(*summary) : Json(nullptr);
}

Json cut_json(const std::optional<transfer::CutLevel>& cut) {
  if (!cut) return nullptr;
  return {{"from_origin_mm", to_json(cut->from_origin_mm)},
          {"landmark", optional_text(cut->landmark)},
          {"distal_to_landmark_mm", cut->landmark.empty() ? Json(nullptr) : Json(cut->distal_mm)}};
}

Json reach_json(const std::optional<Joined>& joined) {
  if (!joined) return nullptr;
  const transfer::Reach& reach = joined->reach;
  const bool known = reach.state != transfer::ReachState::not_computable;
  Json item = {{"state", transfer::to_string(reach.state)},
               {"why", optional_text(reach.why)},
               {"donor", joined->donor},
               {"recipient", joined->recipient},
               {"slack_mm", optional_summary(reach.slack_mm)},
               {"chance_without_graft", known ? Json(reach.chance) : Json(nullptr)}};
  if (!known) return item;
  item["gap_mm"] = to_json(reach.gap_mm);
  item["slack_at_rest_mm"] = to_json(reach.slack_at_rest_mm);
  item["donor_freed_mm"] = to_json(reach.donor_mm);
  item["recipient_freed_mm"] = to_json(reach.recipient_mm);
  item["joints_between"] = reach.joints_between;
  item["donor_cut"] = cut_json(reach.donor_cut);
  item["recipient_cut"] = cut_json(reach.recipient_cut);
  item["sewn_at"] = reach.sewn_at ? Json{{"landmark", reach.sewn_at->landmark},
                                         {"distal_to_landmark_mm", reach.sewn_at->distal_mm}}
                                  : Json(nullptr);
  item["to_farthest_mm"] = to_json(reach.to_farthest_mm);
  item["graft_mm"] = optional_summary(reach.graft_mm);
  item["assumptions"] = reach.assumptions;
  return item;
}

Json published_json(const Candidate& candidate) {
  if (candidate.results.empty()) return nullptr;
  const transfer::PublishedResult& result = candidate.results.front();
  return {{"scale", result.scale},
          {"fraction", optional_number(result.share)},
          {"n", optional_number(result.n)},
          {"count", optional_number(result.count)},
          {"low", optional_number(result.low)},
          {"high", optional_number(result.high)},
          {"study", result.study},
          {"provenance", result.provenance}};
}

Json cuts_json(const std::vector<transfer::Cut>& cuts) {
  Json list = Json::array();
  for (const transfer::Cut& cut : cuts) {
    list.push_back({{"branch", cut.node},
                    {"muscles", cut.muscles},
                    {"muscles_in_part", cut.in_part},
                    {"areas", cut.areas}});
  }
  return list;
}

Json sewn_beyond_json(const std::vector<transfer::SewnBeyond>& all) {
  Json list = Json::array();
  for (const transfer::SewnBeyond& beyond : all) {
    list.push_back({{"recipient", beyond.recipient},
                    {"branches_kept", beyond.spared},
                    {"working", beyond.working}});
  }
  return list;
}

Json ratio_json(const std::optional<transfer::AxonRatio>& ratio) {
  if (!ratio) return nullptr;
  return {{"ratio", ratio->ratio},
          {"low", optional_number(ratio->low)},
          {"high", optional_number(ratio->high)},
          {"one_study", ratio->one_study},
          {"words", ratio->words},
          {"sources", ratio->rows}};
}

Json candidate_json(const TransferCandidate& candidate, const std::string& function) {
  const Candidate& judged = candidate.judged;
  Json item = {{"id", judged.id},
               {"kind", transfer::to_string(judged.way)},
               {"restores", function},
               {"donor", judged.donor},
               {"recipient", judged.recipient},
               {"target", judged.targets},
               {"published", judged.published},
               {"coaptation", transfer::to_string(judged.coaptation)},
               {"reach", reach_json(candidate.joined)},
               {"donor_state", transfer::to_string(judged.donor_state)},
               {"donor_reasons", judged.donor_reasons}};
  const bool known = candidate.joined && candidate.axons_arrive_days.has_value();
  item["regenerate_mm"] = known ? to_json(candidate.joined->reach.to_nearest_mm) : Json(nullptr);
  item["axons_arrive_days"] = optional_summary(candidate.axons_arrive_days);
  item["axon_ratio"] = ratio_json(judged.axon_ratio);
  item["function"] = transfer::to_string(judged.synergy);
  item["relearning"] = optional_text(judged.synergy_words);
  item["dies_with_the_cut"] = cuts_json(judged.cuts);
  item["sewn_beyond"] = sewn_beyond_json(judged.sewn_beyond);
  item["spends"] = judged.spends;
  item["donor_cost"] = optional_text(judged.donor_cost);
  item["also_spends"] = judged.also_spends;
  item["published_result"] = published_json(judged);
  item["published_words"] = optional_text(judged.result_words);
  item["timing"] = judged.timing;
  item["verdict"] = transfer::to_string(judged.verdict);
  item["beaten_by"] = optional_text(judged.beaten_by);
  item["examine_first"] = judged.examine_first;
  item["reasons"] = judged.reasons;
  item["said"] = judged.said;
  item["sources"] = judged.sources;
  return item;
}

Json chosen_json(const transfer::Combination& combination) {
  Json list = Json::array();
  for (const transfer::ChosenOption& option : combination.chosen) list.push_back(option.id);
  return list;
}

Json left_out_json(const transfer::Combination& combination) {
  Json list = Json::array();
  for (const transfer::LeftOut& left : combination.left_out) {
    list.push_back({{"id", left.id}, {"reason", left_out_words(left)}});
  }
  return list;
}

}  // namespace

Json transfer_json(const TransferAnswer& answer, const CommonOptions& options, Side side) {
  Json document =
      envelope("transfer", options, side, answer.assumptions, answer.sources, answer.warnings);
  document["today"] = iso_date(options.today);
  document["days_since_injury"] = optional_number(answer.days_since_injury);
  Json candidates = Json::array();
  for (const transfer::TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      candidates.push_back(candidate_json(candidate, group.function));
    }
  }
  for (const TransferCandidate& candidate : answer.unpublished) {
    candidates.push_back(candidate_json(candidate, candidate.judged.function));
  }
  document["candidates"] = std::move(candidates);
  document["combination"] = chosen_json(answer.combination);
  document["combination_if_shown"] = chosen_json(answer.if_shown);
  document["left_out_of_combination"] = left_out_json(answer.combination);
  Json without = Json::array();
  for (const transfer::DemandAnswer& demand : answer.combination.demands) {
    if (!demand.met) without.push_back(demand.demand.target);
  }
  document["stays_without"] = std::move(without);
  Json rejected = Json::array();
  for (const Candidate& candidate : answer.rejected) {
    rejected.push_back({{"id", candidate.id}, {"reason", candidate.rejected_because}});
  }
  document["rejected"] = std::move(rejected);
  return document;
}

}  // namespace endplate::cli
