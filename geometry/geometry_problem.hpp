#pragma once
// What geometry says when it cannot answer: errors are values. The caller knows the place (the
// file, the option) and adds it.
#include <expected>
#include <string>

namespace endplate::geometry {

struct GeometryProblem {
  std::string what;  // a phrase without a full stop: "line 12 has a coordinate that is not finite"
  std::string mend;  // what the user can do about it, likewise
  bool operator==(const GeometryProblem&) const = default;
};

template <class T>
using GeometryResult = std::expected<T, GeometryProblem>;

}  // namespace endplate::geometry
