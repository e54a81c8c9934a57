#include "output/envelope.hpp"

#include <cmath>

#include "output/text_table.hpp"

namespace endplate::cli {

Json envelope(std::string_view command, const CommonOptions& options, Side side,
              const std::vector<std::string>& assumptions, const std::vector<std::string>& sources,
              const std::vector<std::string>& warnings) {
  Json document;
  document["endplate"] = ENDPLATE_VERSION;
  document["command"] = command;
  document["seed"] = options.seed;
  document["side"] = to_string(side);
  document["caution"] = standing_caution();
  document["assumptions"] = assumptions;
  document["sources"] = sources;
  document["warnings"] = warnings;
  return document;
}

std::string warnings_text(const std::vector<std::string>& warnings) {
  std::string text;
  for (const std::string& warning : warnings) text += labelled("WARNING", warning);
  return text;
}

Json to_json(const Summary& summary) {
  const auto finite = [](double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
  };
  return {{"mean", finite(summary.mean)},
          {"sd", finite(summary.sd)},
          {"p05", finite(summary.p05)},
          {"p50", finite(summary.p50)},
          {"p95", finite(summary.p95)}};
}

}  // namespace endplate::cli
