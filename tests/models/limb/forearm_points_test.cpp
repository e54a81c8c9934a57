// What a measured forearm does to the points of the nerves in it.
#include <cmath>

#include "limb_fixture.hpp"
#include "models/limb/case_limb.hpp"

using namespace endplate;
using namespace endplate::limb;

namespace {

const anatomy::NerveTree& own_tree() {
  static const auto tree = anatomy::NerveTree::from(own_tables());
  REQUIRE(tree.has_value());
  return *tree;
}

CaseLimb limb_of(const casefile::Limb& limb) {
  auto built = CaseLimb::from(own_tables(), own_tree(), limb);
  REQUIRE(built.has_value());
  return *std::move(built);
}

double leaves(const anatomy::NerveMetrics& metrics, anatomy::NodeIndex branch) {
  return metrics.leaves_parent_at_mm[branch].front();
}

double variance_of(const CaseLimb& limb, anatomy::NodeIndex branch) {
  double sum = 0.0;
  double squares = 0.0;
  const auto sampled = limb.sample(4000, 21);
  for (const auto& metrics : sampled) {
    sum += leaves(metrics, branch);
    squares += leaves(metrics, branch) * leaves(metrics, branch);
  }
  const double n = static_cast<double>(sampled.size());
  return (squares - sum * sum / n) / (n - 1.0);
}

}  // namespace

TEST_CASE(
    "a measured forearm lowers the spread of the nerves' forearm points by the amount predicted",
    "[limb]") {
  casefile::Limb man = adult(casefile::Sex::male);
  man.stature_mm = 1756.2;
  const CaseLimb before = limb_of(man);
  casefile::Limb measured = man;
  measured.measured_mm["forearm length"] =
      before.size().mean_mm("interepicondylar line to bistyloid line");
  const CaseLimb after = limb_of(measured);

  // How much of the way to a point lies in arm and forearm: by what it gains when one of them is
  // 1 % longer and everything else stays.
  casefile::Limb fixed = measured;
  fixed.measured_mm["arm length"] = before.size().mean_mm("acromion to lateral epicondyle");
  fixed.measured_mm["hand length"] =
      before.size().mean_mm("distal wrist crease to middle fingertip");
  const CaseLimb same = limb_of(fixed);
  const auto longer = [&](const char* measure) {
    casefile::Limb other = fixed;
    other.measured_mm[measure] *= 1.01;
    return limb_of(other);
  };
  const CaseLimb longer_arm = longer("arm length");
  const CaseLimb longer_forearm = longer("forearm length");

  // Given stature the survey leaves 10.6 mm of the arm's 335.3 and 10.8 mm of the forearm's 268.0,
  // tied by r = 0.353.
  const double arm_variation = 10.6 / (-20.9 + 0.2028 * 1756.2);
  const double forearm_variation = 10.8 / (-14.4 + 0.1608 * 1756.2);
  constexpr double kTie = 0.353;
  for (const char* name :
       {"dorsal branch of ulnar nerve", "palmar cutaneous branch of median nerve"}) {
    const anatomy::NodeIndex branch = own_tree().find(name).value();
    const double in_arm =
        100.0 * (leaves(longer_arm.metrics(), branch) - leaves(same.metrics(), branch));
    const double in_forearm =
        100.0 * (leaves(longer_forearm.metrics(), branch) - leaves(same.metrics(), branch));
    REQUIRE(in_arm > 200.0);
    REQUIRE(in_forearm > 120.0);
    const double arm = in_arm * arm_variation;
    const double forearm = in_forearm * forearm_variation;
    // The forearm's own part goes, its tie with the arm goes, and the arm keeps 1 - r^2.
    const double predicted =
        forearm * forearm + 2.0 * kTie * arm * forearm + kTie * kTie * arm * arm;
    INFO(name << ": arm " << in_arm << ", forearm " << in_forearm << " mm");
    CHECK(variance_of(before, branch) - variance_of(after, branch) ==
          Approx(predicted).epsilon(0.15));
  }
}
