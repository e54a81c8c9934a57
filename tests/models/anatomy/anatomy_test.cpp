#include "models/anatomy/anatomy.hpp"

#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/support/hand_limb.hpp"

using namespace endplate;
using test::shipped_anatomy;

namespace {

// The shipped tables with one text replaced in one file, read anew.
Expected<anatomy::Anatomy> anatomy_with(const std::string& file, const std::string& from,
                                        const std::string& to) {
  namespace fs = std::filesystem;
  const fs::path folder =
      fs::temp_directory_path() / ("endplate_anatomy_test_" + std::to_string(getpid()));
  fs::create_directories(folder);
  fs::copy(ENDPLATE_SOURCE_DIR "/datasets", folder,
           fs::copy_options::overwrite_existing | fs::copy_options::recursive);
  std::ostringstream text;
  text << std::ifstream(folder / file).rdbuf();
  std::string changed = text.str();
  const auto at = changed.find(from);
  REQUIRE(at != std::string::npos);
  changed.replace(at, from.size(), to);
  std::ofstream(folder / file) << changed;
  const auto package = evidence::DataPackage::read(folder);
  fs::remove_all(folder);
  if (!package) return std::unexpected(package.error());
  return anatomy::Anatomy::from(*package);
}

void check_problem(const Expected<anatomy::Anatomy>& read, const std::string& file,
                   const std::string& what) {
  REQUIRE_FALSE(read);
  CHECK(read.error().fault == Fault::internal);
  CHECK(read.error().problems.front().place.find(file) == 0);
  CHECK(read.error().problems.front().what.find(what) != std::string::npos);
}

}  // namespace

TEST_CASE("the anatomy reads from the tables with every muscle and area", "[anatomy]") {
  CHECK(shipped_anatomy().muscles().size() == 74);
  CHECK(shipped_anatomy().areas().size() == 42);  // two of 44 rows hold no skin
  CHECK(shipped_anatomy().movements().size() >= 40);
  const auto& ecrl = shipped_anatomy().muscles()[*shipped_anatomy().find_muscle("ECRL")];
  CHECK(ecrl.roots.front().root == "C6");
  CHECK(ecrl.roots.front().dominant);
  CHECK_FALSE(ecrl.roots.back().dominant);
  CHECK_FALSE(shipped_anatomy()
                  .areas()[*shipped_anatomy().find_area("first dorsal web space")]
                  .autonomous_zone.empty());
}

TEST_CASE("every muscle but palmaris brevis and subclavius takes part in a movement", "[anatomy]") {
  std::vector<bool> used(shipped_anatomy().muscles().size());
  for (const auto& movement : shipped_anatomy().movements()) {
    for (const std::size_t muscle : movement.prime_movers) used[muscle] = true;
    for (const std::size_t muscle : movement.substitutes) used[muscle] = true;
    CHECK(movement.substitutes.empty() == movement.how_substituted.empty());
  }
  std::vector<std::string> idle;
  for (std::size_t i = 0; i < used.size(); ++i) {
    if (!used[i]) idle.push_back(shipped_anatomy().muscles()[i].id);
  }
  CHECK(idle == std::vector<std::string>{"SUBC", "PB"});
}

TEST_CASE("the prevalence of a variant shows how far the studies disagree", "[anatomy]") {
  const auto& variant =
      shipped_anatomy().variants()[*shipped_anatomy().find_variant("martin-gruber ANASTOMOSIS")];
  CHECK(variant.name == "Martin-Gruber communication");
  // Roy 2016 pools 0.195 of 10,562 limbs; Amoiridis 1992 and Grados 2025 print 0.32 and 0.475.
  CHECK(*variant.prevalence.pooled == Approx(0.195));
  CHECK(*variant.prevalence.lowest == Approx(0.157).margin(0.001));
  CHECK(*variant.prevalence.highest == Approx(0.475));
  CHECK(variant.prevalence.rows.size() == 7);
  const auto& radial = shipped_anatomy().variants()[*shipped_anatomy().find_variant(
      "Martin-Gruber communication from the anterior interosseous nerve")];
  CHECK(*radial.prevalence.pooled == Approx(0.195 * 0.576));
  const auto& kaplan =
      shipped_anatomy().variants()[*shipped_anatomy().find_variant("Kaplan communication")];
  CHECK_FALSE(kaplan.prevalence.pooled);
}

TEST_CASE("a muscle on a branch of another nerve is a problem with its cell", "[anatomy]") {
  check_problem(anatomy_with("muscles.csv", "ulnar nerve,ulnar branch to flexor carpi ulnaris",
                             "median nerve,ulnar branch to flexor carpi ulnaris"),
                "muscles.csv, row", "does not descend from 'median nerve'");
}

TEST_CASE("a root that cannot reach its muscle is a problem", "[anatomy]") {
  check_problem(anatomy_with("muscles.csv", "superior trunk,C5*;C6,rotator cuff,starts",
                             "superior trunk,C5*;C8,rotator cuff,starts"),
                "muscles.csv", "root C8 does not reach 'SS'");
}

TEST_CASE("two muscles of one abbreviation are a problem", "[anatomy]") {
  const auto read = anatomy_with("muscles.csv", "SS,supraspinatus,SS,", "IS,supraspinatus,IS,");
  REQUIRE_FALSE(read);
  CHECK(read.error().problems.front().place.find("muscles.csv") != std::string::npos);
}

TEST_CASE("an area whose nerve is not in the tree is a problem", "[anatomy]") {
  check_problem(
      anatomy_with("skin_areas.csv", "dorsal,radial nerve,superficial branch of radial nerve",
                   "dorsal,radial nerf,superficial branch of radial nerve"),
      "skin_areas.csv, row", "'radial nerf' is not in the nerve tree");
}

TEST_CASE("a movement that names a muscle twice is a problem", "[anatomy]") {
  const auto read = anatomy_with("movements.csv", "TRAP-U;LS", "TRAP-U;TRAP-U");
  REQUIRE_FALSE(read);
  CHECK(read.error().problems.front().place.find("movements.csv, row") == 0);
}

TEST_CASE("a variant's route must leave the nerve that it names", "[anatomy]") {
  check_problem(anatomy_with("variant_effects.csv", "deep branch of ulnar nerve,,,communicating",
                             "superficial branch of ulnar nerve,,,communicating"),
                "variant_effects.csv, row", "does not leave that nerve");
}
