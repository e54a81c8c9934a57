// Lengths and breadths of the drawn bones against rows of anthropometry.csv.
#include <catch2/catch.hpp>

#include "../models/limb/solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

double length_of(const LimbSolid& solid) {
  return (solid.mesh.vertices_mm.back() - solid.mesh.vertices_mm.front()).norm();
}

double published_mm(std::string_view id) {
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("id") == id) return row.number("mean_mm").value();
  }
  FAIL("no row " << id);
  return 0.0;
}

// Of the ring nearest to a level.
const SolidRing& ring_at(std::string_view name, double fraction) {
  const SolidRing* nearest = nullptr;
  for (const SolidShape& shape : own_shapes().all()) {
    if (shape.name != name || shape.kind != SolidKind::bone) continue;
    for (const SolidRing& ring : shape.rings) {
      if (nearest == nullptr ||
          std::abs(ring.place.fraction - fraction) < std::abs(nearest->place.fraction - fraction)) {
        nearest = &ring;
      }
    }
  }
  return *nearest;
}

}  // namespace

// Buryanov and Kotiuk 2010, 66 hands; the tables carry the joints to a thousandth of the hand.
TEST_CASE("Metacarpals and phalanges are as long as published", "[limb][solids][published]") {
  const std::vector<std::pair<const char*, const char*>> rows{
      {"first metacarpal", "AN_122"},
      {"proximal phalanx of thumb", "AN_121"},
      {"distal phalanx of thumb", "AN_120"},
      {"second metacarpal", "AN_127"},
      {"proximal phalanx of index finger", "AN_126"},
      {"middle phalanx of index finger", "AN_125"},
      {"distal phalanx of index finger", "AN_124"},
      {"third metacarpal", "AN_132"},
      {"proximal phalanx of middle finger", "AN_131"},
      {"middle phalanx of middle finger", "AN_130"},
      {"distal phalanx of middle finger", "AN_129"},
      {"fourth metacarpal", "AN_137"},
      {"proximal phalanx of ring finger", "AN_136"},
      {"middle phalanx of ring finger", "AN_135"},
      {"distal phalanx of ring finger", "AN_134"},
      {"fifth metacarpal", "AN_142"},
      {"proximal phalanx of little finger", "AN_141"},
      {"middle phalanx of little finger", "AN_140"},
      {"distal phalanx of little finger", "AN_139"}};
  for (const auto& [name, id] : rows) {
    INFO(name << " " << id);
    CHECK(length_of(solid_of(name)) == Approx(published_mm(id)).margin(0.5));
  }
}

TEST_CASE("Clavicle, humerus and radius are near the published lengths",
          "[limb][solids][published]") {
  CHECK(length_of(solid_of("clavicle")) == Approx(published_mm("AN_193")).margin(5.0));
  // From the head's top to the trochlea, axial. The ledger limb is a smaller one than the eight of
  // that study; a tenth is allowed for.
  const double top = solid_of("humerus", "head of humerus").mesh.vertices_mm.front().y();
  const double trochlea = solid_of("humerus", "shaft of humerus").mesh.vertices_mm.back().y();
  CHECK(top - trochlea == Approx(published_mm("AN_192")).epsilon(0.10));
  // From the head to the styloid process: within 2 SD (15 and 16 mm) of either side's mean.
  const Vector3d head = solid_of("radius", "whole").mesh.vertices_mm.front();
  const Vector3d styloid = solid_of("radius", "styloid process of radius").mesh.vertices_mm.back();
  CHECK((head - styloid).norm() > published_mm("AN_279") - 2.0 * 15.0);
  CHECK((head - styloid).norm() > published_mm("AN_280") - 2.0 * 16.0);
  CHECK((head - styloid).norm() < published_mm("AN_279") + 2.0 * 15.0);
}

TEST_CASE("Head and neck of the radius are as broad as published", "[limb][solids][published]") {
  const SolidRing& head = ring_at("radius", 20.0 / kLedgerForearm_mm);
  CHECK(2.0 * head.half_b_mm == Approx(published_mm("AN_281")).margin(0.5));
  CHECK(2.0 * head.half_a_mm == Approx(published_mm("AN_282")).margin(0.5));
  const SolidRing& neck = ring_at("radius", 31.0 / kLedgerForearm_mm);
  CHECK(2.0 * neck.half_b_mm == Approx(published_mm("AN_283")).margin(0.5));
}

}  // namespace endplate::limb
