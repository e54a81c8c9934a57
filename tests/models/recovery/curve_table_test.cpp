// Tables in single precision against the functions that they stand for.
#include "models/recovery/curve_table.hpp"

#include <boost/math/distributions/normal.hpp>
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "models/recovery/growth.hpp"

using namespace endplate;

namespace {

// Spread over all 32 bits, with both ends and both sides of the middle.
std::vector<std::uint32_t> some_words() {
  std::vector<std::uint32_t> words{0U,          1U,          2U,          0x7ffffffeU, 0x7fffffffU,
                                   0x80000000U, 0x80000001U, 0xfffffffeU, 0xffffffffU};
  std::uint32_t word = 12345U;
  for (int i = 0; i < 5000; ++i) {
    word = word * 1664525U + 1013904223U;
    words.push_back(word);
    words.push_back(word >> (i % 29));
    words.push_back(~(word >> (i % 29)));
  }
  return words;
}

}  // namespace

TEST_CASE("quantiles of random words are those of the normal distribution", "[recovery]") {
  const auto& table = recovery::QuantileTable::normal();
  double worst = 0.0;
  for (const std::uint32_t word : some_words()) {
    // The upper half by symmetry: near 1 a chance has no digits left.
    const bool upper = word >= 0x80000000U;
    const double chance = (static_cast<double>(upper ? ~word : word) + 0.5) * 0x1p-32;
    const double z = boost::math::quantile(boost::math::normal(), chance);
    worst = std::max(worst, std::abs(double{table.at(word)} - (upper ? -z : z)));
  }
  CHECK(worst < 2e-6);
}

TEST_CASE("a table gives many words the same numbers as one by one", "[recovery]") {
  recovery::Parameter delay;
  delay.family = recovery::Family::lognormal;
  delay.mean = 21.0;
  delay.sd = 8.0;
  const auto table = recovery::QuantileTable::of(delay);
  const auto words = some_words();
  for (std::size_t count = 0; count < 12; ++count) {
    const std::span some(words.data() + 100, count);
    std::vector<float> filled(count);
    std::vector<float> added(count);
    const std::vector<float> before(count, 300.0F);
    table->fill(some, filled);
    table->add(some, before, added);
    for (std::size_t i = 0; i < count; ++i) {
      REQUIRE(filled[i] == table->at(some[i]));
      REQUIRE(added[i] == 300.0F + table->at(some[i]));
    }
  }
}

TEST_CASE("the window of a muscle is read from its table", "[recovery]") {
  const recovery::LogLogistic curve = recovery::log_logistic_from(540.0, 260.0);
  const recovery::CurveTable table([&](double days) { return curve.survival(days); });
  double sum = 0.0;
  std::vector<float> days;
  for (double day = 0.0; day < 20000.0; day += 3.7) {
    days.push_back(static_cast<float>(day));
    CHECK(double{table.at(days.back())} == Approx(curve.survival(day)).margin(5e-6));
    sum += curve.survival(day);
  }
  CHECK(table.sum(days) == Approx(sum).epsilon(1e-6));
}

TEST_CASE("the quick exponential function is right to single precision", "[recovery]") {
  for (double x = -80.0; x < 80.0; x += 0.0371) {
    const auto single = static_cast<float>(x);
    const float quick = recovery::quick_exp(recovery::FourFloats{single, 0.0F, 0.0F, 0.0F})[0];
    CHECK(double{quick} == Approx(std::exp(double{single})).epsilon(2e-7));
  }
}

TEST_CASE("slowing is the same in single precision", "[recovery]") {
  const recovery::Slowing slowing{150.0, 750.0};
  const recovery::SlowingCurve curve(slowing);
  for (double mm = 0.0; mm < 1200.0; mm += 7.3) {
    CHECK(double{curve.effective_mm(static_cast<float>(mm))} ==
          Approx(slowing.effective_mm(mm)).margin(5e-4));
  }
}
