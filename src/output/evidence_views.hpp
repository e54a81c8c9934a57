#pragma once
// The evidence answer for people and for programs.
#include <string>

#include "command.hpp"
#include "models/evidence/evidence_answer.hpp"

namespace endplate::cli {

// A list when more than `most_in_detail` quantities answer, else each with its rows and forest
// plot.
std::string evidence_text(const evidence::EvidenceAnswer& answer, std::size_t most_in_detail);

// The keys behind the envelope: "quantities", "proportions", "rows" and "spread_model".
Json evidence_json(const evidence::EvidenceAnswer& answer);

}  // namespace endplate::cli
