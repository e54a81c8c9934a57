#include "incision_fixture.hpp"

namespace endplate::incision {

using casefile::Toward;

TEST_CASE("a mark is read from words", "[incision]") {
  const auto read =
      marks("lateral epicondyle, 20 proximal, 10 anterior, on lateral; olecranon tip");
  REQUIRE(read.size() == 2);
  CHECK(read[0].landmark == "lateral epicondyle");
  CHECK(read[0].along_mm == 20.0);
  CHECK(read[0].toward == Toward::proximal);
  CHECK(read[0].aside_mm == 10.0);
  CHECK(read[0].aside == Aside::anterior);
  CHECK(read[0].surface == Aside::lateral);
  CHECK(read[1].landmark == "olecranon tip");
  CHECK(read[1].along_mm == 0.0);
  CHECK_FALSE(read[1].surface);
}

TEST_CASE("a landmark's own commas are no offsets", "[incision]") {
  const auto read = marks("acromion, lateral edge, 50 mm distal");
  CHECK(read.front().landmark == "acromion, lateral edge");
  CHECK(read.front().along_mm == 50.0);
  CHECK(read.front().toward == Toward::distal);
}

TEST_CASE("a picked place needs no landmark", "[incision]") {
  const auto read = marks("at 12.5 -40 30");
  REQUIRE(read.front().picked_mm);
  CHECK(*read.front().picked_mm == Eigen::Vector3d(12.5, -40.0, 30.0));
  CHECK(in_words(read.front()) == "at 12 -40 30");
}

TEST_CASE("the words of a mark are read as the same mark", "[incision]") {
  for (const char* words : {"lateral epicondyle, 20 proximal, 10 anterior, on lateral",
                            "acromion, lateral edge, 50 distal", "pisiform"}) {
    CHECK(in_words(marks(words).front()) == words);
  }
}

TEST_CASE("an unknown landmark is answered with the nearest names", "[incision]") {
  std::vector<std::string> slips;
  const auto read = marks_from("elbow knob, 20 proximal", "--pin", own_terms(), slips);
  REQUIRE_FALSE(read);
  CHECK(read.error().problems.front().place == "--pin");
  CHECK(read.error().problems.front().mend.find("Perhaps") != std::string::npos);
}

}  // namespace endplate::incision
