// Several samples worked on together against Random123 one by one.
#include "models/recovery/philox_run.hpp"

#include <Random123/philox.h>

#include <catch2/catch.hpp>
#include <vector>

#include "models/recovery/random.hpp"
#include "models/recovery/word_block.hpp"

using namespace endplate;

namespace {

// Numbers with gaps, as those of patients whose axons grow.
std::vector<std::uint32_t> some_samples(std::size_t count, std::uint32_t first) {
  std::vector<std::uint32_t> samples;
  std::uint32_t sample = first;
  for (std::size_t i = 0; i < count; ++i) {
    samples.push_back(sample);
    sample += 1 + (sample * 7U) % 5U;
  }
  return samples;
}

}  // namespace

TEST_CASE("words of many samples are those of Philox 4x32-10 one by one", "[recovery]") {
  constexpr std::uint32_t kStream = 1042;
  const std::array<std::uint32_t, 2> key{0x12345678U, 0xfedcba98U};
  for (std::size_t count = 0; count <= 40; ++count) {
    // The last of them near the end of what 32 bits count.
    for (const std::uint32_t first : {0U, 63998U, 0xffffff00U}) {
      const auto samples = some_samples(count, first);
      std::array<std::vector<std::uint32_t>, 4> words;
      for (auto& column : words) column.resize(count);
      recovery::philox_run(key, samples, kStream, {words[0], words[1], words[2], words[3]});
      for (std::size_t i = 0; i < count; ++i) {
        const auto expected =
            r123::Philox4x32()(r123::Philox4x32::ctr_type{{samples[i], kStream, 0, 0}},
                               r123::Philox4x32::key_type{{key[0], key[1]}});
        for (std::size_t w = 0; w < 4; ++w) REQUIRE(words[w][i] == expected[w]);
      }
    }
  }
}

TEST_CASE("the words of a block are those of its patients", "[recovery]") {
  constexpr std::uint32_t kStream = 1007;
  const recovery::Draws draws(0x0123456789abcdefU);
  std::vector<std::uint32_t> patients;
  for (std::uint32_t i = 1024; i < 1024 + recovery::kBlock; i += 1 + i % 3) patients.push_back(i);
  recovery::WordBlock block;
  block.draw(draws, patients, kStream);
  for (std::size_t g = 0; g < patients.size(); ++g) {
    const auto expected = draws.words(patients[g], kStream);
    for (std::size_t w = 0; w < 4; ++w) REQUIRE(block[w][g] == expected[w]);
  }
  block.draw_one(draws, 1024, patients, kStream);
  for (std::size_t g = 0; g < patients.size(); ++g) {
    REQUIRE(block[0][g] == draws.word(patients[g], kStream));
  }
}
