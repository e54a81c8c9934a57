#pragma once
// The muscles of the shoulder girdle and the upper limb, one row a muscle or a part that has its
// own nerve supply. Read from muscles.csv and myotomes.csv.
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"

namespace endplate::anatomy {

struct RootSupply {
  std::string root;       // "C6", "XI"
  bool dominant = false;  // starred in the table
  // A myotome row names this muscle as weak, or as denervated in patients with that one root
  // proven at surgery. Rows of dissected fibres, of all muscles of a root, and of the two forms of
  // C6 that contradict each other do not count.
  bool key_muscle = false;
};

struct Muscle {
  std::string id;    // the trade's abbreviation and the key of every table, "ECRL", "FDP-R"
  std::string name;  // "flexor digitorum profundus"
  std::string part;  // "ring finger"; "whole" when the row is the whole muscle
  NodeIndex nerve = 0;
  NodeIndex branch = 0;  // the last branch, whose end is the muscle
  std::vector<RootSupply> roots;
  std::string compartment;
  std::string action;
  std::string clinical_test;
  std::string source;
  evidence::Provenance provenance = evidence::Provenance::assumed;
};

// Each muscle's branch and nerve must be in the tree, the branch must descend from the nerve, and
// abbreviations must differ. The error holds every problem.
Expected<std::vector<Muscle>> read_muscles(const evidence::DataPackage& package,
                                           const NerveTree& tree);

}  // namespace endplate::anatomy
