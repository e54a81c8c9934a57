#include "output/plan_text.hpp"

#include <algorithm>
#include <set>

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/recovery_text.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using plan::Option;
using plan::OptionState;
using plan::PublishedResult;

constexpr std::size_t kMostSeries = 3;
constexpr std::size_t kMostCandidates = 4;

std::string joined(const std::vector<std::string>& parts, const char* between = "; ") {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : between) + part;
  return out;
}

std::string exact_per_cent(double share) {
  return fmt::format("{:.0f}", 100.0 * share);
}

std::string scale_words(const PublishedResult& result) {
  if (result.scale == "whole-nerve grade") return "nerve gr 3";
  return result.scale == "other" || result.scale.size() > 14 ? "own scale" : result.scale;
}

// "81/88 nerve gr 3", "68 % own scale"
std::string published_cell(const std::vector<PublishedResult>& published) {
  if (published.empty()) return "none found";
  const PublishedResult& result = published.front();
  if (result.count && result.n) {
    return fmt::format("{:.0f}/{:.0f} {}", *result.count, *result.n, scale_words(result));
  }
  if (result.share)
    return fmt::format("{} % {}", exact_per_cent(*result.share), scale_words(result));
  if (result.low && result.high) {
    return fmt::format("{}-{} % {}", exact_per_cent(*result.low), exact_per_cent(*result.high),
                       scale_words(result));
  }
  return "none found";
}

std::string published_words(const PublishedResult& result) {
  std::string text = published_cell({result});
  if (result.count && result.n) {
    text += fmt::format(" ({} %)", exact_per_cent(*result.share));
  } else if (result.n) {
    text += fmt::format(" (n {:.0f}{})", *result.n, result.stand_in.empty() ? "" : " in all");
  } else {
    text += " (n not known)";
  }
  if (!result.entry.empty()) text += ", " + result.entry;
  return fmt::format("{} [{}, {}]", text, result.study, result.provenance);
}

std::string state_cell(const Option& option) {
  if (option.first && option.state == OptionState::open) return "FIRST STEP";
  if (option.first && option.state == OptionState::not_judged) return "FIRST: examine";
  return std::string(plan::to_string(option.state));
}

bool shows_figures(const Option& option) {
  return option.state != OptionState::closed;
}

std::string table_text(const plan::PlanAnswer& answer) {
  using enum TextTable::Align;
  TextTable table({{"Option", left, 33},
                   {"State", left},
                   {"Published, scale", left, 21},
                   {"Model %", right},
                   {"M1 mo", right}});
  for (const Option& option : answer.options) {
    const bool shown = shows_figures(option) && answer.not_run.empty();
    table.add_row({option.name, state_cell(option), shown ? published_cell(option.published) : "-",
                   shown && option.model_chance
                       ? per_cent(option.model_chance->chance) + " " + option.model_chance->scale
                       : "-",
                   shown && option.first_movement ? months(option.first_movement->days) : "-"});
  }
  std::string note =
      "The first step stands first, then the order of the trade: not the order of chances. "
      "Published: the largest counted series of that option (reached/n), on its own scale. Model: "
      "this "
      "program's chance of use if done today, which does not weigh how many axons a donor brings. "
      "M1: first movement, months from the injury, middle (90 % interval).";
  std::string out = table.to_string();
  for (const std::string& line : wrap(note, kTerminalWidth)) out += line + '\n';
  return out;
}

std::string not_ranked_text(const plan::PlanAnswer& answer) {
  if (answer.not_ranked.size() < 2) return "";
  return labelled("Not ranked",
                  "the series behind the options let in different patients, so their figures do "
                  "not compare: " +
                      joined(answer.not_ranked));
}

std::string what_if_text(const plan::PlanAnswer& answer) {
  std::string out;
  for (const plan::WhatIf& change : answer.what_if) {
    const std::string next = change.becomes.substr(0, change.becomes.find(':'));
    const bool cut = next.size() < 25 || next == change.becomes;
    out += labelled(
        out.empty() ? "Changes if" : "",
        fmt::format("{}, {} -> {}", change.input, change.value, cut ? change.becomes : next));
  }
  return out.empty() ? labelled("Changes if", "no single input of the rules changes the next step")
                     : out;
}

// In full where the option is open; else what it needs first.
std::string candidate_text(const plan::Candidate& candidate, bool in_full) {
  std::string text = fmt::format("{} -> {}: {}", candidate.donor, candidate.recipient,
                                 transfer::to_string(candidate.verdict));
  if (!candidate.examine_first.empty()) {
    text += ". Examine first: " + joined(candidate.examine_first);
  }
  std::vector<std::string> reasons = candidate.reasons;
  std::erase_if(reasons, [&](const std::string& reason) {
    return std::ranges::find(candidate.examine_first, reason) != candidate.examine_first.end();
  });
  if (!in_full) reasons.resize(std::min<std::size_t>(reasons.size(), 1));
  if (!in_full && !candidate.examine_first.empty()) reasons.clear();
  if (!reasons.empty()) text += ". " + joined(reasons);
  if (!candidate.published_words.empty()) {
    text += ". Published: " + candidate.published_words;
  } else if (!candidate.published.empty()) {
    text += ". Published: " + published_cell(candidate.published);
  }
  if (in_full && !candidate.donor_cost.empty()) text += ". Costs: " + candidate.donor_cost;
  if (in_full && !candidate.also_spends.empty()) {
    text += ". Also spends: " + joined(candidate.also_spends, ", ");
  }
  return labelled("", fmt::format("- {} [{}]", text, candidate.id));
}

// The donors one by one where a graft is at hand; else only what a gap would take.
std::string graft_text(const plan::GraftNeed& need, bool in_full) {
  std::string text = need.nerve + ": " + need.gap_words;
  if (need.cables_high > 0) {
    text += fmt::format("; {} {} of sural nerve ({})",
                        need.cables_low == need.cables_high
                            ? std::to_string(need.cables_low)
                            : fmt::format("{} to {}", need.cables_low, need.cables_high),
                        need.cables_high == 1 ? "cable" : "cables", need.cables_words);
    text += need.needed_low_mm ? fmt::format("; {:.0f} to {:.0f} mm of graft in all",
                                             *need.needed_low_mm, *need.needed_high_mm)
                               : fmt::format("; each 10 mm of gap takes up to {:.0f} mm of graft",
                                             need.needed_for_10_mm);
  } else {
    text += "; " + need.cables_words;
  }
  std::string out = labelled("Graft", text);
  for (const plan::GraftDonor& donor : need.donors) {
    if (!in_full && donor.nerve != "sural nerve") continue;
    out += labelled(
        "", fmt::format("- {}: {:.0f}{} mm; {}. Costs: {}", donor.nerve, donor.length_low_mm,
                        donor.length_high_mm > donor.length_low_mm
                            ? fmt::format("-{:.0f}", donor.length_high_mm)
                            : "",
                        donor.covers.empty() ? "not reckoned" : donor.covers, donor.cost));
  }
  if (!in_full) out += labelled("", "other donors with --json");
  if (!need.unavailable.empty()) {
    out += labelled("", "not available: " + joined(need.unavailable, ", "));
  }
  return out + labelled("", joined(need.notes));
}

std::string targets_words(const std::vector<std::string>& targets) {
  const std::size_t shown = std::min<std::size_t>(targets.size(), 4);
  std::string text =
      joined({targets.begin(), targets.begin() + static_cast<std::ptrdiff_t>(shown)}, ", ");
  if (shown < targets.size()) text += fmt::format(" and {} more", targets.size() - shown);
  return text;
}

std::string series_text(const Option& option) {
  std::vector<std::string> series;
  for (const PublishedResult& result : option.published) {
    if (series.size() < kMostSeries) series.push_back(published_words(result));
  }
  if (series.empty()) return "";
  if (option.published.size() > kMostSeries) {
    series.push_back(fmt::format("{} more with --json", option.published.size() - kMostSeries));
  }
  return labelled("Published", joined(series));
}

std::string candidates_text(const Option& option) {
  const bool in_full = option.state == OptionState::open;
  const std::size_t most = in_full ? kMostCandidates : kMostCandidates / 2;
  std::string out;
  std::size_t shown = 0;
  for (const plan::Candidate& candidate : option.candidates) {
    if (shown++ < most) out += candidate_text(candidate, in_full);
  }
  if (option.candidates.size() > most) {
    out += labelled("", fmt::format("{} more with --json", option.candidates.size() - most));
  }
  return out;
}

// `again` when an option of the same kind stands above and has said what holds for all of them.
std::string option_text(const Option& option, bool again) {
  std::string out = fmt::format("\n{} ({})\n", option.name, state_cell(option));
  if (!option.state_words.empty()) out += labelled("Why", option.state_words);
  if (!again) out += labelled("Needs", option.entry_condition);
  if (option.state == OptionState::closed) return out;
  if (!again && !option.finds.empty()) out += labelled("Finds", joined(option.finds));
  const bool on_the_nerve = option.candidates.empty();
  if (!option.targets.empty() && (!on_the_nerve || option.first)) {
    out += labelled("For", targets_words(option.targets));
  }
  out += series_text(option);
  if (option.first_movement && !again) out += labelled("M1", option.first_movement->of);
  if (option.model_chance && !again) out += labelled("Model", option.model_chance->of);
  if (!option.donor_cost.empty() && option.grafts.empty() && on_the_nerve) {
    out += labelled("Costs", option.donor_cost);
  }
  if (!again && !option.spends.empty()) out += labelled("Spends", joined(option.spends));
  for (const plan::GraftNeed& need : option.grafts) {
    const bool at_hand = option.state == OptionState::open || need.gap_mm;
    out += graft_text(need, at_hand && &need == &option.grafts.front());
  }
  out += candidates_text(option);
  if (!option.reasons.empty()) out += labelled("Notes", joined(option.reasons));
  if (again) return out;
  return out + labelled("Source", option.source);
}

// One line a reason; donors that the injury itself takes away are only counted.
std::string rejected_text(const plan::PlanAnswer& answer) {
  std::vector<std::pair<std::string, std::string>> by_reason;
  std::size_t dead = 0;
  for (const plan::Rejected& one : answer.rejected) {
    if (one.donor_dead) {
      ++dead;
      continue;
    }
    const std::string what = fmt::format("{} [{}]", one.what, one.id);
    const auto same =
        std::ranges::find(by_reason, one.reason, &std::pair<std::string, std::string>::first);
    if (same == by_reason.end()) {
      by_reason.emplace_back(one.reason, what);
    } else {
      same->second += ", " + what;
    }
  }
  std::string out;
  const auto add = [&](const std::string& text) {
    out += labelled(out.empty() ? "Left out" : "", text);
  };
  for (const auto& [reason, what] : by_reason) add(fmt::format("{}: {}", reason, what));
  if (dead > 0) {
    add(fmt::format("{} published {} whose donor does not work, each with its reason in --json",
                    dead, dead == 1 ? "transfer" : "transfers"));
  }
  return out.empty() ? out : '\n' + out;
}

}  // namespace

std::string plan_text(const plan::PlanAnswer& answer, const CommonOptions& options, Side side) {
  std::string out = fmt::format("{} LIMB: options side by side, reckoned on {}\n\n",
                                side == Side::right ? "RIGHT" : "LEFT", iso_date(options.today));
  out += decision_text(answer.recovery.decision) + '\n';
  if (!answer.not_run.empty()) {
    out += labelled("Not run", answer.not_run + "; no chance and no time is given") + '\n';
  }
  out += table_text(answer) + '\n' + what_if_text(answer) + not_ranked_text(answer);
  std::set<std::string> said;
  for (const Option& option : answer.options) {
    out += option_text(option, !said.insert(option.entry_condition).second);
  }
  out += rejected_text(answer);
  out += warnings_text(answer.recovery.warnings);
  if (!answer.assumptions.empty()) out += labelled("Assumed", joined(answer.assumptions));
  out += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth)) {
    out += line + '\n';
  }
  return out;
}

}  // namespace endplate::cli
