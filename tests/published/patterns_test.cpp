// The patterns of loss for a known lesion site that textbooks print (datasets/patterns.csv, each
// row with its source), against the answer for the made-up arm of tests/support.
#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "tests/support/hand_limb.hpp"

using namespace endplate;
using test::avulsion;
using test::deficit_of;
using test::injury;
using test::state_of;

namespace {

using Injuries = std::vector<examination::TreeInjury>;

// P28 and P29 (single fascicles of the anterior interosseous nerve) and P59 (several sites at once)
// lie at no place of the tree. Where the site of a row lies on the made-up arm.
const std::map<std::string, Injuries>& sites() {
  static const std::map<std::string, Injuries> result{
      {"P01", {injury("C5 root", 40)}},
      {"P02", {injury("C6 root", 40)}},
      {"P03", {injury("C7 root", 40)}},
      {"P04", {injury("C8 root", 40)}},
      {"P05", {injury("C8 root", 40)}},
      {"P06", {injury("T1 root", 40)}},
      {"P07", {injury("superior trunk", 5)}},
      {"P08", {injury("superior trunk", 5)}},
      {"P09", {avulsion("C5"), avulsion("C6")}},
      {"P10", {avulsion("C5"), avulsion("C6"), avulsion("C7")}},
      {"P11", {injury("C8 root", 10), injury("T1 root", 10)}},
      {"P12", {injury("inferior trunk", 10)}},
      {"P13", {injury("inferior trunk", 10)}},
      {"P14", {injury("middle trunk", 10)}},
      {"P15", {avulsion("C5"), avulsion("C6"), avulsion("C7"), avulsion("C8"), avulsion("T1")}},
      {"P16", {injury("lateral cord", 1)}},
      {"P17", {injury("medial cord", 1)}},
      {"P18", {injury("posterior cord", 1)}},
      {"P19", {injury("radial nerve", 2)}},
      {"P20", {injury("radial nerve", 110)}},
      {"P21", {injury("radial nerve", 265)}},
      {"P22", {injury("deep branch of radial nerve", 20)}},
      {"P23", {injury("posterior interosseous nerve", 30)}},
      {"P24", {injury("superficial branch of radial nerve", 140)}},
      {"P25", {injury("median nerve", 150)}},
      {"P26", {injury("median nerve", 260)}},
      {"P27", {injury("anterior interosseous nerve", 5)}},
      {"P30", {injury("median nerve", 455)}},
      {"P31", {injury("median nerve", 390)}},
      {"P32", {injury("recurrent motor branch of median nerve", 2)}},
      {"P33", {injury("palmar cutaneous branch of median nerve", 10)}},
      {"P34", {injury("ulnar nerve", 100)}},
      {"P35", {injury("ulnar nerve", 240)}},
      {"P36", {injury("ulnar nerve", 420)}},
      {"P37", {injury("ulnar nerve", 475)}},
      {"P38", {injury("deep branch of ulnar nerve", 4)}},
      {"P39", {injury("deep branch of ulnar nerve", 19)}},
      {"P40", {injury("superficial branch of ulnar nerve", 2)}},
      {"P41", {injury("dorsal branch of ulnar nerve", 30)}},
      {"P42", {injury("axillary nerve", 40)}},
      {"P43", {injury("axillary branch to teres minor", 5)}},
      {"P44", {injury("musculocutaneous nerve", 60)}},
      {"P45", {injury("lateral antebrachial cutaneous nerve", 2)}},
      {"P46", {injury("suprascapular nerve", 55)}},
      {"P47", {injury("suprascapular nerve", 95)}},
      {"P48", {injury("long thoracic nerve", 5)}},
      {"P49", {injury("accessory nerve", 40)}},
      {"P50", {injury("dorsal scapular nerve", 5)}},
      {"P51", {injury("thoracodorsal nerve", 5)}},
      {"P52", {injury("medial pectoral nerve", 2)}},
      {"P53", {injury("intercostobrachial nerve", 5)}},
      {"P54", {injury("medial antebrachial cutaneous nerve", 150)}},
      {"P55", {injury("proper palmar digital nerve of thumb ulnar side", 10)}},
      {"P56", {injury("common palmar digital nerve 3 of median nerve", 5)}},
      {"P57", {injury("proper palmar digital nerve of index radial side", 40)}},
      {"P58", {injury("median nerve", 455), injury("ulnar nerve", 440)}},
  };
  return result;
}

// "P05 ECRB: pattern spared, answer partial"
std::vector<std::string> misses(const evidence::Row& row) {
  std::vector<std::string> result;
  const std::string id(row.text("id"));
  const auto answer = deficit_of(sites().at(id));
  const auto demand = [&](const char* column, bool intact, const char* word) {
    for (const std::string& target : row.list(column)) {
      const std::string state = state_of(answer, target);
      if ((state == "intact") != intact) {
        result.push_back(fmt::format("{} {}: pattern {}, answer {}", id, target, word, state));
      }
    }
  };
  demand("muscles_weak", false, "weak");
  demand("muscles_spared", true, "spared");
  demand("sensory_loss", false, "numb");
  demand("sensory_spared", true, "spared");
  return result;
}

}  // namespace

TEST_CASE("every textbook pattern of loss is reproduced at its site", "[published][deficit]") {
  int textbook = 0;
  for (const evidence::Row row : test::shipped_package().table("patterns")) {
    if (row.text("evidence") != "textbook") continue;
    ++textbook;
    INFO(row.text("lesion_site") << ", " << row.text("source"));
    REQUIRE(sites().contains(std::string(row.text("id"))));
    // Compared as a whole, so that a failure prints them.
    CHECK(misses(row) == std::vector<std::string>{});  // NOLINT(readability-container-size-empty)
  }
  CHECK(textbook == 41);
}

TEST_CASE("where case series differ from the answer, the list in docs/deficit.md is complete",
          "[published][deficit]") {
  std::vector<std::string> found;
  for (const evidence::Row row : test::shipped_package().table("patterns")) {
    if (row.text("evidence") == "textbook" || !sites().contains(std::string(row.text("id"))))
      continue;
    std::ranges::move(misses(row), std::back_inserter(found));
  }
  const std::vector<std::string> known{
      "P08 index radial pulp: pattern spared, answer reduced",  // an incomplete lesion
  };
  CHECK(found == known);
}
