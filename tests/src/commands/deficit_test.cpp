#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "program.hpp"

namespace {

struct Outcome {
  int status = 0;
  std::string out;
  std::string err;
};

// Runs `endplate deficit` on a case text; without one, no case is named.
Outcome deficit(const std::string& text, std::vector<std::string> options = {}) {
  const auto file = std::filesystem::temp_directory_path() /
                    ("endplate_deficit_test_" + std::to_string(getpid()) + ".json");
  std::vector<std::string> words{"endplate", "deficit"};
  if (!text.empty()) {
    std::ofstream(file) << text;
    words.push_back(file.string());
  }
  words.insert(words.end(), options.begin(), options.end());
  std::vector<const char*> argv;
  for (const std::string& word : words) argv.push_back(word.c_str());
  std::ostringstream out;
  std::ostringstream err;
  Outcome outcome;
  outcome.status = endplate::cli::run_program(static_cast<int>(argv.size()), argv.data(), out, err);
  outcome.out = out.str();
  outcome.err = err.str();
  std::filesystem::remove(file);
  return outcome;
}

const std::string kRadial = R"({"endplate_case": 1, "limb": {"side": "left"},
  "injuries": [{"nerve": "radial nerve",
                "at": {"landmark": "lateral epicondyle", "offset_mm": 120, "toward": "proximal"}}],
  "examination": {"muscles": [{"muscle": "ECRL", "mrc": "0"}]}})";

}  // namespace

TEST_CASE("deficit --json holds the keys of the contract", "[src][deficit]") {
  const Outcome outcome = deficit(kRadial, {"--json"});
  REQUIRE(outcome.status == 0);
  CHECK(outcome.err.empty());
  const auto document = nlohmann::json::parse(outcome.out);
  for (const char* key :
       {"endplate", "command", "seed", "side", "caution", "assumptions", "sources", "muscles",
        "areas", "movements_lost", "movements_kept_by_others", "variants_to_test"}) {
    INFO(key);
    CHECK(document.contains(key));
  }
  CHECK(document["side"] == "left");
  CHECK(document["muscles"].size() == 74);
  for (const auto& muscle : document["muscles"]) {
    for (const char* key : {"muscle", "nerve", "roots", "state"}) CHECK(muscle.contains(key));
    const bool listed = muscle["muscle"] == "ECRL";
    // A muscle that is not listed was not examined; that is not normal.
    CHECK(muscle["examined"] == (listed ? "M0" : "not examined"));
    if (muscle["muscle"] == "EPL") CHECK(muscle["state"] == "denervated");
    if (muscle["muscle"] == "FCU") CHECK(muscle["state"] == "intact");
  }
}

TEST_CASE("deficit for people names the side in capitals and the injury", "[src][deficit]") {
  const Outcome outcome = deficit(kRadial);
  REQUIRE(outcome.status == 0);
  CHECK(outcome.out.find("LEFT upper limb") == 0);
  CHECK(outcome.out.find("Injury      radial nerve, ") != std::string::npos);
}

TEST_CASE("the same case gives the same bytes", "[src][deficit]") {
  CHECK(deficit(kRadial, {"--json"}).out == deficit(kRadial, {"--json"}).out);
}

TEST_CASE("deficit without a case is an error of the arguments", "[src][deficit]") {
  const Outcome outcome = deficit("");
  CHECK(outcome.status == 2);
  CHECK(outcome.out.empty());
  CHECK(outcome.err.find("error: arguments: deficit needs a case.") == 0);
}

TEST_CASE("deficit says what is missing when it cannot answer", "[src][deficit]") {
  const auto refused = [](const std::string& text, const std::string& place) {
    const Outcome outcome = deficit(text, {"--json"});
    INFO(outcome.err);
    CHECK(outcome.status == 3);
    CHECK(outcome.out.empty());
    CHECK(outcome.err.find("error: " + place + ": ") == 0);
  };
  refused(R"({"endplate_case": 1})", "/injuries");
  refused(R"({"endplate_case": 1, "injuries": [{"nerve": "radial nerve"}]})", "/injuries/0/at");
  refused(R"({"endplate_case": 1, "injuries": [{"nerve": "radial nerve", "mechanism": "spinal cord",
            "at": {"landmark": "lateral epicondyle", "offset_mm": 120, "toward": "proximal"}}]})",
          "/injuries/0/mechanism");
}

TEST_CASE("a variant of the case changes the deficit", "[src][deficit]") {
  const auto first_dorsal = [](const std::string& variants) {
    const Outcome outcome = deficit(R"({"endplate_case": 1, "variants": [)" + variants +
                                        R"(], "injuries": [{"nerve": "ulnar nerve",
          "at": {"landmark": "medial epicondyle", "offset_mm": 30, "toward": "proximal"}}]})",
                                    {"--json"});
    REQUIRE(outcome.status == 0);
    const auto document = nlohmann::json::parse(outcome.out);
    for (const auto& muscle : document["muscles"]) {
      if (muscle["muscle"] == "FDI") return muscle["state"].get<std::string>();
    }
    return std::string();
  };
  CHECK(first_dorsal("") == "denervated");
  CHECK(first_dorsal("\"Martin-Gruber communication\"") == "partial");
}
