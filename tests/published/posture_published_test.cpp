// Published distances in bent postures against the model in the same posture, read as `endplate
// distance` reads them. Figures of the first part are rows of landmark_distances.csv (their ids
// beside them), of the second rows of nerve_paths.csv; docs/nerve-motion.md shows the table. The
// share of the forearm's turn that the supinator gives the nerve was set with the shift at the
// arcade of Frohse in sight; nothing else here was.
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <optional>

#include "../models/limb/limb_fixture.hpp"
#include "models/limb/distance.hpp"

namespace endplate::limb {
namespace {

// Full pronation from full supination, and the mid position: common practice, 75 to 80 degrees to
// either side.
constexpr double kPronated = 150.0;
constexpr double kMiddle = 75.0;

struct Reading {
  std::string nerve;
  std::string point;
  std::string landmark;
};

// Signed, distal, lateral and anterior positive.
std::optional<double> model_mm(const Reading& what, const std::map<std::string, double>& pose_deg) {
  casefile::Limb limb;
  limb.pose_deg = pose_deg;
  DistanceQuery query;
  query.nerve = what.nerve;
  query.point = what.point;
  const auto answer = distances(own_tables(), limb, query);
  if (!answer) return std::nullopt;
  for (const Distance& d : answer->distances) {
    if (d.point != what.point || d.landmark != what.landmark || d.basis == Basis::studies) continue;
    const auto& value = d.along_limb_mm ? d.along_limb_mm : d.across_limb_mm;
    if (!value) continue;
    const bool backward = d.direction == "proximal" || d.direction == "medial";
    return backward ? -value->mean : value->mean;
  }
  return std::nullopt;
}

struct Change {
  const char* rows;
  Reading what;
  double from_deg, to_deg;
  double from_mm, to_mm;  // published
  double sd_mm;           // between limbs, the larger of the two; 0 where not printed
};

}  // namespace

TEST_CASE("Pronation carries the posterior interosseous nerve as published", "[published][pose]") {
  const std::string nerve = "deep branch of radial nerve";
  const std::string radius = "crosses: radius";
  const Reading from_epicondyle{nerve, radius, "lateral epicondyle"};
  const Reading from_joint{nerve, radius, "radiocapitellar joint line"};
  const Reading front_head{nerve, "crosses: radius, coronal view",
                           "radial head, articular surface"};
  const Reading front_tuberosity{nerve, "crosses: radius, coronal view", "radial tuberosity"};
  const Reading side_head{nerve, "crosses: radius, sagittal view",
                          "radial head, articular surface"};
  const Reading side_tuberosity{nerve, "crosses: radius, sagittal view", "radial tuberosity"};
  const Reading arcade{nerve, "enters: arcade of Frohse", "biceps tendon"};
  // Kamineni's fractions of a transepicondylar distance of 60 mm (63 with the skin in AN rows, 60
  // in the model's landmarks).
  const std::vector<Change> changes{
      {"pin-radius-cross-sup/pron-diliberti2000", from_joint, 0, kPronated, 33.4, 52.0, 7.8},
      {"pin-le-sup/neutral-schimizzi2009", from_epicondyle, 0, kMiddle, 57.6, 61.7, 10.9},
      {"pin-le-sup/pron-schimizzi2009", from_epicondyle, 0, kPronated, 57.6, 64.7, 11.5},
      {"pin-ted-sup/neutral-kamineni2017", from_epicondyle, 0, kMiddle, 43.2, 50.4, 9.2},
      {"pin-ted-sup/pron-kamineni2017", from_epicondyle, 0, kPronated, 43.2, 60.0, 9.2},
      {"pin-radhead-coronal-sup/pron-hackl2015", front_head, 0, kPronated, 16.9, 33.4, 5.9},
      {"pin-tuberosity-coronal-sup/pron-hackl2015", front_tuberosity, 0, kPronated, -9.6, 4.9, 5.2},
      {"pin-radhead-sagittal-sup/pron-hackl2015", side_head, 0, kPronated, 41.1, 61.8, 3.6},
      {"pin-tuberosity-sagittal-sup/pron-hackl2015", side_tuberosity, 0, kPronated, 11.0, 29.2,
       6.2},
      {"pin-frohse-biceps-sup/pron-njca2022", arcade, 0, kPronated, 18.98, 12.72, 0.0},
      {"Calfee 2011 (read in nerve_paths.csv)", from_joint, 0, kMiddle, 32.0, 42.0, 0.0},
      {"Calfee 2011 (read in nerve_paths.csv)", from_joint, 0, kPronated, 32.0, 56.0, 0.0},
  };
  int spread_known = 0;
  int change_within = 0;
  for (const Change& c : changes) {
    const auto turned = [&](double deg) {
      return model_mm(c.what, {{"forearm_pronation_deg", deg}});
    };
    const auto from = turned(c.from_deg);
    const auto to = turned(c.to_deg);
    REQUIRE(from.has_value());
    REQUIRE(to.has_value());
    const double published = c.to_mm - c.from_mm;
    INFO(c.rows << ": model " << *from << " to " << *to << ", published " << c.from_mm << " to "
                << c.to_mm);
    CHECK((*to - *from) * published > 0.0);
    if (c.sd_mm == 0.0) continue;
    ++spread_known;
    change_within += std::abs((*to - *from) - published) <= 1.645 * c.sd_mm ? 1 : 0;
  }
  CHECK(spread_known == 9);
  CHECK(change_within >= 8);
}

TEST_CASE("Abduction brings the axillary nerve nearer to the acromion as published",
          "[published][pose]") {
  const Reading lateral{"anterior branch of axillary nerve", "crosses: deep surface of deltoid",
                        "acromion, lateral edge"};
  const Reading corner{"anterior branch of axillary nerve", "crosses: deep surface of deltoid",
                       "acromion, anterolateral corner"};
  const std::vector<Change> changes{
      {"axillary-acromion-deshmukh-neutral/abd90", lateral, 0, 90, 56.2, 42.8, 6.0},
      {"axillary-acromion-samart-abd45/abd90", lateral, 45, 90, 57.1, 52.9, 0.0},
      {"Chuaychoosakoon 2021 (read in nerve_paths.csv)", corner, 0, 30, 52.76, 49.48, 4.77},
      {"Chuaychoosakoon 2021 (read in nerve_paths.csv)", corner, 0, 60, 52.76, 46.0, 4.75},
      {"Chuaychoosakoon 2021 (read in nerve_paths.csv)", corner, 0, 90, 52.76, 42.88, 4.64},
  };
  for (const Change& c : changes) {
    const auto raised = [&](double deg) {
      return model_mm(c.what, {{"shoulder_abduction_deg", deg}});
    };
    const auto from = raised(c.from_deg);
    const auto to = raised(c.to_deg);
    REQUIRE(from.has_value());
    REQUIRE(to.has_value());
    const double published = c.to_mm - c.from_mm;
    INFO(c.rows << ": model " << *from << " to " << *to << ", published " << c.from_mm << " to "
                << c.to_mm);
    CHECK(*to < *from);
    if (c.sd_mm > 0.0) CHECK(std::abs((*to - *from) - published) <= 1.645 * c.sd_mm);
  }
}

}  // namespace endplate::limb
