#pragma once
// The skin areas that are tested one by one. Read from skin_areas.csv.
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"

namespace endplate::anatomy {

struct SkinArea {
  std::string name;  // "first dorsal web space"
  std::string side;  // "dorsal"
  NodeIndex nerve = 0;
  std::vector<NodeIndex> branches;  // whole only while all of them are
  std::vector<std::string> roots;
  // Where no neighbour overlaps, in words; empty when the area has no such zone, so that a
  // neighbour may blunt the loss.
  std::string autonomous_zone;
  std::string former_name;  // an older name that covered this area and others; may be empty
  std::string source;
  evidence::Provenance provenance = evidence::Provenance::assumed;
};

// Rows that hold no skin (the joint twigs of the interosseous nerves) are left out. The same
// checks as for muscles.
Expected<std::vector<SkinArea>> read_skin_areas(const evidence::DataPackage& package,
                                                const NerveTree& tree);

}  // namespace endplate::anatomy
