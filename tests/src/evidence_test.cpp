#include <algorithm>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "models/evidence/evidence_answer.hpp"
#include "src/output/evidence_views.hpp"
#include "src/program.hpp"

namespace {

struct Run {
  int status = 0;
  std::string out;
  std::string err;
};

Run evidence(std::vector<std::string> arguments) {
  arguments.insert(arguments.begin(), {"endplate", "evidence"});
  arguments.insert(arguments.end(), {"--datasets", ENDPLATE_SOURCE_DIR "/datasets"});
  std::vector<const char*> argv;
  for (const std::string& a : arguments) argv.push_back(a.c_str());
  std::ostringstream out;
  std::ostringstream err;
  Run run;
  run.status = endplate::cli::run_program(static_cast<int>(argv.size()), argv.data(), out, err);
  run.out = out.str();
  run.err = err.str();
  return run;
}

nlohmann::json json_of(std::vector<std::string> arguments) {
  arguments.push_back("--json");
  const Run run = evidence(std::move(arguments));
  REQUIRE(run.status == 0);
  return nlohmann::json::parse(run.out);
}

std::size_t widest_line(const std::string& text) {
  std::istringstream lines(text);
  std::size_t widest = 0;
  for (std::string line; std::getline(lines, line);) {
    widest = std::max(widest, static_cast<std::size_t>(std::ranges::count_if(
                                  line, [](char c) { return (c & 0xC0) != 0x80; })));
  }
  return widest;
}

const std::vector<std::string> kDorsalBranch{
    "--nerve", "dorsal branch of ulnar nerve", "--point", "origin", "--from", "ulnar styloid"};

}  // namespace

TEST_CASE("evidence shows rows, weights, heterogeneity and a forest plot", "[cli]") {
  const Run run = evidence(kDorsalBranch);
  CHECK(run.status == 0);
  CHECK(run.err.empty());
  for (const char* part :
       {"EITHER SIDE", "dcb-origin-us-leeeh1996", "87.0", "50 %", "the same measurement as",
        "SD imputed", "■", "◆", "pooled mean", "mean of a new study", "a single limb", "REML",
        "DerSimonian-Laird", "Paule-Mandel", "Q 11", "I² 9",
        "Assumed:", "not to replace surgical judgement"}) {
    CHECK_THAT(run.out, Catch::Contains(part));
  }
  CHECK(widest_line(run.out) <= 100);
}

TEST_CASE("evidence in JSON holds every row, study and interval", "[cli]") {
  const auto json = json_of(kDorsalBranch);
  for (const char* key : {"endplate", "command", "seed", "side", "caution", "assumptions",
                          "sources", "quantities", "proportions", "rows", "spread_model"}) {
    CHECK(json.contains(key));
  }
  REQUIRE(json["quantities"].size() == 1);
  const auto& quantity = json["quantities"][0];
  CHECK(quantity["rows"].size() == 3);
  CHECK(quantity["positive_direction"] == "proximal");
  const auto& pooled = quantity["pooled"];
  CHECK(pooled["studies"].size() == 2);
  double weights = 0.0;
  for (const auto& study : pooled["studies"]) weights += study["weight"].get<double>();
  CHECK(weights == Approx(1.0));
  for (const char* key : {"pooled_mean_mm", "new_study_mean_mm", "single_limb_mm"}) {
    CHECK(pooled[key]["p05"] < pooled[key]["mean"]);
    CHECK(pooled[key]["mean"] < pooled[key]["p95"]);
  }
  CHECK(pooled["heterogeneity"]["degrees_of_freedom"] == 1);
  CHECK(json["sources"].size() == 3);
}

TEST_CASE("a distal quantity is shown as positive distal and kept negative in JSON", "[cli]") {
  const std::vector<std::string> choice{"--nerve", "anterior interosseous nerve",
                                        "--point", "origin",
                                        "--from",  "interepicondylar line"};
  CHECK_THAT(evidence(choice).out, Catch::Contains("mm distal"));
  CHECK(json_of(choice)["quantities"][0]["pooled"]["pooled_mean_mm"]["mean"] < 0.0);
}

TEST_CASE("without a choice evidence lists all quantities", "[cli]") {
  const Run run = evidence({});
  CHECK(run.status == 0);
  CHECK(widest_line(run.out) <= 100);
  const auto json = json_of({});
  CHECK(json["quantities"].size() > 400);
  CHECK(json["proportions"].size() > 150);
  for (const auto& quantity : json["quantities"]) {
    CHECK((!quantity["pooled"].is_null() ||
           std::ranges::all_of(quantity["rows"],
                               [](const auto& row) { return row["left_out"] != ""; })));
  }
}

TEST_CASE("words search names, rows and studies", "[cli]") {
  const Run run = evidence({"Martin-Gruber", "dissection"});
  CHECK(run.status == 0);
  CHECK_THAT(run.out, Catch::Contains("17 of 72") && Catch::Contains("Pooled as counts"));
  CHECK(json_of({"hackl"})["quantities"].size() >= 4);
}

TEST_CASE("a row id shows the row and the quantity it belongs to", "[cli]") {
  const auto json = json_of({"--id", "dcb-origin-us-jung2016"});
  REQUIRE(json["quantities"].size() == 1);
  REQUIRE(json["rows"].size() == 1);
  CHECK(json["rows"][0]["table"] == "landmark_distances");
  CHECK(json["rows"][0]["mean_mm"] == "49.2");
  const auto other = json_of({"--id", "coaptation_delay_clinic"});
  CHECK(other["rows"][0]["table"] == "regeneration");
}

TEST_CASE("a table that is not pooled is listed", "[cli]") {
  const Run run = evidence({"--table", "regeneration", "coaptation"});
  CHECK(run.status == 0);
  CHECK_THAT(run.out, Catch::Contains("coaptation_delay_clinic") && Catch::Contains("weeks"));
  CHECK(widest_line(run.out) <= 100);
  CHECK(json_of({"--table", "graft_donors"})["rows"].size() == 16);
}

TEST_CASE("no detail of any quantity and no list of any table is wider than 100 columns", "[cli]") {
  const auto package = endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package);
  const auto answer = endplate::evidence::answer_evidence(*package, {});
  REQUIRE(answer);
  CHECK(widest_line(endplate::cli::evidence_text(*answer, 10'000)) <= 100);
  for (const auto& [name, table] : package->tables()) {
    INFO(name);
    const Run run = evidence({"--table", name});
    CHECK(run.status == 0);
    CHECK(widest_line(run.out) <= 100);
  }
}

TEST_CASE("outcomes name their scale", "[cli]") {
  const auto json = json_of({"--table", "outcomes"});
  REQUIRE(json["proportions"].size() > 80);
  for (const auto& share : json["proportions"]) CHECK(share["scale"].is_string());
}

TEST_CASE("an unknown name is refused with the nearest ones and nothing on standard output",
          "[cli]") {
  const std::vector<std::vector<std::string>> wrong{
      {"--nerve", "radail nerve"}, {"--point", "orign"},   {"--from", "medial epicondle"},
      {"--id", "dcb-origin-us"},   {"--table", "outcome"}, {"no such words at all"}};
  const std::vector<std::string> mends{"radial nerve",           "origin",   "medial epicondyle",
                                       "dcb-origin-us-jung2016", "outcomes", "fewer conditions"};
  for (std::size_t i = 0; i < wrong.size(); ++i) {
    const Run run = evidence(wrong[i]);
    INFO(wrong[i].front());
    CHECK(run.status == 2);
    CHECK(run.out.empty());
    CHECK_THAT(run.err, Catch::StartsWith("error: ") && Catch::Contains(mends[i]));
  }
}

TEST_CASE("the same question has the same bytes", "[cli]") {
  CHECK(evidence({"radial", "--json"}).out == evidence({"radial", "--json"}).out);
}
