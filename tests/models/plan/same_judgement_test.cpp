// No option of a plan names a transfer that the command transfer rejects, and what is not judged
// there is conditional here.
#include <filesystem>
#include <fstream>
#include <map>

#include "fixture.hpp"
#include "models/transfer/transfers.hpp"

using namespace plan_tests;
using transfer::Verdict;

namespace {

int compare(const casefile::Case& patient) {
  constexpr int kSamples = 40;
  const casefile::Date today = date(2026, 11, 29);
  const auto planned = plan::plan(patient, package(), {kSamples, 1, today});
  const auto judged = transfer::transfers(patient, package(), {kSamples, 1, today, false});
  if (!planned || !planned->not_run.empty() || !judged) return 0;
  std::map<std::string, const transfer::Candidate*, std::less<>> verdicts;
  std::set<std::string> out;
  for (const auto& group : judged->groups) {
    for (const auto& one : group.candidates) {
      if (one.judged.verdict == Verdict::not_feasible) out.insert(one.judged.id);
      verdicts[one.judged.id] = &one.judged;
    }
  }
  for (const auto& one : judged->rejected) out.insert(one.id);
  int seen = 0;
  for (const plan::Option& option : planned->options) {
    for (const plan::Candidate& candidate : option.candidates) {
      if (candidate.id == "shoulder_fusion") continue;
      CAPTURE(option.name, candidate.id);
      ++seen;
      CHECK_FALSE(out.contains(candidate.id));
      const auto same = verdicts.find(candidate.id);
      REQUIRE(same != verdicts.end());
      CHECK(candidate.verdict == same->second->verdict);
      CHECK(candidate.examine_first.empty() == (candidate.verdict != Verdict::not_judged));
    }
    // An option stands open only where one of its ways was shown.
    if (option.candidates.empty() || option.state != plan::OptionState::open) continue;
    if (option.name.find("fusion") != std::string::npos) continue;
    CAPTURE(option.name);
    CHECK(option.candidates.front().verdict != Verdict::not_judged);
  }
  return seen;
}

}  // namespace

TEST_CASE("plan and transfer judge the example cases alike", "[plan][transfer]") {
  static const anatomy::Terms kTerms = *anatomy::Terms::from(package());
  int seen = 0;
  for (const auto& file :
       std::filesystem::directory_iterator(ENDPLATE_SOURCE_DIR "/datasets/cases")) {
    if (file.path().extension() != ".json") continue;
    CAPTURE(file.path().filename().string());
    std::ifstream stream(file.path());
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    const auto patient =
        casefile::read_case(text, kTerms, {casefile::pose_limits(package()), nullptr, {}});
    REQUIRE(patient);
    seen += compare(*patient);
  }
  CHECK(seen > 60);
}

TEST_CASE("plan and transfer judge made cases alike", "[plan][transfer]") {
  const auto graded = [](const std::string& muscles) {
    return R"(, "examination": {"date": "2026-09-01", "muscles": [)" + muscles + "]}";
  };
  // Superficialis strong, its deep flexors not examined; wrist flexor strong, the other one not.
  const std::string unexamined = radial(graded(
      R"({"muscle": "FDS", "mrc": 5}, {"muscle": "FCR", "mrc": 5}, {"muscle": "ECRL", "mrc": 0}, {"muscle": "ED", "mrc": 0})"));
  CHECK(compare(case_from(unexamined)) > 0);
  const auto answer = planned(unexamined, date(2026, 11, 29));
  CHECK(candidate(answer, "fds_to_ecrb") == nullptr);
  CHECK(rejected(answer, "fds_to_ecrb").find("deep flexor") != std::string::npos);
  const plan::Candidate* waits = candidate(answer, "fcr_to_pin_tian");
  REQUIRE(waits != nullptr);
  CHECK(waits->donor_state == plan::DonorState::strong);
  CHECK(waits->verdict == Verdict::not_judged);
  CHECK(waits->examine_first.front().find("flexor carpi ulnaris") != std::string::npos);
  // A weak one is no condition that waits but one that fails.
  CHECK(
      compare(case_from(radial(graded(
          R"({"muscle": "FCR", "mrc": 5}, {"muscle": "FCU", "mrc": 2}, {"muscle": "PT", "mrc": 5})")))) >
      0);
  // Nothing examined at all.
  CHECK(compare(case_from(radial())) > 0);
}
