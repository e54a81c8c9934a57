#pragma once
#include <catch2/catch.hpp>
#include <string>

#include "../limb/limb_fixture.hpp"
#include "models/transfer/reach.hpp"

namespace endplate::transfer {

inline const anatomy::NerveTree& own_tree() {
  static const auto tree = anatomy::NerveTree::from(limb::own_tables());
  REQUIRE(tree.has_value());
  return *tree;
}

inline anatomy::NodeIndex node(const std::string& name) {
  const auto found = own_tree().find(name);
  if (!found) FAIL("no nerve " + name);
  return *found;
}

inline ReachModel model_of(const casefile::Limb& limb, int samples) {
  auto model = ReachModel::from(limb::own_tables(), own_tree(), limb, samples, 1);
  if (!model) FAIL(model.error().problems.front().what);
  return *std::move(model);
}

inline const ReachModel& own_model() {
  static const ReachModel model = model_of({}, 1000);
  return model;
}

inline Reach reach_of(const ReachModel& model, const ReachQuestion& question) {
  auto reach = model.reach(question);
  if (!reach) FAIL(reach.error().problems.front().what);
  return *std::move(reach);
}

inline Reach reach_of(const ReachQuestion& question) {
  return reach_of(own_model(), question);
}

}  // namespace endplate::transfer
