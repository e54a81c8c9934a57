// The sheet to tick and the calendar of the recovery command, from case file to file.
#include <unistd.h>

#include <tbb/global_control.h>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "../support/run_program.hpp"

using endplate::test::ProgramRun;
using endplate::test::run;
using Json = nlohmann::ordered_json;

namespace {

const std::string kCase = ENDPLATE_SOURCE_DIR "/datasets/cases/humeral-shaft-radial-palsy.json";

class Folder {
 public:
  Folder() { std::filesystem::create_directories(path_); }
  ~Folder() { std::filesystem::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string file(const std::string& name) const { return (path_ / name).string(); }
  std::string text(const std::string& name) const {
    std::ifstream in(path_ / name, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
  }
  // The made-up palsy, without its later visits, so that it can be asked on an early day.
  std::string early_case(bool repaired) const {
    std::ifstream in(kCase);
    Json patient = Json::parse(in);
    for (const char* key : {"examination", "electrodiagnosis", "observations"}) patient.erase(key);
    if (repaired) {
      patient["operations"] = Json::parse(R"([{"date": "2026-06-10", "state": "done",
          "done": [{"procedure": "repair", "nerve": "radial nerve"}]}])");
    }
    const std::string name = repaired ? "repaired.json" : "early.json";
    std::ofstream(path_ / name) << patient.dump();
    return file(name);
  }

 private:
  std::filesystem::path path_ =
      std::filesystem::temp_directory_path() / ("endplate_schedule_" + std::to_string(getpid()));
};

ProgramRun recovery(const std::string& file, const std::string& today,
                    std::vector<std::string> more) {
  std::vector<std::string> words{"recovery",  file,  "--today",    today,
                                 "--samples", "300", "--datasets", ENDPLATE_SOURCE_DIR "/datasets"};
  words.insert(words.end(), more.begin(), more.end());
  return run(words);
}

}  // namespace

TEST_CASE("the sheet lists each muscle with a box, in 100 columns, with the caution",
          "[cli][schedule]") {
  const Folder folder;
  const ProgramRun ran = recovery(folder.early_case(false), "2026-06-08", {"--sheet"});
  REQUIRE(ran.status == 0);
  CHECK(ran.out.starts_with("RIGHT LIMB: order of return"));
  CHECK(ran.out.find("DECISION") < ran.out.find("[ ]"));
  CHECK(ran.out.find("[ ]  brachioradialis") != std::string::npos);
  // Dates that hold only where axons grow say so before the first of them.
  CHECK(ran.out.find("without repair: as it stands nothing grows in") < ran.out.find("[ ]"));
  CHECK(ran.out.find("fibrillation") != std::string::npos);
  CHECK(ran.out.find("not to replace surgical judgement") != std::string::npos);
  std::istringstream lines(ran.out);
  std::string line;
  while (std::getline(lines, line)) CHECK(line.size() <= 100);
}

TEST_CASE("the JSON document holds sheet, studies and appointments", "[cli][schedule]") {
  const Folder folder;
  const ProgramRun ran = recovery(folder.early_case(false), "2026-06-08", {"--json"});
  REQUIRE(ran.status == 0);
  const Json schedule = Json::parse(ran.out)["schedule"];
  CHECK(schedule["sheet"].size() > 10);
  CHECK(schedule["emg"].size() == 2);
  CHECK(schedule["appointments"][0]["date"].get<std::string>() >= "2026-06-08");
}

TEST_CASE("a calendar is issued, moved and withdrawn from case to file", "[cli][schedule]") {
  const Folder folder;
  const std::string issued = folder.file("issued.ics");
  const ProgramRun first = recovery(folder.early_case(false), "2026-06-08", {"--calendar", issued});
  REQUIRE(first.status == 0);
  const std::string text = folder.text("issued.ics");
  CHECK(text.find("METHOD:PUBLISH\r\n") != std::string::npos);
  CHECK(text.find("Radial") == std::string::npos);  // nothing of the patient but the label

  // After a repair the first study and the steps of a closed palsy are gone.
  const ProgramRun cancelled =
      recovery(folder.early_case(true), "2026-06-12",
               {"--withdraw", issued, "--calendar", folder.file("withdrawn.ics")});
  CHECK(cancelled.err.empty());
  REQUIRE(cancelled.status == 0);
  CHECK(folder.text("withdrawn.ics").find("METHOD:CANCEL\r\n") != std::string::npos);
  CHECK(folder.text("issued.ics") == text);
}

TEST_CASE("a calendar never writes over a file that is none", "[cli][schedule]") {
  const Folder folder;
  const std::string patient = folder.early_case(false);
  const ProgramRun ran = recovery(patient, "2026-06-08", {"--calendar", patient});
  CHECK(ran.status == 2);
  CHECK(ran.out.empty());
  CHECK(ran.err.find("--calendar") != std::string::npos);
  CHECK(folder.text("early.json").starts_with("{"));
  CHECK(recovery(patient, "2026-06-08", {"--withdraw", folder.file("none.ics")}).status == 2);
}

TEST_CASE("one, two and eight threads give the same bytes", "[cli][recovery]") {
  std::string first;
  for (const std::size_t threads : {1, 2, 8}) {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    const ProgramRun ran = run({"recovery", kCase, "--today", "2026-09-07", "--json", "--samples",
                                "3000", "--datasets", ENDPLATE_SOURCE_DIR "/datasets"});
    REQUIRE(ran.status == 0);
    if (first.empty()) first = ran.out;
    CHECK(ran.out == first);
  }
}
