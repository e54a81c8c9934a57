#include "models/examination/deficit.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <functional>
#include <optional>
#include <set>
#include <stdexcept>

#include "models/examination/target_state.hpp"

namespace endplate::examination {
namespace {

using anatomy::Anatomy;

// What one set of variants makes of one injured limb.
class InjuredLimb {
 public:
  InjuredLimb(const Anatomy& anatomy, const anatomy::NerveMetrics& metrics,
              const BranchSpread& spread, std::span<const TreeInjury> injuries)
      : anatomy_(anatomy), places_(anatomy.tree(), metrics, spread), injuries_(injuries) {}

  // Nothing when the muscle or area is absent.
  std::optional<MuscleDeficit> muscle(std::size_t index, Variants given,
                                      std::set<std::string>* effects = nullptr) const {
    const Supply supply = supply_of_muscle(anatomy_, places_, index, given);
    if (supply.absent) return std::nullopt;
    MuscleDeficit result = muscle_deficit(anatomy_, index, supply, injuries_);
    if (effects && !result.why.empty())
      effects->insert(supply.effects.begin(), supply.effects.end());
    return result;
  }

  std::optional<AreaDeficit> area(std::size_t index, Variants given,
                                  std::set<std::string>* effects = nullptr) const {
    const Supply supply = supply_of_area(anatomy_, places_, index, given);
    if (supply.absent) return std::nullopt;
    AreaDeficit result = area_deficit(anatomy_, index, supply, injuries_);
    if (effects && !result.why.empty())
      effects->insert(supply.effects.begin(), supply.effects.end());
    return result;
  }

 private:
  const Anatomy& anatomy_;
  BranchPlaces places_;
  std::span<const TreeInjury> injuries_;
};

void judge_movements(const Anatomy& anatomy, DeficitAnswer& answer) {
  // An absent muscle moves nothing, but this injury did not take it away.
  std::vector<std::optional<MuscleState>> state(anatomy.muscles().size());
  for (const MuscleDeficit& muscle : answer.muscles) state[muscle.muscle] = muscle.state;

  for (std::size_t i = 0; i < anatomy.movements().size(); ++i) {
    const anatomy::Movement& movement = anatomy.movements()[i];
    MovementDeficit result{i, {}, {}, {}, true};
    bool intact_left = false;
    for (const std::size_t muscle : movement.prime_movers) {
      if (!state[muscle]) continue;
      if (*state[muscle] == MuscleState::denervated) {
        result.lost.push_back(muscle);
        continue;
      }
      result.by_substitutes_only = false;
      result.kept_by.push_back(muscle);
      if (*state[muscle] == MuscleState::intact) {
        intact_left = true;
      } else {
        result.weakened.push_back(muscle);
      }
    }
    const bool touched = !result.lost.empty() || !result.weakened.empty();
    for (const std::size_t muscle : movement.substitutes) {
      if (!state[muscle] || *state[muscle] == MuscleState::denervated) continue;
      result.kept_by.push_back(muscle);
      intact_left = intact_left || *state[muscle] == MuscleState::intact;
    }
    if (!touched) continue;
    if (!result.lost.empty() && intact_left) {
      answer.movements_kept_by_others.push_back(std::move(result));
    } else if (result.by_substitutes_only) {
      answer.movements_lost.push_back(std::move(result));
    } else {
      answer.movements_weakened.push_back(std::move(result));
    }
  }
}

// The targets that a variant's effects name.
struct Concerned {
  std::set<std::size_t> muscles;
  std::set<std::size_t> areas;
};
Concerned concerned(const Anatomy& anatomy, const anatomy::Variant& variant) {
  Concerned result;
  for (const anatomy::VariantEffect& effect : variant.effects) {
    result.muscles.insert(effect.muscles.begin(), effect.muscles.end());
    result.areas.insert(effect.areas.begin(), effect.areas.end());
    if (!effect.all_targets) continue;
    for (std::size_t i = 0; i < anatomy.muscles().size(); ++i) result.muscles.insert(i);
    for (std::size_t i = 0; i < anatomy.areas().size(); ++i) result.areas.insert(i);
  }
  return result;
}

std::vector<VariantToTest> variants_to_test(const Anatomy& anatomy, const InjuredLimb& limb,
                                            Variants given) {
  std::vector<VariantToTest> result;
  for (std::size_t v = 0; v < anatomy.variants().size(); ++v) {
    if (std::ranges::count(given, v) > 0) continue;
    std::vector<std::size_t> with_it(given.begin(), given.end());
    with_it.push_back(v);
    VariantToTest test{v, {}};
    const Concerned targets = concerned(anatomy, anatomy.variants()[v]);
    for (const std::size_t i : targets.muscles) {
      const auto without = limb.muscle(i, given);
      const auto with = limb.muscle(i, with_it);
      // A missing muscle changes what can be transferred, not what the injury did.
      if (!without || !with || without->state == with->state) continue;
      test.changes.push_back(
          {true, i, std::string(to_string(without->state)), std::string(to_string(with->state))});
    }
    for (const std::size_t i : targets.areas) {
      const auto without = limb.area(i, given);
      const auto with = limb.area(i, with_it);
      if (!without) continue;
      const bool loses_its_sign = !with && without->state != AreaState::intact;
      if (loses_its_sign || (with && with->state != without->state)) {
        test.changes.push_back({false, i, std::string(to_string(without->state)),
                                with ? std::string(to_string(with->state)) : "no sign"});
      }
    }
    if (!test.changes.empty()) result.push_back(std::move(test));
  }
  std::ranges::stable_sort(result, std::greater<>(), [&](const VariantToTest& test) {
    return anatomy.variants()[test.variant].prevalence.pooled.value_or(-1.0);
  });
  return result;
}

std::vector<std::string> notes_on(const Anatomy& anatomy, std::span<const TreeInjury> injuries) {
  std::vector<std::string> torn;
  bool block = false;
  for (const TreeInjury& injury : injuries) {
    block = block || injury.extent == Extent::conduction_block;
    if (injury.lesion.preganglionic) {
      torn.push_back(anatomy.tree().node(injury.lesion.at.nerve).roots.front());
    }
  }
  std::vector<std::string> notes;
  if (!torn.empty()) {
    notes.push_back(fmt::format(
        "{} torn from the cord: sensory nerve action potentials of the skin stay although it is "
        "numb, and the paraspinal muscles of the level denervate",
        fmt::join(torn, ", ")));
  }
  if (std::ranges::count(torn, "T1") > 0) {
    notes.push_back("T1 torn from the cord: a Horner sign is to be expected");
  }
  if (std::ranges::count(torn, "C4") + std::ranges::count(torn, "C5") > 0) {
    notes.push_back("C4 and C5 carry axons of the phrenic nerve: look at the diaphragm");
  }
  if (block) {
    notes.push_back(
        "conduction block: the axons are whole and the muscles are not denervated, but they may "
        "not "
        "move at all until the block lifts");
  }
  return notes;
}

}  // namespace

std::string_view to_string(MuscleState state) {
  switch (state) {
    case MuscleState::intact:
      return "intact";
    case MuscleState::may_be_weak:
      return "may be weak";
    case MuscleState::partial:
      return "partial";
    case MuscleState::denervated:
      return "denervated";
  }
  return "";
}

std::string_view to_string(AreaState state) {
  switch (state) {
    case AreaState::intact:
      return "intact";
    case AreaState::reduced:
      return "reduced";
    case AreaState::absent:
      return "absent";
  }
  return "";
}

DeficitAnswer deficit(const Anatomy& anatomy, const anatomy::NerveMetrics& metrics,
                      const BranchSpread& spread, std::span<const TreeInjury> injuries,
                      Variants given) {
  if (injuries.empty()) throw std::out_of_range("a deficit needs an injury");
  for (const TreeInjury& injury : injuries) {
    if (injury.lesion.at.nerve >= anatomy.tree().size()) {
      throw std::out_of_range("an injury lies on no nerve of the tree");
    }
  }
  DeficitAnswer answer;
  const InjuredLimb limb(anatomy, metrics, spread, injuries);
  std::set<std::string> sources{"nerve_tree.csv", "muscles.csv", "skin_areas.csv", "movements.csv"};
  for (std::size_t i = 0; i < anatomy.muscles().size(); ++i) {
    if (auto muscle = limb.muscle(i, given, &sources)) {
      answer.muscles.push_back(std::move(*muscle));
    } else {
      answer.notes.push_back(fmt::format("{} is absent in this patient", anatomy.muscles()[i].id));
    }
  }
  for (std::size_t i = 0; i < anatomy.areas().size(); ++i) {
    if (auto area = limb.area(i, given, &sources)) {
      answer.areas.push_back(std::move(*area));
    } else {
      answer.notes.push_back(
          fmt::format("{}: no nerve of its own in this patient", anatomy.areas()[i].name));
    }
  }
  judge_movements(anatomy, answer);
  answer.variants_to_test = variants_to_test(anatomy, limb, given);
  for (std::string& note : notes_on(anatomy, injuries)) answer.notes.push_back(std::move(note));

  for (const anatomy::Variant& variant : anatomy.variants()) {
    for (const anatomy::VariantEffect& effect : variant.effects) {
      if (effect.provenance == evidence::Provenance::assumed && sources.contains(effect.id)) {
        answer.assumptions.push_back(
            fmt::format("{}: which muscles it reaches is assumed ({})", variant.name, effect.id));
      }
    }
  }
  for (const VariantToTest& test : answer.variants_to_test) {
    for (const auto& row : anatomy.variants()[test.variant].prevalence.rows) sources.insert(row.id);
  }
  answer.sources.assign(sources.begin(), sources.end());
  return answer;
}

}  // namespace endplate::examination
