#pragma once
// What every JSON document begins with, and what every table for people ends with.
#include <string>
#include <string_view>
#include <vector>

#include "command.hpp"
#include "models/core/caution.hpp"
#include "models/core/side.hpp"
#include "models/core/summary.hpp"

namespace endplate::cli {

using endplate::standing_caution;

// {"endplate", "command", "seed", "side", "caution", "assumptions", "sources", "warnings"}; the
// command adds its own keys behind. `warnings`: where the patient lies outside what was published.
Json envelope(std::string_view command, const CommonOptions& options, Side side,
              const std::vector<std::string>& assumptions, const std::vector<std::string>& sources,
              const std::vector<std::string>& warnings = {});

// The same warnings for people, a paragraph each; empty where there are none.
std::string warnings_text(const std::vector<std::string>& warnings);

// {"mean", "sd", "p05", "p50", "p95"}; infinities become null.
Json to_json(const Summary& summary);

}  // namespace endplate::cli
