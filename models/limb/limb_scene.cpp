#include "models/limb/limb_scene.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

#include "geometry/surface_probe.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/drawn_limb.hpp"
#include "models/limb/drawn_sample.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/nerve_route.hpp"
#include "models/limb/skin_contact.hpp"
#include "models/limb/skin_mesh.hpp"
#include "models/limb/skin_region.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::limb {
namespace {

using anatomy::NerveTree;
using anatomy::NodeIndex;
using anatomy::NodeKind;
using Eigen::Vector3d;

constexpr double kStep_mm = 3.0;
constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();

constexpr std::array<std::pair<std::string_view, NerveFamily>, 5> kGreat{{
    {"musculocutaneous nerve", NerveFamily::musculocutaneous},
    {"axillary nerve", NerveFamily::axillary},
    {"radial nerve", NerveFamily::radial},
    {"median nerve", NerveFamily::median},
    {"ulnar nerve", NerveFamily::ulnar},
}};

NerveFamily family_of(const NerveTree& tree, NodeIndex node) {
  while (true) {
    const auto great = std::ranges::find(kGreat, tree.node(node).name,
                                         [](const auto& each) { return each.first; });
    if (great != kGreat.end()) return great->second;
    if (tree.node(node).parents.empty()) return NerveFamily::other;
    node = tree.node(node).parents.front();
  }
}

bool is_great(const NerveTree& tree, NodeIndex node) {
  return std::ranges::any_of(kGreat,
                             [&](const auto& each) { return each.first == tree.node(node).name; });
}

bool on_chest(const std::vector<GirdlePoint>& points) {
  return std::ranges::all_of(points,
                             [](const GirdlePoint& point) { return point.bone == Bone::thorax; });
}

int steps_of(double length_mm) {
  return std::max(1, static_cast<int>(std::ceil(length_mm / kStep_mm)));
}

std::string full_name(const anatomy::Muscle& muscle) {
  return muscle.part == "whole" ? muscle.name : muscle.name + ", " + muscle.part;
}

// The line of one nerve, of one of two kinds.
struct Line {
  std::vector<NervePlace> places;   // carried by the flesh
  std::vector<GirdlePlace> girdle;  // carried by the bones of the shoulder
};

}  // namespace

std::optional<std::size_t> SceneShape::find_nerve(std::string_view name) const {
  const auto found = std::ranges::find(nerves, name, &SceneNerve::name);
  if (found == nerves.end()) return std::nullopt;
  return static_cast<std::size_t>(found - nerves.begin());
}

Vector3d LimbScene::place_mm(const ScenePlace& at) const {
  const std::vector<double>& arcs = shape->nerves[at.nerve].arc_mm;
  const std::vector<Vector3d>& line = nerves_mm[at.nerve];
  const auto next = std::ranges::upper_bound(arcs, at.arc_mm);
  if (next == arcs.begin()) return line.front();
  if (next == arcs.end()) return line.back();
  const auto k = static_cast<std::size_t>(next - arcs.begin());
  const double share = (at.arc_mm - arcs[k - 1]) / (arcs[k] - arcs[k - 1]);
  return line[k - 1] + share * (line[k] - line[k - 1]);
}

struct SceneLimb::Parts {
  std::shared_ptr<const SceneShape> shape;
  SegmentFrames frames;
  LimbJoints joints;
  BodyEnvelope envelope;
  LandmarkSet landmarks;
  SkinMesh skin;
  std::vector<LimbSolid> solids;
  std::vector<Line> lines;  // by nerve of the shape
};

namespace {

// Lays the nerves of one limb, parents before children.
class NerveLayer {
 public:
  NerveLayer(const evidence::DataPackage& package, const anatomy::Anatomy& anatomy,
             const CaseLimb& limb, const SegmentFrames& frames, SceneShape& shape)
      : package_(package),
        anatomy_(anatomy),
        tree_(anatomy.tree()),
        limb_(limb),
        frames_(frames),
        shape_(shape),
        nerve_of_(tree_.size(), kNone) {}

  Expected<std::vector<Line>> lay(const Atlas& atlas, const BodyEnvelope& envelope,
                                  const LimbJoints& joints,
                                  const std::optional<UlnarTransposition>& transposition) {
    const SegmentFrames right(frames_.scale());
    const SkinMesh under = make_skin(right, envelope, joints, 1);
    const geometry::SurfaceProbe probe(under.mesh);
    const DrawnSkin skin{under, probe, envelope, DigitSkin(right, joints)};
    const auto drawn = drawn_nerves(package_, tree_, limb_, skin);
    if (!drawn) return std::unexpected(drawn.error());
    const auto girdle = GirdleCourses::from(package_, tree_);
    if (!girdle) return std::unexpected(girdle.error());
    const auto layer = transposition ? std::optional(transposition->layer) : std::nullopt;
    const DrawnPlaces small(*drawn, tree_, frames_, layer, kStep_mm);

    for (const NodeIndex node : tree_.topological_order()) {
      if (!std::isfinite(limb_.metrics().length_mm[node])) continue;
      const auto of_drawn = std::ranges::find(*drawn, node, &DrawnNerve::nerve);
      if (const auto on = limb_.on_course(node)) {
        const bool moved = transposition && tree_.node(node).name == "ulnar nerve";
        Line line;
        const int steps = steps_of(on->to_mm - on->from_mm);
        for (int k = 0; k <= steps; ++k) {
          Vector3d p = limb_.courses()[on->course].position_at(
              std::lerp(on->from_mm, on->to_mm, static_cast<double>(k) / steps));
          p = envelope.inside(right, p, kLeastDepth_mm);
          if (frames_.side() == Side::left) p.z() = -p.z();
          if (moved) p = transposed_mm(frames_, *layer, p);
          line.places.push_back(nerve_place(atlas.courses()[on->course].id, frames_, p));
        }
        add(node, is_great(tree_, node) ? NerveRank::great : NerveRank::deep, std::move(line));
      } else if (of_drawn != drawn->end()) {
        const auto n = static_cast<std::size_t>(of_drawn - drawn->begin());
        add(node, NerveRank::small, {small.mean_places(n), {}});
      } else if (!girdle->points(node).empty()) {
        const GirdleLine drawn_line(girdle->points(node), frames_);
        Line line;
        const int steps = steps_of(drawn_line.length_mm());
        for (int k = 0; k <= steps; ++k) {
          line.girdle.push_back(drawn_line.at(static_cast<double>(k) / steps));
        }
        add(node, stays_on_chest(*girdle, node) ? NerveRank::chest : NerveRank::girdle,
            std::move(line));
      }
    }
    add_branches();
    return std::move(lines_);
  }

  // Where the motor branches end.
  std::optional<std::vector<Problem>> add_entries() {
    const auto routes = read_nerve_routes(package_, tree_);
    if (!routes) return routes.error().problems;
    for (const anatomy::Muscle& muscle : anatomy_.muscles()) {
      const NodeIndex branch = muscle.branch;
      std::optional<ScenePlace> at;
      if (nerve_of_[branch] != kNone) {
        at = ScenePlace{nerve_of_[branch], limb_.metrics().length_mm[branch]};
      } else if ((*routes)[branch].ends && (*routes)[branch].follows.empty()) {
        at = on_carrier(branch, limb_.metrics().length_mm[branch]);
      }
      if (at) shape_.entries.push_back({branch, full_name(muscle), muscle.id, *at});
    }
    return std::nullopt;
  }

 private:
  void add(NodeIndex node, NerveRank rank, Line line) {
    SceneNerve nerve{node,
                     tree_.node(node).name,
                     family_of(tree_, node),
                     rank,
                     tree_.node(node).kind == NodeKind::cutaneous,
                     limb_.metrics().length_mm[node],
                     {}};
    const std::size_t points = std::max(line.places.size(), line.girdle.size());
    for (std::size_t k = 0; k < points; ++k) {
      nerve.arc_mm.push_back(nerve.length_mm * static_cast<double>(k) /
                             static_cast<double>(points - 1));
    }
    nerve_of_[node] = shape_.nerves.size();
    shape_.nerves.push_back(std::move(nerve));
    lines_.push_back(std::move(line));
  }

  // A root of the plexus lies on the chest too, but leads into the limb.
  bool stays_on_chest(const GirdleCourses& girdle, NodeIndex node) const {
    return std::ranges::all_of(tree_.descendants(node), [&](NodeIndex below) {
      return !limb_.on_course(below) && on_chest(girdle.points(below));
    });
  }

  // The place so far along a nerve that has no line itself, on the parent that has one.
  std::optional<ScenePlace> on_carrier(NodeIndex node, double arc_mm) const {
    while (nerve_of_[node] == kNone) {
      if (tree_.node(node).parents.empty()) return std::nullopt;
      arc_mm += limb_.metrics().leaves_parent_at_mm[node].front();
      if (!std::isfinite(arc_mm)) return std::nullopt;
      node = tree_.node(node).parents.front();
    }
    return ScenePlace{nerve_of_[node], std::min(arc_mm, limb_.metrics().length_mm[node])};
  }

  void add_branches() {
    for (const NodeIndex node : tree_.topological_order()) {
      const auto& parents = tree_.node(node).parents;
      if (parents.empty() || nerve_of_[parents.front()] == kNone) continue;
      const double leaves_mm = limb_.metrics().leaves_parent_at_mm[node].front();
      if (!std::isfinite(leaves_mm)) continue;
      shape_.branches.push_back(
          {node, tree_.node(node).name, {nerve_of_[parents.front()], leaves_mm}});
    }
  }

  const evidence::DataPackage& package_;
  const anatomy::Anatomy& anatomy_;
  const NerveTree& tree_;
  const CaseLimb& limb_;
  const SegmentFrames& frames_;
  SceneShape& shape_;
  std::vector<std::size_t> nerve_of_;  // of the shape, by node
  std::vector<Line> lines_;
};

}  // namespace

Expected<SceneLimb> SceneLimb::from(const evidence::DataPackage& package,
                                    const anatomy::Anatomy& anatomy, const casefile::Limb& given,
                                    const std::vector<casefile::Operation>& operations,
                                    int fineness) {
  auto limb = CaseLimb::from(package, anatomy.tree(), given);
  if (!limb) return std::unexpected(std::move(limb.error()));
  const auto atlas = Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  auto joints = LimbJoints::from(package);
  if (!joints) return std::unexpected(joints.error());
  auto envelope = BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(envelope.error());
  const auto shapes = SolidShapes::from(package);
  if (!shapes) return std::unexpected(shapes.error());

  const SegmentFrames frames(limb->size().mean_scale(), given.side);
  auto shape = std::make_shared<SceneShape>();
  shape->side = given.side;
  NerveLayer nerves(package, anatomy, *limb, frames, *shape);
  auto lines = nerves.lay(*atlas, *envelope, *joints, ulnar_transposition(operations));
  if (!lines) return std::unexpected(std::move(lines.error()));
  if (auto problems = nerves.add_entries()) {
    return std::unexpected(Error{Fault::internal, std::move(*problems)});
  }
  SkinMesh skin = make_skin(frames, *envelope, *joints, fineness);
  shape->skin = skin.mesh.triangles;
  std::vector<LimbSolid> solids = make_solids(frames, *shapes, fineness);
  for (const LimbSolid& solid : solids) {
    shape->solids.push_back({solid.name, solid.part, solid.id, solid.kind, solid.mesh.triangles});
  }
  for (const Landmark& landmark : atlas->landmarks().landmarks()) {
    shape->landmarks.push_back(landmark.name);
  }
  SceneLimb result;
  result.parts_ = std::make_shared<const Parts>(
      Parts{std::move(shape), frames, std::move(*joints), std::move(*envelope), atlas->landmarks(),
            std::move(skin), std::move(solids), std::move(*lines)});
  return result;
}

const std::shared_ptr<const SceneShape>& SceneLimb::shape() const {
  return parts_->shape;
}

const SegmentFrames& SceneLimb::frames() const {
  return parts_->frames;
}

const LimbJoints& SceneLimb::joints() const {
  return parts_->joints;
}

const BodyEnvelope& SceneLimb::envelope() const {
  return parts_->envelope;
}

LimbScene SceneLimb::in_pose(const Pose& pose, bool muscles) const {
  const Parts& parts = *parts_;
  const PosedSpace space(parts.frames, parts.joints, pose);
  const PosedNerves posed(parts.landmarks, parts.envelope, parts.frames, space);
  LimbScene scene;
  scene.shape = parts.shape;
  scene.solids_mm.resize(parts.solids.size());
  scene.nerves_mm.resize(parts.lines.size());
  const auto pose_nerve = [&](std::size_t n) {
    const Line& line = parts.lines[n];
    std::vector<Vector3d>& points = scene.nerves_mm[n];
    for (const NervePlace& place : line.places) points.push_back(posed(place));
    for (const GirdlePlace& place : line.girdle) points.push_back(place.posed_mm(space));
  };
  // The skin is one piece and the longest; the others fill up what it leaves of the cores.
  const std::size_t pieces = 1 + parts.solids.size() + parts.lines.size();
  tbb::parallel_for(std::size_t{0}, pieces, [&](std::size_t i) {
    if (i == 0) {
      scene.skin_mm = posed_vertices_mm(parts.skin, space);
    } else if (i <= parts.solids.size()) {
      const LimbSolid& solid = parts.solids[i - 1];
      if (!muscles && solid.kind == SolidKind::muscle) return;
      scene.solids_mm[i - 1] = posed_vertices_mm(solid, space);
    } else {
      pose_nerve(i - 1 - parts.solids.size());
    }
  });
  for (const Landmark& landmark : parts.landmarks.landmarks()) {
    scene.landmarks_mm.push_back(LandmarkSet::posed_mm(landmark, parts.frames, space));
  }
  return scene;
}

Pose SceneLimb::held(const Pose& pose) const {
  if (pose.is_neutral()) return pose;
  const SegmentFrames right(parts_->frames.scale());  // both sides alike
  const SkinMesh skin = make_skin(right, parts_->envelope, parts_->joints, 1);
  return limit_contact(skin, right, parts_->joints, pose).pose;
}

std::string SceneLimb::skin_name(std::size_t triangle, const std::array<double, 3>& weights) const {
  const SkinMesh& skin = parts_->skin;
  Vector3d neutral = Vector3d::Zero();
  FingerShares digits;
  for (std::size_t corner = 0; corner < 3; ++corner) {
    const std::uint32_t v = skin.mesh.triangles[triangle][corner];
    neutral += weights[corner] * skin.mesh.vertices_mm[v];
    digits.thumb += weights[corner] * skin.fingers[v].thumb;
    for (std::size_t f = 0; f < digits.share.size(); ++f) {
      digits.share[f] += weights[corner] * skin.fingers[v].share[f];
    }
  }
  return skin_region(parts_->frames, parts_->joints, neutral, digits);
}

}  // namespace endplate::limb
