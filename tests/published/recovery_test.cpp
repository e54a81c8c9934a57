// Times and distances that were published, against the forecast. Each row names its source; rows
// that a parameter was made from are counted apart and test only that the making was right.
//
// Distances that a source does not print are typical ways from the ledger's anatomy, given here.
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <iostream>
#include <map>

#include "../models/recovery/fixture.hpp"

using namespace recovery_tests;

namespace {

constexpr double kWeek = 7.0;
constexpr double kMonth = 365.25 / 12.0;

enum class Event { arrive, units, movement, useful };

// A target at `distance_mm` below one lesion of a nerve, in the made-up limb.
Summary forecast_at(double distance_mm, const char* nerve, const char* id, int coaptations,
                    Event event, bool transfer = false) {
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
  if (transfer) lesion.donor = "near donor";
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
  bool made_from = false;  // a parameter was made from this figure or from its study's rate
  // First movement after a nerve transfer: the delay of the movement was made from these rows, so
  // each study is predicted by the delays of the others.
  const char* transfer_study = nullptr;
};

const std::vector<Example>& examples() {
  static const std::vector<Example> kExamples{
      {"Seddon, Medawar and Smith 1943 J Physiol 102:191: radial axonotmesis 1.5 mm a day, 10 days "
       "of latency",
       200, "radial nerve", "ED", 0, Event::arrive, 10 + 200 / 1.5, true},
      {"Seddon 1943: radial suture 1.6 mm a day, 24.5 days to cross", 200, "radial nerve", "ED", 1,
       Event::arrive, 24.5 + 200 / 1.6, true},
      {"Seddon 1943: other nerves, axonotmesis 1.4 mm a day", 250, "ulnar nerve", "ADM", 0,
       Event::arrive, 10 + 250 / 1.4, true},
      {"Seddon 1943: other nerves, suture 1.5 mm a day", 250, "ulnar nerve", "ADM", 1,
       Event::arrive, 24.5 + 250 / 1.5, true},
      {"Trojaborg 1970: radial palsy with humeral fracture, 1.0 mm a day", 200, "radial nerve",
       "ED", 0, Event::arrive, 10 + 200 / 1.0, true},
      {"Vanaclocha-Vanaclocha 2017: proximal lesion to the hand muscles in 24 months; 700 mm taken",
       700, "ulnar nerve", "FDI", 0, Event::arrive, 24 * kMonth, true},
      {"Ehni 1991: one inch a month over 18 inches", 457, "ulnar nerve", "FDI", 0, Event::arrive,
       457 / (25.4 / kMonth), true},
      {"Buchthal 1979: first sensory potential 3 to 4 months after median suture at the wrist; "
       "120 mm to the finger taken",
       120, "median nerve", "middle radial pulp", 1, Event::arrive, 3.5 * kMonth, true},
      {"answer page on radial palsy: high-energy fracture, first sign at 12 weeks; 40 mm to "
       "brachioradialis taken",
       40, "radial nerve", "BR", 0, Event::movement, 12 * kWeek, true},
      {"the same: full recovery at 26 weeks (M3 is earlier)", 40, "radial nerve", "BR", 0,
       Event::useful, 26 * kWeek, true},
      {"Seddon 1943: Tinel advances 1.7 mm a day after suture", 300, "median nerve",
       "index radial pulp", 1, Event::arrive, 24.5 + 300 / 1.7},
      {"Dong: supinator branch to posterior interosseous nerve, finger extension first seen at 5 "
       "to 9 months (shortest); 80 mm taken",
       80, "posterior interosseous nerve", "ED", 1, Event::movement, 5 * kMonth, false, "Dong"},
      {"Dong: middle of the range", 80, "posterior interosseous nerve", "ED", 1, Event::movement,
       7 * kMonth, false, "Dong"},
      {"Dong: longest", 80, "posterior interosseous nerve", "ED", 1, Event::movement, 9 * kMonth,
       false, "Dong"},
      {"Schwaiger 2020: contused radial nerve recovers in 3 to 12 months; 150 mm to the wrist "
       "extensors taken",
       150, "radial nerve", "ECRL", 0, Event::useful, 7.5 * kMonth},
      {"radial palsy with operated humeral fracture, 2025: median 36 weeks to full function; "
       "200 mm to the finger extensors taken",
       200, "radial nerve", "ED", 0, Event::useful, 36 * kWeek},
      {"bedside rule (common practice): a month of delay, then 1 mm a day; 300 mm taken", 300,
       "median nerve", "APB", 0, Event::arrive, 30 + 300 / 1.0},
      {"hand clinic page (alliance-hw.com): forearm a foot from the fingers, feeling in the "
       "fingertips within a year of the suture",
       305, "median nerve", "index radial pulp", 1, Event::arrive, 12 * kMonth},
      {"Coulet 2010: ulnar fascicle to biceps, reinnervated at 5.1 months on average; 25 mm from "
       "the biceps branch",
       25, "musculocutaneous nerve", "BIC-L", 1, Event::movement, 5.1 * kMonth, false,
       "Coulet 2010"},
      {"Coulet 2010: intercostal nerves to musculocutaneous nerve, 9.9 months on average; 123 mm "
       "from its beginning",
       123, "musculocutaneous nerve", "BIC-L", 1, Event::movement, 9.9 * kMonth, false,
       "Coulet 2010"},
      {"Mackinnon 2005: ulnar and median fascicles, first movement at 5.5 months (3.5 to 7) on "
       "average; 25 mm",
       25, "musculocutaneous nerve", "BIC-L", 1, Event::movement, 5.5 * kMonth, false,
       "Mackinnon 2005"},
      {"NICE 2013: intercostal nerves to musculocutaneous nerve, motor recovery of biceps at 195 "
       "days; 123 mm",
       123, "musculocutaneous nerve", "BIC-L", 1, Event::movement, 195, false, "NICE 2013"},
      {"NICE 2013: phrenic nerve to musculocutaneous nerve, motor recovery of biceps at 262 days; "
       "123 mm",
       123, "musculocutaneous nerve", "BIC-L", 1, Event::movement, 262, false, "NICE 2013"},
      {"NICE 2013: phrenic nerve to musculocutaneous nerve, M3 at 9.5 months on average; 123 mm",
       123, "musculocutaneous nerve", "BIC-L", 1, Event::useful, 9.5 * kMonth},
      {"Mackinnon 2007: median branches to the radial nerve, first movement at 6 months in one "
       "patient; 40 mm to the finger extensors taken",
       40, "posterior interosseous nerve", "ED", 1, Event::movement, 6 * kMonth, false,
       "Mackinnon 2007"},
      {"J Hand Surg Am 1989 14:114: posterior interosseous grafts of 25 to 45 mm, full function a "
       "year after grafting (M3 is earlier); 55 mm with half of the graft",
       55, "posterior interosseous nerve", "ED", 2, Event::useful, 12 * kMonth},
  };
  return kExamples;
}

Summary plain_forecast(const Example& example) {
  return forecast_at(example.distance_mm, example.nerve, example.target, example.coaptations,
                     example.event, example.transfer_study != nullptr);
}

// Days from the forecast's first units to the published movement, a mean for each study.
std::map<std::string, double> movement_delays() {
  std::map<std::string, std::vector<double>> delays;
  for (const Example& e : examples()) {
    if (e.transfer_study == nullptr) continue;
    const Summary units =
        forecast_at(e.distance_mm, e.nerve, e.target, e.coaptations, Event::units, true);
    delays[e.transfer_study].push_back(e.published_days - units.p50);
  }
  std::map<std::string, double> means;
  for (const auto& [study, values] : delays) {
    double sum = 0.0;
    for (const double value : values) sum += value;
    means[study] = sum / static_cast<double>(values.size());
  }
  return means;
}

double mean_without(const std::string& study) {
  static const auto kDelays = movement_delays();
  double sum = 0.0;
  int n = 0;
  for (const auto& [name, delay] : kDelays) {
    if (name == study) continue;
    sum += delay;
    ++n;
  }
  return sum / n;
}

// What the forecast says without the figure's own study.
Summary forecast_of(const Example& example) {
  Summary forecast = plain_forecast(example);
  if (example.transfer_study == nullptr) return forecast;
  const double shift = mean_without(example.transfer_study) - mean_without("");
  for (double* day : {&forecast.p05, &forecast.p50, &forecast.p95}) *day += shift;
  return forecast;
}

struct Score {
  int rows = 0;
  std::vector<std::string> misses;
};

Score score(bool made_from) {
  Score result;
  for (const Example& example : examples()) {
    if (example.made_from != made_from) continue;
    ++result.rows;
    const Summary forecast = forecast_of(example);
    if (forecast.p05 <= example.published_days && example.published_days <= forecast.p95) continue;
    result.misses.emplace_back(example.source);
    UNSCOPED_INFO(example.source << ": published " << example.published_days << " d, forecast "
                                 << forecast.p05 << " to " << forecast.p95);
  }
  return result;
}

}  // namespace

TEST_CASE("published times that made no parameter lie in the forecast's 90 % interval",
          "[published]") {
  const Score others = score(false);
  CHECK(others.rows >= 15);
  CHECK(10 * static_cast<int>(others.misses.size()) <= 2 * others.rows);
  // docs/recovery-times.md names the misses; a change here belongs there too.
  CHECK(others.misses == std::vector<std::string>{});
}

TEST_CASE("published times that parameters were made from are met", "[published]") {
  CHECK(score(true).misses.empty());
}

TEST_CASE("the delay of the first movement after a transfer is the mean of its studies",
          "[published]") {
  CHECK(movement_delays().size() == 5);
  CHECK(tables().parameters.find("movement delay", "transfer", "operated").mean ==
        Approx(mean_without("")).margin(3.0));
  for (const auto& [study, delay] : movement_delays()) {
    CAPTURE(study, delay);
    CHECK(std::abs(mean_without(study) - mean_without("")) < 8.0);
  }
}

// Prints the table of docs/recovery-times.md.
TEST_CASE("the table of published times", "[.times]") {
  constexpr std::array<const char*, 4> kEvents{"axons arrive", "first units", "first movement",
                                               "useful"};
  for (const bool made_from : {false, true}) {
    for (const Example& e : examples()) {
      if (e.made_from != made_from) continue;
      const Summary forecast = forecast_of(e);
      const bool in = forecast.p05 <= e.published_days && e.published_days <= forecast.p95;
      std::cout << fmt::format(
          "| {} | {} | {:.0f} | {} | {} | {:.0f} | {:.0f} ({:.0f}-{:.0f}) | {} |\n", e.source,
          e.target, e.distance_mm, e.coaptations, kEvents[static_cast<std::size_t>(e.event)],
          e.published_days, forecast.p50, forecast.p05, forecast.p95, in ? "in" : "MISS");
    }
  }
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
  // Clopper-Pearson 95 % interval of the count. Finger and thumb lie above theirs: they stand among
  // the misses of docs/recovery-fractions.md.
  CHECK((wrist > 0.54 && wrist < 0.87));
  CHECK(thumb < wrist - 0.05);
}
