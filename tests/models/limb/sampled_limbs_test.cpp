// A thousand limbs, drawn at random: age 1 to 80, both sexes, sizes of the population of that age,
// every joint at random within its published range. The skin is judged by CGAL, the nerves by the
// skin and the bones of the same limb, and one limb in ten by its mirror image. In four parts, so
// that they run side by side.
#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "limb_fixture.hpp"
#include "models/casefile/read.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/skin_contact.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Primitive = CGAL::AABB_face_graph_triangle_primitive<Mesh>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

constexpr int kPart = 250;
constexpr double kStep_mm = 3.0;
// Above this level of the arm the courses lie in the armpit and the neck, which this skin of the
// arm alone does not cover.
constexpr double kArmpit = 0.8;

struct Tables {
  Atlas atlas = Atlas::fitted(own_tables()).value();
  LimbJoints joints = LimbJoints::from(own_tables()).value();
  BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  casefile::PoseLimits limits = casefile::pose_limits(own_tables());
};
const Tables& tables() {
  static const Tables read;
  return read;
}

// Within the range of each joint. Two movements of one joint share a way: together they end on the
// ellipse between their ends. A finger bends with the others, as in a fist.
std::map<std::string, double> random_pose(std::mt19937& random) {
  std::map<std::string, double> pose;
  for (const auto& [key, limit] : tables().limits) {
    const bool single_joint = key.starts_with("index_") || key.starts_with("middle_") ||
                              key.starts_with("ring_") || key.starts_with("little_");
    if (single_joint) continue;
    pose[key] = std::uniform_real_distribution<>(limit.low_deg, limit.high_deg)(random);
  }
  const auto together = [&](const char* one, const char* other) {
    const auto share = [&](const char* key) {
      const auto& limit = tables().limits.find(key)->second;
      return pose[key] / (pose[key] < 0.0 ? -limit.low_deg : limit.high_deg);
    };
    const double both = std::hypot(share(one), share(other));
    if (both <= 1.0) return;
    pose[one] /= both;
    pose[other] /= both;
  };
  together("shoulder_abduction_deg", "shoulder_flexion_deg");
  together("wrist_extension_deg", "wrist_ulnar_deviation_deg");
  return pose;
}

Mesh mesh_of(const SkinMesh& skin, const std::vector<Vector3d>& vertices) {
  Mesh mesh;
  for (const Vector3d& p : vertices) mesh.add_vertex({p.x(), p.y(), p.z()});
  for (const auto& t : skin.mesh.triangles) {
    mesh.add_face(Mesh::Vertex_index(t[0]), Mesh::Vertex_index(t[1]), Mesh::Vertex_index(t[2]));
  }
  return mesh;
}

struct PosedLimb {
  std::vector<Vector3d> skin;
  std::vector<std::vector<Vector3d>> nerves;
};

class SampledLimb {
 public:
  SampledLimb(const SegmentScale& scale, Side side)
      : frames_(scale, side), skin_(make_skin(frames_, tables().envelope, tables().joints, 1)) {
    for (std::size_t c = 0; c < tables().atlas.courses().size(); ++c) {
      lines_.push_back(nerve_line(tables().atlas, c, frames_, tables().envelope, kStep_mm));
      follow_thumb(lines_.back(), skin_, frames_);
    }
  }
  const SegmentFrames& frames() const { return frames_; }
  const SkinMesh& skin() const { return skin_; }
  const std::vector<NerveLine>& lines() const { return lines_; }

  PosedLimb in(const PosedSpace& space) const {
    const PosedNerves nerves(tables().atlas.landmarks(), tables().envelope, frames_, space);
    PosedLimb posed{posed_vertices_mm(skin_, space), {}};
    for (const NerveLine& line : lines_) posed.nerves.push_back(nerves(line));
    return posed;
  }

 private:
  SegmentFrames frames_;
  SkinMesh skin_;
  std::vector<NerveLine> lines_;
};

struct Tally {
  int contacts = 0;  // held back where the skin would meet itself
  long places = 0;
};

void judge(int number, Tally& tally) {
  std::mt19937 random(static_cast<std::mt19937::result_type>(number));
  casefile::Limb given;
  given.sex = random() % 2 == 0 ? casefile::Sex::female : casefile::Sex::male;
  given.age_years = std::uniform_real_distribution<>(1.0, 80.0)(random);
  const SegmentScale scale =
      size_of(given).sample(1, static_cast<std::uint64_t>(number)).front().scale;
  const SampledLimb limb(scale, Side::right);
  const std::map<std::string, double> asked = random_pose(random);
  const ContactLimit held =
      limit_contact(limb.skin(), limb.frames(), tables().joints, pose_from(asked));
  tally.contacts += held.contacts.empty() ? 0 : 1;
  const PosedSpace space(limb.frames(), tables().joints, held.pose);
  const PosedLimb posed = limb.in(space);

  std::string in_words =
      fmt::format("limb {}, {:.0f} years, breadth {:.2f}", number, *given.age_years, scale.breadth);
  for (const auto& [key, angle] : asked) in_words += fmt::format(", {} {:.0f}", key, angle);
  INFO(in_words);

  const Mesh mesh = mesh_of(limb.skin(), posed.skin);
  REQUIRE(CGAL::is_valid_polygon_mesh(mesh));  // every edge has two faces, one each way round
  REQUIRE(CGAL::is_closed(mesh));
  REQUIRE(num_faces(mesh) == limb.skin().mesh.triangles.size());  // no face was refused
  CHECK_FALSE(CGAL::Polygon_mesh_processing::does_self_intersect(mesh));

  const Tree tree(faces(mesh).begin(), faces(mesh).end(), mesh);
  const CGAL::Side_of_triangle_mesh<Mesh, Kernel> side(tree);
  const PosedBones bones(tables().envelope, limb.frames(), space);
  for (std::size_t c = 0; c < posed.nerves.size(); ++c) {
    for (std::size_t k = 0; k < posed.nerves[c].size(); ++k) {
      const Vector3d& rest = limb.lines()[c].places[k].neutral_mm;
      if (limb.frames().from_limb(Segment::humerus, rest).fraction > kArmpit) continue;
      const Vector3d& p = posed.nerves[c][k];
      ++tally.places;
      if (side({p.x(), p.y(), p.z()}) != CGAL::ON_BOUNDED_SIDE) {
        FAIL_CHECK(tables().atlas.courses()[c].id << " outside the skin, " << k << " of "
                                                  << posed.nerves[c].size());
      }
      if (bones.clearance_mm(p) < 0.0) {
        FAIL_CHECK(tables().atlas.courses()[c].id << " in a bone, " << k);
      }
    }
  }

  if (number % 10 != 0) return;
  const SampledLimb other(scale, Side::left);
  const PosedLimb left = other.in(PosedSpace(other.frames(), tables().joints, held.pose));
  double apart = 0.0;
  const auto compare = [&](const std::vector<Vector3d>& a, const std::vector<Vector3d>& b) {
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
      apart = std::max(apart, (a[i] - Vector3d(b[i].x(), b[i].y(), -b[i].z())).norm());
    }
  };
  compare(posed.skin, left.skin);
  for (std::size_t c = 0; c < posed.nerves.size(); ++c) compare(posed.nerves[c], left.nerves[c]);
  CHECK(apart < 1e-9);
}

void judge_part(int part) {
  Tally tally;
  for (int i = 0; i < kPart; ++i) judge(part * kPart + i, tally);
  WARN(fmt::format("{} limbs: {} held back by contact, {} nerve places", kPart, tally.contacts,
                   tally.places));
}

}  // namespace

TEST_CASE("Sampled limbs are closed, free of themselves and hold their nerves, first part",
          "[limb][sampled]") {
  judge_part(0);
}
TEST_CASE("Sampled limbs are closed, free of themselves and hold their nerves, second part",
          "[limb][sampled]") {
  judge_part(1);
}
TEST_CASE("Sampled limbs are closed, free of themselves and hold their nerves, third part",
          "[limb][sampled]") {
  judge_part(2);
}
TEST_CASE("Sampled limbs are closed, free of themselves and hold their nerves, fourth part",
          "[limb][sampled]") {
  judge_part(3);
}

}  // namespace endplate::limb
