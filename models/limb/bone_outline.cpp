#include "models/limb/bone_outline.hpp"

namespace endplate::limb {

BoneOutline BoneOutline::from(const evidence::Table& table) {
  std::vector<OutlineSection> sections;
  for (const evidence::Row row : table) {
    sections.push_back({*row.number("fraction"), *row.number("centre_x_mm"),
                        *row.number("centre_z_mm"), *row.number("half_depth_mm"),
                        *row.number("half_width_mm")});
  }
  return BoneOutline(std::move(sections));
}

}  // namespace endplate::limb
