#pragma once
// Random numbers that depend on nothing but the seed and a place: which sample, which stream (what
// is drawn) and which draw of that stream. So results do not depend on the number of threads or
// on the order of work, and two questions about one case meet the same patients.
// Philox 4x32-10: Salmon JK et al., SC11 2011 ("Parallel random numbers: as easy as 1, 2, 3").
#include <Random123/philox.h>
#include <Random123/boxmuller.hpp>
#include <Random123/uniform.hpp>

#include <array>
#include <cstdint>
#include <span>

#include "models/recovery/philox_run.hpp"

namespace endplate::recovery {

class Draws {
 public:
  explicit Draws(std::uint64_t seed)
      : key_{{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32U)}} {}

  // Two independent standard normal numbers.
  std::array<double, 2> normals(std::uint32_t sample, std::uint32_t stream,
                                std::uint32_t draw = 0) const {
    const auto bits = philox(sample, stream, draw);
    const auto pair = r123::boxmuller(join(bits[0], bits[1]), join(bits[2], bits[3]));
    return {pair.x, pair.y};
  }
  // Uniform on (0, 1].
  double uniform(std::uint32_t sample, std::uint32_t stream, std::uint32_t draw = 0) const {
    const auto bits = philox(sample, stream, draw);
    return r123::u01<double>(join(bits[0], bits[1]));
  }
  // Four words of 32 random bits, for the tables of curve_table.hpp.
  std::array<std::uint32_t, 4> words(std::uint32_t sample, std::uint32_t stream) const {
    const auto bits = philox(sample, stream, 0);
    return {bits[0], bits[1], bits[2], bits[3]};
  }
  // The same of samples first, first + 1, ...: one span for each of the four words.
  void words(std::uint32_t first, std::uint32_t stream,
             const std::array<std::span<std::uint32_t>, 4>& into) const {
    philox_run({key_[0], key_[1]}, first, stream, 0, into);
  }

 private:
  r123::Philox4x32::ctr_type philox(std::uint32_t sample, std::uint32_t stream,
                                    std::uint32_t draw) const {
    return r123::Philox4x32()(r123::Philox4x32::ctr_type{{sample, stream, draw, 0}}, key_);
  }
  static std::uint64_t join(std::uint32_t low, std::uint32_t high) {
    return (static_cast<std::uint64_t>(high) << 32U) | low;
  }
  r123::Philox4x32::key_type key_;
};

}  // namespace endplate::recovery
