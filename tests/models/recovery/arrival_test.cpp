// The sampled days of arrival against the closed form, over many distances and operations.
#include <cmath>

#include "fixture.hpp"

using namespace recovery_tests;

namespace {

// Standard error of a sampled percentile: sqrt(p(1-p)/n) over the density there.
double percentile_error(const recovery::ArrivalLaw& law, double chance, double n) {
  const double at = law.quantile(chance);
  const double density = (law.cdf(at + 0.5) - law.cdf(at - 0.5));
  return std::sqrt(chance * (1.0 - chance) / n) / density;
}

}  // namespace

TEST_CASE("sampled percentiles of arrival equal the closed form within sampling error",
          "[recovery]") {
  const auto& p = tables().parameters;
  const recovery::Slowing slowing{p.find("rate reference distance", "any", "any").mean,
                                  p.find("slowing length", "any", "any").mean};
  const auto& latency = p.find("latency", "any", "none");
  const auto& coaptation = p.find("coaptation delay", "any", "operated");
  const MadeUpLimb limb = radial_limb();
  constexpr std::size_t kSamples = 20000;

  struct Operation {
    double days;
    int coaptations;  // 0: none
    double gap_mm;
  };
  int cases = 0;
  double worst = 0.0;
  for (const Operation& operation :
       {Operation{0, 0, 0}, {3, 1, 0}, {120, 1, 0}, {95, 2, 60}, {400, 2, 0}}) {
    auto lesion = lesion_on("radial nerve", 180.0);
    if (operation.coaptations > 0) {
      lesion = repaired(lesion, operation.days, operation.coaptations);
      lesion.gap_mm = operation.gap_mm;
    }
    const Asked asked(limb, {lesion}, kSamples);
    const auto result = recovery::forecast(asked.question);
    const bool operated = operation.coaptations > 0;
    const auto& rate = p.find("rate", "radial nerve", operated ? "operated" : "none");
    for (const auto& target : result.targets) {
      const double distance = target.distance_mm.mean;
      recovery::ArrivalLaw law;
      law.start_days = operation.days;
      law.delay_mean_days = operated ? operation.coaptations * coaptation.mean : latency.mean;
      law.delay_sd_days = operated ? std::sqrt(operation.coaptations) * coaptation.sd : latency.sd;
      law.transit_median_days = slowing.transit_days(distance, rate.median());
      law.transit_log_sd = rate.log_sd();
      REQUIRE(target.axons_arrive_days);
      for (const auto& [chance, sampled] : {std::pair{0.05, target.axons_arrive_days->p05},
                                            {0.5, target.axons_arrive_days->p50},
                                            {0.95, target.axons_arrive_days->p95}}) {
        const double error = percentile_error(law, chance, kSamples);
        const double z = (sampled - law.quantile(chance)) / error;
        worst = std::max(worst, std::abs(z));
      }
      ++cases;
    }
  }
  CHECK(cases >= 60);
  // All targets of one operation share the patients' rates, so the cases are far from independent:
  // 5 operations times 3 percentiles say how large the largest of them may be.
  CHECK(worst < 3.5);
}

TEST_CASE("the graft's way is longer by half the gap", "[recovery]") {
  const MadeUpLimb limb = radial_limb();
  auto with_gap = repaired(lesion_on("radial nerve", 180.0), 90.0, 2);
  with_gap.gap_mm = 60.0;
  const Asked without(limb, {repaired(lesion_on("radial nerve", 180.0), 90.0, 2)});
  const Asked with(limb, {with_gap});
  const auto a = recovery::forecast(without.question);
  const auto b = recovery::forecast(with.question);
  CHECK(with.of(b, "EI").distance_mm.mean - without.of(a, "EI").distance_mm.mean == Approx(30.0));
}
