#include "models/recovery/target_sample.hpp"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>

#include "models/recovery/word_block.hpp"

namespace endplate::recovery {
namespace {

using State = Course::State;

// Of a block of patients.
struct Arrivals {
  std::array<float, kBlock> day;  // or a code of ReachDay
  std::array<float, kBlock> distance_mm;
};

float reach_of(const Course& course) {
  switch (course.state) {
    case State::block:
      return ReachDay::kBlocked;
    case State::growth:
      return static_cast<float>(course.arrive);
    case State::none:
      return ReachDay::kNever;
    case State::not_below:
      break;
  }
  return ReachDay::kNotBelow;
}

// One lesion on one way, for patients side by side.
struct PastOne {
  const float* from_mm;
  const float* behind_mm;
  const float* start;
  const float* reach;
  const float* to_target_mm;
  const float* exponential;
  const float* leaves_mm;

  // Without a branch on what becomes of a patient. Of the first way there is nothing to compare.
  template <bool kFirst>
  void take(std::size_t count, Arrivals& out) const {
    constexpr FourFloats kNotBelow{ReachDay::kNotBelow, ReachDay::kNotBelow, ReachDay::kNotBelow,
                                   ReachDay::kNotBelow};
    by_fours(count, [&](std::size_t j, std::size_t few) {
      const auto four = [&](const float* column) { return load_four<FourFloats>(column + j, few); };
      const FourFloats distance = four(to_target_mm) - four(behind_mm);
      const FourFloats arrive = four(start) + four(reach) * four(exponential);
      const FourFloats day = four(from_mm) < four(leaves_mm) ? arrive : kNotBelow;
      auto* const days = &out.day[j];
      auto* const distances = &out.distance_mm[j];
      if constexpr (kFirst) {
        store_four(day, days);
        store_four(distance, distances);
      } else {
        const auto best = load_four<FourFloats>(days);
        const auto best_distance = load_four<FourFloats>(distances);
        store_four<FourFloats>(day < best ? day : best, days);
        store_four<FourFloats>(day < best ? distance : best_distance, distances);
      }
    });
  }
};

class Sampler {
 public:
  Sampler(const ForecastQuestion& question, const TargetModel& model, const TargetWays& ways,
          const SampledPatients& patients, const Draws& draws, TargetSample& into)
      : question_(question),
        model_(model),
        ways_(ways),
        patients_(patients),
        draws_(draws),
        into_(into),
        weighted_(!patients.weights.empty()) {}

  void all() {
    const std::size_t n = patients_.columns.size();
    clear(n);
    for (begin_ = 0; begin_ < n; begin_ += kBlock) {
      count_ = std::min(kBlock, n - begin_);
      arrivals();
      if (weighted_) leave_out_weightless();
      distances();
      growing();
    }
    into_.in_time += into_.grown_in_time;
    into_.useful += into_.grown_in_time * model_.useful_given_in_time();
  }

 private:
  void clear(std::size_t n) {
    TargetSample::Growing& growing = into_.growing;
    into_.distance_mm.clear(n);
    into_.distance_weights.clear(weighted_ ? n : 0);
    for (auto* column : {&growing.arrive, &growing.units, &growing.movement, &growing.useful}) {
      column->clear(n);
    }
    growing.weights.clear(weighted_ ? n : 0);
    into_.blocked.clear();
    into_.below = into_.in_time = into_.grown_in_time = into_.useful = 0.0;
  }

  void arrivals() {
    bool first = true;
    for (const WayColumns& way : ways_) {
      if (way.size() == 1 && first) {
        past(way.front()).take<true>(count_, arrivals_);
      } else if (way.size() == 1) {
        past(way.front()).take<false>(count_, arrivals_);
      } else {
        if (first) arrivals_.day.fill(ReachDay::kNotBelow);
        past_several(way);
      }
      first = false;
    }
    if (first) arrivals_.day.fill(ReachDay::kNotBelow);
  }

  PastOne past(const LesionOnWay& on) const {
    const Departure& from = patients_.departures[on.lesion];
    const Departure::AtRate& at_rate =
        from.at_rate.at(&model_.rate(question_.lesions[on.lesion].repaired));
    const std::size_t limb = begin_ % question_.limbs->size();
    return {patients_.columns.lesions[on.lesion].from_start_mm.data() + begin_,
            from.behind_mm.data() + begin_,
            at_rate.start.data() + begin_,
            at_rate.reach.data() + begin_,
            on.to_target_mm.data() + limb,
            on.exponential.data() + limb,
            on.leaves_mm.data() + limb};
  }

  void past_several(const WayColumns& way) {
    const std::size_t limb = begin_ % question_.limbs->size();
    for (std::size_t j = 0; j < count_; ++j) {
      const std::size_t i = begin_ + j;
      boost::container::small_vector<Cut, 8> cuts;
      for (const LesionOnWay& on : way) {
        const float from = patients_.columns.lesions[on.lesion].from_start_mm[i];
        if (from < on.leaves_mm[limb + j]) {
          cuts.push_back({on.lesion, double{on.to_target_mm[limb + j]} - double{from}});
        }
      }
      std::ranges::stable_sort(cuts, std::greater<>(), &Cut::to_target_mm);
      const auto lesion = [&](std::size_t k) {
        const PatientColumns::Lesion& of = patients_.columns.lesions[k];
        return PatientLesion{of.component[i], of.from_start_mm[i], of.ready_days[i],
                             of.crossing_days[i]};
      };
      const Course course =
          model_.along({cuts.data(), cuts.size()}, patients_.columns.rate_z[i], lesion);
      const float day = reach_of(course);
      if (!(day < arrivals_.day[j])) continue;
      arrivals_.day[j] = day;
      arrivals_.distance_mm[j] = static_cast<float>(course.distance_mm);
    }
  }

  void leave_out_weightless() {
    for (std::size_t j = 0; j < count_; ++j) {
      if (patients_.weights[begin_ + j] <= 0.0) arrivals_.day[j] = ReachDay::kNotBelow;
    }
  }

  // Four of the block; those beyond its end count as not below.
  FourFloats days_at(std::size_t j, std::size_t count) const {
    auto day = load_four<FourFloats>(&arrivals_.day[j], count);
    for (std::size_t lane = count; lane < kFour; ++lane) day[lane] = ReachDay::kNotBelow;
    return day;
  }
  // The patients of the block whose day is such, and how many they are.
  template <class Such>
  std::span<const std::uint32_t> chosen(const Such& such) {
    std::size_t found = 0;
    by_fours(count_, [&](std::size_t j, std::size_t count) {
      found += choose_four(such(days_at(j, count)), static_cast<std::uint32_t>(begin_ + j),
                           &chosen_[found]);
    });
    return std::span(chosen_).first(found);
  }
  template <class Such>
  std::size_t number_of(const Such& such) const {
    FourInts found{};
    by_fours(count_, [&](std::size_t j, std::size_t count) { found -= such(days_at(j, count)); });
    const std::int32_t sum = (found[0] + found[1]) + (found[2] + found[3]);
    return static_cast<std::size_t>(sum);
  }
  void pick(std::span<const std::uint32_t> patients, const std::array<float, kBlock>& from,
            std::span<float> to) const {
    for (std::size_t g = 0; g < patients.size(); ++g) to[g] = from[patients[g] - begin_];
  }
  // Adds up the weights of the patients and keeps them in `column`.
  double weigh(std::span<const std::uint32_t> patients, TargetSample::Column<double>* column) {
    if (!weighted_) return static_cast<double>(patients.size());
    double sum = 0.0;
    for (const std::uint32_t i : patients) sum += patients_.weights[i];
    if (column != nullptr) {
      const std::span<double> kept = column->more(patients.size());
      for (std::size_t g = 0; g < patients.size(); ++g) kept[g] = patients_.weights[patients[g]];
    }
    return sum;
  }

  void distances() {
    const auto below = [](FourFloats day) { return ReachDay::below(day); };
    // In many blocks the target hangs below the lesion in every limb.
    if (!weighted_ && number_of(below) == count_) {
      std::copy_n(arrivals_.distance_mm.begin(), count_, into_.distance_mm.more(count_).begin());
      into_.below += static_cast<double>(count_);
      return;
    }
    const auto patients = chosen(below);
    pick(patients, arrivals_.distance_mm, into_.distance_mm.more(patients.size()));
    into_.below += weigh(patients, &into_.distance_weights);
  }

  void growing() {
    blocked();
    const auto patients = chosen([](FourFloats day) { return ReachDay::grows(day); });
    const std::size_t grown = patients.size();
    if (grown == 0) return;
    TargetSample::Growing& column = into_.growing;
    const std::span<float> arrive = column.arrive.more(grown);
    pick(patients, arrivals_.day, arrive);
    if (model_.motor()) {
      words_.draw(draws_, patients, model_.stream());
      const std::span<float> units = column.units.more(grown);
      const std::span<float> movement = column.movement.more(grown);
      model_.units_delay().add(words_[0], arrive, units);
      model_.movement_delay().add(words_[1], units, movement);
      model_.useful_delay().add(words_[2], movement, column.useful.more(grown));
    } else {
      words_.draw_one(draws_, begin_, patients, model_.stream());
      model_.useful_delay().add(words_[0], arrive, column.useful.more(grown));
    }
    const double weight = weigh(patients, &column.weights);
    if (!model_.motor()) {
      into_.grown_in_time += weight;
    } else if (!weighted_) {
      into_.grown_in_time += model_.in_time_curve().sum(arrive);
    } else {
      for (std::size_t g = 0; g < grown; ++g) {
        into_.grown_in_time +=
            patients_.weights[patients[g]] * double{model_.in_time_curve().at(arrive[g])};
      }
    }
  }

  void blocked() {
    const auto such = [](FourFloats day) { return ReachDay::blocked(day); };
    // Who they are is asked for only where nobody's axons grow.
    const bool nobody_grows = into_.growing.arrive.values().empty();
    double weight = 0.0;
    if (weighted_ || nobody_grows) {
      const auto patients = chosen(such);
      weight = weigh(patients, nullptr);
      if (nobody_grows) into_.blocked.insert(into_.blocked.end(), patients.begin(), patients.end());
    } else {
      weight = static_cast<double>(number_of(such));
    }
    into_.in_time += weight;
    into_.useful += weight;
  }

  const ForecastQuestion& question_;
  const TargetModel& model_;
  const TargetWays& ways_;
  const SampledPatients& patients_;
  const Draws& draws_;
  TargetSample& into_;
  bool weighted_;
  std::size_t begin_ = 0;
  std::size_t count_ = 0;
  // In this order: where a row that is read lies a multiple of 4 KiB from one that is written at
  // the same time, processors take the one for the other and wait.
  std::array<std::uint32_t, kBlock + kFour> chosen_{};
  Arrivals arrivals_{};
  WordBlock words_;
};

}  // namespace

void sample_target(const ForecastQuestion& question, const TargetModel& model,
                   const TargetWays& ways, const SampledPatients& patients, const Draws& draws,
                   TargetSample& into) {
  Sampler(question, model, ways, patients, draws, into).all();
}

}  // namespace endplate::recovery
