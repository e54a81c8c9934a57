#pragma once
// What injuries of the nerve tree paralyse and numb, and what they spare.
//
// An injury at an arc length of a nerve interrupts every axon that runs in the nerve there: all
// that leaves the nerve beyond it, and its end. Axons of each root are followed by themselves, so
// that a muscle of two roots keeps one when the other is torn, and a muscle that two branches serve
// keeps what comes by the whole one. The answer says what to expect of such an injury; it knows
// nothing of the examination.
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "models/examination/interruption.hpp"
#include "models/examination/supply.hpp"

namespace endplate::examination {

// From the lightest to the heaviest.
enum class MuscleState { intact, may_be_weak, partial, denervated };
enum class AreaState { intact, reduced, absent };

std::string_view to_string(MuscleState state);
std::string_view to_string(AreaState state);

struct MuscleDeficit {
  std::size_t muscle = 0;  // into Anatomy::muscles()
  MuscleState state = MuscleState::intact;
  // Empty when nothing touches it. An intact muscle may have lost a root that it can spare.
  std::string why;
  std::vector<std::string> roots_lost;  // wholly or in part
};

struct AreaDeficit {
  std::size_t area = 0;  // into Anatomy::areas()
  AreaState state = AreaState::intact;
  std::string why;
  std::vector<std::string> roots_lost;
};

struct MovementDeficit {
  std::size_t movement = 0;           // into Anatomy::movements()
  std::vector<std::size_t> lost;      // prime movers that are denervated
  std::vector<std::size_t> weakened;  // prime movers that are partial or may be weak
  std::vector<std::size_t> kept_by;   // prime movers and substitutes that are not denervated
  bool by_substitutes_only = false;   // no prime mover is left
};

struct VariantChange {
  bool is_muscle = true;
  std::size_t target = 0;
  std::string without;  // the state as answered
  std::string with;     // the state if the variant is there
};

struct VariantToTest {
  std::size_t variant = 0;  // into Anatomy::variants()
  std::vector<VariantChange> changes;
};

struct DeficitAnswer {
  std::vector<MuscleDeficit> muscles;  // in the order of the table; absent ones are left out
  std::vector<AreaDeficit> areas;      // likewise
  // No prime mover is left and no substitute is intact; weak substitutes stand in kept_by.
  std::vector<MovementDeficit> movements_lost;
  // A prime mover is denervated, an intact muscle still makes the movement.
  std::vector<MovementDeficit> movements_kept_by_others;
  // Some axons are left to the prime movers, and no intact muscle beside them.
  std::vector<MovementDeficit> movements_weakened;
  std::vector<VariantToTest> variants_to_test;  // most frequent first, unknown frequency last
  std::vector<std::string> notes;               // what else to expect, in words
  std::vector<std::string> assumptions;
  std::vector<std::string> sources;  // row ids of the tables that decided something
};

// `metrics` are the lengths of the limb, `spread` how far its branch points are uncertain.
// `given` are the variants known of this patient. Needs one injury at least, each on a node of the
// tree; throws std::out_of_range otherwise.
DeficitAnswer deficit(const anatomy::Anatomy& anatomy, const anatomy::NerveMetrics& metrics,
                      const BranchSpread& spread, std::span<const TreeInjury> injuries,
                      Variants given);

}  // namespace endplate::examination
