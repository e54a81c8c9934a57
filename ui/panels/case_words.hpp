#pragma once
// The words that a case file may use, as choices in the language of the screen.
#include <vector>

#include "ui/panels/fields.hpp"

namespace endplate::ui {

std::vector<Choice> side_choices();
std::vector<Choice> sex_choices();
std::vector<Choice> mechanism_choices();
std::vector<Choice> grade_choices();
std::vector<Choice> extent_choices();     // of an injury: complete or partial
std::vector<Choice> direction_choices();  // along the limb
std::vector<Choice> aside_choices();      // across it
std::vector<Choice> cut_kind_choices();
std::vector<Choice> root_choices();
std::vector<Choice> root_level_choices();
std::vector<Choice> trunk_choices();
std::vector<Choice> cord_choices();
std::vector<Choice> operation_state_choices();
std::vector<Choice> procedure_choices();
std::vector<Choice> action_potential_choices();
std::vector<Choice> layer_choices();
std::vector<Choice> unit_choices();       // motor units of a needle study
std::vector<Choice> potential_choices();  // sensory or motor
std::vector<Choice> stimulation_choices();
// Words that have no other form than that of the case file.
QString red_flag_words(std::string_view flag);
QString joint_words(std::string_view key);  // of a pose: "elbow_flexion_deg"

}  // namespace endplate::ui
