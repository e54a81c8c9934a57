// How well a follow-up does on patients whose truth is known. The figures stand in
// docs/followup.md; "[.followup-figures]" prints them.
#include "simulated_patients.hpp"

#include <fmt/format.h>

#include <iostream>

#include "models/followup/on_course.hpp"
#include "models/recovery/weighted.hpp"

using namespace followup_tests;
using namespace recovery_tests;
using namespace endplate;
using recovery::Progress;

namespace {

const followup::FollowupParameters& limits() {
  static const followup::FollowupParameters kLimits = [] {
    auto read = followup::FollowupParameters::from(tables().package);
    REQUIRE(read);
    return std::move(*read);
  }();
  return kLimits;
}

enum class Treatment { none, repair, graft };

// A radial nerve hurt in the arm, 400 mm from the end of its skin fibres.
struct Scenario {
  World world;
  std::vector<followup::Growth> possible;
  double start = 0.0;

  Scenario(Treatment treatment, std::size_t draws) {
    const recovery::Parameters& p = tables().parameters;
    const bool operated = treatment != Treatment::none;
    start = operated ? 5.0 : 0.0;
    const auto& rate = p.find("rate", "radial nerve", operated ? "operated" : "none");
    const auto& delay =
        operated ? p.find("coaptation delay", "any", "operated") : p.find("latency", "any", "none");
    world = {rate.mean, rate.sd, delay.mean, delay.sd, treatment == Treatment::graft ? 2 : 1,
             start};

    // About the mixture of a closed fracture, where nothing was done.
    auto lesion = lesion_on("radial nerve", 150.0, {0.4, 0.37, 0.23});
    if (operated) {
      lesion = repaired(lesion, start, treatment == Treatment::graft ? 2 : 1);
      lesion.chance_repair_fails = limits().repair_fails;
    }
    const Asked asked(radial_limb(), {lesion}, draws);
    std::size_t skin = 0;
    for (std::size_t t = 0; t < asked.question.targets.size(); ++t) {
      const auto& target = asked.question.targets[t].target;
      if (target.kind == recovery::TargetKind::sensory &&
          target.branch == node("superficial branch of radial nerve")) {
        skin = t;
      }
    }
    possible = followup::growth_of(asked.question, skin);
    world.way_mm = 0.0;
    for (const auto& growth : possible) world.way_mm = std::max(world.way_mm, growth.way_mm);
  }

  std::vector<double> visits(int count) const {
    std::vector<double> days;
    for (int k = 1; k <= count; ++k) days.push_back(start + 30.0 * k);
    return days;
  }

  std::vector<double> weigh(const std::vector<double>& days,
                            const std::vector<double>& seen) const {
    followup::TinelEvidence evidence{days, seen, {}};
    const auto n = static_cast<Eigen::Index>(days.size());
    evidence.covariance =
        Eigen::MatrixXd::Constant(n, n, std::pow(limits().tinel_place_error_mm, 2.0));
    evidence.covariance.diagonal().array() += std::pow(limits().tinel_error_mm, 2.0);
    const recovery::Slowing slowing{150.0, 750.0};
    return followup::likelihoods(possible, evidence, slowing, limits().tinel_in_block).relative;
  }

  Progress call(const std::vector<double>& days, const std::vector<double>& weights) const {
    followup::Basis basis;
    basis.anything_seen = true;
    basis.chance_no_growth_before =
        followup::progress_chances(possible, std::vector<double>(possible.size(), 1.0), limits())
            .no_advance;
    basis.last_days = days.back() - start;
    basis.visits = static_cast<int>(days.size());
    basis.span_days = days.back() - days.front();
    return followup::call(followup::progress_chances(possible, weights, limits()), basis, limits())
        .progress;
  }

  std::optional<Summary> rate(const std::vector<double>& weights) const {
    std::vector<double> rates;
    std::vector<double> kept;
    for (std::size_t i = 0; i < possible.size(); ++i) {
      if (possible[i].state != recovery::Course::State::growth || weights[i] < 1e-9) continue;
      rates.push_back(possible[i].rate);
      kept.push_back(weights[i]);
    }
    return recovery::summarise_weighted(rates, kept);
  }
};

struct Figures {
  int patients = 0;
  int covered_at_3 = 0;
  int covered_at_6 = 0;
  int growing_by_3 = 0;  // called no advance by the third visit, although it grows
  int still_by_3 = 0;    // the same, and it does not grow
  int still_by_4 = 0;
  double per_cent(int count) const { return 100.0 * count / patients; }
};

Figures measure(Treatment treatment, int patients, double observer_error_mm) {
  Scenario scenario(treatment, 1U << 14U);
  scenario.world.observer_error_mm = observer_error_mm;
  std::mt19937_64 random(20261128);
  Figures figures;
  figures.patients = patients;
  const auto days = scenario.visits(6);
  const auto first = [](const std::vector<double>& all, std::ptrdiff_t count) {
    return std::vector<double>(all.begin(), all.begin() + count);
  };
  const auto covers = [&](const std::vector<double>& weights, double truth) {
    const auto rate = scenario.rate(weights);
    return rate && rate->p05 <= truth && truth <= rate->p95;
  };
  // The first visit, at 30 days, is before any call.
  for (int i = 0; i < patients; ++i) {
    const TruePatient grows = draw_patient(scenario.world, true, random);
    const auto seen = observed_mm(scenario.world, grows, days, random);
    const auto at_2 = scenario.weigh(first(days, 2), first(seen, 2));
    const auto at_3 = scenario.weigh(first(days, 3), first(seen, 3));
    const auto at_6 = scenario.weigh(days, seen);
    figures.covered_at_3 += covers(at_3, grows.rate) ? 1 : 0;
    figures.covered_at_6 += covers(at_6, grows.rate) ? 1 : 0;
    const bool wrong = scenario.call(first(days, 2), at_2) == Progress::no_advance ||
                       scenario.call(first(days, 3), at_3) == Progress::no_advance;
    figures.growing_by_3 += wrong ? 1 : 0;

    const TruePatient still = draw_patient(scenario.world, false, random);
    const auto marks = observed_mm(scenario.world, still, days, random);
    for (const std::ptrdiff_t visits : {2, 3, 4}) {
      const auto weights = scenario.weigh(first(days, visits), first(marks, visits));
      if (scenario.call(first(days, visits), weights) != Progress::no_advance) continue;
      ++figures.still_by_4;
      figures.still_by_3 += visits <= 3 ? 1 : 0;
      break;
    }
  }
  return figures;
}

}  // namespace

TEST_CASE("90 per cent intervals of the rate cover the truth, and no advance is called rightly",
          "[followup]") {
  const auto treatment = GENERATE(Treatment::none, Treatment::repair, Treatment::graft);
  const Figures figures = measure(treatment, 1000, 10.0);
  CAPTURE(static_cast<int>(treatment), figures.covered_at_3, figures.covered_at_6,
          figures.growing_by_3, figures.still_by_3, figures.still_by_4);
  CHECK(figures.per_cent(figures.covered_at_3) >= 87.0);
  CHECK(figures.per_cent(figures.covered_at_3) <= 93.0);
  CHECK(figures.per_cent(figures.covered_at_6) >= 87.0);
  CHECK(figures.per_cent(figures.covered_at_6) <= 93.0);
  CHECK(figures.per_cent(figures.growing_by_3) <= 5.0);
  CHECK(figures.per_cent(figures.still_by_3) >= 90.0);
}

TEST_CASE("the figures of docs/followup.md", "[.followup-figures]") {
  for (const double error_mm : {10.0, 20.0}) {
    for (const auto treatment : {Treatment::none, Treatment::repair, Treatment::graft}) {
      const Figures f = measure(treatment, 8000, error_mm);
      std::cout << fmt::format(
                       "error {} mm, treatment {}: covered at 3 visits {:.1f} %, at 6 {:.1f} %; no "
                       "advance called by visit 3 when growing {:.1f} %, when not {:.1f} %, by 4 "
                       "{:.1f} %\n",
                       error_mm, static_cast<int>(treatment), f.per_cent(f.covered_at_3),
                       f.per_cent(f.covered_at_6), f.per_cent(f.growing_by_3),
                       f.per_cent(f.still_by_3), f.per_cent(f.still_by_4))
                << std::flush;
    }
  }
}
