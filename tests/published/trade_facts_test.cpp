// Facts that every hand surgeon knows, one test each, with a source beside it.
#include <catch2/catch.hpp>

#include "tests/support/hand_limb.hpp"

using namespace endplate;
using test::avulsion;
using test::deficit_of;
using test::injury;
using test::shipped_anatomy;
using test::state_of;

namespace {

const std::vector<std::string> kMedianDigits{
    "thumb radial pulp",  "thumb ulnar pulp",  "index radial pulp", "index ulnar pulp",
    "middle radial pulp", "middle ulnar pulp", "ring radial pulp"};
const std::vector<std::string> kUlnarDigits{"ring ulnar pulp", "little radial pulp",
                                            "little ulnar pulp"};
const std::vector<std::string> kUlnarDorsum{"dorsum of hand ulnar half",
                                            "dorsal little finger ulnar side",
                                            "dorsal little and ring facing sides"};

std::string nerve_of(const std::string& muscle) {
  const auto& anatomy = shipped_anatomy();
  return anatomy.tree().node(anatomy.muscles()[*anatomy.find_muscle(muscle)].nerve).name;
}

bool contains(const std::vector<examination::MovementDeficit>& list, const std::string& movement) {
  for (const auto& row : list) {
    if (shipped_anatomy().movements()[row.movement].name == movement) return true;
  }
  return false;
}

bool kept_by(const examination::DeficitAnswer& answer, const std::string& movement,
             const std::string& muscle) {
  for (const auto& row : answer.movements_kept_by_others) {
    if (shipped_anatomy().movements()[row.movement].name != movement) continue;
    for (const std::size_t m : row.kept_by) {
      if (shipped_anatomy().muscles()[m].id == muscle) return true;
    }
  }
  return false;
}

bool asks_for(const examination::DeficitAnswer& answer, const std::string& variant) {
  for (const auto& row : answer.variants_to_test) {
    if (shipped_anatomy().variants()[row.variant].name == variant) return true;
  }
  return false;
}

void check_states(const examination::DeficitAnswer& answer, const std::vector<std::string>& targets,
                  const std::string& state) {
  for (const std::string& target : targets) {
    INFO(target);
    CHECK(state_of(answer, target) == state);
  }
}

}  // namespace

// Wheeless, Textbook of Orthopaedics: the palmar cutaneous branch leaves 50 to 60 mm proximal to
// the wrist crease and passes over the retinaculum.
TEST_CASE("a lesion in the carpal tunnel spares the thenar palm", "[published][deficit]") {
  const auto answer = deficit_of({injury("median nerve", 460)});
  CHECK(state_of(answer, "thenar and proximal palm") == "intact");
  CHECK(state_of(answer, "distal palm lateral two thirds") == "absent");
  CHECK(state_of(deficit_of({injury("median nerve", 390)}), "thenar and proximal palm") ==
        "absent");
}

// Gray's Anatomy, 41st ed. 2016, forearm: ulnar nerve.
TEST_CASE("flexor carpi ulnaris and the ulnar half of the deep flexor are ulnar",
          "[published][deficit]") {
  for (const char* muscle : {"FCU", "FDP-R", "FDP-L"}) CHECK(nerve_of(muscle) == "ulnar nerve");
  const auto answer = deficit_of({injury("ulnar nerve", 100)});
  check_states(answer, {"FCU", "FDP-R", "FDP-L"}, "denervated");
  check_states(deficit_of({injury("median nerve", 100)}), {"FCU", "FDP-R", "FDP-L"}, "intact");
}

// Gray's Anatomy, 41st ed. 2016, hand: median nerve.
TEST_CASE(
    "the lateral two lumbricals, opponens, short abductor and superficial short flexor are median",
    "[published][deficit]") {
  const std::vector<std::string> median{"LUM1", "LUM2", "OP", "APB", "FPB-S"};
  for (const auto& muscle : median) CHECK(nerve_of(muscle) == "median nerve");
  check_states(deficit_of({injury("median nerve", 460)}), median, "denervated");
  check_states(deficit_of({injury("ulnar nerve", 100)}), median, "intact");
}

// Bennett and Crouch 1982, J Hand Surg Am 7:407-409.
TEST_CASE("the thenar three, and not the lumbricals, hang on the recurrent branch",
          "[published][deficit]") {
  const auto answer = deficit_of({injury("recurrent motor branch of median nerve", 1)});
  check_states(answer, {"APB", "OP", "FPB-S"}, "denervated");
  check_states(answer, {"LUM1", "LUM2", "FPL"}, "intact");
  check_states(answer, kMedianDigits, "intact");
}

// Oklahoma State University, axillary nerve page.
TEST_CASE("an axillary lesion numbs the patch over the lower deltoid", "[published][deficit]") {
  const auto answer = deficit_of({injury("axillary nerve", 40)});
  CHECK(state_of(answer, "lateral shoulder patch") == "absent");
  CHECK(state_of(answer, "shoulder cap and upper chest") == "intact");
}

// RCEM learning, ulnar nerve at wrist and elbow.
TEST_CASE("one and a half digits are ulnar on both faces", "[published][deficit]") {
  const auto high = deficit_of({injury("ulnar nerve", 100)});
  check_states(high, kUlnarDigits, "absent");
  check_states(high, kUlnarDorsum, "absent");
  check_states(high, kMedianDigits, "intact");
  // Distal to the dorsal branch the back of the hand stays.
  const auto low = deficit_of({injury("ulnar nerve", 420)});
  check_states(low, kUlnarDigits, "absent");
  check_states(low, kUlnarDorsum, "intact");
}

// Gray's Anatomy, 41st ed. 2016, hand: median nerve.
TEST_CASE("three and a half digits are median", "[published][deficit]") {
  const auto answer = deficit_of({injury("median nerve", 460)});
  check_states(answer, kMedianDigits, "absent");
  check_states(answer, kUlnarDigits, "intact");
}

// Washington University nerve surgery pages, musculocutaneous nerve.
TEST_CASE("the musculocutaneous nerve ends as the lateral cutaneous nerve of the forearm",
          "[published][deficit]") {
  const auto answer = deficit_of({injury("musculocutaneous nerve", 200)});
  check_states(answer, {"BIC-S", "BIC-L", "BRA", "CB"}, "intact");
  check_states(answer,
               {"lateral forearm anterior", "lateral forearm posterior", "thenar base strip"},
               "absent");
}

// Last, Anatomy (branches of the radial nerve in the arm); pattern P20 of patterns.csv.
TEST_CASE("a radial palsy at the spiral groove spares triceps", "[published][deficit]") {
  const auto answer = deficit_of({injury("radial nerve", 80)});
  CHECK(state_of(answer, "TRI-LH") == "intact");
  // Its upper branch is whole; the second one, that goes on to anconeus, is cut.
  CHECK(state_of(answer, "TRI-MH") == "may be weak");
  check_states(answer, {"BR", "ECRL", "ED", "EPL", "EI"}, "denervated");
  CHECK(state_of(answer, "first dorsal web space") == "absent");
  CHECK(contains(answer.movements_lost, "wrist extension"));
  CHECK(kept_by(answer, "forearm supination", "BIC-L"));
}

// Branovacki et al. 1998 (branches of the posterior interosseous nerve); pattern P22.
TEST_CASE(
    "a posterior interosseous palsy spares feeling, brachioradialis and the long wrist extensor",
    "[published][deficit]") {
  const auto answer = deficit_of({injury("deep branch of radial nerve", 40)});
  check_states(answer, {"ECRL", "BR", "SUP"}, "intact");
  check_states(answer, {"ED", "ECU", "EPL", "EI"}, "denervated");
  for (const auto& area : answer.areas) CHECK(area.state == examination::AreaState::intact);
  CHECK(kept_by(answer, "wrist extension", "ECRL"));
}

// Branovacki et al. 1998: deep branch 45 %, superficial branch 25 %, bifurcation 30 % of 60 limbs.
TEST_CASE("the short wrist extensor may be weak after a lesion of the deep branch",
          "[published][deficit]") {
  const auto deep = deficit_of({injury("deep branch of radial nerve", 2)});
  CHECK(asks_for(deep,
                 "extensor carpi radialis brevis from the superficial branch of the radial nerve"));
  CHECK(asks_for(deep, "extensor carpi radialis brevis from the deep branch of the radial nerve"));
  CHECK(state_of(deficit_of({injury("deep branch of radial nerve", 2)}), "ECRB") == "may be weak");
  CHECK(state_of(deficit_of({injury("superficial branch of radial nerve", 2)}), "ECRB") ==
        "may be weak");
  CHECK(state_of(deficit_of({injury("radial nerve", 265)}), "ECRB") == "denervated");
}

// Pattern P27; Hwang et al. for the second supply of the middle finger (76.8 %).
TEST_CASE("an anterior interosseous palsy takes thumb and index tips and no skin",
          "[published][deficit]") {
  const auto answer = deficit_of({injury("anterior interosseous nerve", 1)});
  check_states(answer, {"FPL", "FDP-I", "PQ"}, "denervated");
  CHECK(state_of(answer, "FDP-M") == "partial");
  check_states(answer, {"FDS", "PT", "FCR", "APB"}, "intact");
  for (const auto& area : answer.areas) CHECK(area.state == examination::AreaState::intact);
  CHECK(contains(answer.movements_lost, "thumb tip flexion"));
  CHECK(contains(answer.movements_lost, "index tip flexion"));
}

// Roy et al. 2016, J Hand Surg Eur: 19.5 % of limbs.
TEST_CASE("a Martin-Gruber communication keeps ulnar hand muscles in a lesion at the elbow",
          "[published][deficit]") {
  const auto elbow = injury("ulnar nerve", 230);
  const auto without = deficit_of({elbow});
  CHECK(state_of(without, "FDI") == "denervated");
  CHECK(asks_for(without, "Martin-Gruber communication"));
  const auto with = deficit_of({elbow}, {"Martin-Gruber communication"});
  CHECK(state_of(with, "FDI") == "partial");
  CHECK(state_of(with, "FDP-L") == "denervated");
  CHECK(state_of(with, "little ulnar pulp") == "absent");
  CHECK_FALSE(asks_for(with, "Martin-Gruber communication"));
  // At the wrist the crossing fibres have joined the ulnar nerve.
  const auto wrist = deficit_of({injury("ulnar nerve", 460)}, {"Martin-Gruber communication"});
  CHECK(state_of(wrist, "FDI") == "denervated");
  // A median lesion at the elbow may then weaken the ulnar hand.
  const auto median = deficit_of({injury("median nerve", 150)}, {"Martin-Gruber communication"});
  CHECK(state_of(median, "FDI") == "may be weak");
}

// Rowntree 1949, J Bone Joint Surg Br 31-B:505.
TEST_CASE("an all-ulnar thenar eminence keeps its power in a low median lesion",
          "[published][deficit]") {
  const auto answer = deficit_of({injury("median nerve", 460)}, {"all-ulnar thenar eminence"});
  check_states(answer, {"APB", "OP", "FPB-S"}, "intact");
  CHECK(asks_for(deficit_of({injury("median nerve", 460)}), "Riche-Cannieu communication"));
}

// Bertelli and Ghizoni 2011, J Hand Surg Am 36:2017-2023: all of 14 abducted past horizontal.
TEST_CASE("a dead deltoid may still lift through supraspinatus", "[published][deficit]") {
  const auto answer = deficit_of({injury("axillary nerve", 40)});
  CHECK(kept_by(answer, "shoulder abduction", "SS"));
  CHECK_FALSE(contains(answer.movements_lost, "shoulder abduction"));
}

// Isolated musculocutaneous palsy; brachioradialis may keep some flexion (pattern P44).
TEST_CASE("brachioradialis bends the elbow in a musculocutaneous lesion", "[published][deficit]") {
  const auto answer = deficit_of({injury("musculocutaneous nerve", 60)});
  CHECK(kept_by(answer, "elbow flexion", "BR"));
  CHECK(contains(deficit_of({injury("musculocutaneous nerve", 60), injury("radial nerve", 2),
                             injury("median nerve", 100)})
                     .movements_lost,
                 "elbow flexion"));
}

// Common practice.
TEST_CASE("flexor carpi ulnaris bends the wrist in a median lesion", "[published][deficit]") {
  const auto answer = deficit_of({injury("median nerve", 100)});
  CHECK(kept_by(answer, "wrist flexion", "FCU"));
  CHECK(kept_by(answer, "thumb opposition", "FPB-D"));
}

// Wheeless, brachial plexus: dorsal scapular and long thoracic muscles tell root from trunk.
TEST_CASE("rhomboids and serratus suffer at the root and not at the trunk",
          "[published][deficit]") {
  const auto trunk = deficit_of({injury("superior trunk", 5)});
  check_states(trunk, {"SS", "IS", "DEL-A", "BIC-L", "BRA", "TMin"}, "denervated");
  check_states(trunk, {"RHM", "SA"}, "intact");
  check_states(trunk, {"PT", "ECRL"}, "partial");
  const auto root = deficit_of({avulsion("C5"), avulsion("C6")});
  check_states(root, {"RHM", "SA"}, "partial");
  // Erb's palsy: the arm neither lifts, nor turns out, nor bends at the elbow.
  for (const char* movement :
       {"shoulder abduction", "shoulder external rotation", "elbow flexion"}) {
    CHECK(contains(trunk.movements_lost, movement));
  }
}

// Common practice: the dorsal root ganglion is whole, the sympathetic outflow is not.
TEST_CASE("an avulsed T1 is expected to show a Horner sign and a kept sensory potential",
          "[published][deficit]") {
  const auto answer = deficit_of({avulsion("T1")});
  std::string notes;
  for (const auto& note : answer.notes) notes += note + "\n";
  CHECK(notes.find("Horner") != std::string::npos);
  CHECK(notes.find("sensory nerve action potentials") != std::string::npos);
  CHECK(deficit_of({injury("T1 root", 10)}).notes.empty());
}
