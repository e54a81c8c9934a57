#pragma once
// The lists of model_sentences(), one a subject.
#include <span>

namespace endplate::ui {

std::span<const char* const> rule_steps_sentences();
std::span<const char* const> rule_terms_sentences();
std::span<const char* const> rule_reasons_sentences();
std::span<const char* const> course_sentences();
std::span<const char* const> plan_sentences();
std::span<const char* const> deficit_sentences();
std::span<const char* const> movements_sentences();
std::span<const char* const> areas_sentences();
std::span<const char* const> transfer_sentences();
std::span<const char* const> transfer_costs_sentences();
std::span<const char* const> transfer_conditions_sentences();
std::span<const char* const> transfer_words_sentences();
std::span<const char* const> evidence_sentences();
std::span<const char* const> joined_sentences();
std::span<const char* const> problems_sentences();

}  // namespace endplate::ui
