#include "models/recovery/weighted.hpp"

#include <catch2/catch.hpp>
#include <vector>

using namespace endplate;

TEST_CASE("equal weights give the unweighted summary", "[recovery]") {
  const std::vector<double> values{9.0, 1.0, 4.0, 4.5, 2.0, 30.0, 7.0};
  const std::vector<double> weights(values.size(), 2.5);
  const Summary plain = summarise_sample(values);
  const auto weighted = recovery::summarise_weighted(values, weights);
  REQUIRE(weighted);
  CHECK(weighted->mean == Approx(plain.mean));
  CHECK(weighted->sd == Approx(plain.sd));
  CHECK(weighted->p05 == Approx(plain.p05));
  CHECK(weighted->p50 == Approx(plain.p50));
  CHECK(weighted->p95 == Approx(plain.p95));
}

TEST_CASE("values without weight do not count", "[recovery]") {
  const std::vector<double> values{1.0, 2.0, 3.0, 1000.0};
  const std::vector<double> weights{1.0, 1.0, 1.0, 0.0};
  const auto summary = recovery::summarise_weighted(values, weights);
  REQUIRE(summary);
  CHECK(summary->mean == Approx(2.0));
  CHECK(summary->p50 == Approx(2.0));
  CHECK_FALSE(recovery::summarise_weighted(values, std::vector<double>(4, 0.0)));
}

TEST_CASE("the effective size counts what unequal weights are worth", "[recovery]") {
  CHECK(recovery::effective_size(std::vector<double>{1.0, 1.0, 1.0, 1.0}) == Approx(4.0));
  CHECK(recovery::effective_size(std::vector<double>{1.0, 0.0, 0.0, 0.0}) == Approx(1.0));
}
