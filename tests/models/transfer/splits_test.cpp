// How far a recipient is split out of its nerve.
#include "models/transfer/splits.hpp"

#include <catch2/catch.hpp>

#include "transfer_fixture.hpp"

using namespace endplate;
using namespace endplate::transfer;

// Restoration of ulnar nerve motor function, 2016 (PMID 26860598): 97 mm; Winston 2017: 139 mm.
TEST_CASE("fascicles are split out as far as dissections printed", "[transfer]") {
  const auto& tables = limb::own_tables();
  CHECK(recipient_split(tables, "deep branch of ulnar nerve").length_mm == 97.0);
  CHECK(recipient_split(tables, "anterior interosseous nerve").length_mm == 139.0);
  CHECK(recipient_split(tables, "axillary nerve").length_mm == 0.0);
  // Costa 2020: the thenar branch is released over 20 to 30 mm.
  CHECK(recipient_split(tables, "recurrent motor branch of median nerve").length_mm == 25.0);
}

// Entry 74.3 mm above the wrist crease (ten limbs), end 60.4 above the styloids (28 limbs).
TEST_CASE("the branch to pronator quadratus is followed into the muscle", "[transfer]") {
  const auto& tables = limb::own_tables();
  const SplitOut followed =
      donor_followed(tables, "anterior interosseous branch to pronator quadratus");
  CHECK(followed.length_mm > 0.0);
  CHECK(followed.length_mm < 74.3 - 60.4);
  CHECK(donor_followed(tables, "radial branch to long head of triceps").length_mm == 0.0);
}

TEST_CASE("a split ends below the injury", "[transfer]") {
  const auto tree = anatomy::NerveTree::from(limb::own_tables());
  REQUIRE(tree);
  const auto deep = *tree->find("deep branch of ulnar nerve");
  const auto ulnar = tree->node(deep).parents.front();
  anatomy::NerveMetrics metrics;
  metrics.length_mm.assign(tree->size(), 500.0);
  metrics.leaves_parent_at_mm.resize(tree->size());
  metrics.leaves_parent_at_mm[deep].assign(tree->node(deep).parents.size(), 480.0);
  std::vector<examination::TreeInjury> injuries(1);
  injuries[0].lesion.at = {ulnar, 450.0};
  const SplitOut whole{97.0, "row"};
  CHECK(below_injuries(whole, deep, *tree, metrics, injuries).length_mm == Approx(30.0));
  injuries[0].lesion.at = {ulnar, 200.0};
  CHECK(below_injuries(whole, deep, *tree, metrics, injuries).length_mm == 97.0);
  injuries[0].lesion.at = {ulnar, 490.0};  // distal to where the branch leaves
  CHECK(below_injuries(whole, deep, *tree, metrics, injuries).length_mm == 97.0);
}
