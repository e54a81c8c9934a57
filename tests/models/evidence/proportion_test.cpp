#include "models/evidence/proportion.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <vector>

using namespace endplate::evidence;

TEST_CASE("the marginal chances of all counts of a study sum to one", "[evidence]") {
  for (const double tau : {0.0, 0.3, 1.0, 2.5}) {
    for (const int n : {1, 7, 60}) {
      double sum = 0.0;
      for (int events = 0; events <= n; ++events) {
        const std::vector<Count> one{{static_cast<double>(events), static_cast<double>(n)}};
        sum += std::exp(logit_normal_log_likelihood(one, -0.7, tau));
      }
      INFO("tau " << tau << " n " << n);
      CHECK(sum == Approx(1.0).epsilon(1e-7));
    }
  }
}

TEST_CASE("studies with the same share pool to it without spread", "[evidence]") {
  const std::vector<Count> counts{{10, 40}, {5, 20}, {25, 100}};
  const LogitNormal fit = fit_logit_normal(counts);
  CHECK(fit.tau == Approx(0.0).margin(1e-3));
  CHECK(1.0 / (1.0 + std::exp(-fit.mean)) == Approx(0.25).epsilon(1e-4));
  // The binomial error of 40 events among 160.
  CHECK(fit.standard_error == Approx(std::sqrt(1.0 / 40 + 1.0 / 120)).epsilon(1e-3));
}

TEST_CASE("the common tau of many groups is that of the groups that say something", "[evidence]") {
  const std::vector<Count> apart{{5, 50}, {25, 50}, {40, 50}};
  const std::vector<std::vector<Count>> groups{apart, {{3, 10}}, {{0, 10}, {0, 30}}};
  const double alone = common_tau(std::vector<std::vector<Count>>{apart});
  CHECK(common_tau(groups) == Approx(alone).epsilon(1e-3));
  // Maximum likelihood is too small by about the square root of (k - 1) / k.
  CHECK(fit_logit_normal(apart).tau / alone == Approx(std::sqrt(2.0 / 3.0)).epsilon(0.15));
  CHECK(common_tau(std::vector<std::vector<Count>>{{{3, 10}}}) == 0.0);
}

// Clopper and Pearson's limits for 0 of 10 at 95 %: 1 - 0.025^(1/10) (closed form).
TEST_CASE("a single study keeps its exact interval, also at none and at all", "[evidence]") {
  const auto none = pool_proportions(std::vector<Count>{{0, 10}}, 0.8, 0.95);
  CHECK(none.share == 0.0);
  CHECK(none.mean_interval.low == 0.0);
  CHECK(none.mean_interval.high == Approx(1.0 - std::pow(0.025, 0.1)));
  const auto all = pool_proportions(std::vector<Count>{{10, 10}}, 0.8, 0.95);
  CHECK(all.mean_interval.low == Approx(std::pow(0.025, 0.1)));
  CHECK(all.mean_interval.high == 1.0);
}

TEST_CASE("a floor on the spread between studies widens what a new study may find", "[evidence]") {
  const std::vector<Count> counts{{10, 40}, {5, 20}};
  const auto narrow = pool_proportions(counts, 0.0, 0.9);
  const auto wide = pool_proportions(counts, 1.0, 0.9);
  CHECK(wide.at_floor);
  CHECK(wide.new_study_interval.high > narrow.new_study_interval.high + 0.1);
  const auto own = pool_proportions(std::vector<Count>{{2, 50}, {45, 50}}, 0.5, 0.9);
  CHECK_FALSE(own.at_floor);
  CHECK(own.tau > 0.5);
}

TEST_CASE("no count, or no finite logit, is a fault of the caller", "[evidence]") {
  CHECK_THROWS_AS(pool_proportions({}, 0.0, 0.9), std::invalid_argument);
  CHECK_THROWS_AS(fit_logit_normal(std::vector<Count>{{0, 10}, {0, 5}}), std::invalid_argument);
}
