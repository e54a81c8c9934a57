#include "models/limb/ulnar_transposition.hpp"

#include "course_fixture.hpp"
#include "models/limb/body_envelope.hpp"

namespace endplate::limb {
namespace {

using casefile::Layer;

casefile::Operation operation(casefile::OperationState state, const char* nerve,
                              std::optional<Layer> layer = std::nullopt) {
  casefile::Operation made;
  made.state = state;
  casefile::Procedure procedure;
  procedure.procedure = "transposition";
  procedure.nerve = nerve;
  procedure.layer = layer;
  made.done.push_back(procedure);
  return made;
}

}  // namespace

TEST_CASE("only an ulnar nerve that was transposed has moved", "[limb]") {
  using enum casefile::OperationState;
  CHECK_FALSE(ulnar_transposition({}));
  CHECK_FALSE(ulnar_transposition({operation(planned, "ulnar nerve")}));
  CHECK_FALSE(ulnar_transposition({operation(done, "radial nerve")}));
  const auto assumed = ulnar_transposition({operation(done, "ulnar nerve")});
  REQUIRE(assumed);
  CHECK(assumed->layer == Layer::subcutaneous);
  CHECK(in_words(*assumed).find("layer is not given") != std::string::npos);
  const auto last = ulnar_transposition({operation(done, "ulnar nerve", Layer::subcutaneous),
                                         operation(done, "ulnar nerve", Layer::submuscular)});
  REQUIRE(last);
  CHECK(last->layer == Layer::submuscular);
}

TEST_CASE("a transposed ulnar nerve runs in front of the epicondyle, under the skin, off the bone",
          "[limb]") {
  const TestCourse ulnar("ulnar");
  const SegmentFrames frames;
  const BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  const double epicondyle_mm = TestCourse::landmark("medial epicondyle", Segment::humerus).x_mm;
  for (const Layer layer : {Layer::subcutaneous, Layer::submuscular}) {
    for (const double u : ulnar.samples(2.0)) {
      const Eigen::Vector3d rest = ulnar.curve().position(u);
      const Eigen::Vector3d moved = transposed_mm(frames, layer, rest);
      const double level_mm = rest.y();
      CAPTURE(u, level_mm);
      if (level_mm > 81.0 || level_mm < -75.0) {
        CHECK(moved == rest);
      } else {
        CHECK(envelope.depth_mm<double>(frames, moved) > 2.0);
        CHECK(envelope.clearance_mm<double>(frames, moved) > 0.0);
      }
      if (std::abs(level_mm) < 20.0) CHECK(moved.x() > epicondyle_mm + 8.0);
      // Levels stay, so the nerve does not fold back.
      CHECK(moved.y() == Approx(rest.y()).margin(4.0));
    }
  }
}

TEST_CASE("a transposed ulnar nerve turns no sharper than its own course does", "[limb]") {
  const TestCourse ulnar("ulnar");
  const SegmentFrames frames;
  const auto us = ulnar.samples(5.0);
  for (const Layer layer : {Layer::subcutaneous, Layer::submuscular}) {
    for (std::size_t i = 1; i + 1 < us.size(); ++i) {
      const auto at = [&](std::size_t k) {
        return transposed_mm(frames, layer, ulnar.curve().position(us[k]));
      };
      if (std::abs(at(i).y()) > 90.0) continue;
      const Eigen::Vector3d before = (at(i) - at(i - 1)).normalized();
      const Eigen::Vector3d after = (at(i + 1) - at(i)).normalized();
      CAPTURE(at(i).transpose());
      CHECK(before.dot(after) > std::cos(0.35));
    }
  }
}

TEST_CASE("the transposition of the left limb is the mirror image", "[limb]") {
  const SegmentFrames left({}, Side::left);
  const Eigen::Vector3d place(-12.0, 30.0, -26.0);
  const Eigen::Vector3d right = transposed_mm(SegmentFrames(), Layer::subcutaneous, place);
  const Eigen::Vector3d other =
      transposed_mm(left, Layer::subcutaneous, Eigen::Vector3d(place.x(), place.y(), -place.z()));
  CHECK((other - Eigen::Vector3d(right.x(), right.y(), -right.z())).norm() < 1e-9);
}

}  // namespace endplate::limb
