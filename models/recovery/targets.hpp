#pragma once
// What hangs on an injured nerve: the muscles and skin areas below a set of lesions, and how far
// the axons have to grow to each.
#include <string>
#include <vector>

#include "models/anatomy/lesion.hpp"
#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::recovery {

enum class TargetKind { motor, sensory };

// Nodes from a root of the target down to the branch that ends in it.
struct Path {
  std::vector<anatomy::NodeIndex> nodes;
  // Every node on the way hangs on its usual parent (the first of the table), where a branch has
  // more than one.
  bool usual = true;
};

struct Target {
  std::string id;    // the muscle's key ("EI") or the area's name
  std::string name;  // "extensor indicis", "biceps brachii, long head"
  TargetKind kind = TargetKind::motor;
  std::string nerve;  // standard term
  anatomy::NodeIndex branch = 0;
  bool autonomous_zone = false;  // of an area
  std::vector<Path> paths;
};

// A lesion on a path, and the way from it to the target.
struct Cut {
  std::size_t lesion = 0;
  double to_target_mm = 0.0;
};

// Every muscle of muscles.csv and every area of skin_areas.csv, with its paths from those roots
// that supply it.
std::vector<Target> all_targets(const anatomy::NerveTree& tree,
                                const evidence::DataPackage& package);

// The lesions that interrupt `path` in this limb, the most proximal first. A lesion beyond the
// point where the path leaves the injured nerve does not touch it.
std::vector<Cut> cuts_on(const Path& path, const std::vector<anatomy::NervePosition>& lesions,
                         const anatomy::NerveTree& tree, const anatomy::NerveMetrics& metrics);

struct TargetBelow {
  Target target;
  bool partial = false;  // some of its axons come another way, past every lesion
};

// The targets of which at least one usual path is interrupted.
std::vector<TargetBelow> targets_below(const std::vector<Target>& targets,
                                       const std::vector<anatomy::NervePosition>& lesions,
                                       const anatomy::NerveTree& tree,
                                       const anatomy::NerveMetrics& metrics);

}  // namespace endplate::recovery
