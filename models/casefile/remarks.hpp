#pragma once
// What a valid case leaves unknown although it would sharpen an answer.
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"

namespace endplate::casefile {

struct Remark {
  std::string place;  // JSON Pointer of the key that is missing
  std::string why;
};

// In the order of their weight. Nothing here is a problem: what is not given stays unknown.
std::vector<Remark> worth_giving(const Case& read);

// The standard name of the root, trunk or cord at which a place lies, or nothing.
std::optional<std::string> plexus_element(const Place& place);

}  // namespace endplate::casefile
