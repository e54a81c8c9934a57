#include "models/recovery/column_summary.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <vector>

#include "models/recovery/float_column.hpp"
#include "models/recovery/four.hpp"

namespace endplate::recovery {
namespace {

using Values = std::span<const float>;

struct Moments {
  double mean = 0.0;
  double sd = 0.0;
  float low = 0.0F;
  float high = 0.0F;
};

double sum_of(FourFloats four) {
  return (double{four[0]} + double{four[1]}) + (double{four[2]} + double{four[3]});
}

// In one pass: sums of the differences from the first value and of their squares. So many values
// are added up in single precision, in eight sums of few, before they go into the long sums.
Moments moments_of(Values values) {
  constexpr std::size_t kTogether = 128;
  const float pilot = values[0];
  const FourFloats pilots{pilot, pilot, pilot, pilot};
  std::array<FourFloats, 2> low{pilots, pilots};
  std::array<FourFloats, 2> high{pilots, pilots};
  double sum = 0.0;
  double squares = 0.0;
  std::size_t i = 0;
  for (; i + kTogether <= values.size(); i += kTogether) {
    std::array<FourFloats, 2> sums{};
    std::array<FourFloats, 2> square_sums{};
    for (std::size_t j = 0; j < kTogether; j += 2 * kFour) {
      for (std::size_t part = 0; part < 2; ++part) {
        const auto four = load_four<FourFloats>(values.data() + i + j + part * kFour);
        const FourFloats off = four - pilots;
        sums[part] += off;
        square_sums[part] += off * off;
        low[part] = four < low[part] ? four : low[part];
        high[part] = four > high[part] ? four : high[part];
      }
    }
    sum += sum_of(sums[0]) + sum_of(sums[1]);
    squares += sum_of(square_sums[0]) + sum_of(square_sums[1]);
  }
  Moments m{0.0, 0.0, pilot, pilot};
  for (std::size_t part = 0; part < 2; ++part) {
    for (std::size_t lane = 0; lane < kFour; ++lane) {
      m.low = std::min(m.low, low[part][lane]);
      m.high = std::max(m.high, high[part][lane]);
    }
  }
  for (; i < values.size(); ++i) {
    const double off = double{values[i]} - double{pilot};
    sum += off;
    squares += off * off;
    m.low = std::min(m.low, values[i]);
    m.high = std::max(m.high, values[i]);
  }
  const auto n = static_cast<double>(values.size());
  m.mean = pilot + sum / n;
  const double of_mean = squares - sum * sum / n;
  m.sd = n > 1.0 && of_mean > 0.0 ? std::sqrt(of_mean / (n - 1.0)) : 0.0;
  return m;
}

// Values k and k + 1 in order lie on both sides of a percentile, which is `part` of the way.
struct Rank {
  std::size_t k = 0;
  double part = 0.0;
};

Rank rank_of(double chance, std::size_t n) {
  const double at = chance * static_cast<double>(n - 1);
  const auto k = static_cast<std::size_t>(at);
  return {k, at - static_cast<double>(k)};
}

// Some of the values, among which value `first` + i of all, in order, is value i.
struct Candidates {
  FloatColumn values;
  std::array<std::size_t, 3> rank{};
};

// The bins of a rank's two values, and those between, which are empty.
struct BinRange {
  std::int16_t first = -1;
  std::int16_t last = -1;
};

constexpr std::size_t kMostBins = 1024;
// Each bin has four counts, which are used by turns: where one value's bin is that of the value
// before, the processor would wait for the one count before it starts with the next.
constexpr std::size_t kTurns = 4;
using Counts = std::array<std::uint32_t, kTurns>;

// Values by bins of equal width between the lowest and the highest.
struct Bins {
  std::vector<std::int16_t, Unfilled<std::int16_t>> of;  // by value
  std::size_t count = 0;
  std::array<std::uint32_t, kMostBins> held{};

  Bins(Values values, const Moments& m) : of(values.size()) {
    // More bins leave fewer candidates, but are themselves to be counted through.
    count = std::clamp(std::bit_ceil(values.size() / 8), std::size_t{64}, kMostBins);
    const float scale = static_cast<float>(count - 1) / (m.high - m.low);
    for (std::size_t i = 0; i < values.size(); ++i) {
      of[i] = static_cast<std::int16_t>(static_cast<std::int32_t>((values[i] - m.low) * scale));
    }
    std::array<Counts, kMostBins> counts{};
    std::size_t i = 0;
    for (; i + kTurns <= values.size(); i += kTurns) {
      for (std::size_t t = 0; t < kTurns; ++t) ++counts[static_cast<std::size_t>(of[i + t])][t];
    }
    for (; i < values.size(); ++i) ++counts[static_cast<std::size_t>(of[i])][0];
    for (std::size_t b = 0; b < count; ++b) {
      held[b] = (counts[b][0] + counts[b][1]) + (counts[b][2] + counts[b][3]);
    }
  }
};

using EightBins = std::int16_t __attribute__((vector_size(16)));
constexpr std::size_t kEight = 8;

// The lanes of two groups that hold -1 (as comparisons give) as bits 0 to 15.
unsigned lanes_of(EightBins low, EightBins high) {
#ifdef __SSE2__
  return static_cast<unsigned>(__builtin_ia32_pmovmskb128(__builtin_ia32_packsswb128(low, high)));
#else
  unsigned lanes = 0;
  for (unsigned k = 0; k < kEight; ++k) {
    lanes |= (low[k] != 0 ? 1U : 0U) << k | (high[k] != 0 ? 1U : 0U) << (k + kEight);
  }
  return lanes;
#endif
}

// The values whose bins lie in a range, which are so many.
FloatColumn in_ranges(Values values, std::span<const std::int16_t> bin,
                      const std::array<BinRange, 3>& ranges, std::size_t kept) {
  std::array<EightBins, 3> below{};
  std::array<EightBins, 3> above{};
  for (std::size_t p = 0; p < 3; ++p) {
    below[p] = EightBins{} + static_cast<std::int16_t>(ranges[p].first - 1);
    above[p] = EightBins{} + static_cast<std::int16_t>(ranges[p].last + 1);
  }
  const auto inside = [&](const std::int16_t* from) {
    EightBins b;
    std::memcpy(&b, from, sizeof(b));
    return ((b > below[0]) & (b < above[0])) | ((b > below[1]) & (b < above[1])) |
           ((b > below[2]) & (b < above[2]));
  };
  FloatColumn candidates;
  candidates.reserve(kept);
  std::size_t i = 0;
  for (; i + 2 * kEight <= values.size(); i += 2 * kEight) {
    unsigned lanes = lanes_of(inside(&bin[i]), inside(&bin[i + kEight]));
    for (; lanes != 0; lanes &= lanes - 1) {
      candidates.push_back(values[i + static_cast<unsigned>(std::countr_zero(lanes))]);
    }
  }
  for (; i < values.size(); ++i) {
    const bool any = std::ranges::any_of(
        ranges, [&](const BinRange& r) { return bin[i] >= r.first && bin[i] <= r.last; });
    if (any) candidates.push_back(values[i]);
  }
  return candidates;
}

// The values in bins that hold a value k or k + 1.
Candidates near_ranks(Values values, const Moments& m, const std::array<Rank, 3>& ranks) {
  const Bins bins(values, m);
  Candidates candidates;
  std::array<BinRange, 3> ranges{};
  std::size_t b = 0;       // the bin at hand
  std::size_t before = 0;  // values in lower bins
  std::size_t kept = 0;    // values in the ranges so far, all of them among the lowest `covered`
  std::size_t covered = 0;
  for (std::size_t p = 0; p < ranks.size(); ++p) {
    while (before + bins.held[b] <= ranks[p].k) before += bins.held[b++];
    std::size_t last = b;
    std::size_t until = before + bins.held[b];
    while (until <= ranks[p].k + 1 && last + 1 < bins.count) until += bins.held[++last];
    ranges[p] = {static_cast<std::int16_t>(b), static_cast<std::int16_t>(last)};
    // The range before may reach into this one.
    const std::size_t shared = covered > before ? covered - before : 0;
    candidates.rank[p] = ranks[p].k - before + kept - shared;
    kept += until - std::max(before, std::min(until, covered));
    covered = std::max(covered, until);
  }
  candidates.values = in_ranges(values, bins.of, ranges, kept);
  return candidates;
}

}  // namespace

std::optional<Summary> summarise_column(Values values) {
  if (values.empty()) return std::nullopt;
  const Moments m = moments_of(values);
  Summary summary{m.mean, m.sd, m.low, m.low, m.low};
  if (m.low == m.high) return summary;

  std::array<Rank, 3> ranks{};
  for (std::size_t p = 0; p < 3; ++p) {
    ranks[p] = rank_of(std::array{0.05, 0.5, 0.95}[p], values.size());
  }
  // Fewer values than this are sorted as they are.
  constexpr std::size_t kFew = 200;
  Candidates candidates;
  constexpr float kNarrow = 1e-30F;  // too narrow to be divided into bins
  if (values.size() > kFew && m.high - m.low > kNarrow && std::isfinite(m.high - m.low)) {
    candidates = near_ranks(values, m, ranks);
  } else {
    candidates.values.assign(values.begin(), values.end());
    for (std::size_t p = 0; p < 3; ++p) candidates.rank[p] = ranks[p].k;
  }
  const std::array<double*, 3> results{&summary.p05, &summary.p50, &summary.p95};
  auto from = candidates.values.begin();
  for (std::size_t p = 0; p < 3; ++p) {
    const auto at = candidates.values.begin() + static_cast<std::ptrdiff_t>(candidates.rank[p]);
    std::nth_element(from, at, candidates.values.end());
    *results[p] = *at;
    if (ranks[p].part > 0.0 && at + 1 != candidates.values.end()) {
      const double above = *std::min_element(at + 1, candidates.values.end());
      *results[p] = std::lerp(double{*at}, above, ranks[p].part);
    }
    from = at;
  }
  return summary;
}

}  // namespace endplate::recovery
