#pragma once
#include <string>

#include "models/anatomy/nerve_metrics.hpp"

namespace endplate::anatomy {

// One place at which axons are interrupted, on the tree and in words.
struct Lesion {
  NervePosition at;
  double sd_mm = 0.0;          // how well the place along the nerve is known, one SD
  bool preganglionic = false;  // the root is torn from the cord: there are no axons to grow
  std::string words;  // "120 mm proximal to the lateral epicondyle, middle third of the arm"
};

}  // namespace endplate::anatomy
