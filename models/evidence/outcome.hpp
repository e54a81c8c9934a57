#pragma once
// Shares and the scales on which an outcome is graded, as types that do not mix.
#include <optional>
#include <string_view>

#include "models/core/error.hpp"

namespace endplate::evidence {

// A share, 0 to 1. Percent exists only where it is shown.
class Fraction {
 public:
  // An input error for a value outside 0 to 1, with the hint that it may be percent.
  static Expected<Fraction> from(double value);
  double value() const { return value_; }
  auto operator<=>(const Fraction&) const = default;

 private:
  explicit Fraction(double value) : value_(value) {}
  double value_ = 0.0;
};

enum class OutcomeScale {
  m3,                 // Medical Research Council motor grade 3 or better
  m4,                 // motor grade 4 or better
  s3,                 // sensory grade S3 or better
  s3_plus,            // sensory grade S3+ or better
  reinnervated,       // electrical or clinical signs of it
  whole_nerve_grade,  // one grade for the whole nerve; not a grade of one muscle
  other               // its words stand in the row's notes; comparable with nothing
};

std::string_view to_string(OutcomeScale scale);
std::optional<OutcomeScale> outcome_scale_from(std::string_view text);

// A share that reached a grade. Only shares of one scale compare; comparing two scales is a fault
// of the caller and throws std::invalid_argument.
struct Outcome {
  OutcomeScale scale = OutcomeScale::other;
  Fraction share;
};
bool better(const Outcome& a, const Outcome& b);

}  // namespace endplate::evidence
