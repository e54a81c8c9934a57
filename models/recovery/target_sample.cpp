#include "models/recovery/target_sample.hpp"

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <cmath>
#include <map>
#include <optional>

namespace endplate::recovery {
namespace {

using State = Course::State;

// Patients that are worked on together: their columns stay in the nearest cache.
constexpr std::size_t kBlock = 512;

struct Arrivals {
  std::array<State, kBlock> state;
  std::array<double, kBlock> distance_mm;
  std::array<double, kBlock> arrive;
};

State state_of(Component component) {
  switch (component) {
    case Component::block:
      return State::block;
    case Component::growth:
      return State::growth;
    case Component::none:
      break;
  }
  return State::none;
}

class Sampler {
 public:
  Sampler(const ForecastQuestion& question, const TargetModel& model, const TargetWays& ways,
          const PatientColumns& patients, const Slowness& slowness)
      : question_(question), model_(model), ways_(ways), patients_(patients), slowness_(slowness) {}

  void arrivals(std::size_t begin, std::size_t end, Arrivals& out) const {
    out.state.fill(State::not_below);
    for (const WayColumns& way : ways_) {
      if (way.size() == 1 && ways_.size() == 1) {
        past_one<true>(way.front(), begin, end, out);
      } else if (way.size() == 1) {
        past_one<false>(way.front(), begin, end, out);
      } else {
        past_several(way, begin, end, out);
      }
    }
  }

 private:
  static void take_better(Arrivals& out, std::size_t j, State state, double distance,
                          double arrive) {
    if (!better(state, arrive, out.state[j], out.arrive[j])) return;
    out.state[j] = state;
    out.distance_mm[j] = distance;
    out.arrive[j] = arrive;
  }

  // Most targets have one way with one lesion, which needs no comparing.
  template <bool kOnly>
  void past_one(const LesionOnWay& on, std::size_t begin, std::size_t end, Arrivals& out) const {
    const PatientColumns::Lesion& lesion = patients_.lesions[on.lesion];
    const LesionModel& asked = question_.lesions[on.lesion];
    const std::vector<double>& slowness = slowness_.at(&model_.rate(asked.repaired));
    const double half_gap = asked.repaired ? 0.5 * asked.gap_mm : 0.0;
    const std::size_t limbs = on.leaves_mm.size();
    std::size_t limb = begin % limbs;
    for (std::size_t i = begin; i < end; ++i) {
      const double from = lesion.from_start_mm[i];
      if (from < on.leaves_mm[limb]) {
        const State state = state_of(lesion.component[i]);
        double distance = on.to_target_mm[limb] - from;
        double arrive = 0.0;
        if (state == State::growth) {
          distance += half_gap;
          arrive = lesion.ready_days[i] + model_.transit_days(distance, slowness[i]);
        }
        if constexpr (kOnly) {
          out.state[i - begin] = state;
          out.distance_mm[i - begin] = distance;
          out.arrive[i - begin] = arrive;
        } else {
          take_better(out, i - begin, state, distance, arrive);
        }
      }
      if (++limb == limbs) limb = 0;
    }
  }

  void past_several(const WayColumns& way, std::size_t begin, std::size_t end,
                    Arrivals& out) const {
    for (std::size_t i = begin; i < end; ++i) {
      const std::size_t limb = i % way.front().leaves_mm.size();
      boost::container::small_vector<Cut, 8> cuts;
      for (const LesionOnWay& on : way) {
        const double from = patients_.lesions[on.lesion].from_start_mm[i];
        if (from < on.leaves_mm[limb]) cuts.push_back({on.lesion, on.to_target_mm[limb] - from});
      }
      std::ranges::stable_sort(cuts, std::greater<>(), &Cut::to_target_mm);
      const auto lesion = [&](std::size_t k) {
        const PatientColumns::Lesion& of = patients_.lesions[k];
        return PatientLesion{of.component[i], of.from_start_mm[i], of.ready_days[i],
                             of.crossing_days[i]};
      };
      const Course course = model_.along({cuts.data(), cuts.size()}, patients_.rate_z[i], lesion);
      take_better(out, i - begin, course.state, course.distance_mm, course.arrive);
    }
  }

  const ForecastQuestion& question_;
  const TargetModel& model_;
  const TargetWays& ways_;
  const PatientColumns& patients_;
  const Slowness& slowness_;
};

}  // namespace

WayTable way_table(const ForecastQuestion& question, const std::vector<TargetModel>& models) {
  const anatomy::NerveTree& tree = *question.tree;
  const std::size_t limbs = std::min(question.limbs->size(), question.samples);
  // What is read of each limb: the whole of a last branch, or where a branch leaves a parent.
  struct Read {
    anatomy::NodeIndex node = 0;
    std::optional<std::size_t> parent;
    auto operator<=>(const Read&) const = default;
  };
  std::map<Read, std::size_t> reads;
  const auto column_of = [&](const Read& read) {
    return reads.try_emplace(read, reads.size()).first->second;
  };
  // From the target upwards: the column of each node of the way, and the lesions on that node.
  struct Step {
    std::size_t column = 0;
    std::vector<std::size_t> lesions;
  };
  std::vector<std::vector<std::vector<Step>>> walks(models.size());
  for (std::size_t t = 0; t < models.size(); ++t) {
    for (const Path& way : models[t].ways()) {
      std::vector<Step>& walk = walks[t].emplace_back();
      for (std::size_t i = way.nodes.size(); i-- > 0;) {
        const anatomy::NodeIndex node = way.nodes[i];
        Step step;
        if (i + 1 == way.nodes.size()) {
          step.column = column_of({node, std::nullopt});
        } else {
          const anatomy::NodeIndex child = way.nodes[i + 1];
          const auto& parents = tree.node(child).parents;
          step.column = column_of({child, static_cast<std::size_t>(
                                              std::ranges::find(parents, node) - parents.begin())});
        }
        for (std::size_t k = 0; k < question.lesions.size(); ++k) {
          if (question.lesions[k].lesion.at.nerve == node) step.lesions.push_back(k);
        }
        walk.push_back(std::move(step));
      }
    }
  }

  WayTable table;
  table.lengths.assign(reads.size(), std::vector<double>(limbs));
  // One limb after the other: its lengths are read while they are near.
  tbb::parallel_for(tbb::blocked_range<std::size_t>(0, limbs, 64), [&](const auto& range) {
    for (std::size_t l = range.begin(); l < range.end(); ++l) {
      const anatomy::NerveMetrics& limb = (*question.limbs)[l];
      for (const auto& [read, column] : reads) {
        table.lengths[column][l] = read.parent ? limb.leaves_parent_at_mm[read.node][*read.parent]
                                               : limb.length_mm[read.node];
      }
    }
  });
  table.targets.resize(models.size());
  tbb::parallel_for(std::size_t{0}, models.size(), [&](std::size_t t) {
    for (const std::vector<Step>& walk : walks[t]) {
      WayColumns& way = table.targets[t].emplace_back();
      std::vector<double> below(limbs);
      for (const Step& step : walk) {
        const std::vector<double>& length = table.lengths[step.column];
        for (std::size_t l = 0; l < limbs; ++l) below[l] += length[l];
        for (const std::size_t k : step.lesions) way.push_back({k, below, length});
      }
    }
  });
  return table;
}

Slowness slowness_of(const PatientColumns& patients, const std::vector<TargetModel>& models) {
  Slowness slowness;
  for (const TargetModel& model : models) {
    for (const bool operated : {false, true}) {
      const Parameter& rate = model.rate(operated);
      auto& column = slowness[&rate];
      if (!column.empty()) continue;
      const double median = rate.median();
      const double log_sd = rate.log_sd();
      column.reserve(patients.size());
      for (const double z : patients.rate_z) column.push_back(std::exp(-log_sd * z) / median);
    }
  }
  return slowness;
}

void sample_target(const ForecastQuestion& question, const TargetModel& model,
                   const TargetWays& ways, const PatientColumns& patients, const Slowness& slowness,
                   const std::vector<double>& weights, const Draws& draws, TargetSample& into) {
  const std::size_t n = patients.size();
  const bool equal = weights.empty();
  const bool motor = model.motor();
  const Sampler sampler(question, model, ways, patients, slowness);
  TargetSample::Growing& growing = into.growing;
  into.below = into.in_time = into.useful = 0.0;
  into.blocked.clear();
  into.distance_mm.resize(n);
  growing.arrive.resize(n);
  growing.useful.resize(n);
  growing.units.resize(motor ? n : 0);
  growing.movement.resize(motor ? n : 0);
  into.distance_weights.resize(equal ? 0 : n);
  growing.weights.resize(equal ? 0 : n);
  std::size_t below = 0;
  std::size_t grown = 0;
  double chance_in_time = 0.0;

  Arrivals arrivals{};
  std::array<std::array<std::uint32_t, kBlock>, 4> words{};
  for (std::size_t begin = 0; begin < n; begin += kBlock) {
    const std::size_t end = std::min(n, begin + kBlock);
    sampler.arrivals(begin, end, arrivals);
    const auto span = [&](std::size_t w) { return std::span(words[w].data(), end - begin); };
    draws.words(static_cast<std::uint32_t>(begin), model.stream(),
                {span(0), span(1), span(2), span(3)});
    for (std::size_t i = begin; i < end; ++i) {
      const std::size_t j = i - begin;
      const double weight = equal ? 1.0 : weights[i];
      const State state = arrivals.state[j];
      if (state == State::not_below || weight <= 0.0) continue;
      into.distance_mm[below] = arrivals.distance_mm[j];
      if (!equal) into.distance_weights[below] = weight;
      ++below;
      into.below += weight;
      if (state == State::block) {
        into.blocked.push_back(i);
        into.in_time += weight;
      }
      if (state != State::growth) continue;
      const double arrive = arrivals.arrive[j];
      chance_in_time += weight * model.in_time(arrive);
      growing.arrive[grown] = arrive;
      double before = arrive;
      if (motor) {
        const double units = arrive + model.units_delay().at(words[0][j]);
        before = units + model.movement_delay().at(words[1][j]);
        growing.units[grown] = units;
        growing.movement[grown] = before;
      }
      growing.useful[grown] = before + model.useful_delay().at(words[2][j]);
      if (!equal) growing.weights[grown] = weight;
      ++grown;
    }
  }
  into.useful = into.in_time + chance_in_time * model.useful_given_in_time();
  into.in_time += chance_in_time;
  into.grown_in_time = chance_in_time;
  into.distance_mm.resize(below);
  if (!equal) into.distance_weights.resize(below);
  for (auto* column :
       {&growing.arrive, &growing.units, &growing.movement, &growing.useful, &growing.weights}) {
    if (!column->empty()) column->resize(grown);
  }
}

}  // namespace endplate::recovery
