#pragma once
// The line through a strip that the fewest limbs object to.
//
// The strip has stations along the wanted line and offsets across it; of each place it is known in
// which limbs a nerve is near. A line has an offset at each control and turns smoothly between
// them. Its count is the number of limbs in which it has a nerve near anywhere.
#include <cstdint>
#include <vector>

namespace endplate::incision {

struct Strip {
  std::size_t stations = 0;
  int half = 0;                     // offsets -half to half, in steps
  std::size_t words = 0;            // of a set of limbs
  std::vector<std::uint64_t> near;  // by station, offset, word

  const std::uint64_t* at(std::size_t station, int offset) const {
    return near.data() + (station * static_cast<std::size_t>(2 * half + 1) +
                          static_cast<std::size_t>(offset + half)) *
                             words;
  }
};

struct LineFamily {
  std::vector<std::size_t> controls;  // stations, the first and the last among them
  int step = 1;                       // controls take multiples of it, in steps of the strip
  int at_ends = 0;                    // the most at the first and the last control
  std::vector<int> most_change;       // from one control to the next
};

// Of the share of the way from one control to the next: level at both.
double smooth_offset(double from, double to, double share);
// By station, of a line with these offsets at the controls.
std::vector<double> offsets_along(const LineFamily& family, const std::vector<int>& at_controls);

struct FoundLine {
  std::vector<int> at_controls;
  std::uint32_t count = 0;
  long apart = 0;  // the sum of the squared offsets: of equal counts the smaller is better
};

// The best lines of the family, at most `keep` (>= 1), the best first. Exact: what is left out
// cannot be better.
std::vector<FoundLine> best_lines(const Strip& strip, const LineFamily& family, std::size_t keep);

}  // namespace endplate::incision
