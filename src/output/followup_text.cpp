#include "output/followup_text.hpp"

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/recovery_text.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using followup::FollowupAnswer;
using followup::LesionProgress;

std::string capitals(std::string_view words) {
  std::string out(words);
  for (char& c : out) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return out;
}

std::string chances_text(const LesionProgress& lesion) {
  std::string text =
      fmt::format("ahead {} %, on course {} %, late {} %, no advance {} %",
                  per_cent(lesion.chances.ahead), per_cent(lesion.chances.on_course),
                  per_cent(lesion.chances.late), per_cent(lesion.chances.no_advance));
  if (lesion.chance_block >= 0.05) {
    text += fmt::format("; a conduction block, {} %, counts as on course",
                        per_cent(lesion.chance_block));
  }
  return text;
}

std::string points_text(const LesionProgress& lesion) {
  if (!lesion.tappable) return "no skin fibres beyond the lesion: tapping says nothing here";
  std::string text;
  for (const followup::TinelPoint& point : lesion.points) {
    text += text.empty() ? "beyond the lesion " : "; ";
    text += fmt::format("{:.0f} mm on {}", point.advance_mm, iso_date(point.date));
  }
  return text.empty() ? "none that could be used" : text;
}

std::string rate_text(const LesionProgress& lesion) {
  const Summary& usual = lesion.usual_rate_mm_per_day;
  const std::string like = fmt::format("patients like this one: {:.1f} ({:.1f}-{:.1f})", usual.p50,
                                       usual.p05, usual.p95);
  if (!lesion.rate_mm_per_day) return "hardly any chance of growth, so there is no rate; " + like;
  const Summary& rate = *lesion.rate_mm_per_day;
  return fmt::format("if it grows, {:.1f} mm a day ({:.1f}-{:.1f}); {}", rate.p50, rate.p05,
                     rate.p95, like);
}

std::string progress_text(const FollowupAnswer& answer) {
  const auto call_words = [](const followup::Call& call) {
    const std::string words = capitals(recovery::progress_words(call.progress));
    return call.why.empty() ? words : words + ": " + call.why;
  };
  if (answer.lesions.empty()) return labelled("Course", call_words(answer.call));
  std::string out;
  for (std::size_t k = 0; k < answer.lesions.size(); ++k) {
    const LesionProgress& lesion = answer.lesions[k];
    const std::string of =
        answer.lesions.size() > 1 ? answer.recovery.lesions[k].nerve + ": " : std::string();
    out += labelled("Course", of + call_words(lesion.call));
    out += labelled("Chances", chances_text(lesion));
    out += labelled("Tinel", points_text(lesion));
    out += labelled("Rate", rate_text(lesion));
  }
  return out;
}

std::string joined(const std::vector<std::string>& parts) {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : "; ") + part;
  return out;
}

}  // namespace

std::string followup_text(const FollowupAnswer& answer, const CommonOptions& options, Side side) {
  const recovery::RecoveryAnswer& now = answer.recovery;
  std::string out = fmt::format("{} LIMB: follow-up, reckoned on {}\n\n",
                                side == Side::right ? "RIGHT" : "LEFT", iso_date(options.today));
  out += decision_text(now.decision) + '\n';
  out += progress_text(answer);
  for (const std::string& remark : answer.remarks) out += labelled("Remark", remark);
  out += '\n' + lesion_text(now);
  out += now.no_forecast.empty() ? '\n' + targets_text(now) + '\n' + timing_text(now)
                                 : labelled("Forecast", "none: " + now.no_forecast);
  out += warnings_text(now.warnings);
  if (!now.assumptions.empty()) out += labelled("Assumed", joined(now.assumptions));
  if (!now.assumed_parameters.empty()) {
    out += labelled("", fmt::format("{} figures rest on an assumption, each with its reason in "
                                    "--json",
                                    now.assumed_parameters.size()));
  }
  out += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth)) {
    out += line + '\n';
  }
  return out;
}

}  // namespace endplate::cli
