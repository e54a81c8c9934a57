#include "models/incision/corridor_search.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdlib>
#include <span>
#include <tuple>

namespace endplate::incision {
namespace {

using Words = std::vector<std::uint64_t>;

std::uint32_t count(std::span<const std::uint64_t> words) {
  int total = 0;
  for (const std::uint64_t word : words) total += std::popcount(word);
  return static_cast<std::uint32_t>(total);
}

class Search {
 public:
  Search(const Strip& strip, const LineFamily& family, std::size_t keep)
      : strip_(strip), family_(family), keep_(keep), most_(strip.half / family.step) {
    const std::size_t intervals = family.controls.size() - 1;
    between_.resize(intervals);
    for (std::size_t i = 0; i < intervals; ++i) unite(i);
    // In which limbs a line has a nerve near whatever it does from a control on.
    unavoidable_.assign(intervals + 1, Words(values() * strip.words, ~std::uint64_t{0}));
    std::ranges::fill(unavoidable_.back(), std::uint64_t{0});
    for (std::size_t i = intervals; i-- > 0;) {
      for (int a = -most_; a <= most_; ++a) {
        for (int b = -most_; b <= most_; ++b) {
          if (!allowed(i, a, b)) continue;
          for (std::size_t w = 0; w < strip.words; ++w) {
            unavoidable(i, a)[w] &= set(i, a, b)[w] | unavoidable(i + 1, b)[w];
          }
        }
      }
    }
    so_far_.resize(intervals + 1, Words(strip.words, 0));
  }

  std::vector<FoundLine> run() {
    std::vector<int> line(family_.controls.size(), 0);
    for (const int a : outward()) {
      if (std::abs(a) * family_.step > family_.at_ends) continue;
      line[0] = a;
      extend(line, 0, long{a} * a);
    }
    for (FoundLine& one : found_) {
      for (int& offset : one.at_controls) offset *= family_.step;
    }
    return std::move(found_);
  }

 private:
  std::size_t values() const { return static_cast<std::size_t>(2 * most_ + 1); }
  std::size_t index(int value) const { return static_cast<std::size_t>(value + most_); }
  std::uint64_t* set(std::size_t i, int a, int b) {
    return between_[i].data() + (index(a) * values() + index(b)) * strip_.words;
  }
  std::uint64_t* unavoidable(std::size_t i, int a) {
    return unavoidable_[i].data() + index(a) * strip_.words;
  }
  bool allowed(std::size_t i, int a, int b) const {
    return std::abs(a - b) * family_.step <= family_.most_change[i] &&
           (i + 2 < family_.controls.size() || std::abs(b) * family_.step <= family_.at_ends);
  }
  // 0, 1, -1, 2, -2 ...: what lies near the wanted line is often good, and soon known.
  std::vector<int> outward() const {
    std::vector<int> order{0};
    for (int k = 1; k <= most_; ++k) order.insert(order.end(), {k, -k});
    return order;
  }

  // The limbs that have a nerve near between two controls.
  void unite(std::size_t i) {
    between_[i].assign(values() * values() * strip_.words, 0);
    const std::size_t from = family_.controls[i];
    const std::size_t to = family_.controls[i + 1];
    for (int a = -most_; a <= most_; ++a) {
      for (int b = -most_; b <= most_; ++b) {
        if (!allowed(i, a, b)) continue;
        for (std::size_t k = from; k <= to; ++k) {
          const double share = static_cast<double>(k - from) / static_cast<double>(to - from);
          const auto offset = static_cast<int>(
              std::lround(smooth_offset(a * family_.step, b * family_.step, share)));
          const std::uint64_t* near = strip_.at(k, offset);
          for (std::size_t w = 0; w < strip_.words; ++w) set(i, a, b)[w] |= near[w];
        }
      }
    }
  }

  bool worse_than_kept(std::uint32_t at_least, long apart) const {
    return found_.size() == keep_ &&
           std::tie(at_least, apart) >= std::tie(found_.back().count, found_.back().apart);
  }

  void extend(std::vector<int>& line, std::size_t i, long apart) {
    const int a = line[i];
    if (i + 1 == line.size()) {
      const std::uint32_t limbs = count(so_far_[i]);
      if (worse_than_kept(limbs, apart)) return;
      const auto place = std::ranges::upper_bound(
          found_, std::tuple(limbs, apart), {},
          [](const FoundLine& one) { return std::tuple(one.count, one.apart); });
      found_.insert(place, FoundLine{line, limbs, apart});
      if (found_.size() > keep_) found_.pop_back();
      return;
    }
    for (const int b : outward()) {
      if (!allowed(i, a, b)) continue;
      const long with_b = apart + long{b} * b;
      std::uint32_t at_least = 0;
      for (std::size_t w = 0; w < strip_.words; ++w) {
        so_far_[i + 1][w] = so_far_[i][w] | set(i, a, b)[w];
        at_least +=
            static_cast<std::uint32_t>(std::popcount(so_far_[i + 1][w] | unavoidable(i + 1, b)[w]));
      }
      if (worse_than_kept(at_least, with_b)) continue;
      line[i + 1] = b;
      extend(line, i + 1, with_b);
    }
  }

  const Strip& strip_;
  const LineFamily& family_;
  std::size_t keep_;
  int most_;                        // in steps of the family
  std::vector<Words> between_;      // by interval, then offsets at both ends
  std::vector<Words> unavoidable_;  // by control, then offset
  std::vector<Words> so_far_;       // by control: along the line under construction
  std::vector<FoundLine> found_;
};

}  // namespace

double smooth_offset(double from, double to, double share) {
  return from + (to - from) * share * share * (3.0 - 2.0 * share);
}

std::vector<double> offsets_along(const LineFamily& family, const std::vector<int>& at_controls) {
  std::vector<double> offsets;
  for (std::size_t i = 0; i + 1 < family.controls.size(); ++i) {
    const std::size_t from = family.controls[i];
    const std::size_t to = family.controls[i + 1];
    for (std::size_t k = i == 0 ? from : from + 1; k <= to; ++k) {
      const double share = static_cast<double>(k - from) / static_cast<double>(to - from);
      offsets.push_back(smooth_offset(at_controls[i], at_controls[i + 1], share));
    }
  }
  return offsets;
}

std::vector<FoundLine> best_lines(const Strip& strip, const LineFamily& family, std::size_t keep) {
  return Search(strip, family, keep).run();
}

}  // namespace endplate::incision
