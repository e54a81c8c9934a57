// Times and distances that were published, against the forecast. Each row names its source; rows
// that a parameter was made from say so and test only that the making was right.
//
// Distances that a source does not print are typical ways from the ledger's anatomy, given here.
#include <cmath>

#include "../models/recovery/fixture.hpp"

using namespace recovery_tests;

namespace {

constexpr double kWeek = 7.0;
constexpr double kMonth = 365.25 / 12.0;

enum class Event { arrive, units, movement, useful };

// A target at `distance_mm` below one lesion of a nerve, in the made-up limb.
Summary forecast_at(double distance_mm, const char* nerve, const char* id, int coaptations,
                    Event event) {
  MadeUpLimb limb;
  const auto found = std::ranges::find(tables().targets, std::string(id), &recovery::Target::id);
  REQUIRE(found != tables().targets.end());
  const anatomy::NodeIndex branch = found->branch;
  // The whole way lies on the last branch: leave the injured nerve at once and grow along it.
  const auto& path = found->paths.front().nodes;
  for (const anatomy::NodeIndex step : path) {
    for (double& at : limb.metrics.leaves_parent_at_mm[step]) at = 1.0;
  }
  limb.metrics.length_mm[branch] = distance_mm;
  auto lesion = lesion_on(nerve, 0.0);
  if (coaptations > 0) lesion = repaired(lesion, 0.0, coaptations);
  const Asked asked(limb, {lesion});
  const auto forecast = recovery::forecast(asked.question);
  const auto& target = asked.of(forecast, id);
  REQUIRE(target.axons_arrive_days);
  switch (event) {
    case Event::arrive:
      return *target.axons_arrive_days;
    case Event::units:
      return *target.first_units_days;
    case Event::movement:
      return *target.first_movement_days;
    case Event::useful:
      return *target.useful_days;
  }
  throw std::logic_error("no such event");
}

struct Example {
  const char* source;
  double distance_mm;
  const char* nerve;
  const char* target;
  int coaptations;
  Event event;
  double published_days;
};

}  // namespace

TEST_CASE("published times over a known way lie in the forecast's 90 % interval", "[published]") {
  const std::vector<Example> examples{
      {"Seddon, Medawar and Smith 1943 J Physiol 102:191: radial axonotmesis 1.5 mm a day, 10 days "
       "of latency (made from)",
       200, "radial nerve", "ED", 0, Event::arrive, 10 + 200 / 1.5},
      {"Seddon 1943: radial suture 1.6 mm a day, 24.5 days to cross (made from)", 200,
       "radial nerve", "ED", 1, Event::arrive, 24.5 + 200 / 1.6},
      {"Seddon 1943: other nerves, axonotmesis 1.4 mm a day (made from)", 250, "ulnar nerve", "ADM",
       0, Event::arrive, 10 + 250 / 1.4},
      {"Seddon 1943: other nerves, suture 1.5 mm a day (made from)", 250, "ulnar nerve", "ADM", 1,
       Event::arrive, 24.5 + 250 / 1.5},
      {"Trojaborg 1970: radial palsy with humeral fracture, 1.0 mm a day (made from)", 200,
       "radial nerve", "ED", 0, Event::arrive, 10 + 200 / 1.0},
      {"Vanaclocha-Vanaclocha 2017: proximal lesion to the hand muscles in 24 months; 700 mm taken",
       700, "ulnar nerve", "FDI", 0, Event::arrive, 24 * kMonth},
      {"Ehni 1991: one inch a month over 18 inches", 457, "ulnar nerve", "FDI", 0, Event::arrive,
       457 / (25.4 / kMonth)},
      {"Buchthal 1979: first sensory potential 3 to 4 months after median suture at the wrist; "
       "120 mm to the finger taken",
       120, "median nerve", "middle radial pulp", 1, Event::arrive, 3.5 * kMonth},
      {"Seddon 1943: Tinel advances 1.7 mm a day after suture", 300, "median nerve",
       "index radial pulp", 1, Event::arrive, 24.5 + 300 / 1.7},
      {"Dong: supinator branch to posterior interosseous nerve, finger extension first seen at 5 "
       "to "
       "9 months (shortest); 80 mm taken",
       80, "posterior interosseous nerve", "ED", 1, Event::movement, 5 * kMonth},
      {"the same, middle of the range", 80, "posterior interosseous nerve", "ED", 1,
       Event::movement, 7 * kMonth},
      {"answer page on radial palsy: high-energy fracture, first sign at 12 weeks; 40 mm to "
       "brachioradialis taken",
       40, "radial nerve", "BR", 0, Event::movement, 12 * kWeek},
      {"the same: full recovery at 26 weeks (M3 is earlier)", 40, "radial nerve", "BR", 0,
       Event::useful, 26 * kWeek},
      {"Schwaiger 2020: contused radial nerve recovers in 3 to 12 months; 150 mm to the wrist "
       "extensors taken",
       150, "radial nerve", "ECRL", 0, Event::useful, 7.5 * kMonth},
      {"radial palsy with operated humeral fracture, 2025: median 36 weeks to full function; "
       "200 mm to the finger extensors taken",
       200, "radial nerve", "ED", 0, Event::useful, 36 * kWeek},
      {"bedside rule (common practice): a month of delay, then 1 mm a day; 300 mm taken", 300,
       "median nerve", "APB", 0, Event::arrive, 30 + 300 / 1.0},
  };
  std::vector<std::string> misses;
  for (const Example& example : examples) {
    const Summary forecast = forecast_at(example.distance_mm, example.nerve, example.target,
                                         example.coaptations, example.event);
    const bool in =
        forecast.p05 <= example.published_days && example.published_days <= forecast.p95;
    if (in) continue;
    misses.emplace_back(example.source);
    UNSCOPED_INFO(example.source << ": published " << example.published_days << " d, forecast "
                                 << forecast.p05 << " to " << forecast.p95);
  }
  CHECK(examples.size() >= 15);
  CHECK(5 * misses.size() <= examples.size());
  // docs/recovery.md names the misses; a change here belongs there too.
  CHECK(misses == std::vector<std::string>{"the same, middle of the range"});
}

TEST_CASE("no units at 7 months after a suture at the wrist or forearm is out of the ordinary",
          "[published]") {
  // Donoso RS, Ballantyne JP, Hansen S, 1979: re-explore at 7 months without units and at 10
  // months without movement after suture, 12 months without units after a graft. 120 mm taken.
  const Summary units = forecast_at(120, "median nerve", "APB", 1, Event::units);
  CHECK(units.p95 < 7 * kMonth);
  CHECK(units.p50 > 0.4 * 7 * kMonth);
  CHECK(forecast_at(120, "median nerve", "APB", 1, Event::movement).p95 < 10 * kMonth);
  CHECK(forecast_at(120, "median nerve", "APB", 2, Event::units).p95 < 12 * kMonth);
}

TEST_CASE("a conduction block is back in 6 to 8 weeks and hardly ever after 3 months",
          "[published]") {
  // Trojaborg W, 1970, J Neurol Neurosurg Psychiatry 33:625-638 (compression palsies of the
  // radial nerve).
  const Asked asked(MadeUpLimb(), {lesion_on("radial nerve", 10.0, {1.0, 0.0, 0.0})});
  const auto result = recovery::forecast(asked.question);
  REQUIRE(result.block_useful_days);
  CHECK(result.block_useful_days->p50 > 5.5 * kWeek);
  CHECK(result.block_useful_days->p50 < 8.0 * kWeek);
  CHECK(result.block_useful_days->p95 < 3.0 * kMonth);
}

TEST_CASE("a radial palsy of the arm returns from brachioradialis to extensor indicis",
          "[published]") {
  // Order of branches and so of reinnervation: Abrams RA, Ziets RJ, Lieber RL, Botte MJ, J Hand
  // Surg Am 1997;22:232-237, as column order_in_nerve of muscles.csv carries it.
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)});
  const auto forecast = recovery::forecast(asked.question);
  std::vector<std::string> order;
  for (const auto& target : forecast.targets) {
    order.push_back(asked.question.targets[target.target].target.id);
  }
  const auto place = [&](const char* id) { return std::ranges::find(order, id) - order.begin(); };
  const std::vector<const char*> expected{"BR", "ECRL", "ED", "EPL", "EI"};
  for (std::size_t k = 1; k < expected.size(); ++k) {
    CAPTURE(expected[k - 1], expected[k]);
    CHECK(place(expected[k - 1]) < place(expected[k]));
  }
}

TEST_CASE("the wider of two published fractions of the same series lies nearer the lesion",
          "[published]") {
  // Zhu S et al., 2023, J Hand Surg Eur: after high radial grafts M3 falls from wrist (24 of 33) to
  // finger (16 of 33) to thumb extension (10 of 33). The fall with distance must be there.
  Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 120.0), 167.0, 2)}, 4000);
  const auto forecast = recovery::forecast(asked.question);
  const double wrist = asked.of(forecast, "ECRL").chance_useful->chance;
  const double finger = asked.of(forecast, "ED").chance_useful->chance;
  const double thumb = asked.of(forecast, "EPL").chance_useful->chance;
  CHECK(wrist > finger);
  CHECK(finger > thumb);
  // Clopper-Pearson 95 % intervals of the counts: 0.54-0.87 and 0.31-0.66.
  CHECK((wrist > 0.54 && wrist < 0.87));
  CHECK((finger > 0.31 && finger < 0.66));
}
