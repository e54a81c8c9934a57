#pragma once
// Random numbers that depend on nothing but the seed and a place: which sample and which stream
// (what is drawn). So results do not depend on the number of threads or on the order of work, and
// two questions about one case meet the same patients.
// Philox 4x32-10: Salmon JK et al., SC11 2011 ("Parallel random numbers: as easy as 1, 2, 3").
#include <Random123/philox.h>

#include <array>
#include <cstdint>
#include <span>

#include "models/recovery/philox_run.hpp"

namespace endplate::recovery {

class Draws {
 public:
  explicit Draws(std::uint64_t seed)
      : key_{{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32U)}} {}

  // Four words of 32 random bits, for the tables of curve_table.hpp.
  std::array<std::uint32_t, 4> words(std::uint32_t sample, std::uint32_t stream) const {
    const auto bits = r123::Philox4x32()(r123::Philox4x32::ctr_type{{sample, stream, 0, 0}}, key_);
    return {bits[0], bits[1], bits[2], bits[3]};
  }
  // One word, where a stream has no more to a sample. Of 4 kShared samples that follow each other,
  // as many as kShared share their counters with those of the other three quarters.
  static constexpr std::uint32_t kShared = 128;
  std::uint32_t word(std::uint32_t sample, std::uint32_t stream) const {
    const std::uint32_t counter = sample / (4 * kShared) * kShared + sample % kShared;
    return words(counter, stream)[sample / kShared % 4];
  }
  // Four words of each of several samples: one span for each of the four words, as long as
  // `samples`.
  void words(std::span<const std::uint32_t> samples, std::uint32_t stream,
             const std::array<std::span<std::uint32_t>, 4>& into) const {
    philox_run({key_[0], key_[1]}, samples, stream, into);
  }

 private:
  r123::Philox4x32::key_type key_;
};

}  // namespace endplate::recovery
