// endplate limb --scan: a scan of our own limb from files to the page and the document.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <sstream>

#include "../models/limb/limb_fixture.hpp"
#include "../models/scan/synthetic_scan.hpp"
#include "../support/meshes.hpp"
#include "../support/run_program.hpp"
#include "geometry/mesh_file.hpp"
#include "models/scan/scan_surface.hpp"

namespace endplate {
namespace {

class ScannedCase {
 public:
  ScannedCase() {
    const auto limb = scan::StandardLimb::from(limb::own_tables(), Side::left).value();
    const auto made = scan::make_scan(limb, limb::size_of({}), 3, 31, {});
    REQUIRE(geometry::write_mesh_file(folder_.at("arm.stl"), made.mesh).has_value());
    std::ostringstream picks;
    picks << "landmark,x,y,z\n";
    picks.precision(10);
    for (const std::size_t i : {0UL, 4UL, 5UL, 6UL, 7UL, 11UL}) {
      const auto& pick = made.picked[i];
      picks << '"' << limb.landmarks().all()[pick.landmark].name << '"';
      for (const double c : pick.position) picks << ',' << c;
      picks << '\n';
    }
    folder_.write("picks.csv", picks.str());
    nlohmann::json pose = made.pose_deg;
    folder_.write(
        "case.json",
        nlohmann::json{{"endplate_case", 1}, {"limb", {{"side", "left"}, {"pose", pose}}}}.dump());
    unit_ = scan::to_string(made.unit);
  }
  test::ProgramRun run(const std::vector<std::string>& more) const {
    std::vector<std::string> arguments{"limb",          path("case.json"),  "--scan",
                                       path("arm.stl"), "--scan-landmarks", path("picks.csv")};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return test::run(arguments);
  }
  std::string path(const char* name) const { return folder_.at(name).string(); }
  const std::string& unit() const { return unit_; }

 private:
  test::TestFolder folder_;
  std::string unit_;
};

}  // namespace

TEST_CASE("limb shows the fit to a scan before the caution", "[cli][limb][scan]") {
  const ScannedCase scanned;
  const auto page = scanned.run({"--scan-unit", scanned.unit()});
  CHECK(page.err.empty());
  REQUIRE(page.status == 0);
  CHECK(page.out.starts_with("LEFT LIMB"));
  const auto scan = page.out.find("SCAN of the LEFT limb");
  REQUIRE(scan != std::string::npos);
  CHECK(scan < page.out.find("Check it against the patient."));
  for (const char* part : {"if left out mm", "added +- mm", "olecranon tip", "Pose as fitted",
                           "known from", "95 in 100 of its places within"}) {
    INFO(part);
    CHECK(page.out.find(part, scan) != std::string::npos);
  }
  std::istringstream lines(page.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 100);

  const auto document = nlohmann::json::parse(
      scanned.run({"--scan-unit", scanned.unit(), "--json", "--samples", "100"}).out);
  const auto& object = document.at("scan");
  CHECK(object["unit"] == scanned.unit());
  CHECK(object["side"] == "left");
  CHECK(object["landmarks"].size() == 6);
  for (const auto& landmark : object["landmarks"]) {
    for (const char* key : {"landmark", "position_mm", "pick_from_surface_mm", "residual_before_mm",
                            "residual_after_mm", "residual_left_out_mm"}) {
      CHECK(landmark.contains(key));
    }
  }
  CHECK(object["nerve_points"].size() > 100);
  for (const auto& point : object["nerve_points"]) {
    CHECK(point["added_sd_mm"].get<double>() > 0.0);
    CHECK(point["position_mm"].size() == 3);
  }
  CHECK(object["fitted_pose"].contains("elbow_flexion_deg"));
  CHECK(object["surface_p95_mm"].get<double>() > 0.0);
  REQUIRE(object["lengths"].size() == 3);
  for (const auto& length : object["lengths"]) {
    CHECK(length["length_mm"].get<double>() > 100.0);
    CHECK(length["sd_mm"].get<double>() > 0.0);
    for (const char* key : {"measure", "expected_mm", "expected_sd_mm", "given", "measured"}) {
      CHECK(length.contains(key));
    }
  }
}

TEST_CASE("limb asks for what a scan needs", "[cli][limb][scan]") {
  const ScannedCase scanned;
  const auto open = scanned.run({});
  CHECK(open.status == 2);
  CHECK(open.out.empty());
  CHECK(
      open.err.starts_with("error: --scan-unit: the unit of the scan is not confirmed; by its "
                           "size it is " +
                           scanned.unit()));
  const auto bare =
      test::run({"limb", scanned.path("case.json"), "--scan", scanned.path("arm.stl")});
  CHECK(bare.status == 2);
  CHECK(bare.err.starts_with("error: --scan-landmarks: no landmarks are picked on the scan"));
  CHECK(test::run({"limb", "--scan-unit", "mm"}).status == 2);
  CHECK(scanned.run({"--scan-unit", "inch"}).status == 2);
  const auto no_side = test::run({"limb", "--scan", scanned.path("arm.stl"), "--scan-unit",
                                  scanned.unit(), "--scan-landmarks", scanned.path("picks.csv")});
  CHECK(no_side.status == 2);
  CHECK(no_side.err.starts_with("error: /limb/side: "));
}

}  // namespace endplate
