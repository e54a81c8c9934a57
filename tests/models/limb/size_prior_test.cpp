#include <unistd.h>

#include "models/limb/size_prior.hpp"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <regex>
#include <sstream>

#include "limb_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;

namespace {

struct Regression {
  double intercept_mm = 0.0;
  double per_stature = 0.0;
  double residual_sd_mm = 0.0;
};

// As the notes of anthropometry.csv print it.
std::optional<Regression> regression_in(std::string_view notes) {
  static const std::regex form(
      R"(y = (-?[0-9.]+) ([+-]) ([0-9.]+)\*stature, r = [0-9.]+, SEE = ([0-9.]+) mm)");
  std::match_results<std::string_view::const_iterator> match;
  if (!std::regex_search(notes.begin(), notes.end(), match, form)) return std::nullopt;
  const double slope = std::stod(match[3].str());
  return Regression{std::stod(match[1].str()), match[2].str() == "-" ? -slope : slope,
                    std::stod(match[4].str())};
}

std::map<std::string, evidence::Row> ledger_rows() {
  std::map<std::string, evidence::Row> rows;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    rows.emplace(row.text("id"), row);
  }
  return rows;
}

// The tables with one file changed, read again.
Expected<SizePrior> with_changed(const std::string& file,
                                 const std::function<std::string(std::string)>& change) {
  namespace fs = std::filesystem;
  const fs::path copy =
      fs::temp_directory_path() / ("endplate_size_prior_test_" + std::to_string(getpid()));
  fs::remove_all(copy);
  fs::copy(ENDPLATE_SOURCE_DIR "/datasets", copy, fs::copy_options::recursive);
  std::ostringstream text;
  text << std::ifstream(copy / file).rdbuf();
  std::ofstream(copy / file) << change(text.str());
  const auto package = evidence::DataPackage::read(copy);
  fs::remove_all(copy);
  REQUIRE(package.has_value());
  return SizePrior::from(*package);
}

std::string without_line_with(const std::string& text, const std::string& part) {
  std::istringstream lines(text);
  std::string result;
  for (std::string line; std::getline(lines, line);) {
    if (line.find(part) == std::string::npos) result += line + '\n';
  }
  return result;
}

}  // namespace

TEST_CASE("figures carried over from the survey are those of its rows", "[models][limb]") {
  const auto rows = ledger_rows();
  int compared = 0;
  for (const evidence::Row row : own_tables().table("limb_size")) {
    const auto ids = row.list("anthropometry_ids");
    if (row.text("provenance") != "read" || ids.size() != 1) continue;
    const evidence::Row& source = rows.at(ids.front());
    INFO(row.text("measure") << " " << ids.front());
    CHECK(row.number("mean_mm") == source.number("mean_mm"));
    CHECK(row.number("sd_mm") == source.number("sd_mm"));
    CHECK(row.text("sex") == source.text("sex"));
    if (row.text("measure") == "stature") continue;
    const auto printed = regression_in(source.text("notes"));
    REQUIRE(printed.has_value());
    CHECK(row.number("intercept_mm").value() == printed->intercept_mm);
    CHECK(row.number("per_stature").value() == printed->per_stature);
    CHECK(row.number("residual_sd_mm").value() == printed->residual_sd_mm);
    ++compared;
  }
  CHECK(compared == 26);
  for (const evidence::Row row : own_tables().table("limb_growth")) {
    if (row.text("measure") == "stature") continue;
    CHECK(row.number("mean_mm") ==
          rows.at(std::string(row.text("anthropometry_id"))).number("mean_mm"));
  }
}

TEST_CASE("correlations that claim to be read follow from the rows they name", "[models][limb]") {
  const auto rows = ledger_rows();
  int derived = 0;
  for (const evidence::Row row : own_tables().table("limb_size_correlations")) {
    if (row.text("provenance") != "read") continue;
    const auto ids = row.list("anthropometry_ids");
    REQUIRE(ids.size() == 3);
    const auto spread = [&](std::size_t i) {
      return regression_in(rows.at(ids[i]).text("notes")).value().residual_sd_mm;
    };
    const double a = spread(0);
    const double b = spread(1);
    const double combined = spread(2);
    const bool difference =
        rows.at(ids[2]).text("measure").find("difference") != std::string_view::npos;
    const double r = (combined * combined - a * a - b * b) / (2.0 * a * b) * (difference ? -1 : 1);
    CHECK(row.number("residual_correlation").value() == Approx(r).margin(0.0006));
    ++derived;
  }
  CHECK(derived == 4);
}

TEST_CASE("the spread of a measure is that of stature and of what stature leaves",
          "[models][limb]") {
  const auto prior = SizePrior::from(own_tables());
  REQUIRE(prior.has_value());
  const Gaussian& man = prior->adult(casefile::Sex::male);
  const Eigen::Index arm = prior->index_of("acromion-radiale length");
  CHECK(man.covariance(arm, arm) == Approx(std::pow(0.2028 * 68.6, 2) + 10.6 * 10.6));
  CHECK(man.covariance(arm, 0) == Approx(0.2028 * 68.6 * 68.6));
}

TEST_CASE("a missing pair and impossible correlations are faults of the tables", "[models][limb]") {
  const auto missing = with_changed("limb_size_correlations.csv", [](const std::string& text) {
    return without_line_with(text, "hand length,hand breadth,both");
  });
  REQUIRE_FALSE(missing.has_value());
  CHECK(missing.error().fault == Fault::internal);
  CHECK(missing.error().problems.size() == 2);

  const auto impossible = with_changed("limb_size_correlations.csv", [](std::string text) {
    const std::string good = "hand breadth,hand circumference,both,0.85";
    text.replace(text.find(good), good.size(), "hand breadth,hand circumference,both,-0.95");
    return text;
  });
  REQUIRE_FALSE(impossible.has_value());
  CHECK(impossible.error().problems.front().what.find("contradict") != std::string::npos);
}

TEST_CASE("a child's measures lie on the straight line between two ages", "[models][limb]") {
  const auto prior = SizePrior::from(own_tables());
  REQUIRE(prior.has_value());
  const auto hand_mm = [&](double age_years) {
    return prior->child(casefile::Sex::male, age_years).mean[prior->index_of("hand length")];
  };
  CHECK(hand_mm(10.0) == Approx(151.0));  // row AN_359, 10 y
  CHECK(hand_mm(11.0) == Approx(155.0));
  CHECK(hand_mm(10.25) == Approx(152.0));
  // Younger than its first row (1 month, body length 563) a hand shrinks with body length.
  CHECK(hand_mm(0.0) == Approx(68.0 * 499.0 / 563.0));
  CHECK(prior->youngest_years() == Approx(0.083));
  const Gaussian child = prior->child(casefile::Sex::male, 10.0);
  const auto at = [&](const char* name) { return child.mean[prior->index_of(name)]; };
  // Forearm: what the hand leaves of forearm-hand length, in the adult's proportion.
  CHECK(at("radiale-stylion length") ==
        Approx((at("forearm-hand length") - 151.0) * 267.9 / (480.2 - 193.3)));
}
