// What the great nerves supply, as every textbook of anatomy has it (common practice).
#include "models/anatomy/supply_facts.hpp"

#include <catch2/catch.hpp>
#include <set>
#include <string>

#include "tests/support/hand_limb.hpp"

using namespace endplate;
using test::shipped_anatomy;

namespace {

anatomy::NerveFacts facts_of(std::string_view nerve) {
  const auto& a = shipped_anatomy();
  return anatomy::facts_of_nerve(a, a.tree().find(nerve).value());
}

std::vector<std::string> muscles_of(std::string_view nerve) {
  std::vector<std::string> ids;
  for (const std::size_t m : facts_of(nerve).muscles) {
    ids.push_back(shipped_anatomy().muscles()[m].id);
  }
  return ids;
}

std::set<std::string> areas_of(std::string_view nerve) {
  std::set<std::string> names;
  for (const std::size_t a : facts_of(nerve).areas) {
    names.insert(shipped_anatomy().areas()[a].name);
  }
  return names;
}

std::set<std::string> variants_of(std::string_view nerve) {
  std::set<std::string> names;
  for (const std::size_t v : facts_of(nerve).variants) {
    names.insert(shipped_anatomy().variants()[v].name);
  }
  return names;
}

bool before(const std::vector<std::string>& ids, const std::string& a, const std::string& b) {
  return std::ranges::find(ids, a) < std::ranges::find(ids, b);
}

}  // namespace

TEST_CASE(
    "the musculocutaneous nerve moves the front of the arm and ends in the skin of the radial "
    "forearm",
    "[anatomy]") {
  const auto muscles = muscles_of("musculocutaneous nerve");
  const std::set<std::string> all(muscles.begin(), muscles.end());
  CHECK(all.contains("CB"));
  CHECK(all.contains("BRA"));
  CHECK(before(muscles, "CB", "BRA"));
  CHECK(areas_of("musculocutaneous nerve") == std::set<std::string>{"lateral forearm anterior",
                                                                    "lateral forearm posterior",
                                                                    "thenar base strip"});
}

TEST_CASE("the radial nerve feels the first web space and never the palm", "[anatomy]") {
  const auto areas = areas_of("radial nerve");
  CHECK(areas.contains("first dorsal web space"));
  CHECK_FALSE(areas.contains("thenar and proximal palm"));
  const auto muscles = muscles_of("radial nerve");
  CHECK(before(muscles, "TRI-LH", "ECRL"));
  CHECK(before(muscles, "ECRL", "EI"));
}

TEST_CASE("the thenar palm belongs to the palmar cutaneous branch alone", "[anatomy]") {
  CHECK(areas_of("palmar cutaneous branch of median nerve").contains("thenar and proximal palm"));
  CHECK(areas_of("median nerve").contains("thenar and proximal palm"));
  CHECK_FALSE(areas_of("ulnar nerve").contains("thenar and proximal palm"));
}

TEST_CASE("the ulnar nerve moves the interossei, and the communications concern it", "[anatomy]") {
  const auto muscles = muscles_of("ulnar nerve");
  CHECK(std::ranges::find(muscles, "FDI") != muscles.end());
  CHECK(std::ranges::find(muscles, "APB") == muscles.end());
  CHECK(before(muscles, "FCU", "FDI"));
  CHECK(variants_of("ulnar nerve").contains("Martin-Gruber communication"));
  CHECK(variants_of("median nerve").contains("Martin-Gruber communication"));
  CHECK_FALSE(variants_of("axillary nerve").contains("Martin-Gruber communication"));
}

TEST_CASE("the usual way of a branch runs from a root to it", "[anatomy]") {
  const auto& tree = shipped_anatomy().tree();
  const auto way = anatomy::usual_way(tree, tree.find("posterior interosseous nerve").value());
  CHECK(tree.node(way.front()).kind == anatomy::NodeKind::root);
  CHECK(tree.node(way.back()).name == "posterior interosseous nerve");
  std::vector<std::string> names;
  for (const auto node : way) names.push_back(tree.node(node).name);
  CHECK(before(names, "posterior cord", "radial nerve"));
}
