#pragma once
// The random words of a block of patients, few enough to stay in the nearest cache.
#include <array>
#include <cstdint>
#include <numeric>
#include <span>

#include "models/anatomy/limb_columns.hpp"
#include "models/recovery/random.hpp"

namespace endplate::recovery {

// Patients that are worked on together; columns of limbs overlap by as many.
inline constexpr std::size_t kBlock = anatomy::LimbColumns::kOverlap;

class WordBlock {
 public:
  // Of up to kBlock patients, by their numbers.
  void draw(const Draws& draws, std::span<const std::uint32_t> patients, std::uint32_t stream) {
    size_ = patients.size();
    const auto into = [&](std::size_t w) { return std::span(words_[w]).first(size_); };
    draws.words(patients, stream, {into(0), into(1), into(2), into(3)});
  }
  // As Draws::word: one word of each patient of the block from `begin` on, or of the chosen ones
  // among them. It is then word 0.
  void draw_one(const Draws& draws, std::size_t begin, std::size_t patients, std::uint32_t stream) {
    size_ = patients;
    draw_shared(draws, begin, stream, words_[0]);
  }
  void draw_one(const Draws& draws, std::size_t begin, std::span<const std::uint32_t> patients,
                std::uint32_t stream) {
    size_ = patients.size();
    draw_shared(draws, begin, stream, words_[1]);
    for (std::size_t g = 0; g < size_; ++g) words_[0][g] = words_[1][patients[g] - begin];
  }
  // Word 0, 1, 2 or 3 of every patient.
  std::span<const std::uint32_t> operator[](std::size_t word) const {
    return std::span(words_[word]).first(size_);
  }

 private:
  static constexpr std::size_t kShared = Draws::kShared;
  static_assert(kBlock == 4 * kShared);

  static void draw_shared(const Draws& draws, std::size_t begin, std::uint32_t stream,
                          std::array<std::uint32_t, kBlock>& into) {
    std::array<std::uint32_t, kShared> counters{};
    std::iota(counters.begin(), counters.end(), static_cast<std::uint32_t>(begin / 4));
    const auto quarter = [&](std::size_t w) {
      return std::span(into).subspan(w * kShared, kShared);
    };
    draws.words(counters, stream, {quarter(0), quarter(1), quarter(2), quarter(3)});
  }

  std::array<std::array<std::uint32_t, kBlock>, 4> words_{};
  std::size_t size_ = 0;
};

}  // namespace endplate::recovery
