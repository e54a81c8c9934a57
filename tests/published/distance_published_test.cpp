// Distances of the standard limb against figures of the anatomical literature that are not rows of
// the tables: textbook levels, each with its source.
#include <catch2/catch.hpp>

#include "models/limb/distance.hpp"

using namespace endplate;

namespace {

Summary level(const std::string& nerve, const std::string& point, const std::string& landmark) {
  static const auto package = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package);
  const auto answer = limb::distances(*package, {}, {nerve, landmark, point});
  REQUIRE(answer);
  for (const limb::Distance& d : answer->distances) {
    if (d.along_limb_mm && d.posture.empty()) return *d.along_limb_mm;
  }
  FAIL("no distance along the limb");
  return {};
}

}  // namespace

TEST_CASE("the radial nerve pierces the lateral septum about 10 cm above the lateral epicondyle",
          "[published][distance]") {
  // Common practice: a hand's breadth above the epicondyle.
  const Summary s = level("radial nerve", "lateral intermuscular septum", "lateral epicondyle");
  CHECK(s.mean > 90.0);
  CHECK(s.mean < 125.0);
}

TEST_CASE("the axillary nerve crosses under deltoid about 5 to 7 cm below the acromion",
          "[published][distance]") {
  // Common practice of the deltoid split: keep within 50 mm of the lateral edge of the acromion.
  const Summary s = level("anterior branch of axillary nerve", "deep surface of deltoid",
                          "acromion, lateral edge");
  CHECK(s.mean > 50.0);
  CHECK(s.mean < 70.0);
  CHECK(s.p05 < 50.0);
}

TEST_CASE("the dorsal branch leaves the ulnar nerve 6 to 8 cm above the ulnar styloid",
          "[published][distance]") {
  // "Dorsal cutaneous ulnar nerve conduction" (abstract, read; Archives of Neurology 1980,
  // recalled): leaves on an average 6 to 8 cm proximal to the ulnar styloid. No row of the tables.
  const Summary s = level("dorsal branch of ulnar nerve", "origin", "ulnar styloid");
  CHECK(s.mean > 60.0);
  CHECK(s.mean < 80.0);
}

TEST_CASE("the palmar branch leaves the median nerve 45 mm above the wrist crease",
          "[published][distance]") {
  // "Regional anatomy of median nerve palmar cutaneous branch and its clinical significance"
  // (abstract, read): 45.2 mm (SD 21.2) from the middle of the distal wrist crease in 52 limbs. No
  // row of the tables. Held to half of that spread.
  const Summary s =
      level("palmar cutaneous branch of median nerve", "origin", "distal wrist crease");
  CHECK(s.mean == Approx(45.2).margin(10.6));
}
