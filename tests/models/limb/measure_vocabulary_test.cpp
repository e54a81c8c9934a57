#include "models/limb/measure_vocabulary.hpp"

#include <algorithm>

#include "limb_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;

TEST_CASE("measures are found by the trade's names without regard to case and blanks",
          "[models][limb]") {
  const LimbSize size = size_of(adult(casefile::Sex::male));
  const MeasureVocabulary& words = size.vocabulary();
  for (const char* name : {"acromion to lateral epicondyle", "Arm length", "forearm length",
                           "  hand   LENGTH ", "wrist circumference", "ulna length"}) {
    INFO(name);
    CHECK(words.find(name) != nullptr);
  }
  CHECK(words.find("arm length") == words.find("acromion to lateral epicondyle"));
  CHECK(words.find("forearm lenght") == nullptr);
  CHECK(words.nearest("forearm lenght").front() == "forearm length");
}

TEST_CASE("every assumed conversion of a measure says why", "[models][limb]") {
  const LimbSize size = size_of(adult(casefile::Sex::female));
  for (const Measure& measure : size.vocabulary().measures()) {
    INFO(measure.name);
    CHECK((measure.provenance != evidence::Provenance::assumed || !measure.reason.empty()));
  }
}
