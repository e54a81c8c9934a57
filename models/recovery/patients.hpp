#pragma once
// The sampled patients of a forecast: what all targets of one patient share.
#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "models/recovery/curve_table.hpp"
#include "models/recovery/float_column.hpp"
#include "models/recovery/forecast.hpp"
#include "models/recovery/random.hpp"

namespace endplate::recovery {

struct PatientLesion {
  Component component = Component::growth;
  double from_start_mm = 0.0;  // where on its nerve
  double ready_days = 0.0;     // axons leave it (the injury or the operation, plus the delays)
  double crossing_days = 0.0;  // what it costs axons that come from above
};

struct Patient {
  double rate_z = 0.0;
  double block_first_days = 0.0;
  double block_useful_days = 0.0;
  std::vector<PatientLesion> lesions;
};

// Streams of the random numbers; a target's own streams begin at kTargets + its branch.
struct Streams {
  static constexpr std::uint32_t kPatient = 0;    // rate, block twice, grade
  static constexpr std::uint32_t kLesions = 100;  // of each lesion two delays and the place
  static constexpr std::uint32_t kOfLesion = 3;
  static constexpr std::uint32_t kTargets = 1000;
};

std::vector<Patient> sample_patients(const ForecastQuestion& question, const Draws& draws);

// The same patients, one column for each quantity. Single precision: 24 bits tell seconds of a year
// apart.
struct PatientColumns {
  struct Lesion {
    std::vector<Component> component;
    FloatColumn from_start_mm;
    FloatColumn ready_days;
    FloatColumn crossing_days;
  };
  FloatColumn rate_z;
  FloatColumn block_first_days;
  FloatColumn block_useful_days;
  std::vector<Lesion> lesions;

  std::size_t size() const { return rate_z.size(); }
};
PatientColumns sample_columns(const ForecastQuestion& question, const Draws& draws);

// What happens at one target of one patient, by its best way. Times in days from the injury.
struct Course {
  enum class State : std::uint8_t { not_below, none, growth, block } state = State::not_below;
  double distance_mm = 0.0;
  double arrive = 0.0;
  double transit = 0.0;  // days of growth within `arrive`
  double rate = 0.0;     // mm a day, mean over the reference distance
  double units = 0.0;
  double movement = 0.0;
  double useful = 0.0;
};

// A way is better that brings more (a block returns whole axons) or the same sooner.
inline bool better(Course::State state, double arrive, Course::State than, double than_arrive) {
  return state > than || (state == than && arrive < than_arrive);
}

// The day on which a finding of that kind is first there. Of a course that grows or is blocked.
double due_days(Finding::Kind kind, const Course& course);

// The rows that one target needs, looked up once.
class TargetModel {
 public:
  TargetModel(const ForecastQuestion& question, const TargetBelow& below);

  Course course(const Patient& patient, std::uint32_t sample, const anatomy::NerveMetrics& limb,
                const Draws& draws) const;
  // How far the front has come on a day after the injury, 0 to the whole way. Of a course whose
  // state is growth; a second lesion on the way holds the front at the first part of the way.
  double advance_mm(const Course& course, double days) const;
  // Axons that arrive now find a muscle that can still become useful; 1 for skin.
  double in_time(double arrive_days) const;
  // Useful, given that the axons came in time: the mean over published series.
  double useful_given_in_time() const { return useful_; }
  // The same in 90 % of such series, by the spread between them and the uncertainty of the fit.
  // Absent without an operation: no spread is published.
  const std::optional<std::array<double, 2>>& useful_range() const { return useful_range_; }
  const std::vector<std::string>& parameter_ids() const { return used_; }

  bool motor() const { return below_->target.kind == TargetKind::motor; }
  const std::vector<Path>& ways() const { return ways_; }
  const Parameter& rate(bool operated) const { return operated ? *rate_operated_ : *rate_none_; }
  // The stream of the target's own random words: three of each patient for a muscle (the delays in
  // their order), one (Draws::word) for skin.
  std::uint32_t stream() const;
  // As the axons of one patient come along a way with these lesions, most proximal first; the dates
  // after arrival stay 0. `lesion(k)` is the patient's lesion k.
  template <class LesionOf>
  Course along(std::span<const Cut> cuts, double rate_z, const LesionOf& lesion) const;
  double transit_days(double distance_mm, double slowness) const {
    return double{slowing_curve_.effective_mm(static_cast<float>(distance_mm))} * slowness;
  }
  const SlowingCurve& slowing_curve() const { return slowing_curve_; }
  // Of a motor target: the chance of being in time, by the day of arrival.
  const CurveTable& in_time_curve() const { return *in_time_; }
  // Of a motor target: delays to units, movement and use; of skin only the last.
  const QuantileTable& units_delay() const { return *units_delay_; }
  const QuantileTable& movement_delay() const { return *movement_delay_; }
  const QuantileTable& useful_delay() const { return *useful_delay_; }

 private:
  const Parameter& use(const Parameter& parameter);

  const ForecastQuestion* question_;
  const TargetBelow* below_;
  std::vector<Path> ways_;  // from the first injured nerve down, each once
  bool operated_ = false;
  const Parameter* rate_none_ = nullptr;
  const Parameter* rate_operated_ = nullptr;
  std::shared_ptr<const QuantileTable> units_delay_;
  std::shared_ptr<const QuantileTable> movement_delay_;
  std::shared_ptr<const QuantileTable> useful_delay_;
  Slowing slowing_;
  SlowingCurve slowing_curve_;
  std::shared_ptr<const CurveTable> in_time_;  // by the day of arrival
  double useful_ = 0.0;
  std::optional<std::array<double, 2>> useful_range_;
  std::vector<std::string> used_;
};

template <class LesionOf>
Course TargetModel::along(std::span<const Cut> cuts, double rate_z, const LesionOf& lesion) const {
  Course course;
  if (cuts.empty()) return course;
  course.state = Course::State::block;
  course.distance_mm = cuts.front().to_target_mm;
  bool leaving = true;  // the axons have not yet set out
  for (const Cut& cut : cuts) {
    const PatientLesion here = lesion(cut.lesion);
    const LesionModel& model = question_->lesions[cut.lesion];
    if (here.component == Component::none) {
      course.state = Course::State::none;
      break;
    }
    if (here.component == Component::block) continue;
    if (leaving) {
      course.state = Course::State::growth;
      course.distance_mm = cut.to_target_mm + (model.repaired ? 0.5 * model.gap_mm : 0.0);
      course.rate = rate(model.repaired).at(rate_z);
      course.transit = transit_days(course.distance_mm, 1.0 / course.rate);
      course.arrive = here.ready_days + course.transit;
      leaving = false;
    } else {
      const double day = course.arrive - course.transit +
                         transit_days(course.distance_mm - cut.to_target_mm, 1.0 / course.rate);
      const double wait = model.repaired ? std::max(0.0, model.operation_days - day) : 0.0;
      course.arrive += wait + here.crossing_days;
    }
  }
  return course;
}

}  // namespace endplate::recovery
