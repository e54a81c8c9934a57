#include "models/recovery/philox_run.hpp"

#include <Random123/philox.h>
#if defined(__x86_64__) && defined(__GNUC__)
#include <immintrin.h>
#define ENDPLATE_PHILOX_AVX2 1
#endif

namespace endplate::recovery {
namespace {

using Words = std::array<std::span<std::uint32_t>, 4>;

void one_by_one(std::array<std::uint32_t, 2> key, std::span<const std::uint32_t> samples,
                std::uint32_t stream, const Words& words, std::size_t from) {
  const r123::Philox4x32::key_type philox_key{{key[0], key[1]}};
  for (std::size_t i = from; i < samples.size(); ++i) {
    const r123::Philox4x32::ctr_type counter{{samples[i], stream, 0, 0}};
    const auto bits = r123::Philox4x32()(counter, philox_key);
    for (std::size_t w = 0; w < 4; ++w) words[w][i] = bits[w];
  }
}

#ifdef ENDPLATE_PHILOX_AVX2
// Salmon JK et al., SC11 2011: ten rounds, the multipliers and the steps of the key as published.
// Each 64-bit lane holds one 32-bit word; what stands in its upper half does not matter, because
// the product takes lower halves only.
__attribute__((target("avx2"))) std::size_t four_by_four(std::array<std::uint32_t, 2> key,
                                                         std::span<const std::uint32_t> samples,
                                                         std::uint32_t stream, const Words& words) {
  // Independent of each other, so that none waits; more would not fit the registers.
  constexpr std::size_t kGroups = 2;
  constexpr std::size_t kLanes = 4;
  const __m256i multiply_0 = _mm256_set1_epi64x(0xD2511F53LL);
  const __m256i multiply_2 = _mm256_set1_epi64x(0xCD9E8D57LL);
  const __m256i lower_halves = _mm256_setr_epi32(0, 2, 4, 6, 0, 2, 4, 6);
  std::size_t i = 0;
  for (; i + kGroups * kLanes <= samples.size(); i += kGroups * kLanes) {
    __m256i x[4][kGroups];
    for (std::size_t g = 0; g < kGroups; ++g) {
      const auto* four = reinterpret_cast<const __m128i*>(samples.data() + i + g * kLanes);
      x[0][g] = _mm256_cvtepu32_epi64(_mm_loadu_si128(four));
      x[1][g] = _mm256_set1_epi64x(stream);
      x[2][g] = _mm256_setzero_si256();
      x[3][g] = _mm256_setzero_si256();
    }
    std::uint32_t key_0 = key[0];
    std::uint32_t key_1 = key[1];
    for (int round = 0; round < 10; ++round) {
      const __m256i k0 = _mm256_set1_epi64x(key_0);
      const __m256i k1 = _mm256_set1_epi64x(key_1);
      for (std::size_t g = 0; g < kGroups; ++g) {
        const __m256i product_0 = _mm256_mul_epu32(x[0][g], multiply_0);
        const __m256i product_2 = _mm256_mul_epu32(x[2][g], multiply_2);
        x[0][g] = _mm256_xor_si256(_mm256_xor_si256(_mm256_srli_epi64(product_2, 32), x[1][g]), k0);
        x[1][g] = product_2;
        x[2][g] = _mm256_xor_si256(_mm256_xor_si256(_mm256_srli_epi64(product_0, 32), x[3][g]), k1);
        x[3][g] = product_0;
      }
      key_0 += 0x9E3779B9U;
      key_1 += 0xBB67AE85U;
    }
    for (std::size_t w = 0; w < 4; ++w) {
      for (std::size_t g = 0; g < kGroups; ++g) {
        const __m256i packed = _mm256_permutevar8x32_epi32(x[w][g], lower_halves);
        _mm_storeu_si128(reinterpret_cast<__m128i*>(words[w].data() + i + g * kLanes),
                         _mm256_castsi256_si128(packed));
      }
    }
  }
  return i;
}
#endif

}  // namespace

void philox_run(std::array<std::uint32_t, 2> key, std::span<const std::uint32_t> samples,
                std::uint32_t stream, const Words& words) {
  std::size_t done = 0;
#ifdef ENDPLATE_PHILOX_AVX2
  static const bool kAvx2 = __builtin_cpu_supports("avx2") != 0;
  if (kAvx2) done = four_by_four(key, samples, stream, words);
#endif
  one_by_one(key, samples, stream, words, done);
}

}  // namespace endplate::recovery
