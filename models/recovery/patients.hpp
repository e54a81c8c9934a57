#pragma once
// The sampled patients of a forecast: what all targets of one patient share.
#include <vector>

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
  static constexpr std::uint32_t kRate = 0;
  static constexpr std::uint32_t kBlock = 1;
  static constexpr std::uint32_t kLesionGrade = 100;
  static constexpr std::uint32_t kLesionDelay = 200;
  static constexpr std::uint32_t kLesionPlace = 300;
  static constexpr std::uint32_t kTargets = 1000;
};

std::vector<Patient> sample_patients(const ForecastQuestion& question, const Draws& draws);

// What happens at one target of one patient, by its best way. Times in days from the injury.
struct Course {
  enum class State { not_below, none, growth, block } state = State::not_below;
  double distance_mm = 0.0;
  double arrive = 0.0;
  double transit = 0.0;  // days of growth within `arrive`
  double rate = 0.0;     // mm a day, mean over the reference distance
  double units = 0.0;
  double movement = 0.0;
  double useful = 0.0;
};

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
  // Useful, given that the axons came in time.
  double useful_given_in_time() const { return useful_; }
  const std::vector<std::string>& parameter_ids() const { return used_; }

 private:
  const Parameter& use(const Parameter& parameter);

  const ForecastQuestion* question_;
  const TargetBelow* below_;
  std::vector<Path> ways_;  // from the first injured nerve down, each once
  bool operated_ = false;
  const Parameter* rate_none_ = nullptr;
  const Parameter* rate_operated_ = nullptr;
  const Parameter* units_ = nullptr;
  const Parameter* movement_ = nullptr;
  const Parameter* useful_delay_ = nullptr;
  Slowing slowing_;
  LogLogistic window_;
  double useful_ = 0.0;
  std::vector<std::string> used_;
};

}  // namespace endplate::recovery
