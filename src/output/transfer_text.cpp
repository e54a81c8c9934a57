#include "output/transfer_text.hpp"

#include <fmt/ranges.h>

#include <algorithm>

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"
#include "output/transfer_words.hpp"

namespace endplate::cli {
namespace {

using transfer::Candidate;
using transfer::ReachState;
using transfer::TransferAnswer;
using transfer::TransferCandidate;

constexpr std::size_t kMostRejected = 12;
constexpr std::size_t kMostUnpublished = 12;
constexpr std::size_t kMostAsked = 8;

std::string heading(std::string_view what, const CommonOptions& options, Side side) {
  return fmt::format("{} LIMB: {}, reckoned on {}\n\n", side == Side::right ? "RIGHT" : "LEFT",
                     what, iso_date(options.today));
}

std::string interval(const Summary& mm) {
  return fmt::format("{:.0f} ({:.0f} to {:.0f})", mm.p50, mm.p05, mm.p95);
}

std::string slack_cell(const TransferCandidate& candidate) {
  if (!candidate.joined || !candidate.joined->reach.slack_mm) return "-";
  return interval(*candidate.joined->reach.slack_mm);
}

std::string reach_cell(const TransferCandidate& candidate) {
  if (!candidate.joined) return "-";
  const transfer::Reach& reach = candidate.joined->reach;
  switch (reach.state) {
    case ReachState::reaches:
      return fmt::format("yes {} %", per_cent(reach.chance));
    case ReachState::with_graft:
      return fmt::format("graft {} %", per_cent(reach.chance));
    case ReachState::does_not_reach:
      return fmt::format("no {} %", per_cent(reach.chance));
    case ReachState::not_computable:
      break;
  }
  return "not computed";
}

std::string way_cell(const TransferCandidate& candidate) {
  if (!candidate.axons_arrive_days) return "-";
  return fmt::format("{:.0f}", candidate.joined->reach.to_nearest_mm.p50);
}

std::string arrive_cell(const TransferCandidate& candidate) {
  return candidate.axons_arrive_days ? months(*candidate.axons_arrive_days) : "-";
}

std::string published_cell(const Candidate& candidate) {
  if (candidate.results.empty()) return "none found";
  const transfer::PublishedResult& result = candidate.results.front();
  const std::string scale =
      result.scale.size() > 5 || result.scale == "other" ? std::string("own") : result.scale;
  if (result.count && result.n)
    return fmt::format("{:.0f}/{:.0f} {}", *result.count, *result.n, scale);
  if (result.share) return fmt::format("{:.0f} % {}", 100.0 * *result.share, scale);
  return "none found";
}

// Of the candidates only those are not feasible whose ends do not meet.
std::string verdict_cell(const Candidate& candidate) {
  if (candidate.verdict == transfer::Verdict::not_feasible) return "no reach";
  return std::string(transfer::to_string(candidate.verdict));
}

std::string group_text(const transfer::TransferGroup& group) {
  using enum TextTable::Align;
  TextTable table({{"Transfer", left, 31},
                   {"Donor", left, 10},
                   {"Reach", left, 12},
                   {"Slack mm", right},
                   {"Axon mo", right},
                   {"Published", left, 10},
                   {"Verdict", left, 10}});
  for (const TransferCandidate& candidate : group.candidates) {
    const Candidate& judged = candidate.judged;
    const bool reckoned = candidate.joined && candidate.joined->reach.slack_mm.has_value();
    table.add_row({judged.id, std::string(transfer::to_string(judged.donor_state)),
                   reach_cell(candidate),
                   reckoned ? fmt::format("{:.0f}", candidate.joined->reach.slack_mm->p50) : "-",
                   candidate.axons_arrive_days ? months(candidate.axons_arrive_days->p50) : "-",
                   published_cell(judged), verdict_cell(judged)});
  }
  return fmt::format("{}\n{}", group.function, table.to_string());
}

std::string unpublished_text(const TransferAnswer& answer) {
  std::string out = "NOT PUBLISHED, geometry only\n";
  for (const std::string& line :
       wrap("Nobody has published these pairs: no outcome exists, and none is part of the set "
            "above. "
            "Donor shown strong and another muscle left for its work, target lost, ends meet in at "
            "least half of the limbs. Whether the nerves suit each other, and whether the movement "
            "can be relearned, is not known.",
            kTerminalWidth)) {
    out += line + '\n';
  }
  if (answer.unpublished.empty()) return out + "None: no branch that can be spared meets one.\n";
  using enum TextTable::Align;
  TextTable table({{"Donor branch", left, 27},
                   {"To", left, 27},
                   {"Reach", left, 9},
                   {"Slack mm", right},
                   {"Axon mo", right},
                   {"Function", left, 10}});
  std::size_t shown = 0;
  for (const TransferCandidate& candidate : answer.unpublished) {
    if (++shown > kMostUnpublished) break;
    const Candidate& judged = candidate.judged;
    table.add_row({judged.donor, judged.recipient, reach_cell(candidate),
                   fmt::format("{:.0f}", candidate.joined->reach.slack_mm->p50),
                   candidate.axons_arrive_days ? months(candidate.axons_arrive_days->p50) : "-",
                   judged.synergy == transfer::Synergy::antagonist
                       ? "OPPOSED"
                       : std::string(transfer::to_string(judged.synergy))});
  }
  out += table.to_string();
  if (answer.unpublished.size() > kMostUnpublished) {
    out += fmt::format("{} more with --json\n", answer.unpublished.size() - kMostUnpublished);
  }
  return out;
}

std::string chosen_words(const transfer::Combination& combination) {
  std::vector<std::string> chosen;
  for (const transfer::ChosenOption& option : combination.chosen) {
    chosen.push_back(fmt::format("{} ({})", option.id, fmt::join(option.serves, ", ")));
  }
  return fmt::format("{}", fmt::join(chosen, "; "));
}

// Of the functions that the case or the pattern asks for; the others only by their number.
std::string without_words(const transfer::Combination& combination) {
  std::vector<std::string> without;
  std::size_t others = 0;
  const int last = combination.demands.empty() ? 0 : combination.demands.back().demand.tier;
  for (const transfer::DemandAnswer& demand : combination.demands) {
    if (demand.met || demand.demand.transfers > 1) continue;
    if (demand.demand.tier < last || last == 1) {
      without.push_back(demand.demand.target);
    } else {
      ++others;
    }
  }
  std::string words = fmt::format("{}", fmt::join(without, ", "));
  if (others > 0) words += fmt::format("{}{} more", words.empty() ? "" : " and ", others);
  return words;
}

// What would have to be found before a transfer can be judged, each thing once.
std::string examine_text(const TransferAnswer& answer) {
  std::vector<std::string> asked;
  std::size_t others = 0;
  for (const transfer::TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      for (const std::string& one : candidate.judged.examine_first) {
        if (std::ranges::find(asked, one) != asked.end()) continue;
        if (asked.size() == kMostAsked) {
          ++others;
        } else {
          asked.push_back(one);
        }
      }
    }
  }
  std::string out;
  for (const std::string& one : asked) out += labelled(out.empty() ? "To examine" : "", one);
  if (others > 0) out += labelled("", fmt::format("and {} more with --json", others));
  return out;
}

std::string nothing_words(const TransferAnswer& answer) {
  bool any = false;
  bool shown = false;
  for (const transfer::TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      const transfer::Verdict verdict = candidate.judged.verdict;
      any = any || verdict != transfer::Verdict::not_feasible;
      shown =
          shown || verdict == transfer::Verdict::feasible || verdict == transfer::Verdict::marginal;
    }
  }
  if (!any) return "nothing: no published transfer is possible here";
  if (shown) return "nothing: what could be given restores no movement that is wholly lost";
  return "nothing yet: of no transfer the donor, and what must hold beside it, was shown";
}

std::string combination_text(const TransferAnswer& answer) {
  const std::string now = chosen_words(answer.combination);
  const std::string if_shown = chosen_words(answer.if_shown);
  std::string out = labelled("Together", now.empty() ? nothing_words(answer) : now);
  if (if_shown != now) {
    out += labelled("", "if what was not examined is shown to work: " + if_shown);
  }
  const std::string without = without_words(answer.combination);
  if (!without.empty()) out += labelled("Without", without);
  return out + examine_text(answer);
}

// By reason, since one finding often rejects several.
std::string rejected_text(const TransferAnswer& answer) {
  std::vector<std::pair<std::string, std::string>> by_reason;
  std::size_t others = 0;
  for (const Candidate& candidate : answer.rejected) {
    const auto same = std::ranges::find(by_reason, candidate.rejected_because,
                                        &std::pair<std::string, std::string>::first);
    const bool told = candidate.rejection != transfer::Rejection::not_lost &&
                      candidate.rejection != transfer::Rejection::other_lesion;
    if (told && same != by_reason.end()) {
      same->second += ", " + candidate.id;
    } else if (told && by_reason.size() < kMostRejected) {
      by_reason.emplace_back(candidate.rejected_because, candidate.id);
    } else {
      ++others;
    }
  }
  std::string out;
  for (const auto& [reason, ids] : by_reason) {
    out += labelled(out.empty() ? "Rejected" : "", fmt::format("{}: {}", ids, reason));
  }
  if (others > 0) {
    out += labelled(out.empty() ? "Rejected" : "",
                    fmt::format("{} more, most because what they restore is not lost here; each "
                                "with its reason in --json",
                                others));
  }
  return out;
}

std::string footer() {
  std::string out;
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth)) {
    out += line + '\n';
  }
  return out;
}

std::string note_text() {
  std::string out;
  const std::string note = fmt::format(
      "Reach: chance of meeting without a graft through the postoperative range (graft: one would "
      "be needed); a computed guide that agrees with {} of {} dissected figures, so measure before "
      "you cut. Slack: spare length there, in the middle limb; negative is missing. Axon: months "
      "from the injury until axons reach the nearest muscle, if done today. Published: the series "
      "differ in whom they let in, so the figures do not compare (own: on a scale of the study's "
      "own). Intervals, reasons, costs and sources with --json or --compare A,B. Whether to "
      "transfer at all, and by when, is answered by plan.",
      transfer::kDissectedInside, transfer::kDissectedFigures);
  for (const std::string& line : wrap(note, kTerminalWidth)) {
    out += line + '\n';
  }
  return out;
}

}  // namespace

std::string transfer_text(const TransferAnswer& answer, const CommonOptions& options, Side side,
                          bool with_unpublished) {
  std::string out = heading("transfers", options, side);
  out += combination_text(answer) + '\n';
  for (const transfer::TransferGroup& group : answer.groups) out += group_text(group) + '\n';
  if (answer.groups.empty()) out += "No published transfer restores what this case has lost.\n\n";
  if (!answer.groups.empty()) out += note_text();
  out += rejected_text(answer);
  if (with_unpublished) out += '\n' + unpublished_text(answer);
  out += warnings_text(answer.warnings);
  return out + '\n' + footer();
}

std::string compare_text(const TransferCandidate& a, const TransferCandidate& b,
                         const CommonOptions& options, Side side) {
  using enum TextTable::Align;
  TextTable table({{"Point", left, 16}, {a.judged.id, left, 38}, {b.judged.id, left, 38}});
  const auto row = [&](const char* point, const auto& words) {
    table.add_row({point, words(a), words(b)});
  };
  const auto joined_words = [](const std::vector<std::string>& parts) {
    return parts.empty() ? std::string("-") : fmt::format("{}", fmt::join(parts, "; "));
  };
  row("Donor", [](const auto& c) { return c.judged.donor; });
  row("Recipient", [](const auto& c) { return c.judged.recipient; });
  row("For", [&](const auto& c) { return joined_words(c.judged.targets); });
  row("Donor is",
      [](const auto& c) { return std::string(transfer::to_string(c.judged.donor_state)); });
  row("Because", [&](const auto& c) { return joined_words(c.judged.donor_reasons); });
  row("Reach", reach_cell);
  row("Slack mm", slack_cell);
  row("Way mm", way_cell);
  row("Axons mo", arrive_cell);
  row("Axon ratio", [](const auto& c) {
    return c.judged.axon_ratio
               ? fmt::format("{:.2f}, {}", c.judged.axon_ratio->ratio, c.judged.axon_ratio->words)
               : std::string("not known");
  });
  row("Function", [](const auto& c) { return std::string(transfer::to_string(c.judged.synergy)); });
  row("Costs",
      [](const auto& c) { return c.judged.donor_cost.empty() ? "-" : c.judged.donor_cost; });
  row("Also spends", [&](const auto& c) { return joined_words(c.judged.also_spends); });
  row("Published", [](const auto& c) { return published_cell(c.judged); });
  row("Verdict", [](const auto& c) { return std::string(transfer::to_string(c.judged.verdict)); });
  row("Reasons", [&](const auto& c) { return joined_words(c.judged.reasons); });
  return heading("two transfers side by side", options, side) + table.to_string() + '\n' + footer();
}

}  // namespace endplate::cli
