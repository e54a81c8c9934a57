// The followup command from case file to both answers.
#include <tbb/global_control.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/support/radial_case.hpp"
#include "tests/support/run_program.hpp"

namespace {

using Json = nlohmann::ordered_json;

auto followup(const Json& patient, const std::string& today, bool json = true,
              const std::string& command = "followup") {
  const auto path = std::filesystem::temp_directory_path() /
                    ("endplate_followup_test_" + std::to_string(getpid()) + ".json");
  std::ofstream(path) << patient.dump();
  std::vector<std::string> words{command, path.string(), "--today", today, "--samples", "1000"};
  if (json) words.emplace_back("--json");
  auto ran = endplate::test::run(words);
  std::filesystem::remove(path);
  return ran;
}

Json answer_of(const Json& patient, const std::string& today) {
  const auto ran = followup(patient, today);
  CAPTURE(ran.err);
  REQUIRE(ran.status == 0);
  return Json::parse(ran.out);
}

Json radial(const char* mechanism = "fracture or dislocation") {
  return endplate::test::radial_case(mechanism, "2026-03-01");
}

// A visit with the Tinel point so far above the lateral epicondyle.
Json visit(const char* date, double proximal_mm) {
  return {{"date", date},
          {"tinel",
           {{{"nerve", "radial nerve"},
             {"at",
              {{"landmark", "lateral epicondyle"},
               {"offset_mm", proximal_mm},
               {"toward", "proximal"}}}}}}};
}

Json advancing() {
  Json patient = radial();
  patient["observations"] = {visit("2026-03-31", 92), visit("2026-04-30", 50),
                             visit("2026-05-30", 10)};
  return patient;
}

Json standing(const char* mechanism = "fracture or dislocation") {
  Json patient = radial(mechanism);
  patient["observations"] = {visit("2026-03-31", 118), visit("2026-04-30", 125),
                             visit("2026-05-30", 112)};
  return patient;
}

std::string next_of(const Json& answer) {
  return answer["decision"]["next"].get<std::string>();
}

}  // namespace

TEST_CASE("followup answers with the keys of the contract", "[cli][followup]") {
  const Json answer = answer_of(advancing(), "2026-05-31");
  for (const char* key :
       {"endplate", "command", "seed", "side", "caution", "assumptions", "sources",
        "rate_mm_per_day", "targets", "on_course", "chance_no_growth", "decision"}) {
    CHECK(answer.contains(key));
  }
  CHECK(answer["command"] == "followup");
  for (const char* key : {"mean", "sd", "p05", "p50", "p95"}) {
    CHECK(answer["rate_mm_per_day"].contains(key));
  }
  double sum = 0.0;
  for (const auto& [state, chance] : answer["course_chances"].items()) sum += chance.get<double>();
  CHECK(sum == Approx(1.0));
}

TEST_CASE("a sign that advances by 1.4 mm a day gives that rate, narrowly", "[cli][followup]") {
  const Json answer = answer_of(advancing(), "2026-05-31");
  CHECK(answer["on_course"] == "on course");
  const Json& rate = answer["rate_mm_per_day"];
  const Json& usual = answer["lesions"][0]["usual_rate_mm_per_day"];
  CHECK(rate["p05"].get<double>() < 1.4);
  CHECK(rate["p95"].get<double>() > 1.4);
  CHECK(rate["sd"].get<double>() < 0.5 * usual["sd"].get<double>());
  CHECK(answer["chance_no_growth"].get<double>() < 0.01);
  CHECK(next_of(answer).starts_with("Watch with dates"));
}

TEST_CASE("a sign that stands still is no advance and ends the watching", "[cli][followup]") {
  const Json answer = answer_of(standing(), "2026-05-31");
  CHECK(answer["on_course"] == "no advance");
  CHECK(answer["chance_no_growth"].get<double>() > 0.8);
  CHECK(next_of(answer).starts_with("End of waiting"));
  CHECK(answer["decision"]["by_date"] == "2026-06-21");
  // The same day without a follow-up is watched on.
  const Json before = Json::parse(followup(radial(), "2026-05-31", true, "recovery").out);
  CHECK(next_of(before).starts_with("Watch with dates"));
}

TEST_CASE("a stated axonotmesis does not hide that nothing advances", "[cli][followup]") {
  Json patient = standing();
  patient["injuries"][0]["grade"] = "axonotmesis";
  const Json answer = answer_of(patient, "2026-05-31");
  CHECK(answer["on_course"] == "no advance");
}

TEST_CASE("before six weeks nothing can be told, and an open wound is explored",
          "[cli][followup]") {
  Json early = radial();
  early["observations"] = {visit("2026-03-15", 118), visit("2026-04-05", 120)};
  const Json answer = answer_of(early, "2026-04-06");
  CHECK(answer["on_course"] == "cannot tell yet");
  CHECK(next_of(answer).starts_with("Watch with dates"));
  Json open = advancing();
  open["injuries"][0]["mechanism"] = "open sharp";
  CHECK(next_of(answer_of(open, "2026-05-31")).starts_with("Explore"));
}

TEST_CASE("a deep motor nerve has nothing to tap: muscles speak, and only when due",
          "[cli][followup]") {
  Json patient = radial();
  patient["injuries"][0]["nerve"] = "posterior interosseous nerve";
  patient["injuries"][0]["at"] = {{"branch", "posterior interosseous nerve"},
                                  {"from_origin_mm", 2}};
  Json answer = answer_of(patient, "2026-06-20");
  CHECK(answer["on_course"] == "not informative");

  const auto graded = [&](const char* date, int mrc) {
    Json seen = patient;
    seen["observations"] = {{{"date", date}, {"muscles", {{{"muscle", "EPL"}, {"mrc", mrc}}}}}};
    return seen;
  };
  // Dead at seven weeks: the axons could not be there yet.
  answer = answer_of(graded("2026-04-20", 0), "2026-04-21");
  CHECK(answer["on_course"] == "cannot tell yet");
  const double before = answer["chance_no_growth"].get<double>();
  // Dead at ten months: they should have come.
  answer = answer_of(graded("2027-01-05", 0), "2027-01-06");
  CHECK(answer["on_course"] == "no advance");
  CHECK(answer["chance_no_growth"].get<double>() > before + 0.2);
  CHECK_FALSE(next_of(answer).starts_with("Watch"));
  // A flicker at five months: something grows.
  answer = answer_of(graded("2026-08-01", 1), "2026-08-02");
  CHECK(answer["chance_no_growth"].get<double>() < 0.1);
}

TEST_CASE("points that cannot be are refused or left out with a remark", "[cli][followup]") {
  Json proximal = radial();
  proximal["observations"] = {visit("2026-04-30", 200)};
  auto ran = followup(proximal, "2026-05-31");
  CHECK(ran.status == 2);
  CHECK(ran.out.empty());
  CHECK(ran.err.starts_with("error: /observations/0/tinel/0/at: the point lies 9"));

  Json back = radial();
  back["observations"] = {visit("2026-03-31", 92), visit("2026-04-30", 20),
                          visit("2026-05-30", 100)};
  const Json answer = answer_of(back, "2026-05-31");
  CHECK(answer["on_course"] == "cannot tell yet");
  REQUIRE(answer["remarks"].size() == 1);
  CHECK(answer["remarks"][0].get<std::string>().find("does not go back") != std::string::npos);

  Json future = radial();
  future["observations"] = {visit("2026-07-30", 92)};
  CHECK(followup(future, "2026-05-31").status == 2);

  Json other = advancing();
  other["observations"][0]["tinel"][0]["nerve"] = "median nerve";
  other["observations"][0]["tinel"][0]["at"]["landmark"] = "medial epicondyle";
  const Json left_out = answer_of(other, "2026-05-31");
  CHECK(left_out["lesions"][0]["tinel"].size() == 2);
  REQUIRE_FALSE(left_out["remarks"].empty());
}

TEST_CASE("an advancing sign over muscles that are long due and dead is not called on course",
          "[cli][followup]") {
  Json patient = advancing();
  patient["observations"].push_back(
      {{"date", "2027-02-01"},
       {"muscles", {{{"muscle", "BR"}, {"mrc", 0}}, {{"muscle", "ECRL"}, {"mrc", 0}}}}});
  const Json answer = answer_of(patient, "2027-02-02");
  CHECK(answer["on_course"] != "on course");
  CHECK(answer["on_course"] != "ahead");
  CHECK(next_of(answer).starts_with("End of waiting"));
}

TEST_CASE("an old examination is called old", "[cli][followup]") {
  const Json answer = answer_of(advancing(), "2026-08-31");
  REQUIRE(answer["remarks"].size() == 1);
  CHECK(answer["remarks"][0].get<std::string>().find("examine again before") != std::string::npos);
}

TEST_CASE("a planned operation changes nothing yet", "[cli][followup]") {
  Json patient = standing();
  patient["operations"] = {{{"date", "2026-06-20"},
                            {"state", "planned"},
                            {"done", {{{"procedure", "graft"}, {"nerve", "radial nerve"}}}}}};
  CHECK(answer_of(patient, "2026-05-31")["on_course"] == "no advance");
}

TEST_CASE("without an injury's date or place there is a decision and no call", "[cli][followup]") {
  Json undated = advancing();
  undated["injuries"][0].erase("date");
  Json answer = answer_of(undated, "2026-05-31");
  CHECK(answer["on_course"] == "cannot tell yet");
  CHECK_FALSE(next_of(answer).empty());
  Json nowhere = radial();
  nowhere["injuries"][0].erase("at");
  answer = answer_of(nowhere, "2026-05-31");
  CHECK(answer["on_course"] == "not informative");
  CHECK_FALSE(next_of(answer).empty());
}

TEST_CASE("the example of a repair without advance is called", "[cli][followup]") {
  const auto ran = endplate::test::run(
      {"followup", ENDPLATE_SOURCE_DIR "/datasets/cases/median-repair-without-advance.json",
       "--json", "--today", "2026-06-04"});
  REQUIRE(ran.status == 0);
  const Json answer = Json::parse(ran.out);
  CHECK(answer["on_course"] == "no advance");
  CHECK(next_of(answer).starts_with("End of waiting set: a second observer"));
}

TEST_CASE("the text opens with side and decision and fits a terminal", "[cli][followup]") {
  const auto ran = followup(standing(), "2026-05-31", false);
  REQUIRE(ran.status == 0);
  CHECK(ran.out.starts_with("RIGHT LIMB"));
  CHECK(ran.out.find("DECISION") < ran.out.find("Course"));
  CHECK(ran.out.find("NO ADVANCE") != std::string::npos);
  CHECK(ran.out.find("surgical judgement") != std::string::npos);
  std::istringstream lines(ran.out);
  std::string line;
  while (std::getline(lines, line)) {
    CAPTURE(line);
    CHECK(line.size() <= 100);
  }
}

TEST_CASE("one thread or two: the same bytes", "[cli][followup]") {
  std::string one;
  {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, 1);
    one = followup(advancing(), "2026-05-31").out;
  }
  const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, 2);
  CHECK(followup(advancing(), "2026-05-31").out == one);
}
