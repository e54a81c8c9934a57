#include "models/evidence/nearest_names.hpp"

#include <catch2/catch.hpp>

using namespace endplate::evidence;

TEST_CASE("a slip of the pen finds the name that was meant", "[evidence]") {
  const std::vector<std::string> names{"C5 root", "radial nerve", "median nerve",
                                       "deep branch of radial nerve", "ulnar nerve"};
  CHECK(nearest_names("radail", names, 2) ==
        std::vector<std::string>{"radial nerve", "deep branch of radial nerve"});
  CHECK(nearest_names("Ulnar Nevre", names, 1).front() == "ulnar nerve");
  CHECK(nearest_names("deep radial", names, 1).front() == "deep branch of radial nerve");
  CHECK(nearest_names("x", names, 10).size() == names.size());
}

TEST_CASE("letters match whatever their case", "[evidence]") {
  CHECK(same_name("Radial NERVE", "radial nerve"));
  CHECK_FALSE(same_name("radial", "radial nerve"));
  CHECK(contains_words("deep branch of radial nerve", "Radial deep"));
  CHECK(contains_words("anything", ""));
  CHECK_FALSE(contains_words("deep branch of radial nerve", "radial ulnar"));
}
