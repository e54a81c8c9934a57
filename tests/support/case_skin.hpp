#pragma once
// The skin of one case's mean limb, as the commands make it.
#include <filesystem>

#include "geometry/triangle_mesh.hpp"

namespace endplate::test {

// With the elbow bent that far, all else straight. Throws std::runtime_error with the problem if
// the tables or the case cannot be read.
geometry::TriangleMesh case_skin(const std::filesystem::path& datasets,
                                 const std::filesystem::path& case_file, int fineness,
                                 double elbow_flexion_deg);

}  // namespace endplate::test
