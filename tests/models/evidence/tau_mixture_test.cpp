#include "models/evidence/tau_mixture.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>
#include <vector>

using namespace endplate::evidence;

TEST_CASE("the posterior of tau sums to one and without data is the prior", "[evidence]") {
  const LogNormalPrior prior{10.0, 0.5};
  const auto chance = tau_posterior({}, prior);
  CHECK(std::accumulate(chance.begin(), chance.end(), 0.0) == Approx(1.0));
  const std::vector<Effect> one{{50.0, 1.0}};
  CHECK(TauMixture(one, prior).median_tau() == Approx(10.0).epsilon(0.1));
}

TEST_CASE("studies that disagree raise tau above the prior, studies that agree lower it",
          "[evidence]") {
  const LogNormalPrior prior{10.0, 0.6};
  const std::vector<Effect> apart{{20, 1}, {100, 1}, {60, 1}};
  const std::vector<Effect> together{{60, 1}, {61, 1}, {60.5, 1}};
  CHECK(TauMixture(apart, prior).median_tau() > 12.0);
  CHECK(TauMixture(together, prior).median_tau() < 8.0);
  // The floor: two studies that happen to agree do not abolish the spread.
  CHECK(TauMixture(together, prior).median_tau() > 1.0);
}

TEST_CASE("a very sharp prior gives the intervals of a known tau", "[evidence]") {
  const LogNormalPrior sharp{10.0, 1e-3};
  const std::vector<Effect> effects{{50, 4}, {70, 9}};
  // The nearest value of the grid stands for the prior.
  const TauMixture mixture(effects, sharp);
  const auto fit = random_effects_at(effects, std::pow(mixture.median_tau(), 2));
  CHECK(mixture.mean() == Approx(fit.mean));
  CHECK(mixture.standard_error() == Approx(fit.standard_error));
  const auto expected = prediction_interval(fit, 0.9);
  CHECK(mixture.new_study_interval(0.9).low == Approx(expected.low).epsilon(1e-6));
  CHECK(mixture.new_study_interval(0.9).high == Approx(expected.high).epsilon(1e-6));
}

TEST_CASE("the intervals nest: mean within new study within single limb", "[evidence]") {
  const std::vector<Effect> effects{{50, 4}, {70, 9}, {58, 2}};
  const TauMixture mixture(effects, {8.0, 0.6});
  const auto mean = mixture.mean_interval(0.9);
  const auto study = mixture.new_study_interval(0.9);
  const auto limb = mixture.new_value_interval(0.9, 12.0);
  CHECK(study.low < mean.low);
  CHECK(mean.high < study.high);
  CHECK(limb.low < study.low);
  CHECK(study.high < limb.high);
  CHECK(mixture.new_value_interval(0.5, 12.0).high < limb.high);
  CHECK(std::accumulate(mixture.weights().begin(), mixture.weights().end(), 0.0) == Approx(1.0));
}
