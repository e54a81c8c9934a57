// The incision command from its options and a case file to both answers.
#include <catch2/catch.hpp>
#include <cmath>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "tests/support/run_program.hpp"

namespace {

using Json = nlohmann::ordered_json;

auto incision(std::vector<std::string> more) {
  more.insert(more.begin(), {"incision", "--samples", "200"});
  return endplate::test::run(more);
}

Json answer_of(std::vector<std::string> more) {
  more.emplace_back("--json");
  const auto ran = incision(std::move(more));
  CAPTURE(ran.err);
  REQUIRE(ran.status == 0);
  return Json::parse(ran.out);
}

const std::string kShaft = ENDPLATE_SOURCE_DIR "/datasets/cases/humeral-shaft-radial-palsy.json";

}  // namespace

TEST_CASE("incision answers a line with every key of the contract", "[cli][incision]") {
  const Json answer = answer_of({"--line",
                                 "olecranon, 250 proximal, on posterior; olecranon, 50 proximal, "
                                 "on posterior"});
  CHECK(answer["command"] == "incision");
  CHECK(answer["side"] == "right");
  CHECK(answer["pose"].is_object());
  REQUIRE(answer["points"].size() > 50);
  CHECK(answer["points"][0]["along_mm"] == 0.0);
  CHECK(answer["points"][0]["position_mm"].size() == 3);
  REQUIRE_FALSE(answer["nerves"].empty());
  // The radial nerve, or a branch of it within the triceps.
  const Json& nearest = answer["nerves"][0];
  CHECK(nearest["nerve"].get<std::string>().starts_with("radial "));
  CHECK(nearest["nearest_mm"]["p05"] <= nearest["nearest_mm"]["p95"]);
  CHECK(nearest["depth_mm"]["p50"] > 0.0);
  REQUIRE(nearest["chance_within"].size() == 4);
  double before = 0.0;
  for (const Json& within : nearest["chance_within"]) {
    CHECK(within["chance"] >= before);
    before = within["chance"];
  }
  for (const Json& stretch : answer["stretches_clear_of_nerves"]) {
    CHECK(stretch["to_mm"] >= stretch["from_mm"]);
    CHECK(stretch["farther_than_mm"] == 10.0);
  }
  CHECK(answer["not_modelled"].get<std::string>().starts_with("vessels and tendons"));
}

TEST_CASE("incision answers the cut of a case file in its pose and on its side",
          "[cli][incision]") {
  const Json answer = answer_of({kShaft});
  CHECK(answer["label"] == "posterior approach to the humeral shaft");
  CHECK(answer["kind"] == "line");
}

TEST_CASE("the table of an incision fits a terminal, tells its pose and claims no safety",
          "[cli][incision]") {
  const auto ran = incision({"--portal", "lateral epicondyle, 20 proximal, 10 anterior"});
  REQUIRE(ran.status == 0);
  CHECK(ran.out.starts_with("RIGHT LIMB"));
  CHECK(ran.out.find("Pose") != std::string::npos);
  CHECK(ran.out.find("safe") == std::string::npos);
  CHECK(ran.out.find("vessels and tendons are not in the model") != std::string::npos);
  std::istringstream lines(ran.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 100);
}

TEST_CASE("incision says what is wrong and how to mend it", "[cli][incision]") {
  for (const auto& [words, place] :
       {std::pair{std::vector<std::string>{}, "incision"},
        std::pair{std::vector<std::string>{"--portal", "elbow knob"}, "--portal"},
        std::pair{std::vector<std::string>{"--line", "pisiform"}, "/points"},
        std::pair{std::vector<std::string>{"--which", "9", kShaft}, "--which"}}) {
    const auto ran = incision(words);
    CAPTURE(ran.err);
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(ran.err.starts_with(std::string("error: ") + place));
  }
  // A landmark that the limb does not place is no slip of the user.
  CHECK(incision({"--portal", "mastoid process, tip"}).status == 3);
}

TEST_CASE("the same incision gives the same bytes", "[cli][incision]") {
  const std::vector<std::string> words{
      "--pin", "radial styloid, 20 proximal", "--depth", "25", "--json", "--today", "2026-11-29"};
  CHECK(incision(words).out == incision(words).out);
}

TEST_CASE("a named approach brings its pose and its rules", "[cli][incision]") {
  const Json answer = answer_of({"--approach", "posterior humerus (triceps split)"});
  CHECK(answer["pose"]["elbow_flexion_deg"] == 90.0);
  REQUIRE_FALSE(answer["rules"].empty());
  for (const Json& rule : answer["rules"]) {
    CHECK(rule["approach"] == "posterior humerus (triceps split)");
    CHECK(rule["surface"] == "posterior");
    CHECK_FALSE(rule["source"].get<std::string>().empty());
  }
  const auto unknown = incision({"--approach", "through the wall"});
  CHECK(unknown.status == 2);
  CHECK(unknown.err.find("posterior humerus") != std::string::npos);
}

TEST_CASE("a cut of one's own is told the rules of the approaches beside it on its side",
          "[cli][incision]") {
  const Json answer = answer_of({"--pin", "lateral epicondyle, 75 proximal, on lateral"});
  bool of_the_radial_nerve = false;
  for (const Json& rule : answer["rules"]) {
    CHECK(rule["surface"] != "medial");
    of_the_radial_nerve = of_the_radial_nerve || rule["nerve"] == "radial nerve";
  }
  CHECK(of_the_radial_nerve);
}

TEST_CASE("a corridor is never worse than the line that was wanted", "[cli][incision]") {
  const std::vector<std::string> line{
      "--line",
      "lateral epicondyle, 120 proximal, on lateral; lateral epicondyle, 20 proximal, on "
      "lateral",
      "--depth", "12"};
  auto with = line;
  with.insert(with.end(), {"--corridor", "15"});
  const Json corridor = answer_of(with)["corridor"];
  CHECK(corridor["within_mm"] == 5.0);
  CHECK(corridor["chance"] <= corridor["wanted_chance"]);
  REQUIRE_FALSE(corridor["points"].empty());
  for (const Json& point : corridor["points"]) {
    CHECK(std::abs(point["offset_to_right_mm"].get<double>()) <= 15.0);
  }
  CHECK_FALSE(answer_of(line).contains("corridor"));
  // A track has no corridor.
  CHECK(incision({"--pin", "pisiform", "--corridor", "10"}).status == 2);
}
