#include "models/evidence/random_effects.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <stdexcept>
#include <vector>

using namespace endplate::evidence;

TEST_CASE("studies that agree have no spread between them and pool by precision", "[evidence]") {
  const std::vector<Effect> effects{{10.0, 1.0}, {10.5, 4.0}, {9.8, 2.0}};
  for (const auto method :
       {TauMethod::reml, TauMethod::dersimonian_laird, TauMethod::paule_mandel}) {
    const RandomEffects fit = random_effects(effects, method);
    CHECK(fit.tau_squared == Approx(0.0).margin(1e-9));
    CHECK(fit.mean == Approx((10.0 + 10.5 / 4 + 9.8 / 2) / (1 + 0.25 + 0.5)));
    CHECK(fit.weights[0] == Approx(1.0 / 1.75));
  }
}

TEST_CASE("with equal variances the three estimates of tau coincide with the textbook's",
          "[evidence]") {
  // Variance of the values minus the sampling variance.
  const std::vector<Effect> effects{{40.0, 4.0}, {50.0, 4.0}, {66.0, 4.0}};
  const double expected = 172.0 - 4.0;
  for (const auto method :
       {TauMethod::reml, TauMethod::dersimonian_laird, TauMethod::paule_mandel}) {
    CHECK(random_effects(effects, method).tau_squared == Approx(expected));
  }
}

TEST_CASE("the restricted likelihood is highest at its own estimate of tau", "[evidence]") {
  const std::vector<Effect> effects{{126, 15}, {132, 6.4}, {142, 2}, {109, 8.3}};
  const double best = random_effects(effects, TauMethod::reml).tau_squared;
  const double top = restricted_log_likelihood(effects, best);
  for (const double factor : {0.5, 0.9, 0.99, 1.01, 1.1, 2.0}) {
    CHECK(restricted_log_likelihood(effects, factor * best) < top);
  }
}

TEST_CASE("shifting and scaling the effects shifts and scales what is pooled", "[evidence]") {
  const std::vector<Effect> effects{{126, 15}, {132, 6.4}, {142, 2}, {109, 8.3}};
  std::vector<Effect> other;
  for (const Effect& e : effects) other.push_back({7.0 - 3.0 * e.value, 9.0 * e.variance});
  for (const auto method :
       {TauMethod::reml, TauMethod::dersimonian_laird, TauMethod::paule_mandel}) {
    const auto a = random_effects(effects, method);
    const auto b = random_effects(other, method);
    CHECK(b.mean == Approx(7.0 - 3.0 * a.mean));
    CHECK(b.tau_squared == Approx(9.0 * a.tau_squared));
    CHECK(b.i_squared == Approx(a.i_squared));
    CHECK(b.q_p_value == Approx(a.q_p_value));
  }
}

TEST_CASE("a single study has no heterogeneity and keeps its own error", "[evidence]") {
  const std::vector<Effect> one{{42.0, 2.25}};
  const auto fit = random_effects(one, TauMethod::reml);
  CHECK(fit.mean == 42.0);
  CHECK(fit.standard_error == Approx(1.5));
  CHECK(fit.tau_squared == 0.0);
  CHECK(fit.q_p_value == 1.0);
}

TEST_CASE("nothing to pool and a variance of zero are faults of the caller", "[evidence]") {
  CHECK_THROWS_AS(random_effects({}, TauMethod::reml), std::invalid_argument);
  const std::vector<Effect> exact{{1.0, 0.0}, {2.0, 1.0}};
  CHECK_THROWS_AS(random_effects_at(exact, 0.0), std::invalid_argument);
}
