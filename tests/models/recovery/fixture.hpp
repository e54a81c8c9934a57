#pragma once
// The shipped tables and a made-up limb with round lengths, for the recovery tests.
#include <catch2/catch.hpp>
#include <string_view>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/decision.hpp"
#include "models/recovery/forecast.hpp"
#include "models/recovery/parameters.hpp"
#include "models/recovery/targets.hpp"

namespace recovery_tests {

using namespace endplate;

struct Tables {
  evidence::DataPackage package;
  anatomy::NerveTree tree;
  recovery::Parameters parameters;
  std::vector<recovery::Target> targets;
};

inline const Tables& tables() {
  static const Tables kTables = [] {
    auto package = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    REQUIRE(package);
    auto tree = anatomy::NerveTree::from(*package);
    REQUIRE(tree);
    auto parameters = recovery::Parameters::from(*package);
    REQUIRE(parameters);
    auto targets = recovery::all_targets(*tree, *package);
    return Tables{std::move(*package), std::move(*tree), std::move(*parameters),
                  std::move(targets)};
  }();
  return kTables;
}

inline const recovery::DecisionRules& rules() {
  static const recovery::DecisionRules kRules = [] {
    auto rules = recovery::DecisionRules::from(tables().package);
    REQUIRE(rules);
    return std::move(*rules);
  }();
  return kRules;
}

inline anatomy::NodeIndex node(std::string_view name) {
  const auto found = tables().tree.find(name);
  REQUIRE(found);
  return *found;
}

// Every nerve 100 mm long, its branches leaving at 50 mm, but for those that `set` changes.
struct MadeUpLimb {
  anatomy::NerveMetrics metrics;

  MadeUpLimb() {
    const anatomy::NerveTree& tree = tables().tree;
    metrics.length_mm.assign(tree.size(), 100.0);
    for (const anatomy::NerveNode& n : tree.nodes()) {
      metrics.leaves_parent_at_mm.emplace_back(n.parents.size(), 50.0);
    }
  }
  MadeUpLimb& set(std::string_view name, double leaves_mm, double length_mm) {
    const anatomy::NodeIndex index = node(name);
    metrics.length_mm[index] = length_mm;
    for (double& at : metrics.leaves_parent_at_mm[index]) at = leaves_mm;
    return *this;
  }
};

// A radial nerve with the usual order of branches; lengths are round, not measured.
inline MadeUpLimb radial_limb() {
  MadeUpLimb limb;
  limb.set("radial nerve", 50, 330)
      .set("radial branch to long head of triceps", 40, 40)
      .set("radial branch to medial head of triceps", 60, 60)
      .set("radial branch to lateral head of triceps", 90, 50)
      .set("radial branch to medial head of triceps and anconeus", 100, 150)
      .set("radial branch to brachialis", 260, 20)
      .set("radial branch to brachioradialis", 270, 30)
      .set("radial branch to extensor carpi radialis longus", 290, 40)
      .set("superficial branch of radial nerve", 330, 220)
      .set("deep branch of radial nerve", 330, 70)
      .set("radial branch to supinator", 30, 20)
      .set("posterior interosseous nerve", 70, 120)
      .set("posterior interosseous branch to extensor digitorum", 5, 30)
      .set("posterior interosseous branch to extensor carpi ulnaris", 8, 40)
      .set("posterior interosseous branch to extensor digiti minimi", 12, 50)
      .set("posterior interosseous branch to abductor pollicis longus", 25, 40)
      .set("posterior interosseous branch to extensor pollicis longus", 40, 45)
      .set("posterior interosseous branch to extensor pollicis brevis", 55, 45)
      .set("posterior interosseous branch to extensor indicis", 80, 50);
  // From the deep branch as a rule; from the superficial branch or the bifurcation in some.
  limb.set("radial branch to extensor carpi radialis brevis", 10, 60);
  limb.metrics.leaves_parent_at_mm[node("radial branch to extensor carpi radialis brevis")][2] =
      330;
  return limb;
}

inline recovery::LesionModel lesion_on(std::string_view nerve, double from_start_mm,
                                       std::array<double, 3> chance = {0.0, 1.0, 0.0}) {
  recovery::LesionModel model;
  model.lesion.at = {node(nerve), from_start_mm};
  model.chance = chance;
  return model;
}

inline recovery::LesionModel repaired(recovery::LesionModel model, double days,
                                      int coaptations = 1) {
  model.repaired = true;
  model.operation_days = days;
  model.coaptations = coaptations;
  return model;
}

// Holds what a question points to.
struct Asked {
  std::vector<anatomy::NerveMetrics> limbs;
  recovery::ForecastQuestion question;

  Asked(const MadeUpLimb& limb, std::vector<recovery::LesionModel> lesions,
        std::size_t samples = 2000)
      : limbs{limb.metrics} {
    question.tree = &tables().tree;
    question.parameters = &tables().parameters;
    question.limbs = &limbs;
    question.samples = samples;
    std::vector<anatomy::NervePosition> places;
    for (const auto& model : lesions) places.push_back(model.lesion.at);
    question.targets =
        recovery::targets_below(tables().targets, places, tables().tree, limb.metrics);
    question.lesions = std::move(lesions);
  }
  ~Asked() = default;
  Asked(const Asked&) = delete;
  Asked& operator=(const Asked&) = delete;

  std::size_t index(std::string_view id) const {
    for (std::size_t t = 0; t < question.targets.size(); ++t) {
      if (question.targets[t].target.id == id) return t;
    }
    FAIL("no target " << id);
    return 0;
  }
  bool has(std::string_view id) const {
    for (const auto& below : question.targets) {
      if (below.target.id == id) return true;
    }
    return false;
  }
  const recovery::TargetForecast& of(const recovery::Forecast& forecast,
                                     std::string_view id) const {
    const std::size_t wanted = index(id);
    for (const auto& target : forecast.targets) {
      if (target.target == wanted) return target;
    }
    throw std::logic_error("target without a forecast");
  }
};

}  // namespace recovery_tests
