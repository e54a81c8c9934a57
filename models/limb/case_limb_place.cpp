#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <variant>

#include "models/limb/case_limb.hpp"
#include "models/limb/case_limb_landmark.hpp"
#include "models/limb/case_limb_parts.hpp"

namespace endplate::limb {
namespace {

using anatomy::Lesion;
using anatomy::NodeIndex;

std::unexpected<Error> refuse(std::string what, std::string mend) {
  return std::unexpected(Error::input({"at", std::move(what), std::move(mend)}));
}

}  // namespace

Expected<Lesion> CaseLimb::place(const std::string& nerve, const casefile::Place& at) const {
  const anatomy::NerveTree& tree = *parts_->tree;
  std::optional<NodeIndex> named;
  if (!nerve.empty()) {
    named = tree.find(nerve);
    if (!named) {
      return std::unexpected(Error::input({"nerve", fmt::format("no nerve is called '{}'", nerve),
                                           "Use a standard term of the nerve tree."}));
    }
  }
  if (const auto* landmark = std::get_if<casefile::AtLandmark>(&at)) {
    if (!named) {
      return refuse("a place by a landmark lies on some nerve, which is not given",
                    "Name the injured nerve.");
    }
    if (const PassedLandmark* passed = parts_->passed(*named, landmark->landmark)) {
      return place_at_passed(*named, *passed, *landmark);
    }
    return place_at_landmark(tree, parts_->atlas, parts_->frames, parts_->layout, *named,
                             *landmark);
  }
  if (const auto* branch = std::get_if<casefile::AtBranch>(&at)) {
    const auto node = tree.find(branch->branch);
    if (!node) {
      return refuse(fmt::format("no branch is called '{}'", branch->branch),
                    "Use a standard term of the nerve tree.");
    }
    if (named) {
      const auto below = tree.descendants(*named);
      if (std::ranges::find(below, *node) == below.end()) {
        return refuse(fmt::format("'{}' is no branch of '{}'", branch->branch, nerve),
                      "Name the nerve that the branch belongs to, or none.");
      }
    }
    const double length_mm = metrics_.length_mm[*node];
    if (branch->from_origin_mm < 0.0 || branch->from_origin_mm > length_mm) {
      return refuse(fmt::format("{:.0f} mm from its origin lies beyond the '{}', which is about "
                                "{:.0f} mm long in this limb",
                                branch->from_origin_mm, branch->branch, length_mm),
                    fmt::format("Give 0 to {:.0f} mm.", std::floor(length_mm)));
    }
    return Lesion{{*node, branch->from_origin_mm},
                  0.0,
                  false,
                  fmt::format("{:.0f} mm beyond the origin of the {}", branch->from_origin_mm,
                              branch->branch)};
  }

  // A root, trunk or cord: somewhere along it, so its middle stands for it.
  std::string name;
  bool preganglionic = false;
  if (const auto* root = std::get_if<casefile::AtRoot>(&at)) {
    name = tree.find(root->root) ? root->root : root->root + " root";
    preganglionic = root->level == casefile::RootLevel::preganglionic;
  } else if (const auto* trunk = std::get_if<casefile::AtTrunk>(&at)) {
    name = trunk->trunk;
  } else {
    name = std::get<casefile::AtCord>(at).cord;
  }
  const auto node = tree.find(name);
  if (!node) {
    return refuse(fmt::format("the nerve tree has no '{}'", name),
                  "Use a root (C5), a trunk (superior trunk) or a cord (posterior cord).");
  }
  if (named && *named != *node) {
    return refuse(fmt::format("the injury is of the '{}' but its place is the '{}'", nerve, name),
                  "Leave the nerve out, or give a place on it.");
  }
  const double length_mm = metrics_.length_mm[*node];
  if (preganglionic) {
    return Lesion{{*node, 0.0}, 0.0, true, fmt::format("{}, torn from the cord", name)};
  }
  const bool is_root = std::holds_alternative<casefile::AtRoot>(at);
  return Lesion{
      {*node, length_mm / 2.0},
      length_mm / std::sqrt(12.0),
      false,
      is_root ? fmt::format("{}, beyond its ganglion", name) : fmt::format("the {}", name)};
}

Expected<Lesion> CaseLimb::place_at_passed(NodeIndex nerve, const PassedLandmark& passed,
                                           const casefile::AtLandmark& at) const {
  const double length_mm = metrics_.length_mm[nerve];
  const double there_mm = passed.share * length_mm;
  const bool distal = at.toward == casefile::Toward::distal;
  const double place_mm = there_mm + (distal ? at.offset_mm : -at.offset_mm);
  const char* toward = distal ? "distal" : "proximal";
  if (!(at.offset_mm >= 0.0) || place_mm < 0.0 || place_mm > length_mm) {
    return refuse(
        fmt::format("{:.0f} mm {} to the {} lies beyond the {}", at.offset_mm, toward, at.landmark,
                    parts_->tree->node(nerve).name),
        fmt::format("Give 0 to {:.0f} mm {} to the {}.",
                    std::floor(distal ? length_mm - there_mm : there_mm), toward, at.landmark));
  }
  return Lesion{{nerve, place_mm},
                passed.sd_mm,
                false,
                at.offset_mm == 0.0
                    ? fmt::format("at the {}", at.landmark)
                    : fmt::format("{:.0f} mm {} to the {}", at.offset_mm, toward, at.landmark)};
}

Expected<Lesion> CaseLimb::place_injury(const casefile::Injury& injury, std::size_t index) const {
  auto lesion = place(injury.nerve, *injury.at);
  if (lesion) return lesion;
  for (Problem& problem : lesion.error().problems) {
    problem.place = fmt::format("/injuries/{}/{}", index, problem.place);
  }
  return lesion;
}

}  // namespace endplate::limb
