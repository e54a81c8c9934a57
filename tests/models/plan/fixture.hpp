#pragma once
// Cases in a few words and their plans, for the plan tests.
#include <catch2/catch.hpp>
#include <string>

#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"
#include "models/evidence/data_package.hpp"
#include "models/plan/plan.hpp"

namespace plan_tests {

using namespace endplate;

inline const evidence::DataPackage& package() {
  static const evidence::DataPackage kPackage = [] {
    auto read = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    REQUIRE(read);
    return std::move(*read);
  }();
  return kPackage;
}

inline casefile::Case case_from(const std::string& text) {
  const auto terms = anatomy::Terms::from(package());
  REQUIRE(terms);
  auto read = casefile::read_case(text, *terms, {casefile::pose_limits(package()), nullptr, {}});
  if (!read) {
    for (const Problem& problem : read.error().problems) {
      UNSCOPED_INFO(problem.place << ": " << problem.what << ". " << problem.mend);
    }
  }
  REQUIRE(read);
  return std::move(*read);
}

inline casefile::Date date(int year, unsigned month, unsigned day) {
  return {std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}

inline plan::PlanAnswer planned(const std::string& text, casefile::Date today) {
  auto answer = plan::plan(case_from(text), package(), {200, 1, today});
  REQUIRE(answer);
  return std::move(*answer);
}

// The first option of a kind, and of a function where one is named.
inline const plan::Option* option(const plan::PlanAnswer& answer, std::string_view kind,
                                  std::string_view function = "") {
  for (const plan::Option& one : answer.options) {
    if (one.kind == kind && one.name.find(function) != std::string::npos) return &one;
  }
  return nullptr;
}

inline const plan::Candidate* candidate(const plan::PlanAnswer& answer, std::string_view id) {
  for (const plan::Option& one : answer.options) {
    for (const plan::Candidate& way : one.candidates) {
      if (way.id == id) return &way;
    }
  }
  return nullptr;
}

inline std::string rejected(const plan::PlanAnswer& answer, std::string_view id) {
  for (const plan::Rejected& one : answer.rejected) {
    if (one.id == id) return one.reason;
  }
  return "";
}

// A radial palsy beside a fracture of the shaft on 2026-06-01; `more` are further keys.
inline std::string radial(const std::string& more = "", const std::string& injury = "") {
  return R"({"endplate_case": 1, "limb": {"side": "right", "sex": "female", "age_years": 34},
    "injuries": [{"nerve": "radial nerve", "complete": true, "date": "2026-06-01",
      "at": {"landmark": "lateral epicondyle", "offset_mm": 120, "toward": "proximal"},
      "mechanism": "fracture or dislocation")" +
         injury + "}]" + more + "}";
}

inline const std::string kForearmExamined = R"(, "examination": {"date": "2026-06-05", "muscles": [
    {"muscle": "PT", "mrc": 5}, {"muscle": "FCR", "mrc": 5}, {"muscle": "PL", "mrc": 5},
    {"muscle": "FCU", "mrc": 5}, {"muscle": "ECRL", "mrc": 0}, {"muscle": "ED", "mrc": 0}]})";

// An upper trunk lesion by traction on 2026-01-10.
inline std::string upper_trunk(const std::string& muscles, const std::string& more = "") {
  return R"({"endplate_case": 1, "limb": {"side": "left", "sex": "male", "age_years": 24},
    "injuries": [{"at": {"trunk": "upper"}, "complete": true, "date": "2026-01-10",
      "mechanism": "closed traction"}],
    "examination": {"date": "2026-05-01", "muscles": [)" +
         muscles + "]}" + more + "}";
}

// C5 and C6 torn from the cord.
inline std::string avulsion(const std::string& muscles) {
  return R"({"endplate_case": 1, "limb": {"side": "left", "sex": "male", "age_years": 24},
    "injuries": [
      {"at": {"root": "C5", "level": "preganglionic"}, "mechanism": "closed traction",
       "date": "2026-05-01"},
      {"at": {"root": "C6", "level": "preganglionic"}, "mechanism": "closed traction",
       "date": "2026-05-01"}],
    "examination": {"date": "2026-06-01", "muscles": [)" +
         muscles + "]}}";
}

inline const std::string kUpperDead =
    R"({"muscle": "deltoid", "mrc": 0}, {"muscle": "BIC-S", "mrc": 0},
    {"muscle": "BIC-L", "mrc": 0}, {"muscle": "BRA", "mrc": 0}, {"muscle": "SS", "mrc": 0},
    {"muscle": "IS", "mrc": 0})";

// A cut of the ulnar nerve by glass at the wrist on 2026-06-01, not yet operated.
inline std::string glass(const std::string& more = "", const std::string& injury = "") {
  return R"({"endplate_case": 1, "limb": {"side": "left", "sex": "male", "age_years": 27},
    "injuries": [{"nerve": "ulnar nerve", "complete": true, "date": "2026-06-01",
      "at": {"landmark": "distal wrist crease", "offset_mm": 30, "toward": "proximal"},
      "mechanism": "open sharp")" +
         injury + "}]" + more + "}";
}

}  // namespace plan_tests
