#include <catch2/catch.hpp>
#include <sstream>

#include "output/deficit_views.hpp"
#include "tests/support/hand_limb.hpp"

using namespace endplate;
using test::avulsion;
using test::injury;
using test::shipped_anatomy;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::string text_of(const std::vector<examination::TreeInjury>& injuries,
                    const casefile::Case& patient = {}) {
  const auto answer = test::deficit_of(injuries);
  const examination::CaseInjuries of_case{injuries, {}, {}};
  const auto findings = examination::examined(patient, shipped_anatomy());
  const std::vector<std::string> warnings;
  return cli::deficit_text(
      {shipped_anatomy(), answer, of_case, findings, of_case.assumptions, warnings, Side::left});
}

}  // namespace

TEST_CASE("the deficit fits a page of 100 columns, be it one nerve or the whole plexus",
          "[src][deficit]") {
  const std::vector<std::vector<examination::TreeInjury>> cases{
      {injury("radial nerve", 110)},
      {injury("ulnar nerve", 100), injury("median nerve", 150)},
      {injury("superior trunk", 5)},
      {avulsion("C8"), avulsion("T1")},
      {avulsion("C5"), avulsion("C6"), avulsion("C7"), avulsion("C8"), avulsion("T1")},
  };
  for (const auto& injuries : cases) {
    const auto lines = lines_of(text_of(injuries));
    CHECK(lines.front().find("LEFT") == 0);
    INFO(text_of(injuries));
    CHECK(lines.size() <= 66);
    for (const std::string& line : lines) {
      INFO(line);
      CHECK(line.size() <= 100);
    }
    CHECK(lines.back().find("Check it against the patient.") != std::string::npos);
  }
}

TEST_CASE("a finding stands in brackets beside what is expected", "[src][deficit]") {
  casefile::Case patient;
  patient.examination.emplace();
  patient.examination->muscles = {{"ECRL", {0.0, "0"}}, {"FCU", {3.67, "4-"}}};
  const std::string text = text_of({injury("radial nerve", 110)}, patient);
  CHECK(text.find("ECRL [M0]") != std::string::npos);
  CHECK(text.find("examined: FCU [M4-]") != std::string::npos);
  CHECK(text.find("ECRB [") == std::string::npos);
}

TEST_CASE("the latest observation of a muscle counts and the others are not examined",
          "[src][deficit]") {
  using namespace std::chrono;
  casefile::Case patient;
  patient.examination.emplace();
  patient.examination->muscles = {{"ECRL", {0.0, "0"}}};
  casefile::Examination late;
  late.date = 2026y / September / 1;
  late.muscles = {{"ECRL", {3.0, "3"}}};
  casefile::Examination early;
  early.date = 2026y / August / 1;
  early.muscles = {{"ECRL", {1.0, "1"}}};
  patient.observations = {late, early};
  const auto findings = examination::examined(patient, shipped_anatomy());
  CHECK(cli::examined_words(findings.muscles[*shipped_anatomy().find_muscle("ECRL")]) == "M3");
  CHECK(cli::examined_words(findings.muscles[*shipped_anatomy().find_muscle("ECRB")]) ==
        "not examined");
  CHECK(cli::examined_words(findings.areas.front()) == "not examined");
}
