#pragma once
// What a pose does to the great nerves, as text and JSON.
#include <string>
#include <vector>

#include "command.hpp"
#include "models/limb/bed_answer.hpp"

namespace endplate::cli {

Json beds_json(const std::vector<limb::BedAnswer>& beds);
// Empty for the anatomical position.
std::string beds_text(const std::vector<limb::BedAnswer>& beds);

}  // namespace endplate::cli
