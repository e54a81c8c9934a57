#include "models/casefile/read.hpp"

#include <catch2/catch.hpp>

#include "models/casefile/remarks.hpp"
#include "models/casefile/words.hpp"

using namespace endplate::casefile;
using endplate::Side;

namespace {

const endplate::evidence::DataPackage& package() {
  static const auto read =
      endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets").value();
  return read;
}

endplate::Expected<Case> read(std::string_view text) {
  static const auto terms = endplate::anatomy::Terms::from(package()).value();
  static const auto tree = endplate::anatomy::NerveTree::from(package()).value();
  static const ReadRules rules{pose_limits(package()), &tree, std::nullopt};
  return read_case(text, terms, rules);
}

constexpr Date day(int year, unsigned month, unsigned of_month) {
  return Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(of_month)};
}

}  // namespace

TEST_CASE("a case with nothing but its version knows nothing", "[casefile]") {
  const auto read_back = read(R"({"endplate_case": 1})");
  REQUIRE(read_back);
  CHECK_FALSE(read_back->limb.side_given);
  CHECK_FALSE(read_back->limb.age_years);
  CHECK_FALSE(read_back->limb.dominant_side);
  CHECK_FALSE(read_back->examination);
  CHECK(read_back->injuries.empty());
  CHECK(read_back->assumptions.empty());
}

TEST_CASE("every key of the format arrives in the case under its standard name", "[casefile]") {
  const auto read_back = read(R"({
    "endplate_case": 1, "label": "made up",
    "limb": {"side": "left", "dominant_side": "right", "sex": "female", "age_years": 34,
             "stature_mm": 1650, "measured": {"acromion to lateral epicondyle": 312},
             "pose": {"elbow_flexion_deg": 90, "wrist_extension_deg": -30}},
    "variants": ["Martin-Gruber communication"],
    "injuries": [{"nerve": "Radial nerve", "mechanism": "fracture or dislocation",
                  "at": {"landmark": "lateral epicondyle", "offset_mm": 120, "toward": "proximal"},
                  "grade": "Sunderland 3", "nerve_seen": false, "complete": true,
                  "date": "2026-06-01"}],
    "red_flags": ["lost pulse"],
    "examination": {"date": "2026-07-01",
      "muscles": [{"muscle": "extensor carpi radialis longus", "mrc": 0},
                  {"muscle": "FCU", "mrc": "4-"}, {"muscle": "deltoid", "mrc": "M4+"}],
      "movements": [{"movement": "shoulder abduction", "active_deg": 140, "passive_deg": 170}],
      "sensation": [{"area": "first web", "state": "absent", "s_grade": "S0", "two_point_mm": 15}],
      "signs": [{"sign": "Horner", "state": "absent"}],
      "tinel": [{"nerve": "radial", "at": {"landmark": "lateral epicondyle", "offset_mm": 90,
                                           "toward": "proximal"}}]},
    "electrodiagnosis": [{"date": "2026-07-02", "muscle": "biceps", "fibrillation": true,
                          "units": "few"},
                         {"nerve": "SBRN", "snap": "absent"}],
    "observations": [{"date": "2026-09-01", "muscles": [{"muscle": "BR", "mrc": 1}]}],
    "operations": [{"date": "2026-08-01", "state": "done", "nerve_action_potential": "absent",
                    "gap_after_resection_mm": 30,
                    "done": [{"procedure": "graft", "nerve": "radial nerve", "at": {}, "cables": 3,
                              "donor": "sural nerve"}]}],
    "unavailable": ["palmaris longus", "sural nerve"], "priorities": ["elbow flexion"],
    "incisions": [{"label": "posterior arm", "points": [
        {"landmark": "olecranon", "offset_mm": 250, "toward": "proximal"}]}]})");
  if (!read_back) {
    for (const auto& problem : read_back.error().problems)
      UNSCOPED_INFO(problem.place + problem.what);
  }
  REQUIRE(read_back);
  const Case& c = *read_back;
  CHECK(c.label == "made up");
  CHECK(c.limb.side == Side::left);
  CHECK(c.limb.side_given);
  CHECK(c.limb.sex == Sex::female);
  CHECK(c.limb.stature_mm == 1650.0);
  CHECK(c.limb.measured_mm.size() == 1);
  CHECK(c.limb.pose_deg.at("wrist_extension_deg") == -30.0);
  CHECK(c.variants.size() == 1);
  REQUIRE(c.injuries.size() == 1);
  const Injury& injury = c.injuries[0];
  CHECK(injury.nerve == "radial nerve");
  CHECK(std::get<AtLandmark>(*injury.at).offset_mm == 120.0);
  CHECK(std::get<AtLandmark>(*injury.at).toward == Toward::proximal);
  CHECK(injury.mechanism == Mechanism::fracture_or_dislocation);
  CHECK(injury.grade == Grade::sunderland_3);
  CHECK(injury.nerve_seen == false);
  CHECK(injury.complete == true);
  CHECK(injury.date == day(2026, 6, 1));
  REQUIRE(c.examination);
  REQUIRE(c.examination->muscles.size() == 5);  // deltoid has three parts
  CHECK(c.examination->muscles[0].muscle == "ECRL");
  CHECK(c.examination->muscles[1].grade.value == Approx(3.667).margin(0.001));
  CHECK(c.examination->muscles[1].grade.text == "4-");
  CHECK(c.examination->muscles[4].muscle == "DEL-S");
  CHECK(c.examination->muscles[4].grade.text == "4+");
  CHECK(c.examination->movements[0].passive_deg == 170.0);
  CHECK(c.examination->sensation[0].area == "first dorsal web space");
  CHECK(c.examination->sensation[0].state == SensoryState::absent);
  CHECK_FALSE(c.examination->signs[0].present);
  CHECK(c.examination->tinel[0].nerve == "radial nerve");
  REQUIRE(c.electrodiagnosis.size() == 3);  // biceps has two heads
  CHECK(c.electrodiagnosis[1].muscle == "BIC-L");
  CHECK(c.electrodiagnosis[2].nerve == "superficial branch of radial nerve");
  CHECK(c.observations[0].muscles[0].muscle == "BR");
  CHECK(c.operations[0].state == OperationState::done);
  CHECK_FALSE(c.operations[0].done[0].at);
  CHECK(c.operations[0].done[0].cables == 3);
  CHECK(c.unavailable == std::vector<std::string>{"PL", "sural nerve"});
  CHECK(c.priorities == std::vector<std::string>{"elbow flexion"});
  CHECK(c.incisions[0].points[0].at.landmark == "olecranon tip");
}

TEST_CASE("what is known of the limb's size arrives in the case", "[casefile]") {
  const auto read_back = read(R"({
    "endplate_case": 1,
    "limb": {"sex": "male", "stature_percentile": 3, "measured": {"arm length": 300},
             "measured_other_side": {"arm length": 320, "hand length": 190},
             "ultrasound": [{"nerve": "Radial nerve", "point": "bifurcation", "error_mm": 2.5,
                             "at": {"landmark": "lateral epicondyle", "offset_mm": 8,
                                    "toward": "proximal"}},
                            {"nerve": "ulnar nerve", "point": "arcade of Struthers",
                             "at": {"landmark": "medial epicondyle"}}]}})");
  REQUIRE(read_back);
  const Limb& limb = read_back->limb;
  CHECK(limb.stature_percentile == 3.0);
  CHECK_FALSE(limb.stature_mm.has_value());
  CHECK(limb.measured_mm.size() == 1);
  CHECK(limb.other_side_mm.size() == 2);
  CHECK(limb.measured_mm.begin()->first == "acromion to lateral epicondyle");
  CHECK(limb.other_side_mm.contains("acromion to lateral epicondyle"));
  CHECK(limb.other_side_as.at("acromion to lateral epicondyle") == "arm length");
  REQUIRE(limb.ultrasound.size() == 2);
  CHECK(limb.ultrasound[0].nerve == "radial nerve");
  CHECK(limb.ultrasound[0].point == "bifurcation");
  CHECK(limb.ultrasound[0].at.landmark == "lateral epicondyle");
  CHECK(limb.ultrasound[0].at.offset_mm == 8.0);
  CHECK(limb.ultrasound[0].at.toward == Toward::proximal);
  CHECK(limb.ultrasound[0].error_mm == 2.5);
  CHECK(limb.ultrasound[1].at.offset_mm == 0.0);
  CHECK_FALSE(limb.ultrasound[1].error_mm.has_value());
}

TEST_CASE("a plexus injury may be placed without naming a nerve", "[casefile]") {
  const auto read_back = read(R"({"endplate_case": 1, "injuries": [
      {"at": {"root": "C5", "level": "preganglionic"}}, {"at": {"trunk": "upper"}},
      {"nerve": "brachial plexus", "at": {"cord": "posterior"}},
      {"nerve": "posterior cord", "at": {"landmark": "coracoid"}},
      {"at": {"branch": "PIN", "from_origin_mm": 20}}]})");
  REQUIRE(read_back);
  CHECK(read_back->injuries[0].nerve.empty());
  CHECK(std::get<AtRoot>(*read_back->injuries[0].at).root == "C5");
  CHECK(std::get<AtRoot>(*read_back->injuries[0].at).level == RootLevel::preganglionic);
  CHECK(std::get<AtTrunk>(*read_back->injuries[1].at).trunk == "superior trunk");
  CHECK(read_back->injuries[2].nerve.empty());
  CHECK(std::get<AtCord>(*read_back->injuries[2].at).cord == "posterior cord");
  CHECK(read_back->injuries[3].nerve == "posterior cord");
  CHECK(read_back->injuries[4].nerve == "posterior interosseous nerve");
  CHECK(read_back->assumptions.empty());
}

TEST_CASE("a choice that the file leaves open is listed, not made in silence", "[casefile]") {
  const auto read_back = read(R"({"endplate_case": 1,
      "injuries": [{"at": {"root": "C5"}}, {"nerve": "ulnar nrve"}],
      "operations": [{"date": "2026-08-01"}]})");
  REQUIRE_FALSE(read_back);  // "nrve" is too short a word to be read as a slip
  const auto slips = read(R"({"endplate_case": 1,
      "injuries": [{"at": {"root": "C5"}}, {"nerve": "musculocutanous nerve"}],
      "operations": [{"date": "2026-08-01"}]})");
  REQUIRE(slips);
  REQUIRE(slips->assumptions.size() == 3);
  CHECK_THAT(slips->assumptions[0], Catch::Contains("taken as postganglionic"));
  CHECK_THAT(slips->assumptions[1], Catch::Contains("was read as musculocutaneous nerve"));
  CHECK_THAT(slips->assumptions[2], Catch::Contains("taken as planned"));
}

TEST_CASE("MRC grades keep their half steps", "[casefile]") {
  CHECK(mrc_grade("0")->value == 0.0);
  CHECK(mrc_grade("M3")->value == 3.0);
  CHECK(mrc_grade("3+")->value == Approx(10.0 / 3.0));
  CHECK(mrc_grade("4-")->value == Approx(11.0 / 3.0));
  CHECK(mrc_grade("4+")->value == Approx(13.0 / 3.0));
  CHECK(mrc_grade("5-")->value == Approx(14.0 / 3.0));
  for (const std::string_view wrong :
       {"", "M", "6", "0-", "5+", "4--", "4.5", "-4", "4 +", "M44"}) {
    CAPTURE(wrong);
    CHECK_FALSE(mrc_grade(wrong));
  }
}

TEST_CASE("dates are days of the calendar", "[casefile]") {
  CHECK(date_from("2024-02-29") == day(2024, 2, 29));
  CHECK(to_string(day(2026, 3, 7)) == "2026-03-07");
  for (const std::string_view wrong : {"", "2025-02-29", "2026-2-3", "2026-04-31", "1899-12-31",
                                       "2200-01-01", "+026-01-01", "2026/01/01", "2026-01-01 "}) {
    CAPTURE(wrong);
    CHECK_FALSE(date_from(wrong));
  }
}

TEST_CASE("pose limits are the largest published ranges", "[casefile]") {
  const PoseLimits limits = pose_limits(package());
  CHECK(limits.at("elbow_flexion_deg").low_deg == 0.0);
  CHECK(limits.at("elbow_flexion_deg").high_deg == 158.0);  // JT_125
  CHECK(limits.at("elbow_flexion_deg").rows == "JT_125");
  CHECK(limits.at("shoulder_abduction_deg").high_deg == 188.0);  // JT_108
  // From full supination over the largest arc of one study: 93 (JT_139) and 96 (JT_132).
  CHECK(limits.at("forearm_pronation_deg").low_deg == 0.0);
  CHECK(limits.at("forearm_pronation_deg").high_deg == 189.0);
  // Not the 65 and 51 degrees of JT_203 and JT_204.
  CHECK(limits.at("wrist_ulnar_deviation_deg").low_deg == -25.0);   // JT_161
  CHECK(limits.at("wrist_ulnar_deviation_deg").high_deg == 41.0);   // JT_169
  CHECK(limits.at("ring_mcp_flexion_deg").low_deg == -45.0);        // JT_173
  CHECK(limits.at("ring_dip_flexion_deg").high_deg == 80.0);        // JT_175
  CHECK(limits.at("thumb_mcp_flexion_deg").low_deg == -58.0);       // JT_198
  CHECK(limits.at("thumb_mcp_flexion_deg").high_deg == 90.0);       // JT_197
  CHECK(limits.at("thumb_palmar_abduction_deg").high_deg == 45.0);  // JT_180
}

TEST_CASE("every limit of a pose names the rows it comes from", "[casefile]") {
  for (const auto& [key, limit] : pose_limits(package())) {
    CAPTURE(key);
    CHECK(limit.high_deg > 0.0);
    CHECK(limit.rows.starts_with("JT_"));
    CHECK_FALSE(limit.meaning.empty());
  }
}

TEST_CASE("abduction and flexion are limited together", "[casefile]") {
  const auto pose = [](int abduction, int flexion) {
    return read(R"({"endplate_case": 1, "limb": {"pose": {"shoulder_abduction_deg": )" +
                std::to_string(abduction) + R"(, "shoulder_flexion_deg": )" +
                std::to_string(flexion) + "}}}");
  };
  CHECK(pose(130, 130).has_value());
  CHECK_FALSE(pose(140, 140).has_value());
}

TEST_CASE("a transposition keeps its layer", "[casefile]") {
  const auto read_back = read(R"({"endplate_case": 1, "operations": [{"state": "done", "done": [
      {"procedure": "transposition", "nerve": "ulnar nerve", "layer": "submuscular"}]}]})");
  REQUIRE(read_back);
  CHECK(read_back->operations[0].done[0].layer == Layer::submuscular);
}

TEST_CASE("what is not given but would help is named with its place", "[casefile]") {
  const auto read_back = read(R"({"endplate_case": 1, "injuries": [{"nerve": "ulnar nerve"}]})");
  REQUIRE(read_back);
  std::vector<std::string> places;
  for (const Remark& remark : worth_giving(*read_back)) places.push_back(remark.place);
  using Catch::Matchers::VectorContains;
  CHECK_THAT(places, VectorContains(std::string("/injuries/0/at")));
  CHECK_THAT(places, VectorContains(std::string("/injuries/0/mechanism")));
  CHECK_THAT(places, VectorContains(std::string("/limb/age_years")));
  CHECK_THAT(places, VectorContains(std::string("/examination/muscles")));
}
