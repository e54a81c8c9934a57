// What a user can get wrong about a scan, and the whole chain from file to answer.
#include "models/scan/scan_answer.hpp"

#include <catch2/catch.hpp>
#include <fstream>

#include "../../support/damaged_meshes.hpp"
#include "../limb/limb_fixture.hpp"
#include "geometry/mesh_file.hpp"
#include "synthetic_scan.hpp"

namespace endplate::scan {
namespace {

const StandardLimb& standard() {
  static const StandardLimb right = StandardLimb::from(limb::own_tables(), Side::right).value();
  return right;
}

// Of a man's right arm with the elbow at a right angle, made once.
const SyntheticScan& bent_arm() {
  static const SyntheticScan scan =
      make_scan(standard(), limb::size_of(limb::adult(casefile::Sex::male)), 1, 77, ScanMaking{});
  return scan;
}

casefile::Limb man(Side side = Side::right) {
  casefile::Limb limb = limb::adult(casefile::Sex::male);
  limb.side = side;
  limb.side_given = true;
  limb.pose_deg = bent_arm().pose_deg;
  return limb;
}

std::string csv(const std::vector<PickedLandmark>& picked) {
  std::ostringstream text;
  text.precision(12);
  text << "landmark,x,y,z\n";
  for (const PickedLandmark& pick : picked) {
    text << '"' << standard().landmarks().all()[pick.landmark].name << '"';
    for (const double c : pick.position) text << ',' << c;
    text << '\n';
  }
  return text.str();
}

class Chain {
 public:
  Chain() {
    REQUIRE(geometry::write_mesh_file(folder_.at("arm.ply"), bent_arm().mesh).has_value());
    request_ = {folder_.at("arm.ply"), bent_arm().unit,
                folder_.write("picks.csv", csv(bent_arm().picked))};
  }
  const test::TestFolder& folder() const { return folder_; }
  ScanRequest& request() { return request_; }
  void pick(const std::vector<PickedLandmark>& picked) { text(csv(picked)); }
  void text(const std::string& bytes) { request_.landmarks = folder_.write("other.csv", bytes); }
  Problem refused(const casefile::Limb& limb) const {
    const auto answer = answer_scan(limb::own_tables(), limb, request_);
    REQUIRE_FALSE(answer.has_value());
    CHECK(answer.error().fault == Fault::input);
    const Problem& problem = answer.error().problems.front();
    CHECK_FALSE(problem.place.empty());
    CHECK_FALSE(problem.mend.empty());
    UNSCOPED_INFO(problem.place << ": " << problem.what << ". " << problem.mend);
    return problem;
  }

 private:
  test::TestFolder folder_;
  ScanRequest request_;
};

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a scan from its file to the nerves, with residuals and what is added", "[scan]") {
  Chain chain;
  const auto answer = answer_scan(limb::own_tables(), man(), chain.request());
  REQUIRE(answer.has_value());
  CHECK(answer->side == Side::right);
  CHECK(answer->landmarks.size() == kPickedNames.size());
  double before = 0.0;
  double after = 0.0;
  double left_out = 0.0;
  for (const LandmarkResidual& landmark : answer->landmarks) {
    INFO(landmark.name);
    CHECK(landmark.from_surface_mm < 0.01);  // the picks were set on the surface
    REQUIRE(landmark.left_out_mm.has_value());
    before += landmark.before_mm;
    after += landmark.after_mm;
    left_out += *landmark.left_out_mm;
  }
  CHECK(after < before);
  CHECK(after < left_out);
  REQUIRE(answer->nerves.size() == bent_arm().nerve_points_mm.size());
  std::size_t within = 0;
  for (std::size_t i = 0; i < answer->nerves.size(); ++i) {
    const NervePlace& place = answer->nerves[i];
    INFO(place.id);
    CHECK_FALSE(place.nerve.empty());
    CHECK(place.added_sd_mm > 0.3);
    CHECK(place.added_sd_mm < 12.0);
    within += (place.position_mm - bent_arm().nerve_points_mm[i]).norm() < 5.0 ? 1 : 0;
  }
  CHECK(within > answer->nerves.size() * 9 / 10);
  CHECK(answer->matched_share > 0.9);
  CHECK(answer->surface_rms_mm < 1.0);
  // Of any distances, 95 in 100 lie within twice their root mean square or a little more.
  CHECK(answer->surface_p95_mm > answer->surface_rms_mm);
  CHECK(answer->surface_p95_mm < 3.0 * answer->surface_rms_mm);
  CHECK(answer->pose_deg.at("elbow_flexion_deg") ==
        Approx(bent_arm().pose_deg.at("elbow_flexion_deg")).margin(3.0));
}

TEST_CASE("a scan measures arm, forearm and hand, unless the case knows them", "[scan]") {
  Chain chain;
  const auto answer = answer_scan(limb::own_tables(), man(), chain.request());
  REQUIRE(answer.has_value());
  REQUIRE(answer->lengths.size() == 3);
  const Sizes truth = sizes_of(bent_arm().truth.scale);
  const double ledger_mm[]{limb::kLedgerArm_mm, limb::kLedgerForearm_mm, limb::kLedgerHand_mm};
  for (std::size_t i = 0; i < 3; ++i) {
    const FittedLength& length = answer->lengths[i];
    INFO(length.measure << ' ' << length.length_mm << " +- " << length.sd_mm << ", expected "
                        << length.expected_mm << " +- " << length.expected_sd_mm);
    CHECK(length.measured);
    CHECK_FALSE(length.given);
    CHECK(std::abs(length.length_mm - ledger_mm[i] * truth[static_cast<Eigen::Index>(i)]) <
          3.0 * length.sd_mm);
    CHECK(length.sd_mm < 10.0);
  }
  const auto entered = with_lengths(limb::own_tables(), man(), answer->lengths);
  REQUIRE(entered.has_value());
  CHECK(entered->measured_mm.size() == 3);

  // The case gives the arm by another measure, in which the length of the arm is known.
  casefile::Limb given = man();
  given.measured_mm["acromion-radiale length"] = 330.0;
  given.measured_as["acromion-radiale length"] = "acromion-radiale length";
  const auto known = answer_scan(limb::own_tables(), given, chain.request());
  REQUIRE(known.has_value());
  CHECK(known->lengths[0].given);
  CHECK_FALSE(known->lengths[0].measured);
  CHECK(known->lengths[1].measured);

  // A sum of arm and forearm that does not go with what the scan shows.
  casefile::Limb sum = man();
  sum.measured_mm["acromion-stylion length"] = 640.0;
  sum.measured_as["acromion-stylion length"] = "acromion-stylion length";
  const auto torn = answer_scan(limb::own_tables(), sum, chain.request());
  REQUIRE(torn.has_value());
  REQUIRE(std::ranges::none_of(torn->lengths, &FittedLength::measured));
  REQUIRE_FALSE(torn->warnings.empty());
  CHECK(says(torn->warnings.back(), "do not go with those of the case"));
}

TEST_CASE("a surface shows its size before its unit is confirmed", "[scan]") {
  Chain chain;
  const auto look = look_at_scan(chain.request().surface);
  REQUIRE(look.has_value());
  CHECK(look->triangles == bent_arm().mesh.triangles.size());
  CHECK(look->likely == bent_arm().unit);
  const auto none = look_at_scan(chain.folder().at("none.ply"));
  REQUIRE_FALSE(none.has_value());
  CHECK(says(none.error().problems.front().place, "none.ply"));
}

TEST_CASE("a unit that is not confirmed or cannot be is refused", "[scan]") {
  Chain chain;
  const std::string word(to_string(bent_arm().unit));
  chain.request().unit.reset();
  const Problem open = chain.refused(man());
  CHECK(open.place == "--scan-unit");
  CHECK(says(open.what, "by its size it is " + word));
  CHECK(says(open.mend, "Add --scan-unit " + word));
  for (const auto unit : geometry::kLengthUnits) {
    if (unit == bent_arm().unit) continue;
    chain.request().unit = unit;
    const Problem wrong = chain.refused(man());
    CHECK(wrong.place == "--scan-unit");
    CHECK(says(wrong.mend, "Give " + word));
  }
}

TEST_CASE("the landmarks of a right arm said to be left are told", "[scan]") {
  Chain chain;
  const Problem problem = chain.refused(man(Side::left));
  CHECK(problem.place == "--scan-landmarks");
  CHECK(says(problem.what, "the landmarks are those of a right limb"));
  casefile::Limb unsaid = man();
  unsaid.side_given = false;
  CHECK(chain.refused(unsaid).place == "/limb/side");
}

TEST_CASE("landmarks that determine no limb are refused", "[scan]") {
  Chain chain;
  auto picked = bent_arm().picked;
  picked.resize(3);
  chain.pick(picked);
  CHECK(chain.refused(man()).what == "3 landmarks are picked, 4 are needed");

  // Five places along the row of the epicondyle.
  picked = bent_arm().picked;
  picked.resize(5);
  const double per_mm = 1.0 / geometry::mm_per(bent_arm().unit);
  for (std::size_t i = 0; i < picked.size(); ++i) {
    picked[i].position =
        picked[0].position + static_cast<double>(i) * per_mm * Eigen::Vector3d(0.01, 0.02, 0.0);
  }
  chain.pick(picked);
  const Problem line = chain.refused(man());
  CHECK((says(line.what, "on one line") || says(line.what, "in one plane")));

  picked = bent_arm().picked;
  picked[2].position += per_mm * Eigen::Vector3d(0.0, 200.0, 0.0);
  chain.pick(picked);
  const Problem far = chain.refused(man());
  CHECK(far.place == "--scan-landmarks, acromion, posterior edge");
  CHECK(says(far.what, "mm from the surface"));
}

TEST_CASE("a file of landmarks is read strictly", "[scan]") {
  Chain chain;
  const auto refused = [&](const std::string& text) {
    chain.text(text);
    return chain.refused(man());
  };
  CHECK(says(refused("").place, "other.csv"));
  CHECK(says(refused("name,x,y,z\n").mend, "landmark,x,y,z"));
  CHECK(says(refused("landmark,x,y,z\nlateral epicondlye,1,2,3\n").mend, "lateral epicondyle"));
  CHECK(says(refused("landmark,x,y,z\npisiform,1,2,3\nPisiform,1,2,3\n").what, "picked twice"));
  CHECK(says(refused("landmark,x,y,z\npisiform,1,2,nan\n").what, "no number"));
  CHECK(says(refused("landmark,x,y,z\npisiform,1,\"2,5\",3\n").place, "row 2 column y"));
  CHECK(says(refused("landmark,x,y,z\npisiform,1,2\n").place, "row 2"));
  chain.request().landmarks = chain.folder().at("none.csv");
  CHECK(chain.refused(man()).what == "there is no such file");
  chain.request().landmarks = chain.folder().at(".");
  CHECK(chain.refused(man()).what == "this is no file");
}

TEST_CASE("a landmark under another's name is told and widens what is added", "[scan]") {
  Chain chain;
  auto picked = bent_arm().picked;
  // The styloids of radius and ulna.
  std::swap(picked[7].position, picked[8].position);
  chain.pick(picked);
  const auto answer = answer_scan(limb::own_tables(), man(), chain.request());
  REQUIRE(answer.has_value());
  CHECK(answer->widened_by > 1.2);
  CHECK(std::ranges::any_of(answer->warnings, [](const std::string& warning) {
    return says(warning, "styloid: the other landmarks");
  }));
}

TEST_CASE("a scan of forearm and hand alone says where it ends", "[scan]") {
  Chain chain;
  // Cut above the elbow, which is bent at a right angle.
  const SyntheticScan& whole = bent_arm();
  const double mm = geometry::mm_per(whole.unit);
  const PlacedLimb placed = standard().place(whole.truth);
  const Eigen::Vector3d elbow = whole.truth.humerus_to_scan * Eigen::Vector3d::Zero();
  const Eigen::Vector3d up =
      whole.truth.humerus_to_scan.linear() * placed.frames.proximal(limb::Segment::humerus);
  geometry::TriangleMesh part{whole.mesh.vertices_mm, {}};
  for (const auto& t : whole.mesh.triangles) {
    const Eigen::Vector3d off = mm * whole.mesh.vertices_mm[t[0]] - elbow;
    // The raised hand lies as high, but far off.
    if (up.dot(off) < 70.0 || (off - up.dot(off) * up).norm() > 150.0) {
      part.triangles.push_back(t);
    }
  }
  REQUIRE(geometry::write_mesh_file(chain.folder().at("part.stl"), part).has_value());
  chain.request().surface = chain.folder().at("part.stl");
  std::vector<PickedLandmark> picked;
  for (const PickedLandmark& pick : whole.picked) {
    const Eigen::Vector3d off = mm * pick.position - elbow;
    if (up.dot(off) < 50.0 || (off - up.dot(off) * up).norm() > 150.0) picked.push_back(pick);
  }
  chain.pick(picked);
  const auto answer = answer_scan(limb::own_tables(), man(), chain.request());
  if (!answer) FAIL(answer.error().problems.front().what);
  CHECK(std::ranges::any_of(answer->warnings, [](const std::string& warning) {
    return says(warning, "of the limb's skin has a place on the scan");
  }));
  // The arm was not there to be measured; where the skin was cut its taper says nothing.
  CHECK_FALSE(answer->lengths[0].measured);
  CHECK(answer->lengths[1].measured);
  CHECK(answer->lengths[2].measured);
  double arm = 0.0;
  double forearm = 1e9;
  for (const NervePlace& place : answer->nerves) {
    if (place.segment == limb::Segment::humerus) arm = std::max(arm, place.added_sd_mm);
    if (place.segment == limb::Segment::forearm) forearm = std::min(forearm, place.added_sd_mm);
  }
  CHECK(arm > 4.0 * forearm);
}

TEST_CASE("damaged surfaces go through the whole chain: a message or an answer", "[scan]") {
  const SyntheticScan& whole = bent_arm();
  using geometry::TriangleMesh;
  const double per_mm = 1.0 / geometry::mm_per(whole.unit);
  std::vector<std::pair<std::string, TriangleMesh>> meshes;
  const auto add = [&](std::string name, TriangleMesh mesh) {
    meshes.emplace_back(std::move(name), std::move(mesh));
  };
  const auto in_unit = [&](TriangleMesh mesh, double times) {
    for (auto& p : mesh.vertices_mm) p *= per_mm * times;
    return mesh;
  };
  const auto changed = [&](const auto& change) {
    TriangleMesh mesh = whole.mesh;
    change(mesh);
    return mesh;
  };
  // The arm itself, damaged.
  add("inside out", test::inside_out(whole.mesh));
  add("one triangle gone", test::without(whole.mesh, 100));
  add("many holes", changed([](TriangleMesh& m) {
        for (std::size_t i = m.triangles.size() - 1; i > 0; i -= std::min<std::size_t>(i, 400)) {
          m.triangles.erase(m.triangles.begin() + static_cast<std::ptrdiff_t>(i));
        }
      }));
  add("every third triangle turned", changed([](TriangleMesh& m) {
        for (std::size_t i = 0; i < m.triangles.size(); i += 3) {
          std::swap(m.triangles[i][0], m.triangles[i][1]);
        }
      }));
  add("doubled triangles", changed([](TriangleMesh& m) {
        m.triangles.insert(m.triangles.end(), m.triangles.begin(), m.triangles.begin() + 50);
      }));
  add("a soup of triangles", changed([](TriangleMesh& m) {
        TriangleMesh soup;
        for (const auto& t : m.triangles) {
          const auto first = static_cast<std::uint32_t>(soup.vertices_mm.size());
          for (const auto v : t) soup.vertices_mm.push_back(m.vertices_mm[v]);
          soup.triangles.push_back({first, first + 1, first + 2});
        }
        m = soup;
      }));
  add("a fin", changed([](TriangleMesh& m) {
        const auto& t = m.triangles[500];
        m.vertices_mm.push_back(1.001 * m.vertices_mm[t[0]]);
        m.triangles.push_back({t[0], t[1], static_cast<std::uint32_t>(m.vertices_mm.size() - 1)});
      }));
  add("specks", changed([&](TriangleMesh& m) {
        test::add(m, in_unit(test::cube(1.0), 1.0), m.vertices_mm[0]);
      }));
  add("two arms", changed([&](TriangleMesh& m) {
        test::add(m, whole.mesh, per_mm * Eigen::Vector3d(300.0, 0.0, 0.0));
      }));
  add("half of the arm",
      changed([](TriangleMesh& m) { m.triangles.resize(m.triangles.size() / 2); }));
  add("only specks left", changed([](TriangleMesh& m) {
        std::vector<std::array<std::uint32_t, 3>> some;
        for (std::size_t i = 0; i < m.triangles.size(); i += 7) some.push_back(m.triangles[i]);
        m.triangles = some;
      }));
  add("flattened", changed([](TriangleMesh& m) {
        for (auto& p : m.vertices_mm) p.z() = 0.0;
      }));
  add("crumpled", changed([&](TriangleMesh& m) {
        for (std::size_t i = 0; i < m.vertices_mm.size(); ++i) {
          m.vertices_mm[i] += per_mm * Eigen::Vector3d(i % 2 == 0 ? 20.0 : -20.0, 0.0, 0.0);
        }
      }));
  add("a spike", changed([&](TriangleMesh& m) {
        m.vertices_mm[50] += per_mm * Eigen::Vector3d(0.0, 0.0, 400.0);
      }));
  add("one point", changed([](TriangleMesh& m) {
        for (auto& p : m.vertices_mm) p = m.vertices_mm[0];
      }));
  add("far away", changed([&](TriangleMesh& m) {
        for (auto& p : m.vertices_mm) p.x() += 1e5 * per_mm;
      }));
  // No arms.
  add("a cube", in_unit(test::cube(200.0), 1.0));
  add("a small cube", in_unit(test::cube(1.0), 1.0));
  add("a huge cube", in_unit(test::cube(1e5), 1.0));
  add("bow tie", in_unit(test::bow_tie(), 20.0));
  add("three on an edge", in_unit(test::three_on_an_edge(), 20.0));
  add("long fin", in_unit(test::long_fin(), 1.0));
  add("sliver", in_unit(test::with_sliver(), 20.0));
  add("self-crossing", in_unit(test::self_crossing(), 1.0));
  add("a Moebius band", in_unit(test::moebius_band(), 3.0));
  add("an open tube", in_unit(test::tube(40.0, 400.0, 24, 10, false), 1.0));
  add("one triangle", {{{0, 0, 0}, {per_mm * 300.0, 0, 0}, {0, per_mm * 200.0, 0}}, {{0, 1, 2}}});
  REQUIRE(meshes.size() >= 25);

  Chain chain;
  // Six are enough here, and each is left out in turn.
  std::vector<PickedLandmark> picked;
  for (const std::size_t i : {0UL, 4UL, 5UL, 6UL, 8UL, 11UL}) picked.push_back(whole.picked[i]);
  chain.pick(picked);
  std::size_t answered = 0;
  std::size_t refused = 0;
  for (const auto& [name, mesh] : meshes) {
    INFO(name);
    chain.request().surface = chain.folder().at("damaged.ply");
    REQUIRE(geometry::write_mesh_file(chain.request().surface, mesh).has_value());
    const auto answer = answer_scan(limb::own_tables(), man(), chain.request());
    if (answer) {
      ++answered;
      CHECK_FALSE((answer->notes.empty() && answer->warnings.empty()));
      for (const NervePlace& place : answer->nerves) CHECK(place.position_mm.allFinite());
    } else {
      ++refused;
      for (const Problem& problem : answer.error().problems) {
        CHECK_FALSE(problem.what.empty());
        CHECK_FALSE(problem.mend.empty());
      }
    }
  }
  CHECK(answered >= 6);
  CHECK(refused >= 12);
}

}  // namespace endplate::scan
