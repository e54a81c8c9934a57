#include <catch2/catch.hpp>

#include "models/evidence/data_package.hpp"

TEST_CASE("the shipped evidence tables read without a problem", "[evidence]") {
  const auto package = endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  if (!package) {
    for (const auto& problem : package.error().problems)
      UNSCOPED_INFO(problem.place + ": " + problem.what);
  }
  REQUIRE(package);
  CHECK(package->table("landmark_distances").size() == 700);
}
