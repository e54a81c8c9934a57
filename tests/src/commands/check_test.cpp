#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/support/run_program.hpp"

using endplate::test::run;

namespace {

// A case file that goes away with the test.
class TemporaryCase {
 public:
  explicit TemporaryCase(const std::string& text)
      : path_(std::filesystem::temp_directory_path() /
              ("endplate-check-" + std::to_string(::getpid()) + ".json")) {
    std::ofstream(path_) << text;
  }
  ~TemporaryCase() { std::filesystem::remove(path_); }
  TemporaryCase(const TemporaryCase&) = delete;
  TemporaryCase& operator=(const TemporaryCase&) = delete;
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

std::vector<std::string> example_cases() {
  std::vector<std::string> files;
  for (const auto& entry :
       std::filesystem::directory_iterator(ENDPLATE_SOURCE_DIR "/datasets/cases")) {
    if (entry.path().extension() == ".json") files.push_back(entry.path().string());
  }
  return files;
}

}  // namespace

TEST_CASE("every example case is valid", "[check]") {
  REQUIRE(example_cases().size() >= 8);
  for (const std::string& file : example_cases()) {
    CAPTURE(file);
    const auto answer = run({"check", file, "--json"});
    CHECK(answer.err.empty());
    REQUIRE(answer.status == 0);
    const auto document = nlohmann::json::parse(answer.out);
    CHECK(document.at("valid") == true);
    CHECK(document.at("problems").empty());
    CHECK(document.at("command") == "check");
    CHECK_FALSE(document.at("injuries").empty());
  }
}

TEST_CASE("check says the side first and how a slip was read", "[check]") {
  const TemporaryCase file(
      R"({"endplate_case": 1, "limb": {"side": "left"}, "injuries": [{"nerve": "radail nerve"}]})");
  const auto answer = run({"check", file.path()});
  REQUIRE(answer.status == 0);
  CHECK_THAT(answer.out, Catch::StartsWith("LEFT upper limb: the case file is valid"));
  CHECK_THAT(answer.out, Catch::Contains("\"radail nerve\" at /injuries/0/nerve was read as radial "
                                         "nerve"));
  CHECK_THAT(answer.out, Catch::Contains("place not given"));
  CHECK_THAT(answer.out, Catch::Contains("/injuries/0/mechanism"));
  for (std::size_t start = 0; start < answer.out.size();) {
    const std::size_t end = answer.out.find('\n', start);
    CHECK(end - start <= 100);
    start = end + 1;
  }
}

TEST_CASE("check reports every problem at once and writes nothing to standard output", "[check]") {
  const TemporaryCase file(
      R"({"endplate_case": 1, "limb": {"side": "up", "age_years": 400}, "injuries": [{}]})");
  const auto answer = run({"check", file.path()});
  CHECK(answer.status == 2);
  CHECK(answer.out.empty());
  CHECK_THAT(answer.err, Catch::Contains("error: /limb/side: "));
  CHECK_THAT(answer.err, Catch::Contains("error: /limb/age_years: "));
  CHECK_THAT(answer.err, Catch::Contains("error: /injuries/0/nerve: "));
}

TEST_CASE("a date after --today is refused only where --today was given", "[check]") {
  const TemporaryCase file(
      R"({"endplate_case": 1, "injuries": [{"nerve": "radial nerve", "date": "2150-01-01"}],
          "operations": [{"date": "2150-02-01", "state": "planned"}]})");
  CHECK(run({"check", file.path()}).status == 0);
  const auto refused = run({"check", file.path(), "--today", "2026-07-01"});
  CHECK(refused.status == 2);
  CHECK_THAT(refused.err, Catch::Contains("error: /injuries/0/date: the injury of 2150-01-01 lies "
                                          "after today, 2026-07-01"));
  CHECK_THAT(refused.err, !Catch::Contains("/operations/0"));
}

TEST_CASE("a case that cannot be found is a wrong argument", "[check]") {
  for (const std::string& path :
       {std::string("/nowhere/case.json"), std::string("/"), std::string()}) {
    CAPTURE(path);
    const auto answer = path.empty() ? run({"check"}) : run({"check", path});
    CHECK(answer.status == 2);
    CHECK(answer.out.empty());
    CHECK_THAT(answer.err, Catch::StartsWith("error: "));
  }
}

TEST_CASE("a file that is far too large is refused without being read through", "[check]") {
  std::string text = R"({"endplate_case": 1, "label": ")";
  text.append(2'000'000, 'x').append(R"("})");
  const TemporaryCase file(text);
  const auto answer = run({"check", file.path()});
  CHECK(answer.status == 2);
  CHECK_THAT(answer.err, Catch::Contains("more than 1000000"));
}
