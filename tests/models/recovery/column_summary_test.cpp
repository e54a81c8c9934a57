#include "models/recovery/column_summary.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <vector>

#include "models/recovery/four.hpp"
#include "models/recovery/random.hpp"

using namespace endplate;

namespace {

void check_against_sorting(const std::vector<float>& values) {
  const Summary expected = summarise_sample(std::vector<double>(values.begin(), values.end()));
  const auto found = recovery::summarise_column(values);
  REQUIRE(found);
  const double largest = std::max(std::abs(expected.p05), std::abs(expected.p95)) + expected.sd;
  CHECK(found->mean == Approx(expected.mean).margin(2e-7 * largest));
  CHECK(found->sd == Approx(expected.sd).margin(2e-6 * largest));
  // Not about: the values themselves.
  CHECK(found->p05 == Approx(expected.p05).epsilon(1e-14));
  CHECK(found->p50 == Approx(expected.p50).epsilon(1e-14));
  CHECK(found->p95 == Approx(expected.p95).epsilon(1e-14));
}

}  // namespace

TEST_CASE("a column's summary is that of its sorted values", "[recovery]") {
  const recovery::Draws draws(7);
  for (const std::size_t n :
       {1U, 2U, 3U, 19U, 20U, 21U, 199U, 200U, 201U, 202U, 256U, 1000U, 1023U, 4001U, 20000U}) {
    std::vector<float> spread;
    std::vector<float> tied;
    std::vector<float> skewed;  // most in one bin
    for (std::size_t i = 0; i < n; ++i) {
      const auto words = draws.words(static_cast<std::uint32_t>(i), static_cast<std::uint32_t>(n));
      const auto share = static_cast<float>(words[0]) * 0x1p-32F;
      spread.push_back(-300.0F + 1000.0F * share);
      tied.push_back(std::floor(7.0F * share));
      skewed.push_back(std::exp(9.0F * share * share * share * share));
    }
    check_against_sorting(spread);
    check_against_sorting(tied);
    check_against_sorting(skewed);
    if (n < 2) continue;
    skewed[n / 2] = 1e9F;  // all others in the first bin
    const auto found = recovery::summarise_column(skewed);
    const Summary expected = summarise_sample(std::vector<double>(skewed.begin(), skewed.end()));
    CHECK(found->p50 == Approx(expected.p50).epsilon(1e-14));
    CHECK(found->p05 == Approx(expected.p05).epsilon(1e-14));
  }
}

TEST_CASE("a column of one value has no spread, an empty one no summary", "[recovery]") {
  const auto found = recovery::summarise_column(std::vector<float>(1000, 12.5F));
  REQUIRE(found);
  CHECK(found->mean == 12.5);
  CHECK(found->sd == 0.0);
  CHECK(found->p05 == 12.5);
  CHECK(found->p95 == 12.5);
  CHECK_FALSE(recovery::summarise_column({}));
}

TEST_CASE("four lanes are chosen in their order", "[recovery]") {
  for (unsigned lanes = 0; lanes < 16; ++lanes) {
    recovery::FourInts mask{};
    std::vector<std::uint32_t> expected;
    for (unsigned lane = 0; lane < 4; ++lane) {
      if ((lanes >> lane & 1U) == 0) continue;
      mask[lane] = -1;
      expected.push_back(40 + lane);
    }
    std::array<std::uint32_t, 4> into{};
    const std::size_t found = recovery::choose_four(mask, 40, into.data());
    CHECK(std::vector<std::uint32_t>(into.begin(), into.begin() + static_cast<int>(found)) ==
          expected);
  }
}
