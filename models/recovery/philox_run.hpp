#pragma once
// Random words of many samples at once, the same that Random123's Philox 4x32-10 gives one by one.
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

namespace endplate::recovery {

// Word w of samples[i] of this stream goes to words[w][i]. All spans have the same length. Where
// the processor has AVX2, four samples are worked on together.
void philox_run(std::array<std::uint32_t, 2> key, std::span<const std::uint32_t> samples,
                std::uint32_t stream, const std::array<std::span<std::uint32_t>, 4>& words);

}  // namespace endplate::recovery
