// What is known of the limb's size reaches every command that uses it.
#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/support/run_program.hpp"

namespace {

using endplate::test::run;
using nlohmann::json;

const std::string kCases = ENDPLATE_SOURCE_DIR "/datasets/cases/";
const std::vector<std::string> kCommands{"check", "limb", "distance", "deficit", "recovery"};

json answer_to(const std::string& command, const std::string& file) {
  const auto ran = run({command, file, "--json", "--today", "2026-09-01"});
  CAPTURE(command, ran.err);
  REQUIRE(ran.status == 0);
  return json::parse(ran.out);
}

// The example with its ultrasound left out.
std::string without_ultrasound() {
  json file = json::parse(std::ifstream(kCases + "radial-nerve-found-by-ultrasound.json"));
  file["limb"].erase("ultrasound");
  const auto path = std::filesystem::temp_directory_path() /
                    ("endplate-no-ultrasound-" + std::to_string(getpid()) + ".json");
  std::ofstream(path) << file;
  return path.string();
}

}  // namespace

TEST_CASE("every command that uses the limb's size shows its warnings", "[src][limb]") {
  const std::string file = kCases + "shortened-arm-after-a-growth-arrest.json";
  for (const std::string& command : kCommands) {
    CAPTURE(command);
    const json document = answer_to(command, file);
    REQUIRE(document.at("warnings").size() == 1);
    const auto warning = document["warnings"][0].get<std::string>();
    CHECK(warning.find("/limb/measured/arm length: 248 mm is outside the published range") !=
          std::string::npos);
    CHECK(warning.find("Snyder et al. 1977") != std::string::npos);
    const auto text = run({command, file, "--today", "2026-09-01", "--quiet"});
    CHECK(text.status == 0);
    CHECK(text.out.find("248 mm") != std::string::npos);
    std::istringstream lines(text.out);
    for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 100);
    // A limb of common size has none.
    CHECK(answer_to(command, kCases + "ulnar-laceration-at-wrist.json").at("warnings").empty());
  }
}

TEST_CASE("what ultrasound found changes distance, deficit, recovery and limb", "[src][limb]") {
  const std::string with = kCases + "radial-nerve-found-by-ultrasound.json";
  const std::string without = without_ultrasound();
  const auto distance = [&](const std::string& file) {
    const json document = answer_to("distance", file);
    for (const json& one : document.at("distances")) {
      if (one["nerve"] == "radial nerve" && one["from"] == "lateral epicondyle" &&
          one["point"] == "pierces: lateral intermuscular septum") {
        return one["along_limb_mm"];
      }
    }
    return json();
  };
  CHECK(distance(with)["mean"].get<double>() == Approx(118.0).margin(2.0));
  CHECK(distance(with)["sd"].get<double>() < 3.1);
  CHECK(distance(without)["sd"].get<double>() > 10.0);

  const auto target_sd = [&](const std::string& file) {
    const json document = answer_to("recovery", file);
    for (const json& one : document.at("targets")) {
      if (one["id"] == "BR") return one["distance_mm"]["sd"].get<double>();
    }
    return 0.0;
  };
  CHECK(target_sd(with) > 0.0);
  CHECK(target_sd(with) < target_sd(without));

  const auto radial_sd = [&](const std::string& file) {
    const json document = answer_to("limb", file);
    for (const json& one : document.at("nerves")) {
      if (one["nerve"] == "radial nerve") return one["length_mm"]["sd"].get<double>();
    }
    return 0.0;
  };
  // The nerve ends at its bifurcation, which was found.
  CHECK(radial_sd(with) < 0.9 * radial_sd(without));
  CHECK(answer_to("deficit", with).at("assumptions") !=
        answer_to("deficit", without).at("assumptions"));
  std::filesystem::remove(without);
}
