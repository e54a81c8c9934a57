#include "models/evidence/quantity.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "models/evidence/pool.hpp"
#include "models/evidence/spread_model.hpp"
#include "models/evidence/study_effect.hpp"

using namespace endplate::evidence;

namespace {

const std::vector<std::string> kColumns{"id",
                                        "direction",
                                        "posture",
                                        "mean_mm",
                                        "sd_mm",
                                        "min_mm",
                                        "max_mm",
                                        "fraction",
                                        "fraction_sd",
                                        "fraction_of",
                                        "n",
                                        "population",
                                        "population_line",
                                        "population_line_mm",
                                        "prevalence_fraction",
                                        "tree_node",
                                        "point_std",
                                        "landmark_std",
                                        "stand_in",
                                        "study",
                                        "provenance"};

// Rows by column name; what is not named is empty, but for a nerve, a point and a landmark.
Table table_of(const std::vector<std::map<std::string, std::string>>& rows) {
  Cells cells;
  std::vector<std::size_t> lines;
  for (const auto& row : rows) {
    for (const std::string& column : kColumns) {
      static const std::map<std::string, std::string> usual{{"tree_node", "ulnar nerve"},
                                                            {"point_std", "origin"},
                                                            {"landmark_std", "medial epicondyle"},
                                                            {"provenance", "read"}};
      const auto given = row.find(column);
      const auto otherwise = usual.find(column);
      cells.push_back(given != row.end()         ? given->second
                      : otherwise != usual.end() ? otherwise->second
                                                 : "");
    }
    lines.push_back(lines.size() + 2);
  }
  return Table("landmark_distances", kColumns, cells, lines);
}

const Imputation kImpute{[](double) { return 5.0; }, 9.0};

}  // namespace

TEST_CASE("proximal and distal are one quantity with a sign", "[evidence]") {
  const auto found = quantities(table_of(
      {{{"id", "a"}, {"study", "A"}, {"direction", "proximal"}, {"mean_mm", "32"}, {"n", "10"}},
       {{"id", "b"},
        {"study", "B"},
        {"direction", "distal"},
        {"mean_mm", "18"},
        {"min_mm", "-4"},
        {"max_mm", "30"},
        {"n", "10"}}}));
  REQUIRE(found.size() == 1);
  CHECK(found[0].axis == Axis::axial);
  CHECK(found[0].rows[0].mean_mm == 32.0);
  CHECK(found[0].rows[1].mean_mm == -18.0);
  // The range turns over with the sign.
  CHECK(found[0].rows[1].min_mm == -30.0);
  CHECK(found[0].rows[1].max_mm == 4.0);
  CHECK(direction_word(Axis::axial, -18.0) == "distal");
}

TEST_CASE("other axes, postures and measures are other quantities", "[evidence]") {
  const auto found = quantities(
      table_of({{{"id", "a"}, {"study", "A"}, {"direction", "distal"}, {"mean_mm", "32"}},
                {{"id", "b"}, {"study", "A"}, {"direction", "radial"}, {"mean_mm", "12"}},
                {{"id", "c"},
                 {"study", "A"},
                 {"direction", "distal"},
                 {"posture", "forearm pronated"},
                 {"mean_mm", "40"}},
                {{"id", "d"},
                 {"study", "A"},
                 {"direction", "distal"},
                 {"posture", "forearm supinated"},
                 {"mean_mm", "33"}},
                {{"id", "e"}, {"study", "B"}, {"prevalence_fraction", "0.4"}, {"n", "20"}}}));
  REQUIRE(found.size() == 4);
  CHECK(found[0].rows.size() == 2);  // supinated is the anatomical position
  CHECK(found[2].posture == "forearm pronated");
  CHECK(found[3].measure == Measure::prevalence);
  CHECK(found[0].name() != found[2].name());
}

TEST_CASE("a row that cannot be pooled is shown with its reason", "[evidence]") {
  const auto found = quantities(table_of(
      {{{"id", "a"},
        {"study", "A"},
        {"direction", "distal"},
        {"mean_mm", "0"},
        {"stand_in", "a bound"}},
       {{"id", "b"},
        {"study", "B"},
        {"direction", "distal"},
        {"mean_mm", "5"},
        {"population", "fetal"}},
       {{"id", "c"}, {"study", "C"}, {"direction", "distal"}, {"min_mm", "5"}, {"max_mm", "9"}},
       {{"id", "d"},
        {"study", "D"},
        {"direction", "distal"},
        {"fraction", "0.4"},
        {"fraction_of", "arm length"}},
       {{"id", "e"}, {"study", "E"}, {"direction", "distal"}, {"mean_mm", "30"}, {"n", "9"}},
       {{"id", "f"}, {"study", "E"}, {"direction", "distal"}, {"mean_mm", "30"}, {"n", "9"}}}));
  REQUIRE(found.size() == 1);
  const auto& rows = found[0].rows;
  CHECK(rows[0].left_out == "a bound");
  CHECK(rows[1].left_out == "fetal limbs");
  CHECK(rows[2].left_out == "no mean is printed");
  CHECK(rows[3].left_out == "a fraction of a line whose length is not stated");
  CHECK(rows[4].left_out.empty());
  CHECK(rows[5].left_out == "the same measurement as e");
  CHECK(study_effects(found[0], kImpute).size() == 1);
}

TEST_CASE("a fraction comes to millimetres by the length of its line", "[evidence]") {
  const auto table = table_of({{{"id", "stated"},
                                {"study", "A"},
                                {"direction", "distal"},
                                {"fraction", "0.18"},
                                {"fraction_sd", "0.04"},
                                {"fraction_of", "forearm"},
                                {"population_line", "forearm"},
                                {"population_line_mm", "241"},
                                {"n", "30"}},
                               {{"id", "asked"},
                                {"study", "B"},
                                {"direction", "distal"},
                                {"fraction", "0.2"},
                                {"fraction_of", "arm length"},
                                {"n", "30"}}});
  const auto plain = quantities(table);
  CHECK(plain[0].rows[0].mean_mm.value() == Approx(-0.18 * 241));
  CHECK(plain[0].rows[0].sd_mm.value() == Approx(0.04 * 241));
  CHECK_FALSE(plain[0].rows[1].left_out.empty());
  const auto scaled = quantities(table, [](std::string_view line) {
    return line == "arm length" ? std::optional(300.0) : std::nullopt;
  });
  CHECK(scaled[0].rows[1].mean_mm.value() == Approx(-60.0));
  CHECK(scaled[0].rows[1].left_out.empty());
}

// Cochrane Handbook, section 6.5.2.10: two groups of one study as one sample.
TEST_CASE("men and women of one study are one sample", "[evidence]") {
  const auto found = quantities(table_of({{{"id", "x-m"},
                                           {"study", "A"},
                                           {"direction", "distal"},
                                           {"mean_mm", "18"},
                                           {"sd_mm", "11"},
                                           {"n", "52"}},
                                          {{"id", "x-f"},
                                           {"study", "A"},
                                           {"direction", "distal"},
                                           {"mean_mm", "12"},
                                           {"sd_mm", "9"},
                                           {"n", "44"}}}));
  const auto effects = study_effects(found[0], kImpute);
  REQUIRE(effects.size() == 1);
  CHECK(effects[0].n == 96.0);
  CHECK(effects[0].mean_mm == Approx(-(52 * 18 + 44 * 12) / 96.0));
  const double variance = (51 * 121.0 + 43 * 81.0 + 52 * 44 / 96.0 * 36.0) / 95.0;
  CHECK(effects[0].sd_mm == Approx(std::sqrt(variance)));
}

TEST_CASE("two looks at the same limbs do not halve the error", "[evidence]") {
  const auto found = quantities(table_of({{{"id", "left"},
                                           {"study", "A"},
                                           {"direction", "along-nerve"},
                                           {"mean_mm", "200"},
                                           {"sd_mm", "20"},
                                           {"n", "16"}},
                                          {{"id", "right"},
                                           {"study", "A"},
                                           {"direction", "along-nerve"},
                                           {"mean_mm", "210"},
                                           {"sd_mm", "20"},
                                           {"n", "16"}}}));
  const auto effects = study_effects(found[0], kImpute);
  REQUIRE(effects.size() == 1);
  CHECK(effects[0].mean_mm == Approx(205.0));
  CHECK(effects[0].standard_error_mm == Approx(5.0));
}

TEST_CASE("a missing spread is recovered from the range or imputed, and says so", "[evidence]") {
  const auto found = quantities(
      table_of({{{"id", "a"},
                 {"study", "A"},
                 {"direction", "distal"},
                 {"mean_mm", "40"},
                 {"min_mm", "30"},
                 {"max_mm", "50"},
                 {"n", "25"}},
                {{"id", "b"}, {"study", "B"}, {"direction", "distal"}, {"mean_mm", "42"}}}));
  const auto effects = study_effects(found[0], kImpute);
  REQUIRE(effects.size() == 2);
  CHECK(effects[0].sd_source == SpreadSource::from_range);
  CHECK(effects[0].sd_mm == Approx(20.0 / 3.931).epsilon(0.02));
  CHECK(effects[1].sd_source == SpreadSource::imputed);
  CHECK(effects[1].sd_mm == 5.0);
  CHECK(effects[1].n_assumed);
  CHECK(effects[1].n == 9.0);
}
