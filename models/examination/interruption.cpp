#include "models/examination/interruption.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace endplate::examination {
namespace {

// Chance that a lies before b; where both are exact, a lesion at the branch point itself counts as
// before it, so that it cuts the branch.
double chance_before(double a_mm, double a_sd_mm, const PlaceAlong& b) {
  if (std::isnan(b.mm)) return 0.5;
  const double sd = std::hypot(a_sd_mm, b.sd_mm);
  if (std::isinf(b.mm) || sd == 0.0) return a_mm <= b.mm ? 1.0 : 0.0;
  return boost::math::cdf(boost::math::normal(), (b.mm - a_mm) / sd);
}

}  // namespace

double chance_on_path(const AxonPath& path, const anatomy::Lesion& lesion) {
  double off = 1.0;
  for (const AxonStretch& stretch : path) {
    if (stretch.nerve != lesion.at.nerve) continue;
    // Torn from the cord: nothing of the root is spared, however near its branches leave.
    const double before_leaving =
        lesion.preganglionic ? 1.0
                             : chance_before(lesion.at.from_start_mm, lesion.sd_mm, stretch.leaves);
    const double before_entering =
        chance_before(lesion.at.from_start_mm, lesion.sd_mm, stretch.enters);
    off *= 1.0 - before_leaving * (1.0 - before_entering);
  }
  return 1.0 - off;
}

Interruption interruption(const AxonPath& path, std::span<const TreeInjury> injuries) {
  Interruption worst;
  for (std::size_t i = 0; i < injuries.size(); ++i) {
    const double chance = chance_on_path(path, injuries[i].lesion);
    Block block = Block::open;
    if (chance >= kSureChance) {
      block = injuries[i].extent == Extent::complete ? Block::cut : Block::partial;
    } else if (chance > 1.0 - kSureChance) {
      block = Block::in_doubt;
    }
    if (block > worst.block) worst = {block, i};
  }
  return worst;
}

Interruption interruption(std::span<const AxonPath> paths, std::span<const TreeInjury> injuries) {
  Interruption heaviest;
  bool all_cut = !paths.empty();
  for (const AxonPath& path : paths) {
    const Interruption one = interruption(path, injuries);
    all_cut = all_cut && one.block == Block::cut;
    if (one.block > heaviest.block) heaviest = one;
  }
  if (heaviest.block == Block::cut && !all_cut) heaviest.block = Block::partial;
  return heaviest;
}

}  // namespace endplate::examination
