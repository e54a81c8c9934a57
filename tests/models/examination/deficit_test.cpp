#include "models/examination/deficit.hpp"

#include <catch2/catch.hpp>
#include <set>

#include "tests/support/hand_limb.hpp"

using namespace endplate;
using examination::AreaState;
using examination::DeficitAnswer;
using examination::Extent;
using examination::MuscleState;
using test::deficit_of;
using test::hand_limb;
using test::injury;
using test::shipped_anatomy;
using test::state_of;

namespace {

// A lesion at every quarter of every nerve.
std::vector<examination::TreeInjury> every_lesion(int per_nerve) {
  std::vector<examination::TreeInjury> result;
  for (anatomy::NodeIndex node = 0; node < shipped_anatomy().tree().size(); ++node) {
    for (int i = 0; i < per_nerve; ++i) {
      const double mm = hand_limb().length_mm[node] * (i + 0.5) / per_nerve;
      result.push_back({{{node, mm}, 0.0, false, "here"}, Extent::complete});
    }
  }
  return result;
}

// What is worse in `a` than in `b`, by name.
std::vector<std::string> worse(const DeficitAnswer& a, const DeficitAnswer& b) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < a.muscles.size(); ++i) {
    if (a.muscles[i].state > b.muscles[i].state) {
      names.push_back(shipped_anatomy().muscles()[a.muscles[i].muscle].id);
    }
  }
  for (std::size_t i = 0; i < a.areas.size(); ++i) {
    if (a.areas[i].state > b.areas[i].state) {
      names.push_back(shipped_anatomy().areas()[a.areas[i].area].name);
    }
  }
  return names;
}

const std::vector<std::string> kNone;

}  // namespace

TEST_CASE("cutting every root of a muscle denervates it", "[deficit]") {
  for (const anatomy::Muscle& muscle : shipped_anatomy().muscles()) {
    std::vector<examination::TreeInjury> roots;
    for (const auto& root : muscle.roots) roots.push_back(test::avulsion(root.root));
    INFO(muscle.id);
    CHECK(state_of(deficit_of(roots), muscle.id) == "denervated");
  }
}

TEST_CASE("cutting every root of a skin area takes its feeling", "[deficit]") {
  for (const anatomy::SkinArea& area : shipped_anatomy().areas()) {
    std::vector<examination::TreeInjury> roots;
    for (const auto& root : area.roots) roots.push_back(test::avulsion(root));
    INFO(area.name);
    CHECK(state_of(deficit_of(roots), area.name) == "absent");
  }
}

TEST_CASE("cutting a muscle's own branch never leaves it intact, nor an area's", "[deficit]") {
  for (const anatomy::Muscle& muscle : shipped_anatomy().muscles()) {
    INFO(muscle.id);
    const auto& name = shipped_anatomy().tree().node(muscle.branch).name;
    CHECK(state_of(deficit_of({injury(name, 1)}), muscle.id) != "intact");
  }
  for (const anatomy::SkinArea& area : shipped_anatomy().areas()) {
    INFO(area.name);
    const auto& name = shipped_anatomy().tree().node(area.branches.front()).name;
    CHECK(state_of(deficit_of({injury(name, 1)}), area.name) != "intact");
  }
}

TEST_CASE("a second lesion never improves a state", "[deficit]") {
  const auto lesions = every_lesion(1);
  // Pairs a fixed stride apart meet every nerve with near and far ones.
  for (const std::size_t stride : {1U, 61U}) {
    for (std::size_t i = 0; i < lesions.size(); ++i) {
      const auto one = deficit_of({lesions[i]});
      const auto two = deficit_of({lesions[i], lesions[(i + stride) % lesions.size()]});
      CHECK(worse(one, two) == kNone);
    }
  }
}

TEST_CASE("a distal lesion never loses more than a proximal one of the same nerve", "[deficit]") {
  const auto lesions = every_lesion(4);
  for (std::size_t i = 0; i + 1 < lesions.size(); ++i) {
    if (lesions[i].lesion.at.nerve != lesions[i + 1].lesion.at.nerve) continue;
    INFO(shipped_anatomy().tree().node(lesions[i].lesion.at.nerve).name);
    CHECK(worse(deficit_of({lesions[i + 1]}), deficit_of({lesions[i]})) == kNone);
  }
}

TEST_CASE("a partial lesion never loses more than a complete one and denervates nothing",
          "[deficit]") {
  for (auto lesion : every_lesion(1)) {
    const auto complete = deficit_of({lesion});
    for (const Extent extent : {Extent::partial, Extent::conduction_block}) {
      lesion.extent = extent;
      const auto partial = deficit_of({lesion});
      CHECK(worse(partial, complete) == kNone);
      for (const auto& muscle : partial.muscles) CHECK(muscle.state != MuscleState::denervated);
      for (const auto& area : partial.areas) CHECK(area.state != AreaState::absent);
    }
  }
}

TEST_CASE("a muscle whose branch leaves about at the lesion may be weak", "[deficit]") {
  // The brachioradialis branch leaves the made-up radial nerve at 235 mm.
  const auto near = deficit_of({injury("radial nerve", 238, 10)});
  CHECK(state_of(near, "BR") == "may be weak");
  CHECK(state_of(near, "EPL") == "denervated");
  CHECK(state_of(deficit_of({injury("radial nerve", 238, 1)}), "BR") == "intact");
  for (const auto& row : near.muscles) {
    if (shipped_anatomy().muscles()[row.muscle].id == "BR") {
      CHECK(row.why == "its branch leaves the radial nerve about here");
    }
  }
}

TEST_CASE("the spread of branch points between limbs counts like that of the lesion", "[deficit]") {
  std::vector<anatomy::NerveMetrics> limbs(2, hand_limb());
  const auto radial = *shipped_anatomy().tree().find("radial nerve");
  const auto branch = *shipped_anatomy().tree().find("radial branch to brachioradialis");
  limbs[0].leaves_parent_at_mm[branch][0] -= 10;
  limbs[1].leaves_parent_at_mm[branch][0] += 10;
  // A longer arm alone is no spread of the branch.
  for (auto* lengths : {&limbs[1]}) {
    lengths->leaves_parent_at_mm[branch][0] *= 1.1;
    lengths->length_mm[radial] *= 1.1;
  }
  const auto spread = examination::branch_spread(hand_limb(), limbs, shipped_anatomy().tree());
  CHECK(spread.sd_mm[branch][0] == Approx(14.142).epsilon(0.001));
  const std::vector lesion{injury("radial nerve", 238)};
  const auto answer = examination::deficit(shipped_anatomy(), hand_limb(), spread, lesion, {});
  CHECK(state_of(answer, "BR") == "may be weak");
}

TEST_CASE("lesions that each spare one of two ways together spare nothing", "[deficit]") {
  const auto anterior = injury("anterior branch of axillary nerve", 1);
  const auto posterior = injury("posterior branch of axillary nerve", 1);
  CHECK(state_of(deficit_of({anterior}), "DEL-S") == "partial");
  CHECK(state_of(deficit_of({posterior}), "DEL-S") == "partial");
  CHECK(state_of(deficit_of({anterior, posterior}), "DEL-S") == "denervated");
  CHECK(state_of(deficit_of({anterior}), "TMin") == "intact");
}

TEST_CASE("each root of the median nerve carries its own muscles", "[deficit]") {
  const auto lateral = deficit_of({injury("lateral root of median nerve", 10)});
  CHECK(state_of(lateral, "PT") == "denervated");
  CHECK(state_of(lateral, "APB") == "intact");
  CHECK(state_of(lateral, "index radial pulp") == "absent");
  const auto medial = deficit_of({injury("medial root of median nerve", 10)});
  CHECK(state_of(medial, "PT") == "intact");
  CHECK(state_of(medial, "APB") == "denervated");
  CHECK(state_of(medial, "index radial pulp") == "intact");
}

TEST_CASE("an intact muscle that can spare a root says so", "[deficit]") {
  const auto answer = deficit_of({injury("superior trunk", 5)});
  for (const auto& row : answer.muscles) {
    if (shipped_anatomy().muscles()[row.muscle].id != "FCR") continue;
    CHECK(row.state == MuscleState::intact);
    CHECK(row.roots_lost == std::vector<std::string>{"C6"});
    CHECK(row.why == "loses C6 of C6, C7");
  }
}

TEST_CASE("a variant that was given is not asked for, and an absent muscle is left out",
          "[deficit]") {
  const auto answer = deficit_of({injury("median nerve", 150)}, {"palmaris longus absent"});
  CHECK(state_of(answer, "PL") == "not there");
  CHECK(answer.muscles.size() + 1 == shipped_anatomy().muscles().size());
}

TEST_CASE("a prefixed plexus leaves a part when one root is torn", "[deficit]") {
  CHECK(state_of(deficit_of({test::avulsion("C5"), test::avulsion("C6")}), "SS") == "denervated");
  CHECK(state_of(
            deficit_of({test::avulsion("C5"), test::avulsion("C6")}, {"prefixed brachial plexus"}),
            "SS") == "partial");
  CHECK(state_of(deficit_of({test::avulsion("C4")}, {"prefixed brachial plexus"}), "SS") ==
        "may be weak");
  CHECK(state_of(deficit_of({test::avulsion("C4")}), "SS") == "intact");
}

TEST_CASE("every variant changes the answer of some lesion", "[deficit]") {
  std::set<std::size_t> seen;
  for (const auto& lesion : every_lesion(4)) {
    for (const auto& test : deficit_of({lesion}).variants_to_test) seen.insert(test.variant);
  }
  for (std::size_t v = 0; v < shipped_anatomy().variants().size(); ++v) {
    const anatomy::Variant& variant = shipped_anatomy().variants()[v];
    const bool only_absent_muscle = variant.effects.front().effect == anatomy::Effect::absent &&
                                    variant.effects.front().areas.empty();
    INFO(variant.name);
    CHECK((variant.usual || only_absent_muscle || seen.contains(v)));
  }
}

TEST_CASE("a root torn from the cord spares none of its branches, wherever the place was put",
          "[deficit]") {
  auto torn = injury("C5 root", 40);  // beyond the dorsal scapular branch at 15 mm
  CHECK(state_of(deficit_of({torn}), "RHM") == "intact");
  torn.lesion.preganglionic = true;
  CHECK(state_of(deficit_of({torn}), "RHM") == "partial");
}
