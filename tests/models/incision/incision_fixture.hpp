#pragma once
// The tables and a theatre that the tests of incisions share.
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "../limb/limb_fixture.hpp"
#include "models/anatomy/terms.hpp"
#include "models/incision/incision.hpp"
#include "models/incision/mark_text.hpp"

namespace endplate::incision {

inline const anatomy::NerveTree& own_tree() {
  static const auto tree = anatomy::NerveTree::from(limb::own_tables()).value();
  return tree;
}

inline const anatomy::Terms& own_terms() {
  static const auto terms = anatomy::Terms::from(limb::own_tables()).value();
  return terms;
}

inline std::vector<AtSkin> marks(const std::string& words) {
  std::vector<std::string> slips;
  auto read = marks_from(words, "--line", own_terms(), slips);
  if (!read) FAIL(read.error().problems.front().what);
  return *std::move(read);
}

inline casefile::Case case_of(Side side, const std::map<std::string, double>& pose_deg = {}) {
  casefile::Case patient;
  patient.limb.side = side;
  patient.limb.side_given = true;
  patient.limb.pose_deg = pose_deg;
  return patient;
}

inline IncisionAnswer answer_of(const casefile::Case& patient, const PlannedCut& cut,
                                int samples = 300) {
  IncisionOptions options;
  options.samples = samples;
  auto answer = answer_incision(patient, cut, limb::own_tables(), options);
  if (!answer) FAIL(answer.error().problems.front().what);
  return *std::move(answer);
}

inline const NerveNearby* find(const IncisionAnswer& answer, const std::string& nerve) {
  for (const NamedNearby& named : answer.nerves) {
    if (named.nerve == nerve) return &named.near;
  }
  return nullptr;
}

}  // namespace endplate::incision
