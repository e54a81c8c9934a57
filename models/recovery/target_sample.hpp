#pragma once
// All patients of a forecast at one target at once, by columns: the quick way to what
// TargetModel::course says of one patient.
#include <span>
#include <vector>

#include "models/recovery/departures.hpp"
#include "models/recovery/way_table.hpp"

namespace endplate::recovery {

// What one target asks of. Everything is of the same question.
struct SampledPatients {
  const PatientColumns& columns;
  const std::vector<Departure>& departures;
  const std::vector<double>& weights;  // empty where all weigh 1
};

// Columns without the patients whom they do not concern. Weights are empty where all weigh 1.
struct TargetSample {
  // A column that keeps its memory from one target to the next.
  template <class Value>
  class Column {
   public:
    void clear(std::size_t most) {
      if (values_.size() < most) values_.resize(most);
      size_ = 0;
    }
    // Room for so many more, which the caller fills.
    std::span<Value> more(std::size_t count) {
      size_ += count;
      return std::span(values_).subspan(size_ - count, count);
    }
    std::span<const Value> values() const { return std::span(values_).first(size_); }

   private:
    std::vector<Value, Unfilled<Value>> values_;
    std::size_t size_ = 0;
  };

  Column<float> distance_mm;  // of those with the target below a lesion
  Column<double> distance_weights;
  struct Growing {
    Column<float> arrive;
    Column<float> units;     // motor
    Column<float> movement;  // motor
    Column<float> useful;
    Column<double> weights;
  } growing;
  std::vector<std::uint32_t> blocked;  // patients; complete only where nobody's axons grow
  double below = 0.0;                  // sums of weights
  double in_time = 0.0;
  double grown_in_time = 0.0;  // without the blocks
  double useful = 0.0;
};

// `into` is filled anew; its memory is used again.
void sample_target(const ForecastQuestion& question, const TargetModel& model,
                   const TargetWays& ways, const SampledPatients& patients, const Draws& draws,
                   TargetSample& into);

}  // namespace endplate::recovery
