// Where the muscles of muscle_solids.csv lie.
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "models/limb/limb_solids.hpp"
#include "solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

bool is_muscle(const LimbSolid& solid) {
  return solid.kind == SolidKind::muscle;
}

// The ring of the greatest section: the belly.
const SolidRing& belly(std::string_view id) {
  const SolidRing* thickest = nullptr;
  for (const SolidShape& shape : own_shapes().all()) {
    if (shape.id != id) continue;
    for (const SolidRing& ring : shape.rings) {
      if (thickest == nullptr ||
          ring.half_a_mm * ring.half_b_mm > thickest->half_a_mm * thickest->half_b_mm) {
        thickest = &ring;
      }
    }
  }
  if (thickest == nullptr) FAIL("no muscle " << id);
  return *thickest;
}

// Between the first two rings and between the last two it is attached.
bool at_attachment(const LimbSolid& solid, std::size_t vertex) {
  const auto& [ring, next] = solid.carried[vertex];
  return ring == 0 || ring + 2 >= solid.carriers.size();
}

}  // namespace

TEST_CASE("Every muscle of the tables is drawn but the one of the neck", "[limb][solids]") {
  std::set<std::string, std::less<>> drawn;
  for (const LimbSolid& solid : own_solids()) {
    if (is_muscle(solid)) drawn.insert(solid.id);
  }
  std::set<std::string, std::less<>> left_out;
  for (const evidence::Row row : own_tables().table("muscles")) {
    if (!drawn.contains(row.text("id"))) left_out.insert(std::string(row.text("id")));
  }
  CHECK(left_out == std::set<std::string, std::less<>>{"SCM"});
}

// The skin is good to some millimetres, so a tendon under it may break through by one.
TEST_CASE("Muscles of the free limb lie within the skin", "[limb][solids]") {
  constexpr double kThrough_mm = 1.0;
  const std::set<std::string_view> of_the_trunk{"TRAP-L", "RHM",  "SA", "IS",   "TMin",
                                                "SSC-L",  "TMaj", "LD", "Pmin", "PM-S"};
  const test::SolidProbe skin(own_skin().mesh);
  int points = 0;
  for (const LimbSolid& solid : own_solids()) {
    if (!is_muscle(solid) || of_the_trunk.contains(solid.id)) continue;
    double worst = 0.0;
    for (const Vector3d& p : solid.mesh.vertices_mm) {
      if (!below_shoulder(p)) continue;
      ++points;
      worst = std::max(worst, skin.outside_mm(p));
    }
    INFO(solid.name << ", " << solid.part);
    CHECK(worst < kThrough_mm);
  }
  CHECK(points > 15000);
}

TEST_CASE("Muscles run beside the bones and touch them where they are attached", "[limb][solids]") {
  constexpr double kPressed_mm = 2.5;
  constexpr double kAttached_mm = 4.5;
  for (const LimbSolid& muscle : own_solids()) {
    if (!is_muscle(muscle)) continue;
    double pressed = 0.0;
    double attached = 0.0;
    for (std::size_t s = 0; s < own_solids().size(); ++s) {
      if (is_muscle(own_solids()[s])) continue;
      for (std::size_t v = 0; v < muscle.mesh.vertices_mm.size(); ++v) {
        double& worst = at_attachment(muscle, v) ? attached : pressed;
        worst = std::max(worst, own_probes()[s].depth_mm(muscle.mesh.vertices_mm[v]));
      }
    }
    INFO(muscle.name << ", " << muscle.part);
    CHECK(pressed < kPressed_mm);
    CHECK(attached < kAttached_mm);
  }
}

// Textbook anatomy (common practice).
TEST_CASE("Bellies lie on their side of the limb", "[limb][solids]") {
  const auto in = [](const char* id, Segment segment) {
    INFO(id);
    CHECK(belly(id).segment == segment);
    return belly(id).place;
  };
  const auto anterior = [&](const char* id, Segment segment, double least_mm) {
    INFO(id << " anterior");
    CHECK(in(id, segment).x_mm > least_mm);
  };
  const auto posterior = [&](const char* id, Segment segment, double least_mm) {
    INFO(id << " posterior");
    CHECK(in(id, segment).x_mm < -least_mm);
  };
  const auto lateral = [&](const char* id, Segment segment, double least_mm) {
    INFO(id << " lateral");
    CHECK(in(id, segment).z_mm > least_mm);
  };
  const auto medial = [&](const char* id, Segment segment, double least_mm) {
    INFO(id << " medial");
    CHECK(in(id, segment).z_mm < -least_mm);
  };
  const Segment arm = Segment::humerus;
  const Segment forearm = Segment::forearm;
  const Segment hand = Segment::hand;
  for (const char* id : {"BIC-S", "BIC-L", "BRA"}) anterior(id, arm, 11.0);
  CHECK(belly("BIC-S").place.z_mm < belly("BIC-L").place.z_mm);
  CHECK(belly("BRA").place.x_mm < belly("BIC-L").place.x_mm);
  medial("CB", arm, 10.0);
  for (const char* id : {"TRI-LH", "TRI-LAT", "TRI-MH"}) posterior(id, arm, 11.0);
  CHECK(belly("TRI-LH").place.z_mm < belly("TRI-LAT").place.z_mm);
  lateral("DEL-A", arm, 25.0);
  anterior("DEL-C", arm, 20.0);
  posterior("DEL-S", arm, 20.0);
  for (const char* id : {"PM-S", "PM-C", "Pmin"}) anterior(id, arm, 20.0);
  for (const char* id : {"IS", "TMin", "TMaj"}) posterior(id, arm, 20.0);
  for (const char* id : {"FCU", "PL", "FDS"}) {
    anterior(id, forearm, 0.0);
    medial(id, forearm, 10.0);
  }
  medial("FCU", forearm, 25.0);
  anterior("FCR", forearm, 15.0);
  anterior("FPL", forearm, 5.0);
  lateral("FPL", forearm, 5.0);
  for (const char* id : {"FDP-I", "FDP-M", "FDP-R", "FDP-L"}) {
    CHECK(in(id, forearm).x_mm < belly("FDS").place.x_mm);
  }
  lateral("BR", forearm, 25.0);
  anterior("BR", forearm, 5.0);
  for (const char* id : {"ECRL", "ECRB"}) lateral(id, forearm, 20.0);
  CHECK(belly("ECRB").place.x_mm < belly("ECRL").place.x_mm);
  for (const char* id : {"ED", "EDM", "ECU", "ANC", "APL", "EPL", "EPB", "EI"}) {
    posterior(id, forearm, 5.0);
  }
  medial("ECU", forearm, 0.0);
  for (const char* id : {"APB", "OP", "FPB-S", "FPB-D"}) {
    anterior(id, hand, 8.0);
    lateral(id, hand, 10.0);
  }
  for (const char* id : {"ADM", "FDMB", "ODM"}) medial(id, hand, 15.0);
  lateral("FDI", hand, 25.0);
  for (const char* id : {"DI2", "DI3", "DI4"}) {
    CHECK(in(id, hand).x_mm < 0.0);
  }
  for (const char* id : {"PI1", "PI2", "PI3"}) anterior(id, hand, 0.0);
}

TEST_CASE("Muscles taper toward their ends", "[limb][solids]") {
  // But for sheets that arise from a line of bone, and the square pronator.
  const std::set<std::string_view> sheets{"TRAP-U", "TRAP-M", "TRAP-L", "RHm",   "RHM",
                                          "SA",     "LD",     "PM-S",   "Pmin",  "PQ",
                                          "IS",     "SSC-L",  "PB",     "AdP-T", "PL"};
  for (const SolidShape& shape : own_shapes().all()) {
    if (shape.kind != SolidKind::muscle || sheets.contains(shape.id)) continue;
    const auto section = [](const SolidRing& ring) { return ring.half_a_mm * ring.half_b_mm; };
    double thickest = 0.0;
    for (const SolidRing& ring : shape.rings) thickest = std::max(thickest, section(ring));
    INFO(shape.name << ", " << shape.part);
    CHECK(section(shape.rings.back()) < 0.7 * thickest);
    if (shape.part != "tendon to index finger" && shape.part != "tendon to middle finger" &&
        shape.part != "tendon to ring finger" && shape.part != "tendon to little finger") {
      CHECK(section(shape.rings.front()) < 0.9 * thickest);
    }
  }
}

TEST_CASE("Origins stay with their bone and bellies go with the flesh", "[limb][solids]") {
  const SegmentFrames frames;
  const PosedSpace space(
      frames, own_joints(),
      pose_from({{"shoulder_abduction_deg", 90.0}, {"elbow_flexion_deg", 90.0}}));
  const auto first_moves = [&](const char* name, Bone bone) {
    const LimbSolid& solid = solid_of(name);
    const Vector3d p = solid.mesh.vertices_mm.front();
    INFO(name);
    CHECK((posed_vertices_mm(solid, space).front() - space.of_bone(bone) * p).norm() < 1e-9);
  };
  first_moves("biceps brachii, short head", Bone::scapula);
  first_moves("triceps brachii, long head", Bone::scapula);
  first_moves("pectoralis major, sternocostal head", Bone::thorax);
  first_moves("deltoid, clavicular (anterior)", Bone::clavicle);
  first_moves("brachialis, main part", Bone::humerus);
  // The tendon of biceps ends on the forearm.
  const LimbSolid& biceps = solid_of("biceps brachii, short head");
  const Vector3d end = posed_vertices_mm(biceps, space).back();
  const Vector3d tuberosity = space.of_bone(Bone::radius) * biceps.mesh.vertices_mm.back();
  CHECK((end - tuberosity).norm() < 8.0);
}

}  // namespace endplate::limb
