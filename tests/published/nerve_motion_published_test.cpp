// Published excursions and strains of nerves against the shipped model. The rows, with their
// sources, are those of nerve_paths.csv; docs/nerve-motion-table.md shows each. The shipped tether
// lengths are fitted to the judged rows; `endplate-calibrate` also predicts each study without
// itself.
#include <catch2/catch.hpp>

#include "../models/limb/limb_fixture.hpp"
#include "models/limb/motion_measure.hpp"

namespace endplate::limb {

TEST_CASE("Nerves slide the way and as far as published", "[published][motion]") {
  const Atlas atlas = Atlas::fitted(own_tables()).value();
  const LimbJoints joints = LimbJoints::from(own_tables()).value();
  const BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  const MotionParameters parameters = MotionParameters::from(own_tables()).value();
  const std::vector<BedPlan> plans = bed_plans(own_tables(), atlas).value();
  const std::vector<MotionMeasure> measures = motion_measures(own_tables()).value();
  const MotionModel model(atlas, joints, envelope, plans, SegmentFrames());
  REQUIRE(measures.size() >= 40);

  int judged = 0;
  int within = 0;
  for (const MotionMeasure& m : measures) {
    const double change = model.read(m, parameters);
    INFO(m.row << " " << m.study << ": " << change << ", published " << m.mean);
    CHECK(change * m.sign > 0.0);
    if (!m.judged) continue;
    const auto inside = within_published(m, change);
    REQUIRE(inside.has_value());
    ++judged;
    within += *inside ? 1 : 0;
  }
  CHECK(judged >= 12);
  CHECK(within >= 0.8 * judged);
}

// Millesi and Zoch 1990-91 (recalled): from flexion to extension of elbow and wrist the median
// nerve's bed grows by about a fifth; 4.5 per cent longer extended, 15 shorter flexed.
TEST_CASE("The bed of the median nerve grows by about a fifth from flexion to extension",
          "[published][motion]") {
  const Atlas atlas = Atlas::fitted(own_tables()).value();
  const LimbJoints joints = LimbJoints::from(own_tables()).value();
  const BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  const MotionParameters parameters = MotionParameters::from(own_tables()).value();
  const std::vector<BedPlan> plans = bed_plans(own_tables(), atlas).value();
  const MotionModel model(atlas, joints, envelope, plans, SegmentFrames());
  const std::vector<MotionMeasure> measures = motion_measures(own_tables()).value();
  int found = 0;
  for (const MotionMeasure& m : measures) {
    if (m.quantity != MotionQuantity::bed_percent) continue;
    ++found;
    INFO(m.row);
    CHECK(model.read(m, parameters) == Approx(m.mean).margin(4.0));
  }
  CHECK(found == 3);
}

}  // namespace endplate::limb
