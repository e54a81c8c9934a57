#include "models/evidence/outcome.hpp"

#include <catch2/catch.hpp>
#include <stdexcept>

#include "models/evidence/data_package.hpp"

using namespace endplate::evidence;

TEST_CASE("a percentage is no fraction", "[evidence]") {
  CHECK(Fraction::from(0.45).has_value());
  CHECK(Fraction::from(0.0).has_value());
  CHECK(Fraction::from(1.0).has_value());
  for (const double wrong : {45.0, -0.1, 1.0001}) {
    const auto fraction = Fraction::from(wrong);
    REQUIRE_FALSE(fraction.has_value());
    CHECK_THAT(fraction.error().problems.front().mend, Catch::Contains("100"));
  }
}

TEST_CASE("outcomes compare within one scale only", "[evidence]") {
  const auto half = *Fraction::from(0.5);
  const auto most = *Fraction::from(0.9);
  CHECK(better({OutcomeScale::m4, most}, {OutcomeScale::m4, half}));
  CHECK_FALSE(better({OutcomeScale::m4, half}, {OutcomeScale::m4, most}));
  CHECK_THROWS_AS(better({OutcomeScale::m4, most}, {OutcomeScale::m3, half}),
                  std::invalid_argument);
  CHECK_THROWS_AS(better({OutcomeScale::whole_nerve_grade, most}, {OutcomeScale::m3, half}),
                  std::invalid_argument);
  // An author's own scale is not even comparable with another author's own scale.
  CHECK_THROWS_AS(better({OutcomeScale::other, most}, {OutcomeScale::other, half}),
                  std::invalid_argument);
}

TEST_CASE("every scale in the tables is one of the types, and its word survives the round",
          "[evidence]") {
  const auto package = DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package);
  for (const char* table : {"outcomes", "transfers"}) {
    for (const Row row : package->table(table)) {
      const auto word = row.text("outcome_scale");
      if (word.empty()) continue;
      const auto scale = outcome_scale_from(word);
      REQUIRE(scale);
      CHECK(to_string(*scale) == word);
    }
  }
  CHECK_FALSE(outcome_scale_from("M5"));
}
