#pragma once
// A forest plot in text: one line a study, then the pooled lines.
#include <string>
#include <vector>

namespace endplate::cli {

struct ForestLine {
  enum class Kind {
    study,   // a square that grows with the weight, and its interval
    pooled,  // a diamond and its interval
    spread   // an interval for a new value, without a centre
  };
  Kind kind = Kind::study;
  std::string label;
  double centre = 0.0;
  double low = 0.0;
  double high = 0.0;
  double weight = 0.0;  // of a study, 0 to 1
  std::string figures;  // shown at the right
};

// At most `width` columns, at least 60; labels are cut to fit. The axis spans all the lines, is
// named by `unit` and has three figures below it. A dotted upright marks the centre of the pooled
// line.
std::string forest_plot(const std::vector<ForestLine>& lines, const std::string& unit,
                        std::size_t width = 100);

}  // namespace endplate::cli
