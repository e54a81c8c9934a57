#include <fmt/format.h>

#include <algorithm>

#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

std::string_view in_words(DatedPart::Kind kind) {
  switch (kind) {
    case DatedPart::Kind::injury:
      return "the injury";
    case DatedPart::Kind::finding:
      return "the finding";
    default:
      return "the operation";
  }
}

bool same_place(const std::optional<Place>& a, const std::optional<Place>& b) {
  if (!a || !b || a->index() != b->index()) return !a && !b;
  struct Same {
    const Place& other;
    bool operator()(const AtLandmark& x) const {
      const auto& y = std::get<AtLandmark>(other);
      return x.landmark == y.landmark && x.offset_mm == y.offset_mm && x.toward == y.toward;
    }
    bool operator()(const AtRoot& x) const { return x.root == std::get<AtRoot>(other).root; }
    bool operator()(const AtTrunk& x) const { return x.trunk == std::get<AtTrunk>(other).trunk; }
    bool operator()(const AtCord& x) const { return x.cord == std::get<AtCord>(other).cord; }
    bool operator()(const AtBranch& x) const {
      const auto& y = std::get<AtBranch>(other);
      return x.branch == y.branch && x.from_origin_mm == y.from_origin_mm;
    }
  };
  return std::visit(Same{*b}, *a);
}

void check_dates(Reading& reading) {
  std::optional<Date> first_injury;
  for (const DatedPart& part : reading.dated) {
    if (part.kind != DatedPart::Kind::injury) continue;
    if (!first_injury || part.date < *first_injury) first_injury = part.date;
  }
  const auto& today = reading.rules.today;
  for (const DatedPart& part : reading.dated) {
    if (first_injury && part.date < *first_injury) {
      reading.add(part.place,
                  fmt::format("{} of {} lies before the injury of {}", in_words(part.kind),
                              to_string(part.date), to_string(*first_injury)),
                  "Correct one of the two dates.");
    }
    if (today && part.date > *today && part.kind != DatedPart::Kind::operation_planned) {
      reading.add(part.place,
                  fmt::format("{} of {} lies after today, {}", in_words(part.kind),
                              to_string(part.date), to_string(*today)),
                  "Correct the date, or give the right --today.");
    }
  }
}

}  // namespace

void check_coherence(Reading& reading) {
  for (std::size_t i = 0; i < reading.injuries.size(); ++i) {
    const auto& [place, injury] = reading.injuries[i];
    for (std::size_t j = 0; j < i; ++j) {
      const auto& [earlier_place, earlier] = reading.injuries[j];
      if (earlier.nerve != injury.nerve || !same_place(earlier.at, injury.at)) continue;
      reading.add(place, fmt::format("this is the injury of {} again", earlier_place),
                  "Delete one of the two, or give each its own place.");
    }
  }
  check_dates(reading);
}

}  // namespace endplate::casefile
