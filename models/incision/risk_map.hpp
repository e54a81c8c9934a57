#pragma once
// For every place of a skin: the chance, over sampled limbs, that a nerve lies near the track that
// goes in there straight.
//
// A track goes in along the inward normal of the vertex (the mean of its triangles, by their area)
// to the chosen depth, but not through the limb. Only modelled nerves count: vessels, tendons and
// nerves without a course are not in it. The chance is the share of the sampled limbs, so that it
// errs by 1.6 percentage points at most (one standard error) for 1,000 of them. Fast enough to
// follow a slider: docs/incision-risk.md.
#include <Eigen/Core>
#include <vector>

#include "geometry/triangle_mesh.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/incision/sampled_nerves.hpp"

namespace endplate::incision {

// A skin made ready for many maps. Its vertices keep their numbers.
class SkinEntries {
 public:
  // `skin`: closed, seen from outside counter-clockwise, in the pose of the nerves; mm. Finds
  // normals, how far it is through the limb, and an order in which neighbours stand together.
  explicit SkinEntries(const geometry::TriangleMesh& skin);

  std::size_t size() const { return from_mm_.size(); }
  geometry::Track track(std::size_t vertex, double depth_mm) const;
  // Vertices in an order that keeps neighbours together.
  const std::vector<std::uint32_t>& order() const { return order_; }

 private:
  std::vector<Eigen::Vector3d> from_mm_;
  std::vector<Eigen::Vector3d> inward_;  // unit
  std::vector<double> through_mm_;
  std::vector<std::uint32_t> order_;
};

struct RiskOptions {
  double within_mm = 5.0;  // > 0, at most kFarthest_mm
  double depth_mm = 0.0;   // >= 0; 0: the place on the skin itself
  // Each without its branches. None: every modelled nerve.
  std::vector<anatomy::NodeIndex> nerves;
};

struct RiskMap {
  std::vector<double> chance;  // by vertex of the skin, 0 to 1
  std::size_t limbs = 0;
};

// The same bytes on any number of threads. Fault::input at "/within_mm" or "/depth_mm",
// Fault::outside_model at "/nerves/INDEX".
Expected<RiskMap> risk_map(const SkinEntries& skin, const SampledNerves& nerves,
                           const RiskOptions& options);

struct NearestMap {
  // By vertex of the skin: the distance that half of the sampled limbs fall short of, and the nerve
  // that is the nearest in most limbs (of equals the first in the tree).
  std::vector<double> median_mm;
  std::vector<anatomy::NodeIndex> nerve;
};

// The nearest of the options' nerves to the same tracks; within_mm plays no part.
Expected<NearestMap> nearest_map(const SkinEntries& skin, const SampledNerves& nerves,
                                 const RiskOptions& options);

}  // namespace endplate::incision
