// Every command that takes a case refuses every broken case file at the right place.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

#include "models/evidence/csv.hpp"
#include "tests/support/run_program.hpp"

namespace {

const std::string kFolder = ENDPLATE_SOURCE_DIR "/tests/casefiles/broken/";

struct BrokenCase {
  std::string file;
  std::string place;
  std::string what;
  std::string mend;
};

std::vector<BrokenCase> broken_cases() {
  std::ifstream in(kFolder + "index.csv");
  std::ostringstream text;
  text << in.rdbuf();
  const auto csv = endplate::evidence::parse_csv(text.str(), "index.csv");
  REQUIRE(csv);
  std::vector<BrokenCase> cases;
  const std::size_t columns = csv->header.size();
  for (std::size_t row = 0; row < csv->lines.size(); ++row) {
    const auto cell = [&](std::size_t column) {
      return std::string(csv->cells[row * columns + column]);
    };
    cases.push_back({cell(0), cell(1), cell(2), cell(3)});
  }
  return cases;
}

// One line "error: PLACE: WHAT. MEND" with the expected words.
bool reports(const std::string& err, const BrokenCase& broken) {
  std::istringstream lines(err);
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("error: " + broken.place + ": ") &&
        line.find(broken.what) != std::string::npos &&
        line.find(broken.mend) != std::string::npos) {
      return true;
    }
  }
  return false;
}

void check_all(const std::string& command) {
  for (const BrokenCase& broken : broken_cases()) {
    const auto run = endplate::test::run({command, kFolder + broken.file, "--json"});
    CAPTURE(command, broken.file, broken.place, broken.what, broken.mend, run.err);
    CHECK(run.status == 2);
    CHECK(run.out.empty());
    CHECK(reports(run.err, broken));
  }
}

}  // namespace

TEST_CASE("the index of broken cases lists every file, at least sixty", "[casefile]") {
  std::size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(kFolder)) {
    files += entry.path().extension() == ".json" ? 1U : 0U;
  }
  CHECK(files == broken_cases().size());
  CHECK(files >= 60);
}

TEST_CASE("check refuses every broken case at its place", "[casefile][commands]") {
  REQUIRE(endplate::test::has_command("check"));
  check_all("check");
}

TEST_CASE("limb refuses every broken case at its place", "[casefile][commands]") {
  if (endplate::test::has_command("limb")) check_all("limb");
}

TEST_CASE("distance refuses every broken case at its place", "[casefile][commands]") {
  if (endplate::test::has_command("distance")) check_all("distance");
}

TEST_CASE("deficit refuses every broken case at its place", "[casefile][commands]") {
  if (endplate::test::has_command("deficit")) check_all("deficit");
}

TEST_CASE("recovery refuses every broken case at its place", "[casefile][commands]") {
  if (endplate::test::has_command("recovery")) check_all("recovery");
}
