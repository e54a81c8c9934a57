#include "models/anatomy/terms.hpp"

#include <catch2/catch.hpp>

using endplate::anatomy::TermKind;
using endplate::anatomy::Terms;

namespace {

const Terms& terms() {
  static const auto package =
      endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  static const auto read = Terms::from(package.value());
  return read.value();
}

using Names = std::vector<std::string>;

Names names(TermKind kind, std::string_view typed) {
  const auto reading = terms().resolve(kind, typed);
  return reading ? reading->names : Names();
}

bool slip(TermKind kind, std::string_view typed) {
  const auto reading = terms().resolve(kind, typed);
  return reading && reading->slip;
}

}  // namespace

TEST_CASE("every standard name stands for itself, whatever its case", "[terms]") {
  using enum TermKind;
  for (const TermKind kind :
       {nerve, muscle, area, landmark, variant, movement, graft_donor, measure}) {
    REQUIRE_FALSE(terms().names(kind).empty());
    for (const std::string& name : terms().names(kind)) {
      CAPTURE(name);
      CHECK(names(kind, name) == Names{name});
      std::string shouted = name;
      for (char& c : shouted) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
      if (name != "RHm") CHECK(names(kind, shouted) == Names{name});
    }
  }
}

TEST_CASE("a muscle is found by abbreviation, full name and part", "[terms]") {
  const auto muscle = [](std::string_view typed) { return names(TermKind::muscle, typed); };
  CHECK(muscle("ecrl") == Names{"ECRL"});
  CHECK(muscle("extensor carpi radialis longus") == Names{"ECRL"});
  CHECK(muscle("M. extensor carpi radialis longus") == Names{"ECRL"});
  CHECK(muscle("FDP ring") == Names{"FDP-R"});
  CHECK(muscle("FDP ring finger") == Names{"FDP-R"});
  CHECK(muscle("fdp-r") == Names{"FDP-R"});
  CHECK(muscle("FDPR") == Names{"FDP-R"});
  CHECK(muscle("flexor digitorum profundus to the little finger") == Names{"FDP-L"});
  CHECK(muscle("flexor digitorum profundus small finger") == Names{"FDP-L"});
  CHECK(muscle("flexor digitorum profundus") == Names{"FDP-I", "FDP-M", "FDP-R", "FDP-L"});
  CHECK(muscle("FDP") == Names{"FDP-I", "FDP-M", "FDP-R", "FDP-L"});
  CHECK(muscle("deltoid") == Names{"DEL-C", "DEL-A", "DEL-S"});
  CHECK(muscle("middle deltoid") == Names{"DEL-A"});
  CHECK(muscle("acromial part of deltoid") == Names{"DEL-A"});
  CHECK(muscle("biceps") == Names{"BIC-S", "BIC-L"});
  CHECK(muscle("long head of triceps") == Names{"TRI-LH"});
  CHECK(muscle("long head of triceps brachii") == Names{"TRI-LH"});
  CHECK(muscle("1st dorsal interosseous") == Names{"FDI"});
  CHECK(muscle("EDC") == Names{"ED"});
  CHECK(muscle("BRA") == Names{"BRA"});
  CHECK(muscle("adductor pollicis") == Names{"AdP-T", "AdP-O"});
}

TEST_CASE("rhomboid major and minor differ only in case and are not confused", "[terms]") {
  CHECK(names(TermKind::muscle, "RHm") == Names{"RHm"});
  CHECK(names(TermKind::muscle, "RHM") == Names{"RHM"});
  const auto unclear = terms().resolve(TermKind::muscle, "rhm");
  REQUIRE_FALSE(unclear);
  CHECK(unclear.error().nearest == Names{"rhomboid major (RHM)", "rhomboid minor (RHm)"});
}

TEST_CASE("a nerve is found by abbreviation, order of words and Latin name", "[terms]") {
  const auto nerve = [](std::string_view typed) { return names(TermKind::nerve, typed); };
  CHECK(nerve("Radial Nerve") == Names{"radial nerve"});
  CHECK(nerve("radial") == Names{"radial nerve"});
  CHECK(nerve("musculocutaneous n.") == Names{"musculocutaneous nerve"});
  CHECK(nerve("musculo-cutaneous nerve") == Names{"musculocutaneous nerve"});
  CHECK(nerve("PIN") == Names{"posterior interosseous nerve"});
  CHECK(nerve("interosseous posterior nerve") == Names{"posterior interosseous nerve"});
  CHECK(nerve("nervus interosseus antebrachii posterior") == Names{"posterior interosseous nerve"});
  CHECK(nerve("AIN") == Names{"anterior interosseous nerve"});
  CHECK(nerve("SBRN") == Names{"superficial branch of radial nerve"});
  CHECK(nerve("ulnar nerve, deep branch") == Names{"deep branch of ulnar nerve"});
  CHECK(nerve("MABC") == Names{"medial antebrachial cutaneous nerve"});
  CHECK(nerve("LABC") == Names{"lateral antebrachial cutaneous nerve"});
  CHECK(nerve("lateral cutaneous nerve of the forearm") ==
        Names{"lateral antebrachial cutaneous nerve"});
  CHECK(nerve("upper trunk") == Names{"superior trunk"});
  CHECK(nerve("C5") == Names{"C5 root"});
}

TEST_CASE("areas, landmarks and variants take the trade's names", "[terms]") {
  CHECK(names(TermKind::area, "palm lateral two thirds") ==
        Names{"thenar and proximal palm", "distal palm lateral two thirds"});
  CHECK(names(TermKind::area, "First dorsal webspace") == Names{"first dorsal web space"});
  CHECK(names(TermKind::area, "regimental badge area") == Names{"lateral shoulder patch"});
  CHECK(names(TermKind::area, "ulnar pulp of the little finger") == Names{"little ulnar pulp"});
  CHECK(names(TermKind::landmark, "olecranon") == Names{"olecranon tip"});
  CHECK(names(TermKind::landmark, "acromion") == Names{"acromion, point not stated"});
  CHECK(names(TermKind::landmark, "lateral edge of the acromion") ==
        Names{"acromion, lateral edge"});
  CHECK(names(TermKind::landmark, "Lister's tubercle") == Names{"Lister tubercle"});
  CHECK(names(TermKind::variant, "Martin\u2013Gruber communication").size() == 1);
  CHECK(names(TermKind::variant, "Martin-Gruber communication") ==
        names(TermKind::variant, "Martin-Gruber anastomosis"));
}

TEST_CASE("a slip is read when it can only mean one thing", "[terms]") {
  CHECK(names(TermKind::nerve, "radail nerve") == Names{"radial nerve"});
  CHECK(slip(TermKind::nerve, "radail nerve"));
  CHECK_FALSE(slip(TermKind::nerve, "radial nerve"));
  CHECK(names(TermKind::muscle, "brachioradalis") == Names{"BR"});
  CHECK(names(TermKind::muscle, "flexor digitorum profondus") ==
        Names{"FDP-I", "FDP-M", "FDP-R", "FDP-L"});
  CHECK(names(TermKind::landmark, "lateral epicondile") == Names{"lateral epicondyle"});
}

TEST_CASE("what could mean another thing is never read as a slip", "[terms]") {
  const auto refused = [](TermKind kind, std::string_view typed, const std::string& offered) {
    const auto reading = terms().resolve(kind, typed);
    CAPTURE(typed);
    REQUIRE_FALSE(reading);
    CHECK_THAT(reading.error().nearest, Catch::Matchers::VectorContains(offered));
  };
  refused(TermKind::muscle, "ECRX", "extensor carpi radialis longus (ECRL)");
  refused(TermKind::muscle, "extensor carpi radialis", "extensor carpi radialis longus (ECRL)");
  refused(TermKind::landmark, "radial epicondyle", "medial epicondyle");
  refused(TermKind::nerve, "C9 root", "C5 root");
  refused(TermKind::nerve, "tibial nerve", "radial nerve");
  refused(TermKind::nerve, "ulner nervve", "ulnar nerve");
  CHECK_FALSE(terms().resolve(TermKind::nerve, ""));
  CHECK_FALSE(terms().resolve(TermKind::nerve, "nerve"));
  CHECK_FALSE(terms().resolve(TermKind::muscle, "  . "));
  CHECK_FALSE(terms().resolve(TermKind::landmark, "none"));
}
