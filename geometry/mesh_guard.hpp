#pragma once
// What must be true of the bytes of a mesh file before a reader sees them.
//
// CGAL's readers (5.5) trust the file in places: a header's count or the length of a list is
// believed before there is data for it, a PLY coordinate of an integer type or a property before
// any element is a null pointer, an OBJ index of 0 or after a tab is silently another face. So each
// function here walks the bytes once, refuses what does not hold, and hands on the same surface in
// the plainest form of its format.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/geometry_problem.hpp"

namespace endplate::geometry {

struct GuardedBytes {
  std::string bytes;
  std::vector<std::string> notes;  // what was odd but did no harm
};

GeometryResult<GuardedBytes> guarded_stl(const std::string& bytes);
GeometryResult<GuardedBytes> guarded_obj(const std::string& bytes);
GeometryResult<GuardedBytes> guarded_ply(const std::string& bytes);

// A coordinate of a text file in words, or nothing when it is a finite number.
std::string fault_of_coordinate(std::string_view word, std::size_t line);

}  // namespace endplate::geometry
