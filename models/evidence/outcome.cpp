#include "models/evidence/outcome.hpp"

#include <fmt/format.h>

#include <array>
#include <stdexcept>
#include <utility>

namespace endplate::evidence {
namespace {
constexpr std::array<std::pair<OutcomeScale, std::string_view>, 7> kNames{{
    {OutcomeScale::m3, "M3"},
    {OutcomeScale::m4, "M4"},
    {OutcomeScale::s3, "S3"},
    {OutcomeScale::s3_plus, "S3+"},
    {OutcomeScale::reinnervated, "reinnervated"},
    {OutcomeScale::whole_nerve_grade, "whole-nerve grade"},
    {OutcomeScale::other, "other"},
}};
}  // namespace

Expected<Fraction> Fraction::from(double value) {
  if (value >= 0.0 && value <= 1.0) return Fraction(value);
  return std::unexpected(Error::input({"fraction", fmt::format("{} is not between 0 and 1", value),
                                       "Divide a percentage by 100."}));
}

std::string_view to_string(OutcomeScale scale) {
  for (const auto& [value, name] : kNames) {
    if (value == scale) return name;
  }
  return "";
}

std::optional<OutcomeScale> outcome_scale_from(std::string_view text) {
  for (const auto& [value, name] : kNames) {
    if (name == text) return value;
  }
  return std::nullopt;
}

bool better(const Outcome& a, const Outcome& b) {
  if (a.scale != b.scale || a.scale == OutcomeScale::other) {
    throw std::invalid_argument("outcomes of two scales do not compare");
  }
  return a.share > b.share;
}

}  // namespace endplate::evidence
