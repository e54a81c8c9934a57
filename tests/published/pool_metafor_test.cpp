// Pooling against R's metafor (Viechtbauer W, J Stat Softw 2010;36(3)), on a published data set and
// on every quantity of our own tables that two or more studies report.
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "models/evidence/csv.hpp"
#include "models/evidence/pool.hpp"
#include "models/evidence/random_effects.hpp"
#include "models/evidence/share_quantity.hpp"

namespace {

namespace fs = std::filesystem;
using namespace endplate::evidence;

// Thirteen trials of vaccination against tuberculosis: cases and non-cases, vaccinated and control
// (Colditz GA et al., JAMA 1994;271:698; metafor's dat.bcg).
std::vector<Effect> bcg_log_risk_ratios() {
  const std::vector<std::array<double, 4>> trials{
      {4, 119, 11, 128},       {6, 300, 29, 274},        {3, 228, 11, 209},
      {62, 13536, 248, 12619}, {33, 5036, 47, 5761},     {180, 1361, 372, 1079},
      {8, 2537, 10, 619},      {505, 87886, 499, 87892}, {29, 7470, 45, 7232},
      {17, 1699, 65, 1600},    {186, 50448, 141, 27197}, {5, 2493, 3, 2338},
      {27, 16886, 29, 17825}};
  std::vector<Effect> effects;
  for (const auto& [a, b, c, d] : trials) {
    effects.push_back({std::log(a / (a + b)) - std::log(c / (c + d)),
                       1.0 / a - 1.0 / (a + b) + 1.0 / c - 1.0 / (c + d)});
  }
  return effects;
}

const DataPackage& shipped() {
  static const auto package = DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package.has_value());
  return *package;
}

std::vector<std::vector<Count>> counts_of_shares() {
  std::vector<std::vector<Count>> groups;
  for (const ShareQuantity& quantity : share_quantities(shipped())) {
    const auto pooled = pool(quantity, 1.0, 0.9);
    if (pooled && pooled->counts.size() > 1) groups.push_back(pooled->counts);
  }
  return groups;
}

// Figures by "GROUP METHOD", in the order of the script's columns.
using Reference = std::map<std::string, std::vector<double>>;

// Nothing when R or metafor is not installed.
std::optional<Reference> ask_r(const std::vector<std::vector<Effect>>& effects,
                               const std::vector<std::vector<Count>>& counts) {
  if (std::system("Rscript --vanilla -e 'library(metafor)' >/dev/null 2>&1") != 0) return {};
  const fs::path folder =
      fs::temp_directory_path() / ("endplate_metafor_" + std::to_string(getpid()));
  fs::create_directories(folder);
  {
    std::ofstream file(folder / "effects.csv");
    file.precision(17);
    file << "group,value,variance\n";
    for (std::size_t i = 0; i < effects.size(); ++i) {
      for (const Effect& e : effects[i]) file << i << ',' << e.value << ',' << e.variance << '\n';
    }
    std::ofstream other(folder / "counts.csv");
    other << "group,events,n\n";
    for (std::size_t i = 0; i < counts.size(); ++i) {
      for (const Count& c : counts[i]) other << i << ',' << c.events << ',' << c.n << '\n';
    }
  }
  const std::string command =
      "Rscript --vanilla '" ENDPLATE_SOURCE_DIR "/tests/published/pool_reference.R' '" +
      (folder / "effects.csv").string() + "' '" + (folder / "counts.csv").string() + "' '" +
      (folder / "out.csv").string() + "' >/dev/null 2>&1";
  REQUIRE(std::system(command.c_str()) == 0);
  std::ifstream in(folder / "out.csv");
  std::ostringstream text;
  text << in.rdbuf();
  const auto csv = parse_csv(text.str(), "out.csv");
  REQUIRE(csv);
  Reference reference;
  const std::size_t columns = csv->header.size();
  for (std::size_t row = 0; row < csv->lines.size(); ++row) {
    const auto cell = [&](std::size_t column) {
      return std::string(csv->cells[row * columns + column]);
    };
    auto& values = reference[cell(0) + " " + cell(1)];
    for (std::size_t i = 2; i < columns; ++i) values.push_back(std::stod(cell(i)));
  }
  fs::remove_all(folder);
  return reference;
}

}  // namespace

// Figures as printed in J Stat Softw 2010;36(3), section on the random-effects model (log risk
// ratios, restricted maximum likelihood).
TEST_CASE("the vaccination trials pool to the figures that metafor's paper prints", "[published]") {
  const auto effects = bcg_log_risk_ratios();
  const RandomEffects fit = random_effects(effects, TauMethod::reml);
  CHECK(fit.mean == Approx(-0.7145).margin(5e-5));
  CHECK(fit.standard_error == Approx(0.1798).margin(5e-5));
  CHECK(fit.tau_squared == Approx(0.3132).margin(5e-5));
  CHECK(fit.q == Approx(152.2330).margin(5e-5));
  CHECK(fit.i_squared == Approx(0.9222).margin(5e-5));
  CHECK(confidence_interval(fit, 0.95).low == Approx(-1.0669).margin(5e-5));
  CHECK(confidence_interval(fit, 0.95).high == Approx(-0.3622).margin(5e-5));
}

TEST_CASE("pooling agrees with R's metafor on the trials and on our own tables", "[published]") {
  const auto all = quantities(shipped().table("landmark_distances"));
  const SpreadModel spread = SpreadModel::estimate(all);
  std::vector<std::vector<Effect>> groups{bcg_log_risk_ratios()};
  for (const Quantity& quantity : all) {
    const auto pooled = pool(quantity, spread);
    if (pooled && pooled->studies.size() > 1) groups.push_back(effects_of(pooled->studies));
  }
  REQUIRE(groups.size() > 40);
  const auto counts = counts_of_shares();
  REQUIRE(counts.size() >= 5);

  const auto reference = ask_r(groups, counts);
  if (!reference) {
    WARN("R or its package metafor is not installed: the comparison was left out");
    return;
  }
  REQUIRE(reference->size() == 3 * groups.size() + counts.size());

  for (std::size_t i = 0; i < groups.size(); ++i) {
    for (const auto& [method, name] :
         {std::pair{TauMethod::reml, " REML"}, std::pair{TauMethod::dersimonian_laird, " DL"},
          std::pair{TauMethod::paule_mandel, " PM"}}) {
      const RandomEffects fit = random_effects(groups[i], method);
      const auto ci = confidence_interval(fit, 0.95);
      const auto pi = prediction_interval(fit, 0.95);
      const std::vector<double> ours{fit.mean,
                                     fit.standard_error,
                                     std::sqrt(fit.tau_squared),
                                     fit.q,
                                     fit.i_squared,
                                     ci.low,
                                     ci.high,
                                     pi.low,
                                     pi.high};
      const auto& theirs = reference->at(std::to_string(i) + name);
      INFO("group " << i << name);
      for (std::size_t j = 0; j < ours.size(); ++j) {
        INFO("figure " << j);
        CHECK(ours[j] == Approx(theirs[j]).epsilon(1e-4).margin(1e-4));
      }
    }
  }
  for (std::size_t i = 0; i < counts.size(); ++i) {
    INFO("shares " << i);
    const auto& theirs = reference->at(std::to_string(i) + " GLMM");
    const LogitNormal fit = fit_logit_normal(counts[i]);
    // The likelihood is flat at its top: its height is the sharp test, its place a milder one.
    CHECK(fit.log_likelihood == Approx(theirs[3]).margin(1e-5));
    CHECK(fit.mean == Approx(theirs[0]).margin(2e-3));
    CHECK(fit.tau == Approx(theirs[2]).margin(5e-3));
    CHECK(logit_normal_log_likelihood(counts[i], theirs[0], theirs[2]) ==
          Approx(theirs[3]).margin(1e-6));
  }
}
