#include "ui/charts/axis.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::ui {

Axis::Axis(double low, double high, double from_px, double to_px)
    : low_(low), high_(std::max(high, low + 1e-9)), from_px_(from_px), to_px_(to_px) {}

double Axis::at(double value) const {
  return from_px_ + (value - low_) / (high_ - low_) * (to_px_ - from_px_);
}

std::vector<double> Axis::marks(int most) const {
  const double rough = (high_ - low_) / std::max(most, 1);
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  double step = 10.0 * power;
  for (const double round : {1.0, 2.0, 5.0}) {
    if (round * power >= rough) {
      step = round * power;
      break;
    }
  }
  std::vector<double> list;
  for (double k = std::ceil(low_ / step - 1e-9); k * step <= high_ + 1e-9 * step; k += 1.0) {
    list.push_back(k * step + 0.0);
  }
  return list;
}

}  // namespace endplate::ui
