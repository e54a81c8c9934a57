#pragma once
// The unit of length of a mesh file, which no format names, guessed from the size of the object.
#include <array>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

enum class LengthUnit { mm, cm, m };

inline constexpr std::array kLengthUnits{LengthUnit::mm, LengthUnit::cm, LengthUnit::m};

double mm_per(LengthUnit unit);

// Diagonal of the box around all vertices that are used, in the unit of the mesh; 0 for none.
double diagonal(const TriangleMesh& mesh);

// The units in which `diagonal` lies between the least and the most extent of the object, ends
// included. One: take it. Several or none: ask. Refuses a diagonal that is not above 0 and a range
// that is none; below a factor of ten between its ends the answer is never more than one unit.
GeometryResult<std::vector<LengthUnit>> plausible_units(double diagonal, double least_mm,
                                                        double most_mm);

// From `unit` to mm.
void scale_to_mm(TriangleMesh& mesh, LengthUnit unit);

}  // namespace endplate::geometry
