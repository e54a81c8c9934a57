#include <catch2/catch.hpp>

#include "models/anatomy/nerve_tree.hpp"

TEST_CASE("the nerve tree reads from the tables", "[anatomy]") {
  const auto package = endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package);
  const auto tree = endplate::anatomy::NerveTree::from(*package);
  REQUIRE(tree);
  CHECK(tree->size() == 204);
  const auto median = tree->find("median nerve");
  REQUIRE(median);
  CHECK(tree->node(*median).parents.size() == 2);
}
