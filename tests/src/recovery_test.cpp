// The recovery command from case file to both answers.
#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "program.hpp"
#include "tests/support/radial_case.hpp"

namespace {

using Json = nlohmann::ordered_json;

struct Ran {
  int status = 0;
  std::string out;
  std::string err;
  Json json() const { return Json::parse(out); }
};

Ran recovery(const Json& patient, std::vector<std::string> more) {
  const auto path = std::filesystem::temp_directory_path() /
                    ("endplate_recovery_test_" + std::to_string(getpid()) + ".json");
  std::ofstream(path) << patient.dump();
  std::vector<std::string> words{"endplate", "recovery", path.string()};
  words.insert(words.end(), more.begin(), more.end());
  words.insert(words.end(), {"--datasets", ENDPLATE_SOURCE_DIR "/datasets"});
  std::vector<const char*> argv;
  for (const std::string& word : words) argv.push_back(word.c_str());
  std::ostringstream out;
  std::ostringstream err;
  Ran ran;
  ran.status = endplate::cli::run_program(static_cast<int>(argv.size()), argv.data(), out, err);
  ran.out = out.str();
  ran.err = err.str();
  std::filesystem::remove(path);
  return ran;
}

Json radial(const char* mechanism = "fracture or dislocation") {
  return endplate::test::radial_case(mechanism, "2026-06-01");
}

const std::vector<std::string> kJson{"--json", "--today", "2026-06-10", "--samples", "500"};
const std::vector<std::string> kText{"--today", "2026-06-10", "--samples", "500"};

}  // namespace

TEST_CASE("recovery answers with the keys of the contract", "[cli][recovery]") {
  const Ran ran = recovery(radial(), kJson);
  REQUIRE(ran.status == 0);
  CHECK(ran.err.empty());
  const Json answer = ran.json();
  CHECK(endplate::test::begins_as_the_contract_says(answer));
  for (const char* key : {"next", "by_date", "unless", "reasons"}) {
    CHECK(answer["decision"].contains(key));
  }
  CHECK(answer["decision"]["by_date"] == "2026-08-31");
  REQUIRE(answer["targets"].size() > 10);
  double before = 0.0;
  for (const Json& target : answer["targets"]) {
    CAPTURE(target["target"].get<std::string>());
    for (const char* key :
         {"target", "kind", "distance_mm", "axons_arrive_days", "first_units_days",
          "first_movement_days", "useful_days", "chance_axons_in_time", "chance_useful"}) {
      CHECK(target.contains(key));
    }
    const bool motor = target["kind"] == "motor";
    CHECK(target["first_movement_days"].is_null() == !motor);
    if (!target["chance_useful"].is_null()) {
      CHECK(target["chance_useful"]["scale"] == (motor ? "M3" : "S3"));
      CHECK(target["chance_useful"].contains("p05"));
      CHECK(target["chance_useful"].contains("p95"));
    }
    const double arrive = target["axons_arrive_days"]["p50"].get<double>();
    CHECK(arrive >= before);
    before = arrive;
  }
  for (const char* key : {"best_before", "unlikely_after", "chance_by_date", "practice"}) {
    CHECK(answer["operation_timing"].contains(key));
  }
  CHECK(answer["operation_timing"]["chance_by_date"][0]["date"] == "2026-06-10");
  CHECK(answer["tinel_schedule"]["steps"].size() > 3);
  CHECK(answer["sources"].size() > 10);
}

TEST_CASE("recovery opens with side and decision and stays under a page", "[cli][recovery]") {
  const Ran ran = recovery(radial(), kText);
  REQUIRE(ran.status == 0);
  CHECK(ran.out.starts_with("RIGHT LIMB"));
  CHECK(ran.out.find("DECISION") < ran.out.find("Target"));
  CHECK(ran.out.find("Axons at a muscle are not") != std::string::npos);
  CHECK(ran.out.find("surgical judgement") != std::string::npos);
  std::istringstream lines(ran.out);
  std::string line;
  int count = 0;
  while (std::getline(lines, line)) {
    CAPTURE(line);
    CHECK(line.size() <= 100);
    ++count;
  }
  CHECK(count <= 66);
}

TEST_CASE("an open wound is explored whatever the forecast says", "[cli][recovery]") {
  const Json answer = recovery(radial("open sharp"), kJson).json();
  CHECK(answer["decision"]["next"].get<std::string>().starts_with("Explore"));
  CHECK(answer["decision"]["overdue"] == true);
  CHECK(answer["decision"]["by_date"] == "2026-06-10");
}

TEST_CASE("a red flag comes before the mechanism and keeps the forecast", "[cli][recovery]") {
  Json patient = radial();
  patient["red_flags"] = {"lost pulse"};
  const Json answer = recovery(patient, kJson).json();
  CHECK(answer["decision"]["rule"] == "flag_pulse");
  CHECK(answer["targets"].size() > 10);
}

TEST_CASE("birth palsy gets a decision and no adult forecast, even under a red flag",
          "[cli][recovery]") {
  Json patient = radial("birth");
  for (const bool flag : {false, true}) {
    if (flag) patient["red_flags"] = {"growing deficit"};
    const Ran ran = recovery(patient, kJson);
    REQUIRE(ran.status == 0);
    const Json answer = ran.json();
    CHECK(answer["targets"].empty());
    CHECK(answer["no_forecast"].get<std::string>().find("birth") != std::string::npos);
    CHECK(answer["tinel_schedule"].contains("says_nothing"));
  }
}

TEST_CASE("a case without an injury is outside the model and names the key", "[cli][recovery]") {
  const Ran ran = recovery(Json{{"endplate_case", 1}}, kJson);
  CHECK(ran.status == 3);
  CHECK(ran.out.empty());
  CHECK(ran.err.find("/injuries") != std::string::npos);
}

TEST_CASE("dates that cannot be are refused with their place", "[cli][recovery]") {
  Json future = radial();
  future["injuries"][0]["date"] = "2026-07-01";
  const Ran late = recovery(future, kJson);
  CHECK(late.status == 2);
  CHECK(late.out.empty());
  CHECK(late.err.starts_with("error: /injuries/0/date: "));

  Json before = radial();
  before["operations"] = Json::parse(
      R"([{"date": "2026-05-01", "state": "done", "done": [{"procedure": "repair"}]}])");
  CHECK(recovery(before, kJson).err.starts_with("error: /operations/0/date: "));
}

TEST_CASE("the same seed gives the same bytes, another seed others", "[cli][recovery]") {
  const Ran a = recovery(radial(), kJson);
  const Ran b = recovery(radial(), kJson);
  CHECK(a.out == b.out);
  auto other = kJson;
  other.insert(other.end(), {"--seed", "2"});
  CHECK(recovery(radial(), other).out != a.out);
}

TEST_CASE("a muscle that was not examined is not taken as normal", "[cli][recovery]") {
  Json one = radial();
  one["examination"] =
      Json::parse(R"({"date": "2026-06-05", "muscles": [{"muscle": "FCU", "mrc": 5}]})");
  // A normal muscle of another nerve says nothing of those below the lesion.
  const Json with = recovery(one, kJson).json();
  const Json without = recovery(radial(), kJson).json();
  CHECK(with["targets"] == without["targets"]);
  CHECK(with["findings_used"] == false);
}

TEST_CASE("a graft done starts from its date and closes the question of when to operate",
          "[cli][recovery]") {
  Json patient = radial("open sharp");
  patient["operations"] = Json::parse(R"([{"date": "2026-06-08", "state": "done",
      "gap_after_resection_mm": 40, "done": [{"procedure": "graft", "nerve": "radial nerve"}]}])");
  const Json answer = recovery(patient, kJson).json();
  CHECK(answer["decision"]["rule"] == "after_graft");
  CHECK(answer["lesions"][0]["repaired"] == true);
  CHECK(answer["operation_timing"]["chance_by_date"].empty());
  CHECK(answer["targets"][0]["axons_arrive_days"]["p05"].get<double>() > 7.0 + 30.0);
}

TEST_CASE("recovery says where Tinel points are weighed when it has some", "[cli][recovery]") {
  const auto mentions = [](const Json& patient) {
    const Ran ran = recovery(patient, kJson);
    REQUIRE(ran.status == 0);
    return ran.json()["assumptions"].dump().contains("followup weighs them");
  };
  Json patient = radial();
  CHECK_FALSE(mentions(patient));
  patient["observations"] = Json::parse(R"([{"date": "2026-06-08", "tinel": [
      {"nerve": "radial nerve",
       "at": {"landmark": "lateral epicondyle", "offset_mm": 110, "toward": "proximal"}}]}])");
  CHECK(mentions(patient));
}
