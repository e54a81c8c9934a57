// The plan command from case file to both answers.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "tests/support/radial_case.hpp"
#include "tests/support/run_program.hpp"

namespace {

using Json = nlohmann::ordered_json;
using endplate::test::ProgramRun;

ProgramRun plan(const std::string& name, std::vector<std::string> more) {
  std::vector<std::string> words{"plan", ENDPLATE_SOURCE_DIR "/datasets/cases/" + name + ".json"};
  words.insert(words.end(), {"--samples", "200", "--datasets", ENDPLATE_SOURCE_DIR "/datasets"});
  words.insert(words.end(), more.begin(), more.end());
  return endplate::test::run(words);
}

}  // namespace

TEST_CASE("plan answers with the keys of the contract", "[cli][plan]") {
  const ProgramRun ran = plan("humeral-shaft-radial-palsy", {"--json", "--today", "2026-09-20"});
  REQUIRE(ran.status == 0);
  CHECK(ran.err.empty());
  const Json answer = Json::parse(ran.out);
  CHECK(endplate::test::begins_as_the_contract_says(answer));
  for (const char* key : {"next", "by_date", "unless", "reasons"}) {
    CHECK(answer["decision"].contains(key));
  }
  REQUIRE(answer["options"].size() >= 6);
  std::set<std::string> kinds;
  int chances = 0;
  int movements = 0;
  for (const Json& option : answer["options"]) {
    CAPTURE(option["option"].get<std::string>());
    for (const char* key : {"option", "entry_condition", "targets", "chance_useful",
                            "first_movement_days", "donor_cost", "spends", "reasons", "sources"}) {
      CHECK(option.contains(key));
    }
    kinds.insert(option["kind"]);
    if (!option["chance_useful"].is_null()) {
      CHECK(option["chance_useful"].contains("scale"));
      CHECK(option["chance_useful"].contains("chance"));
      CHECK(option["chance_useful"].contains("n"));
      ++chances;
    }
    if (!option["first_movement_days"].is_null()) {
      for (const char* key : {"mean", "sd", "p05", "p50", "p95"}) {
        CHECK(option["first_movement_days"].contains(key));
      }
      ++movements;
    }
  }
  CHECK(chances >= 4);
  CHECK(movements >= 4);
  for (const char* kind :
       {"explore", "observe", "neurolysis", "direct repair", "cable graft", "tendon transfer"}) {
    CHECK(kinds.contains(kind));
  }
  CHECK(answer["would_change"].size() > 2);
  CHECK(answer["not_ranked"].size() > 2);
}

TEST_CASE("plan opens with side and decision, and fits the terminal", "[cli][plan]") {
  for (const char* name : {"humeral-shaft-radial-palsy", "global-plexus-avulsion", "birth-palsy"}) {
    CAPTURE(name);
    const ProgramRun ran = plan(name, {"--today", "2026-09-20"});
    REQUIRE(ran.status == 0);
    CHECK(ran.out.find("LIMB: options side by side") != std::string::npos);
    CHECK(ran.out.find("DECISION") < ran.out.find("Option"));
    CHECK(ran.out.find("surgical judgement") != std::string::npos);
    std::istringstream lines(ran.out);
    std::string line;
    while (std::getline(lines, line)) {
      CAPTURE(line);
      CHECK(line.size() <= 100);
    }
  }
}

TEST_CASE("plan and recovery decide alike", "[cli][plan]") {
  const std::vector<std::string> more{"--json", "--today", "2026-09-20"};
  const Json options = Json::parse(plan("upper-trunk-injury", more).out);
  std::vector<std::string> words{
      "recovery",   ENDPLATE_SOURCE_DIR "/datasets/cases/upper-trunk-injury.json",
      "--samples",  "200",
      "--datasets", ENDPLATE_SOURCE_DIR "/datasets"};
  words.insert(words.end(), more.begin(), more.end());
  const Json recovery = Json::parse(endplate::test::run(words).out);
  CHECK(options["decision"] == recovery["decision"]);
}

TEST_CASE("the same seed gives the same plan, byte for byte", "[cli][plan]") {
  const std::vector<std::string> more{"--json", "--today", "2026-09-20"};
  CHECK(plan("upper-trunk-injury", more).out == plan("upper-trunk-injury", more).out);
}

TEST_CASE("plan refuses a case without an injury", "[cli][plan]") {
  const ProgramRun ran =
      endplate::test::run({"plan", "--datasets", ENDPLATE_SOURCE_DIR "/datasets"});
  CHECK(ran.status == 3);
  CHECK(ran.out.empty());
  CHECK(ran.err.find("/injuries") != std::string::npos);
}
