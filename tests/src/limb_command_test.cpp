#include <unistd.h>

#include <Eigen/Core>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <vector>

#include "program.hpp"

namespace {

struct Outcome {
  int status = 0;
  std::string out;
  std::string err;
};

Outcome run(std::vector<const char*> arguments) {
  arguments.insert(arguments.begin(), "endplate");
  std::ostringstream out;
  std::ostringstream err;
  const int status =
      endplate::cli::run_program(static_cast<int>(arguments.size()), arguments.data(), out, err);
  return {status, out.str(), err.str()};
}

// A case file that lives as long as the test.
class CaseFile {
 public:
  explicit CaseFile(const std::string& text)
      : path_(std::filesystem::temp_directory_path() /
              ("endplate-limb-test-" + std::to_string(getpid()) + "-" +
               std::to_string(std::hash<std::string>{}(text)) + ".json")) {
    std::ofstream(path_) << text;
  }
  ~CaseFile() { std::filesystem::remove(path_); }
  CaseFile(const CaseFile&) = delete;
  CaseFile& operator=(const CaseFile&) = delete;
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

nlohmann::json json_of(const std::string& limb) {
  const CaseFile file(R"({"endplate_case": 1, "limb": )" + limb + "}");
  const std::string path = file.path();
  const Outcome outcome = run({"limb", path.c_str(), "--json"});
  INFO(outcome.err);
  REQUIRE(outcome.status == 0);
  return nlohmann::json::parse(outcome.out);
}

bool is_summary(const nlohmann::json& value) {
  for (const char* key : {"mean", "sd", "p05", "p50", "p95"}) {
    if (!value.contains(key) || !value[key].is_number()) return false;
  }
  return value["p05"] <= value["p50"] && value["p50"] <= value["p95"];
}

}  // namespace

TEST_CASE("limb without a case answers for the standard adult limb", "[cli][limb]") {
  const Outcome outcome = run({"limb", "--json"});
  REQUIRE(outcome.status == 0);
  const auto document = nlohmann::json::parse(outcome.out);
  for (const char* key : {"endplate", "command", "seed", "side", "caution", "assumptions",
                          "sources", "segments", "girths", "landmarks", "nerves"}) {
    INFO(key);
    CHECK(document.contains(key));
  }
  CHECK(document["command"] == "limb");
  CHECK(document["side"] == "right");
  CHECK(document["segments"][0]["segment"] == "upper arm");
  CHECK(document["segments"][0]["length_mm"]["mean"].get<double>() == Approx(300.0).margin(0.01));
  for (const auto& segment : document["segments"]) CHECK(is_summary(segment["length_mm"]));
  for (const auto& girth : document["girths"]) CHECK(is_summary(girth["girth_mm"]));
  CHECK(document["landmarks"].size() >= 95);
  for (const auto& landmark : document["landmarks"]) {
    CHECK(landmark["position_mm"].size() == 3);
    CHECK(landmark["provenance"] == "assumed");
    CHECK_FALSE(landmark["reason"].get<std::string>().empty());
  }
  CHECK_FALSE(document["nerves"].empty());
  for (const auto& nerve : document["nerves"]) {
    CHECK(is_summary(nerve["length_mm"]));
    CHECK(nerve["strain"] == 0.0);
  }
}

TEST_CASE("limb gives the same bytes for the same seed", "[cli][limb]") {
  CHECK(run({"limb", "--json", "--seed", "5"}).out == run({"limb", "--json", "--seed", "5"}).out);
  CHECK(run({"limb", "--json", "--seed", "5"}).out != run({"limb", "--json", "--seed", "6"}).out);
}

TEST_CASE("limb mirrors a left limb and keeps its lengths", "[cli][limb]") {
  const auto right = json_of(R"({"side": "right", "sex": "female", "stature_mm": 1650})");
  const auto left = json_of(R"({"side": "left", "sex": "female", "stature_mm": 1650})");
  CHECK(right["segments"] == left["segments"]);
  CHECK(right["girths"] == left["girths"]);
  REQUIRE(right["landmarks"].size() == left["landmarks"].size());
  for (std::size_t i = 0; i < right["landmarks"].size(); ++i) {
    const auto& a = right["landmarks"][i]["position_mm"];
    const auto& b = left["landmarks"][i]["position_mm"];
    CHECK(std::abs(a[0].get<double>() - b[0].get<double>()) < 1e-9);
    CHECK(std::abs(a[1].get<double>() - b[1].get<double>()) < 1e-9);
    CHECK(std::abs(a[2].get<double>() + b[2].get<double>()) < 1e-9);
  }
}

TEST_CASE("limb shows a page with the side first and the caution last", "[cli][limb]") {
  const CaseFile file(R"({"endplate_case": 1, "limb": {"side": "left", "age_years": 9}})");
  const std::string path = file.path();
  const Outcome outcome = run({"limb", path.c_str()});
  REQUIRE(outcome.status == 0);
  CHECK(outcome.out.starts_with("LEFT LIMB"));
  CHECK(outcome.out.find("Check it against the patient.") != std::string::npos);
  std::istringstream lines(outcome.out);
  int count = 0;
  for (std::string line; std::getline(lines, line); ++count) CHECK(line.size() <= 100);
  CHECK(count <= 60);
}

TEST_CASE("limb refuses what it cannot answer and writes nothing", "[cli][limb]") {
  const auto refused = [](const std::string& limb) {
    const CaseFile file(R"({"endplate_case": 1, "limb": )" + limb + "}");
    const std::string path = file.path();
    return run({"limb", path.c_str(), "--json"});
  };
  const Outcome unit = refused(R"({"measured": {"hand length": 18.5}})");
  CHECK(unit.status == 2);
  CHECK(unit.out.empty());
  CHECK(unit.err.find("error: /limb/measured/hand length: ") != std::string::npos);
  const Outcome bent = refused(R"({"pose": {"elbow_flexion_deg": 160}})");
  CHECK(bent.status == 2);
  CHECK(bent.out.empty());
  CHECK(bent.err.find("error: /limb/pose/elbow_flexion_deg: 160 is outside 0 to 158 degrees, the "
                      "largest published range (JT_125)") != std::string::npos);
  CHECK(refused(R"({"pose": {"elbow_flexion_deg": 0}})").status == 0);
}

TEST_CASE("limb gives each measure its percentile, and a small man an answer with a warning",
          "[cli][limb]") {
  const auto tiny = json_of(R"({"sex": "male", "age_years": 30, "stature_mm": 1200})");
  REQUIRE(tiny["warnings"].size() >= 1);
  CHECK(tiny["warnings"][0].get<std::string>().find("published range of men") != std::string::npos);
  CHECK(tiny["stature_mm"]["mean"] == 1200.0);
  CHECK(tiny["stature_percentile"].get<double>() < 0.1);
  CHECK(tiny["segments"][0]["percentile"].get<double>() < 1.0);
  const auto middle = json_of(R"({"sex": "female", "age_years": 30, "stature_percentile": 50})");
  CHECK(middle["warnings"].empty());
  CHECK(middle["segments"][0]["percentile"].get<double>() == Approx(50.0).margin(1.0));
  CHECK(middle["breadths"][1]["percentile"].is_null());  // of the elbow: assumed spread
}

namespace {

Eigen::Vector3d landmark(const nlohmann::json& document, const char* name) {
  for (const auto& item : document["landmarks"]) {
    if (item["landmark"] != name) continue;
    const auto& p = item["position_mm"];
    return {p[0].get<double>(), p[1].get<double>(), p[2].get<double>()};
  }
  FAIL("no landmark " << name);
  return {};
}

}  // namespace

TEST_CASE("limb in a pose moves landmarks, frames and courses, not sizes", "[cli][limb][pose]") {
  const auto rest = json_of(R"({"side": "right"})");
  const auto bent = json_of(R"({"side": "right", "pose": {"elbow_flexion_deg": 90}})");
  CHECK(rest["segments"] == bent["segments"]);
  CHECK(rest["girths"] == bent["girths"]);
  CHECK(rest["pose"].empty());
  CHECK(bent["pose"]["elbow_flexion_deg"] == 90.0);
  // The arm stays, the forearm points forward.
  CHECK((landmark(rest, "lateral epicondyle") - landmark(bent, "lateral epicondyle")).norm() <
        1e-9);
  CHECK(landmark(bent, "radial styloid").x() > 200.0);
  CHECK(std::abs(landmark(bent, "radial styloid").y()) < 60.0);
  REQUIRE(bent["beds"].size() == 3);
  CHECK(bent["beds"][1]["nerve"] == "ulnar nerve");
  CHECK(bent["beds"][1]["lengthening_mm"].get<double>() > 5.0);
  CHECK(bent["beds"][1]["places"][2]["excursion_mm"]["p05"].get<double>() > 0.0);
  CHECK_FALSE(rest.contains("beds"));
  REQUIRE(bent["bone_frames"].size() == 4);
  CHECK(bent["bone_frames"][0]["proximal"][1].get<double>() == Approx(1.0));
  CHECK(bent["bone_frames"][1]["proximal"][0].get<double>() < -0.9);
  for (const auto& nerve : bent["nerves"]) {
    if (nerve["nerve"] == "ulnar nerve") CHECK(nerve["strain"].get<double>() > 0.001);
    if (nerve["nerve"] != "median nerve") continue;
    CHECK(nerve["strain"].get<double>() < -0.001);  // in front of the joint: slack
    REQUIRE(nerve["path_mm"].size() > 30);
    CHECK(nerve["path_mm"].back()[0].get<double>() > 200.0);
  }
}

TEST_CASE("limb in a pose mirrors the left limb", "[cli][limb][pose]") {
  const std::string pose =
      R"("pose": {"elbow_flexion_deg": 60, "forearm_pronation_deg": 90, "shoulder_abduction_deg": 45}})";
  const auto right = json_of(R"({"side": "right", )" + pose);
  const auto left = json_of(R"({"side": "left", )" + pose);
  for (const char* name :
       {"acromion, lateral edge", "radial styloid", "pisiform", "thenar crease"}) {
    Eigen::Vector3d mirrored = landmark(left, name);
    mirrored.z() = -mirrored.z();
    CHECK((mirrored - landmark(right, name)).norm() < 1e-9);
  }
  for (std::size_t i = 0; i < right["nerves"].size(); ++i) {
    const auto& a = right["nerves"][i]["path_mm"];
    const auto& b = left["nerves"][i]["path_mm"];
    REQUIRE(a.size() == b.size());
    for (std::size_t k = 0; k < a.size(); ++k) {
      CHECK(std::abs(a[k][2].get<double>() + b[k][2].get<double>()) < 1e-9);
    }
  }
}

TEST_CASE("limb says where the skin stops a joint", "[cli][limb][pose]") {
  const CaseFile file(
      R"({"endplate_case": 1, "limb": {"side": "left", "pose": {"elbow_flexion_deg": 158,
          "forearm_pronation_deg": 181, "wrist_extension_deg": -53, "fingers_flexion_deg": 43}}})");
  const std::string path = file.path();
  const Outcome outcome = run({"limb", path.c_str()});
  REQUIRE(outcome.status == 0);
  CHECK(outcome.out.starts_with("LEFT LIMB"));
  CHECK(outcome.out.find("the elbow is bent by") != std::string::npos);
  std::istringstream lines(outcome.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 100);
}
