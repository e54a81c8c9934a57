// The transfer command from case file to both answers.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "tests/support/run_program.hpp"

namespace {

using Json = nlohmann::ordered_json;

auto transfer(const std::string& name, std::vector<std::string> more = {}) {
  std::vector<std::string> words{
      "transfer",  ENDPLATE_SOURCE_DIR "/datasets/cases/" + name + ".json",
      "--today",   "2026-11-29",
      "--samples", "400"};
  words.insert(words.end(), more.begin(), more.end());
  return endplate::test::run(words);
}

Json answer_of(const std::string& name) {
  const auto ran = transfer(name, {"--json"});
  CAPTURE(ran.err);
  REQUIRE(ran.status == 0);
  return Json::parse(ran.out);
}

const Json* candidate(const Json& answer, const std::string& id) {
  for (const Json& item : answer["candidates"]) {
    if (item["id"] == id) return &item;
  }
  return nullptr;
}

}  // namespace

TEST_CASE(
    "an upper trunk palsy is given a fascicle for the elbow and a triceps branch for the "
    "deltoid",
    "[cli][transfer]") {
  const Json answer = answer_of("upper-trunk-injury");
  for (const char* id : {"uln_fascicle_to_biceps", "tri_long_to_ax_ant"}) {
    CAPTURE(id);
    const Json* item = candidate(answer, id);
    REQUIRE(item != nullptr);
    CHECK((*item)["verdict"] == "feasible");
    CHECK((*item)["donor_state"] == "strong");
    CHECK((*item)["reach"]["state"] == "reaches");
    CHECK((*item)["regenerate_mm"]["p50"] > 0.0);
    CHECK((*item)["axons_arrive_days"]["p05"] > answer["days_since_injury"].get<double>());
    CHECK_FALSE((*item)["sources"].empty());
  }
}

TEST_CASE("a combination uses only what was shown to work and what does not get in its way",
          "[cli][transfer]") {
  for (const char* name :
       {"upper-trunk-injury", "global-plexus-avulsion", "humeral-shaft-radial-palsy",
        "high-median-injury", "axillary-palsy-after-dislocation", "musculocutaneous-injury"}) {
    const Json answer = answer_of(name);
    std::set<std::string> sewn;
    for (const Json& id : answer["combination"]) {
      CAPTURE(name, id);
      const Json* item = candidate(answer, id);
      REQUIRE(item != nullptr);
      const std::string verdict = (*item)["verdict"];
      CHECK((verdict == "feasible" || verdict == "marginal"));
      CHECK((*item)["donor_state"] == "strong");
      if ((*item)["kind"] == "nerve") CHECK(sewn.insert((*item)["reach"]["recipient"]).second);
    }
    for (const Json& item : answer["candidates"]) {
      const bool unknown = item["donor_state"] == "not judged" || item["donor_state"] == "dead";
      if (unknown) CHECK(item["verdict"] != "feasible");
    }
    for (const Json& item : answer["rejected"]) CHECK_FALSE(item["reason"].empty());
  }
}

// Common practice: the accessory nerve goes to the suprascapular nerve; intercostals or the phrenic
// nerve bend the elbow.
TEST_CASE("a donor goes where it does more", "[cli][transfer]") {
  const Json answer = answer_of("global-plexus-avulsion");
  std::set<std::string> chosen;
  for (const Json& id : answer["combination_if_shown"]) chosen.insert(id);
  CAPTURE(answer["combination_if_shown"].dump());
  CHECK(chosen.contains("san_to_ssn_anterior"));
  CHECK_FALSE(chosen.contains("san_to_mcn"));
  const bool elbow = chosen.contains("icn_to_mcn") || chosen.contains("icn_to_biceps_branch") ||
                     chosen.contains("phrenic_to_mcn");
  CHECK(elbow);
}

TEST_CASE("two transfers stand side by side, and one that is none is told why", "[cli][transfer]") {
  const auto ran =
      transfer("upper-trunk-injury", {"--compare", "tri_long_to_ax_ant,tri_lat_to_ax_ant"});
  REQUIRE(ran.status == 0);
  CHECK(ran.out.starts_with("RIGHT LIMB"));
  for (const char* point : {"Donor is", "Slack mm", "Axon ratio", "Costs", "Verdict"}) {
    CHECK(ran.out.find(point) != std::string::npos);
  }
  const auto rejected =
      transfer("upper-trunk-injury", {"--compare", "tri_long_to_ax_ant,san_to_ssn_anterior"});
  CHECK(rejected.status == 2);
  CHECK(rejected.out.empty());
  CHECK(rejected.err.find("is no candidate here") != std::string::npos);
  CHECK(transfer("upper-trunk-injury", {"--compare", "tri_long_to_ax_ant,xyz"}).status == 2);
}

TEST_CASE("the table of transfers fits a terminal and ends with the caution", "[cli][transfer]") {
  for (const char* name : {"upper-trunk-injury", "global-plexus-avulsion"}) {
    const auto ran = transfer(name);
    REQUIRE(ran.status == 0);
    CHECK(ran.out.find("Together") != std::string::npos);
    CHECK(ran.out.find("surgical judgement") != std::string::npos);
    std::istringstream lines(ran.out);
    for (std::string line; std::getline(lines, line);) {
      CAPTURE(line);
      CHECK(line.size() <= 100);
    }
  }
}

TEST_CASE("unpublished pairs stand apart, under a heading that says so", "[cli][transfer]") {
  const auto plain = transfer("humeral-shaft-radial-palsy");
  REQUIRE(plain.status == 0);
  CHECK(plain.out.find("NOT PUBLISHED") == std::string::npos);
  const auto ran = transfer("humeral-shaft-radial-palsy", {"--unpublished"});
  REQUIRE(ran.status == 0);
  const auto heading = ran.out.find("NOT PUBLISHED, geometry only");
  REQUIRE(heading != std::string::npos);
  CHECK(ran.out.find("Together") < heading);
  CHECK(ran.out.find("no outcome exists") > heading);
  std::istringstream lines(ran.out);
  for (std::string line; std::getline(lines, line);) {
    CAPTURE(line);
    CHECK(line.size() <= 100);
  }
  // All donors near a musculocutaneous nerve strong.
  std::string muscles = R"({"muscle": "BIC-S", "mrc": 0}, {"muscle": "BRA", "mrc": 0})";
  for (const char* strong : {"PT", "FCR", "FCU", "PL", "FDS", "FDP-I", "FDP-M", "FDP-R", "FDP-L",
                             "BR", "ECRL", "ECRB", "ECU", "SUP", "TRI-LH", "TRI-MH", "TRI-LAT"}) {
    muscles += std::string(R"(, {"muscle": ")") + strong + R"(", "mrc": 5})";
  }
  const auto path = std::filesystem::temp_directory_path() / "endplate_unpublished.json";
  std::ofstream(path) << R"({"endplate_case": 1, "limb": {"side": "right", "sex": "male"},
    "injuries": [{"nerve": "musculocutaneous nerve", "mechanism": "closed traction",
      "at": {"landmark": "coracoid process", "offset_mm": 60, "toward": "distal"},
      "complete": true, "date": "2026-06-01"}],
    "examination": {"date": "2026-08-01", "muscles": [)" +
                             muscles + "]}}";
  const auto json = endplate::test::run({"transfer", path.string(), "--today", "2026-11-29",
                                         "--samples", "400", "--unpublished", "--json"});
  std::filesystem::remove(path);
  CAPTURE(json.err);
  REQUIRE(json.status == 0);
  const Json answer = Json::parse(json.out);
  std::set<std::string> chosen;
  for (const char* set : {"combination", "combination_if_shown"}) {
    for (const Json& id : answer[set]) chosen.insert(id);
  }
  int unpublished = 0;
  for (const Json& item : answer["candidates"]) {
    if (item["published"] == true) continue;
    ++unpublished;
    CHECK(item["verdict"] == "marginal");
    CHECK(item["published_result"].is_null());
    CHECK_FALSE(chosen.contains(item["id"]));
  }
  CHECK(unpublished > 0);
  for (const Json& item : answer_of("upper-trunk-injury")["candidates"]) {
    CHECK(item["published"] == true);
  }
}

TEST_CASE("a birth palsy is told that the figures are no guide to it", "[cli][transfer]") {
  const Json answer = answer_of("birth-palsy");
  bool told = false;
  for (const Json& warning : answer["warnings"]) {
    told = told || warning.get<std::string>().find("no guide") != std::string::npos;
  }
  CHECK(told);
  CHECK(answer_of("upper-trunk-injury")["warnings"].empty());
}
