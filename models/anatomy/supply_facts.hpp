#pragma once
// What a nerve supplies as a rule, and what supplies a muscle or an area: the facts that a picture
// or a lecture tells. What an injury does to them is a question of models/examination/.
#include <cstddef>
#include <vector>

#include "models/anatomy/anatomy.hpp"

namespace endplate::anatomy {

struct NerveFacts {
  NodeIndex nerve = 0;
  // `nerve` and all that hangs on it in nearly every limb, each before its branches and in the
  // order in which they leave.
  std::vector<NodeIndex> branches;
  std::vector<std::size_t> muscles;  // of Anatomy::muscles(), in the order of their branches
  std::vector<std::size_t> areas;    // of Anatomy::areas(), likewise
  // Of Anatomy::variants(), in the order of the table: those that bring axons into it or lead them
  // out of it, or that change how what it supplies is reached. None that most limbs have.
  std::vector<std::size_t> variants;
};

NerveFacts facts_of_nerve(const Anatomy& anatomy, NodeIndex nerve);

// From the root's end to the last branch: the usual way of the axons, by each node's first parent.
std::vector<NodeIndex> usual_way(const NerveTree& tree, NodeIndex branch);

}  // namespace endplate::anatomy
