#pragma once
// A straight scale from values to places on paper, with round marks.
#include <vector>

namespace endplate::ui {

class Axis {
 public:
  // From `low` at `from_px` to `high` at `to_px`; the two values differ.
  Axis(double low, double high, double from_px, double to_px);

  double at(double value) const;
  // Round values within the axis, at most `most` of them.
  std::vector<double> marks(int most) const;
  double low() const { return low_; }
  double high() const { return high_; }

 private:
  double low_;
  double high_;
  double from_px_;
  double to_px_;
};

}  // namespace endplate::ui
