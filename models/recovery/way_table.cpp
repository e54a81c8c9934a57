#include "models/recovery/way_table.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>

namespace endplate::recovery {
namespace {

// One node of a way: how far along it axons go, and the lesions on it.
struct Step {
  std::span<const float> length_mm;
  std::vector<std::size_t> lesions;
};

// From the target upwards.
std::vector<Step> steps_of(const Path& way, const ForecastQuestion& question,
                           const anatomy::LimbColumns& limbs) {
  std::vector<Step> steps;
  for (std::size_t i = way.nodes.size(); i-- > 0;) {
    const anatomy::NodeIndex node = way.nodes[i];
    Step& step = steps.emplace_back();
    if (i + 1 == way.nodes.size()) {
      step.length_mm = limbs.length_mm(node);
    } else {
      const anatomy::NodeIndex child = way.nodes[i + 1];
      const auto& parents = question.tree->node(child).parents;
      step.length_mm = limbs.leaves_parent_at_mm(
          child, static_cast<std::size_t>(std::ranges::find(parents, node) - parents.begin()));
    }
    for (std::size_t k = 0; k < question.lesions.size(); ++k) {
      if (question.lesions[k].lesion.at.nerve == node) step.lesions.push_back(k);
    }
  }
  return steps;
}

FloatColumn exponentials(const FloatColumn& mm, const SlowingCurve& curve) {
  FloatColumn all(mm.size());
  by_fours(mm.size(), [&](std::size_t l, std::size_t few) {
    store_four(curve.exponential(load_four<FourFloats>(&mm[l], few)), &all[l], few);
  });
  return all;
}

WayColumns columns_of(const std::vector<Step>& steps, std::size_t count,
                      const SlowingCurve& curve) {
  WayColumns way;
  const auto first = steps.front().length_mm.first(count);
  FloatColumn below(first.begin(), first.end());
  for (const Step& step : steps) {
    const auto length = step.length_mm.first(count);
    if (&step != &steps.front()) {
      for (std::size_t l = 0; l < count; ++l) below[l] += length[l];
    }
    for (const std::size_t k : step.lesions) {
      way.push_back({k, below, exponentials(below, curve), length});
    }
  }
  return way;
}

}  // namespace

WayTable way_table(const ForecastQuestion& question, const anatomy::LimbColumns& limbs,
                   const std::vector<TargetModel>& models) {
  // Fewer patients than limbs need no more than the first limbs.
  const std::size_t each = limbs.limbs() + anatomy::LimbColumns::kOverlap;
  const std::size_t count = std::min(each, question.samples);
  WayTable table(models.size());
  tbb::parallel_for(std::size_t{0}, models.size(), [&](std::size_t t) {
    for (const Path& way : models[t].ways()) {
      table[t].push_back(
          columns_of(steps_of(way, question, limbs), count, models[t].slowing_curve()));
    }
  });
  return table;
}

}  // namespace endplate::recovery
