#include "models/examination/target_state.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace endplate::examination {
namespace {

using anatomy::Anatomy;

struct RootLoss {
  anatomy::RootSupply root;
  Interruption interruption;
};

// Axons of one root that reach one muscle by several strands serve it together.
std::vector<RootLoss> losses_by_root(std::span<const Strand> strands,
                                     std::span<const Strand> additions,
                                     std::span<const TreeInjury> injuries) {
  std::vector<anatomy::RootSupply> roots;
  for (const auto part : {strands, additions}) {
    for (const Strand& strand : part) {
      if (std::ranges::find(roots, strand.root.root, &anatomy::RootSupply::root) == roots.end()) {
        roots.push_back(strand.root);
      }
    }
  }
  std::vector<RootLoss> losses;
  for (const anatomy::RootSupply& root : roots) {
    std::vector<AxonPath> paths;
    for (const auto part : {strands, additions}) {
      for (const Strand& strand : part) {
        if (strand.root.root == root.root) {
          paths.insert(paths.end(), strand.paths.begin(), strand.paths.end());
        }
      }
    }
    losses.push_back({root, interruption(paths, injuries)});
  }
  return losses;
}

bool touched(const RootLoss& loss) {
  return loss.interruption.block >= Block::partial;
}
bool doubtful(const RootLoss& loss) {
  return loss.interruption.block == Block::in_doubt;
}

MuscleState muscle_state(const std::vector<RootLoss>& losses) {
  const auto is_dominant = [](const RootLoss& loss) { return loss.root.dominant; };
  const bool dominance_known = std::ranges::any_of(losses, is_dominant);
  if (std::ranges::all_of(
          losses, [](const RootLoss& loss) { return loss.interruption.block == Block::cut; })) {
    return MuscleState::denervated;
  }
  if (std::ranges::all_of(losses, touched)) return MuscleState::partial;
  if (std::ranges::any_of(losses,
                          [&](const RootLoss& l) { return is_dominant(l) && touched(l); })) {
    return MuscleState::partial;
  }
  const auto touched_count = std::ranges::count_if(losses, touched);
  const bool named = std::ranges::any_of(
      losses, [](const RootLoss& loss) { return touched(loss) && loss.root.key_muscle; });
  if (named || 2 * touched_count > std::ssize(losses)) return MuscleState::may_be_weak;
  if (!dominance_known && touched_count > 0) return MuscleState::may_be_weak;
  if (std::ranges::any_of(losses, [&](const RootLoss& loss) {
        return doubtful(loss) && (is_dominant(loss) || !dominance_known);
      })) {
    return MuscleState::may_be_weak;
  }
  return MuscleState::intact;
}

AreaState area_state(const std::vector<Interruption>& strands) {
  if (std::ranges::all_of(strands, [](const Interruption& i) { return i.block == Block::cut; })) {
    return AreaState::absent;
  }
  return std::ranges::all_of(strands, [](const Interruption& i) { return i.block == Block::open; })
             ? AreaState::intact
             : AreaState::reduced;
}

const std::string& nerve_name(const Anatomy& anatomy, const TreeInjury& injury) {
  return anatomy.tree().node(injury.lesion.at.nerve).name;
}

std::vector<std::string> roots_lost(std::span<const RootLoss> losses) {
  std::vector<std::string> lost;
  for (const RootLoss& loss : losses) {
    if (touched(loss) && std::ranges::count(lost, loss.root.root) == 0) {
      lost.push_back(loss.root.root);
    }
  }
  return lost;
}

// Why the axons of these roots, out of all that reach the target, are interrupted.
std::string reason(const Anatomy& anatomy, std::span<const RootLoss> losses,
                   std::span<const TreeInjury> injuries) {
  const auto heaviest = std::ranges::max_element(
      losses, {}, [](const RootLoss& loss) { return loss.interruption.block; });
  if (heaviest == losses.end() || heaviest->interruption.block == Block::open) return {};
  const TreeInjury& injury = injuries[heaviest->interruption.injury];
  const std::string& nerve = nerve_name(anatomy, injury);
  if (heaviest->interruption.block == Block::in_doubt) {
    return fmt::format("its branch leaves the {} about here", nerve);
  }
  if (heaviest->interruption.block == Block::partial) {
    switch (injury.extent) {
      case Extent::complete:
        return fmt::format("{} cut, another way is whole; the shares are unknown", nerve);
      case Extent::partial:
        return fmt::format("{} injured in part", nerve);
      case Extent::conduction_block:
        return fmt::format("conduction block of the {}, the axons are whole", nerve);
    }
  }
  std::vector<std::string> all;
  for (const RootLoss& loss : losses) {
    if (std::ranges::count(all, loss.root.root) == 0) all.push_back(loss.root.root);
  }
  const auto lost = roots_lost(losses);
  if (lost.size() == all.size()) return fmt::format("cut with the {}", nerve);
  return fmt::format("loses {} of {}", fmt::join(lost, ", "), fmt::join(all, ", "));
}

// One way of a muscle's supply with what comes as well.
MuscleDeficit by_one_way(const Anatomy& anatomy, std::size_t muscle,
                         std::span<const Strand> strands, std::span<const Strand> additions,
                         std::span<const TreeInjury> injuries) {
  const auto usual = losses_by_root(strands, {}, injuries);
  MuscleDeficit result{muscle, muscle_state(usual), reason(anatomy, usual, injuries),
                       roots_lost(usual)};
  if (additions.empty()) return result;
  const auto together = losses_by_root(strands, additions, injuries);
  const MuscleState state = muscle_state(together);
  if (state == result.state) return result;
  if (state < result.state) {
    result.why += "; a second supply is whole";
    result.state = state;
  } else {
    // The main supply is whole or nearly so; how much the second one brought is unknown.
    const auto second = losses_by_root({}, additions, injuries);
    result.why = "its second supply: " + reason(anatomy, second, injuries);
    result.state = std::max(result.state, MuscleState::may_be_weak);
  }
  return result;
}

}  // namespace

MuscleDeficit muscle_deficit(const Anatomy& anatomy, std::size_t muscle, const Supply& supply,
                             std::span<const TreeInjury> injuries) {
  std::vector<MuscleDeficit> ways;
  for (const auto& strands : supply.alternatives) {
    ways.push_back(by_one_way(anatomy, muscle, strands, supply.additions, injuries));
  }
  const auto [lightest, heaviest] = std::ranges::minmax(ways, {}, &MuscleDeficit::state);
  if (lightest.state == heaviest.state) return ways.front();
  MuscleDeficit result = heaviest;
  result.why = fmt::format("{}; in some limbs its branch comes another way", heaviest.why);
  result.state =
      lightest.state == MuscleState::intact ? MuscleState::may_be_weak : MuscleState::partial;
  return result;
}

AreaDeficit area_deficit(const Anatomy& anatomy, std::size_t area, const Supply& supply,
                         std::span<const TreeInjury> injuries) {
  std::vector<RootLoss> losses;
  std::vector<Interruption> states;
  std::vector<Strand> strands = supply.alternatives.front();
  for (const Strand& addition : supply.additions) {
    const auto same_root = [&](const Strand& s) { return s.root.root == addition.root.root; };
    if (std::ranges::none_of(strands, same_root)) {
      strands.push_back(addition);
      continue;
    }
    for (Strand& strand : strands) {
      if (same_root(strand)) {
        strand.paths.insert(strand.paths.end(), addition.paths.begin(), addition.paths.end());
      }
    }
  }
  for (const Strand& strand : strands) {
    const Interruption one = interruption(strand.paths, injuries);
    losses.push_back({strand.root, one});
    states.push_back(one);
  }
  return {area, area_state(states), reason(anatomy, losses, injuries), roots_lost(losses)};
}

}  // namespace endplate::examination
