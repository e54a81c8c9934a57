#pragma once
#include <cstdint>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// Rounds off what is sharp near some vertices: `rounds` times every vertex moves toward the mean of
// its neighbours, half of the way at the `centres` and less and less up to `rings` edges from them,
// beyond which nothing moves. Shrinks a little, as every such smoothing does.
void smooth_near(TriangleMesh& mesh, const std::vector<std::uint32_t>& centres, int rings,
                 int rounds);

}  // namespace endplate::geometry
