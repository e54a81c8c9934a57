// Every nerve course keeps to anatomy. Structures are named as in Terminologia Anatomica. Relations
// without a source of their own are common practice: what every textbook of gross anatomy says.
// Segment frames: x anterior or palmar, z lateral or radial, fraction of the segment; ledger limb.
#include <numbers>

#include "course_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;
using enum Segment;

namespace {

constexpr double kRight_deg = 180.0 / std::numbers::pi;

// Direction from an axis: 0 anterior, 90 lateral, 180 posterior, 270 medial.
double clock_deg(const SegmentPoint& p, double axis_x_mm, double axis_z_mm) {
  const double angle = std::atan2(p.z_mm - axis_z_mm, p.x_mm - axis_x_mm) * kRight_deg;
  return angle < 0.0 ? angle + 360.0 : angle;
}

SegmentPoint landmark(std::string_view name, Segment segment) {
  return TestCourse::landmark(name, segment);
}

// Humeral shaft axis of bone_capsules.csv.
double shaft_z_mm(double fraction) {
  return 3.0 + (fraction - 0.2) * 5.0;
}

}  // namespace

TEST_CASE("nervus ulnaris lies behind epicondylus medialis and medial to olecranon",
          "[models][limb][anatomy]") {
  const TestCourse ulnar("ulnar");
  const SegmentPoint epicondyle = landmark("medial epicondyle", humerus);
  const SegmentPoint olecranon = landmark("olecranon tip", humerus);
  const SegmentPoint nerve = ulnar.at_level(humerus, epicondyle.fraction);
  CHECK(nerve.x_mm < epicondyle.x_mm - 5.0);
  CHECK(nerve.x_mm > olecranon.x_mm);
  CHECK(nerve.z_mm < olecranon.z_mm - 5.0);
  CHECK(nerve.z_mm > epicondyle.z_mm);
}

// It enters the posterior compartment through septum intermusculare brachii mediale.
TEST_CASE("nervus ulnaris passes from in front of septum intermusculare mediale to behind it",
          "[models][limb][anatomy]") {
  const TestCourse ulnar("ulnar");
  const double septum = ulnar.knot("uln.mis");
  CHECK(ulnar.at_knot(humerus, septum - 60.0).x_mm > ulnar.at_knot(humerus, septum).x_mm);
  CHECK(ulnar.at_knot(humerus, septum + 60.0).x_mm < ulnar.at_knot(humerus, septum).x_mm);
  CHECK(ulnar.at_knot(humerus, septum).z_mm < -15.0);
}

TEST_CASE("nervus radialis winds behind the humerus through sulcus nervi radialis",
          "[models][limb][anatomy]") {
  const TestCourse radial("radial");
  // Medial of the shaft under the axilla, behind it in the middle third, lateral at the septum.
  const auto clock_at = [&](double fraction) {
    return clock_deg(radial.at_level(humerus, fraction), 0.0, shaft_z_mm(fraction));
  };
  CHECK(clock_at(0.85) > 235.0);
  CHECK(clock_at(0.85) < 300.0);
  const SegmentPoint entry = radial.at_point("rad.gin", humerus);
  const SegmentPoint exit = radial.at_point("rad.gout", humerus);
  CHECK(entry.fraction > exit.fraction);
  const double behind = radial.knot_at(humerus, 0.5);
  CHECK(std::abs(clock_deg(radial.at_knot(humerus, behind), 0.0, shaft_z_mm(0.5)) - 180.0) < 45.0);
  const SegmentPoint septum = radial.at_point("rad.lis", humerus);
  const double at_septum = clock_deg(septum, 0.0, shaft_z_mm(septum.fraction));
  CHECK(at_septum > 60.0);
  CHECK(at_septum < 120.0);
}

TEST_CASE("nervus radialis turns one way round the humerus", "[models][limb][anatomy]") {
  const TestCourse radial("radial");
  double before = 360.0;
  for (const double u : TestCourse::samples_between(radial.curve().first_knot(),
                                                    radial.knot_at(humerus, 0.30), 2.0)) {
    const SegmentPoint p = radial.at_knot(humerus, u);
    const double clock = clock_deg(p, 0.0, shaft_z_mm(p.fraction));
    INFO("fraction " << p.fraction << ", clock " << clock);
    CHECK(clock < before + 0.5);
    before = clock;
  }
}

TEST_CASE("nervus radialis passes in front of epicondylus lateralis", "[models][limb][anatomy]") {
  const TestCourse radial("radial");
  const SegmentPoint epicondyle = landmark("lateral epicondyle", humerus);
  const SegmentPoint nerve = radial.at_level(humerus, epicondyle.fraction);
  CHECK(nerve.x_mm > epicondyle.x_mm + 8.0);
  CHECK(nerve.z_mm > 5.0);
  CHECK(nerve.z_mm < epicondyle.z_mm);
  CHECK(nerve.z_mm > TestCourse("musculocutaneous").at_level(humerus, 0.0).z_mm);
}

TEST_CASE("nervus axillaris passes foramen axillare laterale and winds round collum chirurgicum",
          "[models][limb][anatomy]") {
  const TestCourse axillary("axillary");
  const SegmentPoint neck = landmark("surgical neck of humerus", humerus);
  const SegmentPoint space = axillary.at_point("axi.qs", humerus);
  CHECK(space.x_mm < -8.0);       // behind the bone
  CHECK(space.z_mm < neck.z_mm);  // between long head of triceps and humerus
  CHECK(std::abs(space.fraction - landmark("quadrangular space", humerus).fraction) * 300.0 < 20.0);
  const double behind = axillary.knot("axi.qs");
  const double end = axillary.curve().last_knot();
  double before = 360.0;
  for (const double u : TestCourse::samples_between(behind, end, 2.0)) {
    const SegmentPoint p = axillary.at_knot(humerus, u);
    INFO("clock at x " << p.x_mm << ", z " << p.z_mm);
    // At the level of the neck: within 20 mm of it, and below the greater tubercle.
    CHECK(std::abs(p.fraction - neck.fraction) * 300.0 < 20.0);
    CHECK(p.fraction < landmark("greater tubercle of humerus", humerus).fraction);
    const double clock = clock_deg(p, neck.x_mm, neck.z_mm);
    CHECK(clock < before + 0.5);
    before = clock;
  }
  CHECK(before < 45.0);  // it ends under the anterior deltoid
}

// Musculus pronator teres has no landmarks of its own heads: the humeral head comes from the medial
// epicondyle, the ulnar head from the coronoid process just below the joint line. Between the heads
// means here: behind the front of the forearm's muscles and in front of the ulna, lateral to the
// medial epicondyle and medial to the insertion on the radius, at the level where the nerve enters.
TEST_CASE("nervus medianus passes between the heads of musculus pronator teres",
          "[models][limb][anatomy]") {
  const TestCourse median("median");
  const SegmentPoint entry = median.at_point("med.pt", forearm);
  CHECK(entry.fraction > landmark("elbow joint line", forearm).fraction);
  CHECK(entry.fraction < 0.5);
  CHECK(entry.x_mm > -8.0 + 6.5);  // in front of the ulna
  CHECK(entry.z_mm > landmark("medial epicondyle", forearm).z_mm);
  CHECK(entry.z_mm < landmark("radius, radial border", forearm).z_mm);
  // Then under the tendinous arch of flexor digitorum superficialis: later and deeper.
  const SegmentPoint arch = median.at_point("med.fds", forearm);
  CHECK(arch.fraction > entry.fraction);
  CHECK(arch.x_mm < entry.x_mm);
}

TEST_CASE("nervus medianus lies in front of the elbow, medial to the tendon of biceps",
          "[models][limb][anatomy]") {
  const TestCourse median("median");
  const SegmentPoint elbow = median.at_level(humerus, 0.0);
  CHECK(elbow.x_mm > 10.0);
  const SegmentPoint tendon = landmark("biceps tendon", forearm);
  const SegmentPoint beside = median.at_level(forearm, tendon.fraction);
  CHECK(beside.z_mm < tendon.z_mm - 2.0);
  CHECK(beside.z_mm > landmark("medial epicondyle", forearm).z_mm + 10.0);
  // Medial side of the arm above it.
  CHECK(median.at_level(humerus, 0.6).z_mm < -15.0);
}

TEST_CASE("ramus profundus nervi radialis winds round the radius through musculus supinator",
          "[models][limb][anatomy]") {
  const TestCourse deep("deep_radial");
  const SegmentPoint arcade = deep.at_point("pin.fr", forearm);
  const SegmentPoint exit = deep.at_point("pin.sx", forearm);
  CHECK(arcade.fraction < exit.fraction);
  const auto radius_z_mm = [](double fraction) {
    return fraction < 0.163 ? 12.0 : 10.0 + (fraction - 0.163) * 28.0;
  };
  CHECK(arcade.x_mm > 0.0);
  CHECK(exit.x_mm < -5.0);
  double before = 0.0;
  for (const double u :
       TestCourse::samples_between(deep.knot("pin.fr"), deep.knot("pin.sx"), 2.0)) {
    const SegmentPoint p = deep.at_knot(forearm, u);
    const double clock = clock_deg(p, 0.0, radius_z_mm(p.fraction));
    INFO("fraction " << p.fraction << ", clock " << clock);
    CHECK(clock > before - 0.5);
    CHECK(clock < 200.0);  // by the lateral side, not between the bones
    before = clock;
  }
  CHECK(clock_deg(arcade, 0.0, radius_z_mm(arcade.fraction)) < 100.0);
  CHECK(clock_deg(exit, 0.0, radius_z_mm(exit.fraction)) > 110.0);
}

TEST_CASE("nervus interosseus posterior ends on the back of the wrist, ulnar to Lister's tubercle",
          "[models][limb][anatomy]") {
  const TestCourse deep("deep_radial");
  const SegmentPoint tubercle = landmark("Lister tubercle", forearm);
  const SegmentPoint nerve = deep.at_level(forearm, tubercle.fraction);
  CHECK(nerve.x_mm < -8.0);
  CHECK(nerve.z_mm < tubercle.z_mm);
  CHECK(nerve.z_mm > landmark("ulnar head, point not stated", forearm).z_mm);
}

TEST_CASE("nervus interosseus anterior runs in front of membrana interossea between the bones",
          "[models][limb][anatomy]") {
  const TestCourse anterior("ain");
  const TestCourse median("median");
  for (const double fraction : {0.40, 0.50, 0.60, 0.70, 0.80}) {
    const SegmentPoint p = anterior.at_level(forearm, fraction);
    INFO("fraction " << fraction);
    // The membrane joins the facing borders of radius and ulna (bone_capsules.csv: z 11 and -7 or
    // more apart), which lie 0 to 8 mm behind the axis.
    CHECK(p.z_mm < 17.0 - 6.5);
    CHECK(p.z_mm > -13.0 + 6.5);
    CHECK(p.x_mm > -4.0);
    CHECK(p.x_mm < median.at_level(forearm, fraction).x_mm - 3.0);  // deep to the median nerve
    // In front of the posterior interosseous nerve, from which the membrane divides it.
    CHECK(p.x_mm > TestCourse("deep_radial").at_level(forearm, fraction).x_mm + 8.0);
  }
}

TEST_CASE("nervus medianus passes canalis carpi dorsal to retinaculum flexorum",
          "[models][limb][anatomy]") {
  const TestCourse median("median");
  const SegmentPoint proximal = landmark("transverse carpal ligament, proximal edge", hand);
  const SegmentPoint distal = landmark("transverse carpal ligament, distal edge", hand);
  const SegmentPoint scaphoid = landmark("scaphoid tubercle", hand);
  const SegmentPoint hook = landmark("hook of hamate", hand);
  for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    const SegmentPoint p =
        median.at_level(hand, std::lerp(proximal.fraction, distal.fraction, share));
    INFO("share of the ligament " << share);
    CHECK(p.x_mm < std::lerp(proximal.x_mm, distal.x_mm, share));
    CHECK(p.x_mm > 0.0);  // palmar to the carpal bones
    CHECK(p.z_mm < scaphoid.z_mm - 2.0);
    CHECK(p.z_mm > hook.z_mm + 2.0);
  }
}

TEST_CASE("ramus palmaris nervi mediani stays superficial to retinaculum flexorum",
          "[models][limb][anatomy]") {
  const TestCourse palmar("pcbm");
  const SegmentPoint proximal = landmark("transverse carpal ligament, proximal edge", hand);
  // It leaves the trunk proximal to the distal crease, and the ligament is dorsal to it.
  CHECK(TestCourse("median").at_point("pcbm.o", forearm).fraction < 1.0);
  for (const double fraction : {proximal.fraction, 0.05, 0.10}) {
    const SegmentPoint p = palmar.at_level(hand, fraction);
    INFO("fraction " << fraction);
    CHECK(p.x_mm > proximal.x_mm + 1.0);
    CHECK(p.x_mm > TestCourse("median").at_level(hand, fraction).x_mm + 2.0);
  }
}

TEST_CASE("ramus recurrens nervi mediani turns radially beyond retinaculum flexorum",
          "[models][limb][anatomy]") {
  const TestCourse recurrent("recurrent");
  const SegmentPoint origin = recurrent.at_knot(hand, recurrent.curve().first_knot());
  const SegmentPoint end = recurrent.at_knot(hand, recurrent.curve().last_knot());
  CHECK(origin.fraction > landmark("transverse carpal ligament, distal edge", hand).fraction);
  CHECK(end.z_mm > origin.z_mm + 8.0);  // to the thenar muscles
}

TEST_CASE("nervus ulnaris passes canalis ulnaris between os pisiforme and hamulus",
          "[models][limb][anatomy]") {
  const TestCourse ulnar("ulnar");
  const SegmentPoint pisiform = landmark("pisiform", hand);
  const SegmentPoint hook = landmark("hook of hamate", hand);
  const SegmentPoint nerve = ulnar.at_level(hand, pisiform.fraction);
  CHECK(nerve.z_mm > pisiform.z_mm + 1.0);
  CHECK(nerve.z_mm < hook.z_mm - 2.0);
  // Palmar to the transverse carpal ligament's floor, dorsal to the skin crease.
  CHECK(nerve.x_mm > 8.0);
}

TEST_CASE("ramus profundus nervi ulnaris turns round hamulus ossis hamati into the deep palm",
          "[models][limb][anatomy]") {
  const TestCourse ulnar("ulnar");
  const SegmentPoint hook = landmark("hook of hamate, distal aspect", hand);
  const SegmentPoint fork = ulnar.at_point("uln.bif", hand);
  const SegmentPoint beside = ulnar.at_level_of("hook of hamate", hand);
  CHECK(beside.z_mm < hook.z_mm);  // ulnar to it
  // Where it passes from ulnar to radial of the hook it lies distal and deep to its tip.
  CrossingSurface ray;
  ray.normal = TestCourse::frames().lateral(hand);
  ray.through = TestCourse::frames().to_limb(hand, hook);
  const auto crossed =
      find_crossing(ulnar.curve(), ray, ulnar.knot("uln.bif"), ulnar.curve().last_knot());
  REQUIRE(crossed);
  const SegmentPoint below = ulnar.at_knot(hand, *crossed);
  CHECK(below.fraction > hook.fraction);
  CHECK(below.x_mm < hook.x_mm - 3.0);
  // Then dorsal to where it forked, across the palm to the first interosseous space.
  const SegmentPoint last = ulnar.at_point("fdi.o", hand);
  CHECK(last.z_mm > landmark("third metacarpal, midline", hand).z_mm);
  CHECK(last.x_mm < fork.x_mm - 4.0);
  CHECK(last.x_mm < TestCourse("median").at_knot(hand, TestCourse("median").knot("rmb.o")).x_mm);
}

TEST_CASE("ramus superficialis nervi ulnaris stays palmar on the ulnar side",
          "[models][limb][anatomy]") {
  const TestCourse superficial("ulnar_superficial");
  for (const double u : superficial.samples(2.0)) {
    const SegmentPoint p = superficial.at_knot(hand, u);
    CHECK(p.x_mm > 8.0);
    CHECK(p.z_mm < landmark("hook of hamate", hand).z_mm);
  }
}

TEST_CASE("ramus superficialis nervi radialis comes from under brachioradialis to the radial back",
          "[models][limb][anatomy]") {
  const TestCourse radial("radial");
  const SegmentPoint middle = radial.at_level(forearm, 0.4);
  CHECK(middle.x_mm > 0.0);
  CHECK(middle.z_mm > 15.0);
  const SegmentPoint out = radial.at_point("sb.out", forearm);
  CHECK(out.x_mm < middle.x_mm);
  const SegmentPoint tubercle = landmark("Lister tubercle", forearm);
  const SegmentPoint wrist = radial.at_level(forearm, tubercle.fraction);
  CHECK(wrist.x_mm < 0.0);
  CHECK(wrist.z_mm > tubercle.z_mm + 5.0);
}

TEST_CASE("ramus dorsalis nervi ulnaris winds round the ulna to the back of the hand",
          "[models][limb][anatomy]") {
  const TestCourse dorsal("dorsal_ulnar");
  const SegmentPoint head = landmark("ulnar head, point not stated", forearm);
  CHECK(dorsal.at_knot(forearm, 0.0).x_mm > 0.0);
  const SegmentPoint medial = dorsal.at_level(forearm, head.fraction - 0.03);
  CHECK(medial.z_mm < head.z_mm - 4.0);  // medial to the bone, not through it
  const SegmentPoint back = dorsal.at_level(hand, 0.1);
  CHECK(back.x_mm < -4.0);
  CHECK(back.z_mm < 0.0);
}

TEST_CASE("ramus palmaris nervi ulnaris stays palmar to the ulnar nerve",
          "[models][limb][anatomy]") {
  const TestCourse palmar("pcbu");
  const SegmentPoint crease = palmar.at_level(hand, 0.0);
  CHECK(crease.x_mm > TestCourse("ulnar").at_level(hand, 0.0).x_mm + 2.0);
  CHECK(crease.x_mm > 12.0);
  CHECK(crease.z_mm < landmark("scaphoid tubercle", hand).z_mm);
}

TEST_CASE("nervus musculocutaneus goes on lateral to the tendon of biceps as a skin nerve",
          "[models][limb][anatomy]") {
  const TestCourse nerve("musculocutaneous");
  const SegmentPoint muscle = nerve.at_point("mcn.pc", humerus);
  CHECK(muscle.x_mm > 10.0);  // through coracobrachialis, in front of the humerus
  CHECK(muscle.z_mm < 0.0);
  const SegmentPoint tendon = landmark("biceps tendon", forearm);
  const SegmentPoint elbow = nerve.at_level(forearm, tendon.fraction);
  CHECK(elbow.z_mm > tendon.z_mm);
  CHECK(elbow.x_mm > tendon.x_mm);
  CHECK(nerve.at_level(forearm, 0.8).z_mm > 10.0);  // the radial side of the forearm
  double before = -100.0;                           // from medial to lateral all through the arm
  for (const double fraction : {0.85, 0.7, 0.55, 0.4, 0.25}) {
    const double z_mm = nerve.at_level(humerus, fraction).z_mm;
    CHECK(z_mm > before);
    before = z_mm;
  }
}

TEST_CASE("nervus cutaneus antebrachii posterior runs on the lateral side of the arm",
          "[models][limb][anatomy]") {
  const TestCourse posterior("pabc");
  for (const double fraction : {0.25, 0.15, 0.05}) {
    CHECK(posterior.at_level(humerus, fraction).z_mm > 25.0);
  }
}
