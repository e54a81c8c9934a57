#pragma once
// One limb as something to look at: skin, bones, muscles and nerves with the points on them, as
// plain arrays. A limb is prepared once and then posed many times; only points move.
//
// Places in the limb frame of the case's side (segment_frames.hpp), mm. Arc lengths are those of
// the nerve itself, from its own beginning; on a nerve that is drawn (drawn_courses.hpp,
// girdle_courses.hpp) they are laid on the line by their share.
#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/core/side.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/limb_solids.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// Which of the five great branches of the plexus a nerve is, or hangs on by its usual parents.
enum class NerveFamily { musculocutaneous, axillary, radial, median, ulnar, other };

// great: one of the five; deep: any other that follows a fitted course; small: drawn in the free
// limb; girdle: roots, plexus and what runs round the shoulder; chest: on the chest wall alone.
enum class NerveRank { great, deep, small, girdle, chest };

struct SceneNerve {
  anatomy::NodeIndex nerve = 0;
  std::string name;
  NerveFamily family = NerveFamily::other;
  NerveRank rank = NerveRank::small;
  bool skin_nerve = false;
  double length_mm = 0.0;
  std::vector<double> arc_mm;  // by point of its line, ascending
};

// A place on a nerve of the scene.
struct ScenePlace {
  std::size_t nerve = 0;  // of SceneShape::nerves
  double arc_mm = 0.0;
};

// Where a branch leaves its usual parent.
struct SceneBranch {
  anatomy::NodeIndex branch = 0;
  std::string name;
  ScenePlace at;
};

// Where a motor branch ends, as far as that has a place: on its own line, or on the nerve beside
// which the tables lay it.
struct SceneEntry {
  anatomy::NodeIndex branch = 0;
  std::string muscle;  // "biceps brachii, short head"
  std::string id;      // of muscles.csv
  ScenePlace at;
};

struct SceneSolid {
  std::string name;
  std::string part;
  std::string id;  // of muscles.csv; empty for a bone
  SolidKind kind = SolidKind::bone;
  std::vector<std::array<std::uint32_t, 3>> triangles;
};

// What does not change with the pose.
struct SceneShape {
  Side side = Side::right;
  std::vector<std::array<std::uint32_t, 3>> skin;  // triangles, seen from outside anticlockwise
  std::vector<SceneSolid> solids;
  std::vector<SceneNerve> nerves;  // parents before children
  std::vector<SceneBranch> branches;
  std::vector<SceneEntry> entries;
  std::vector<std::string> landmarks;

  // By exact name.
  std::optional<std::size_t> find_nerve(std::string_view name) const;
};

// One limb in one pose. The shape is the same object as long as only the pose differs.
struct LimbScene {
  std::shared_ptr<const SceneShape> shape;
  std::vector<Eigen::Vector3d> skin_mm;
  std::vector<std::vector<Eigen::Vector3d>> solids_mm;
  std::vector<std::vector<Eigen::Vector3d>> nerves_mm;
  std::vector<Eigen::Vector3d> landmarks_mm;

  // Clamped to the nerve.
  Eigen::Vector3d place_mm(const ScenePlace& at) const;
};

// The mean limb of a case with every nerve that has a line, the ulnar nerve where the operations
// laid it.
class SceneLimb {
 public:
  // Faults as CaseLimb::from. Takes about half a second.
  static Expected<SceneLimb> from(const evidence::DataPackage& package,
                                  const anatomy::Anatomy& anatomy, const casefile::Limb& given,
                                  const std::vector<casefile::Operation>& operations = {},
                                  int fineness = 1);

  const std::shared_ptr<const SceneShape>& shape() const;
  const SegmentFrames& frames() const;
  const LimbJoints& joints() const;
  const BodyEnvelope& envelope() const;

  // Some milliseconds. The joints go where they are told, even through the skin. Without muscles,
  // which are most of it, their lists of points stay empty.
  LimbScene in_pose(const Pose& pose, bool muscles = true) const;
  // As far as the skin lets the joints go (skin_contact.hpp): the pose in which a case is answered.
  Pose held(const Pose& pose) const;
  // What a place of the skin is called; `weights` of the triangle's corners sum to 1.
  std::string skin_name(std::size_t triangle, const std::array<double, 3>& weights) const;

 private:
  struct Parts;
  std::shared_ptr<const Parts> parts_;
};

}  // namespace endplate::limb
