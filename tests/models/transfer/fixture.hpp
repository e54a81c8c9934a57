#pragma once
// Cases of the trade in a few words and their transfers, for the transfer tests.
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <string>

#include "models/casefile/case.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/case_limb.hpp"
#include "models/transfer/judge.hpp"

namespace transfer_tests {

using namespace endplate;

const evidence::DataPackage& package();
const anatomy::Anatomy& all_anatomy();

// What was found in an arm; what stands in none of the maps was not examined.
struct Arm {
  std::string injuries;  // JSON, the items of the list
  std::map<std::string, std::string> grades;
  std::map<std::string, std::string> areas;  // "normal", "absent"
  std::map<std::string, std::string> units;  // of EMG
  std::set<std::string> signs;
  double age_years = 30.0;
  double days = 120.0;
  std::string more;  // further keys, each with a leading comma
};

casefile::Case case_of(const Arm& arm);
transfer::Judgement judged(const Arm& arm);

const transfer::Candidate* find(const transfer::Judgement& judgement, std::string_view id);
// Why it was rejected; empty when it was not.
std::string rejected(const transfer::Judgement& judgement, std::string_view id);
// Place among the nerve transfers of its function, from 1; 0 when it is none of them.
int place(const transfer::Judgement& judgement, std::string_view id);

// One injury, complete, by traction; `place` are its keys for nerve and place.
std::string injury(const std::string& place);
// Roots torn from the cord.
std::string roots(const std::vector<std::string>& torn);

// `weak` at M0 and silent, all other muscles strong and with normal units; `numb` without feeling,
// all other skin normal.
Arm textbook(std::string injuries, const std::set<std::string>& weak,
             const std::set<std::string>& numb = {});
// What a row of patterns.csv says of the lesion, a source beside this program's own deficit; with
// further weak muscles, their keys joined by ";".
Arm pattern(std::string injuries, std::string_view id, std::string_view also_weak = "");

// Injuries.
extern const std::string kUpperTrunk, kAxillary, kMusculocutaneous, kHighUlnar, kHighMedian,
    kHighRadial, kLowUlnar, kLowerTrunk;

// C7 to T1 beside the lower trunk: the middle trunk's own; C6 with the supinator is spared
// (Bertelli 2010).
inline constexpr std::string_view kMiddleTrunkToo =
    "ED;EDM;ECU;EPL;EPB;APL;EI;TRI-LH;TRI-MH;TRI-LAT;ANC;FCR;PL;PQ;LD";
// C5 to C8 with a working T1 (J Hand Surg Am 2021, S0363-5023(21)00756-5).
inline constexpr std::string_view kExtensorsToo = "ED;EDM;ECU;EPL;EPB;APL;EI";

}  // namespace transfer_tests
