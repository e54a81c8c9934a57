#include "models/limb/limb_size.hpp"

#include <Eigen/Eigenvalues>
#include <cmath>

#include "limb_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;
using casefile::Sex;

namespace {

constexpr const char* kArm = "acromion to lateral epicondyle";
constexpr const char* kForearm = "interepicondylar line to bistyloid line";
constexpr const char* kHand = "distal wrist crease to middle fingertip";

bool says(const LimbSize& size, const std::string& words) {
  return std::ranges::any_of(size.assumptions(), [&](const std::string& assumption) {
    return assumption.find(words) != std::string::npos;
  });
}

Error refusal(const casefile::Limb& limb) {
  const auto size = LimbSize::from(own_tables(), limb);
  REQUIRE_FALSE(size.has_value());
  return size.error();
}

}  // namespace

TEST_CASE("with nothing given the limb is the ledger limb with the spread of adults",
          "[models][limb]") {
  const LimbSize size = size_of({});
  CHECK(size.mean_mm(kArm) == Approx(300.0).margin(0.01));
  CHECK(size.mean_mm(kForearm) == Approx(245.0).margin(0.01));
  CHECK(size.mean_mm(kHand) == Approx(180.0).margin(0.01));
  const SegmentScale scale = size.mean_scale();
  CHECK(scale.arm == Approx(1.0).margin(1e-4));
  CHECK(scale.forearm == Approx(1.0).margin(1e-4));
  CHECK(scale.hand == Approx(1.0).margin(1e-4));
  CHECK(scale.breadth == Approx(1.0).margin(1e-9));
  // Both sexes together spread more than either.
  CHECK(size.sd_mm(kArm) > size_of(adult(Sex::male)).sd_mm(kArm) * 300.0 / 321.3);
  CHECK(size.chance_female() == Approx(0.5));
  CHECK(says(size, "arm 300, forearm 245, hand 180"));
}

TEST_CASE("stature conditions a length as the survey's regression does", "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_mm = 1850.0;
  const LimbSize size = size_of(limb);
  CHECK(size.mean_mm("radiale-stylion length") == Approx(-14.4 + 0.1608 * 1850.0).margin(0.3));
  CHECK(size.sd_mm("radiale-stylion length") == Approx(10.8).epsilon(1e-6));
}

TEST_CASE("a measured forearm moves and narrows the hand by the predicted amount",
          "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_mm = 1756.2;
  const LimbSize before = size_of(limb);
  const double longer_mm = 20.0;
  limb.measured_mm["forearm length"] = before.mean_mm(kForearm) + longer_mm;
  const LimbSize after = size_of(limb);

  // Given stature the two are tied by r = 0.282, with spreads of 10.8 (forearm) and 7.4 mm (hand).
  const double r = 0.282;
  const double tape_mm = longer_mm * 236.0 / 245.0;
  CHECK(after.mean_mm(kHand) - before.mean_mm(kHand) ==
        Approx(r * 7.4 / 10.8 * tape_mm).margin(0.01));
  CHECK(before.sd_mm(kHand) == Approx(7.4).margin(1e-6));
  CHECK(after.sd_mm(kHand) == Approx(7.4 * std::sqrt(1.0 - r * r)).margin(1e-3));
  CHECK(after.summary(kForearm).sd == 0.0);
  CHECK(after.mean_mm(kForearm) == Approx(before.mean_mm(kForearm) + longer_mm));
}

TEST_CASE("the limb of unknown sex is the mixture of both, weighed by what was given",
          "[models][limb]") {
  casefile::Limb limb;
  limb.stature_mm = 1756.2;
  const LimbSize tall = size_of(limb);
  // Normal densities at 1756.2: man 0 SD of 68.6; woman (1756.2 - 1628.5) / 64.2 SD.
  const double z = (1756.2 - 1628.5) / 64.2;
  const double woman = std::exp(-0.5 * z * z) / 64.2;
  const double man = 1.0 / 68.6;
  CHECK(tall.chance_female() == Approx(woman / (woman + man)).epsilon(1e-6));

  const double mean = tall.mean_mm(kHand);
  casefile::Limb known = limb;
  known.sex = Sex::female;
  const double as_woman = size_of(known).mean_mm(kHand);
  known.sex = Sex::male;
  const double as_man = size_of(known).mean_mm(kHand);
  const double w = tall.chance_female();
  CHECK(mean == Approx(w * as_woman + (1.0 - w) * as_man));
  const Summary summary = tall.summary(kHand);
  CHECK(summary.p05 < summary.p50);
  CHECK(summary.p50 < summary.p95);
  CHECK(tall.moments().covariance(3, 3) == Approx(std::pow(tall.sd_mm(kHand), 2)));
}

TEST_CASE("sampled limbs have the moments of the distribution", "[models][limb]") {
  casefile::Limb limb;
  limb.age_years = 40.0;
  limb.measured_mm["forearm length"] = 250.0;
  const LimbSize size = size_of(limb);
  const auto sampled = size.sample(4000, 7);
  const Gaussian moments = size.moments();
  Eigen::VectorXd mean = Eigen::VectorXd::Zero(moments.mean.size());
  for (const SizedLimb& one : sampled) mean += one.measures_mm / 4000.0;
  Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(mean.size(), mean.size());
  for (const SizedLimb& one : sampled) {
    const Eigen::VectorXd apart = one.measures_mm - mean;
    covariance += apart * apart.transpose() / 3999.0;
  }
  for (Eigen::Index i = 0; i < mean.size(); ++i) {
    INFO(size.measures()[static_cast<std::size_t>(i)]);
    const double sd = std::sqrt(std::max(0.0, moments.covariance(i, i)));
    CHECK(std::abs(mean[i] - moments.mean[i]) <= 4.0 * sd / std::sqrt(4000.0) + 1e-6);
    CHECK(std::sqrt(covariance(i, i)) == Approx(sd).epsilon(0.06).margin(1e-6));
  }
  for (const SizedLimb& one : sampled) CHECK(one.scale.forearm == Approx(250.0 / 245.0));
}

TEST_CASE("a sampled limb depends on the seed and its number alone", "[models][limb]") {
  const LimbSize size = size_of({});
  const auto few = size.sample(5, 3);
  const auto many = size.sample(50, 3);
  const auto other = size.sample(5, 4);
  for (std::size_t i = 0; i < few.size(); ++i) {
    CHECK(few[i].measures_mm == many[i].measures_mm);
    CHECK(few[i].measures_mm != other[i].measures_mm);
    CHECK(few[i].scale.arm == size.scale_of(few[i].measures_mm).arm);
  }
}

TEST_CASE("no covariance is negative, whatever was measured", "[models][limb]") {
  casefile::Limb limb = adult(Sex::female);
  limb.stature_mm = 1700.0;
  limb.measured_mm = {
      {"arm length", 305.0}, {"hand length", 186.0}, {"wrist circumference", 158.0}};
  const Gaussian moments = size_of(limb).moments();
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(moments.covariance);
  CHECK(solver.eigenvalues().minCoeff() > -1e-8);
}

TEST_CASE("children grow with age, between the rows and beyond them", "[models][limb]") {
  for (const Sex sex : {Sex::female, Sex::male}) {
    double before_mm = 0.0;
    for (const double age :
         {0.083, 0.4, 1.0, 1.6, 2.2, 3.0, 4.5, 6.1, 8.0, 9.7, 11.0, 13.0, 15.0}) {
      casefile::Limb limb;
      limb.sex = sex;
      limb.age_years = age;
      const LimbSize size = size_of(limb);
      const double whole_mm = size.mean_mm("upper limb length");
      INFO(age);
      CHECK(whole_mm > before_mm);
      CHECK(size.sd_mm(kForearm) / size.mean_mm(kForearm) < 0.12);
      CHECK(size.sd_mm(kForearm) / size.mean_mm(kForearm) > 0.03);
      before_mm = whole_mm;
    }
  }
  casefile::Limb newborn;
  newborn.age_years = 0.01;
  CHECK(says(size_of(newborn), "WARNING: 0.01 years is below the youngest group"));
  casefile::Limb old = adult(Sex::female);
  old.age_years = 80.0;
  CHECK(says(size_of(old), "WARNING: 80 years is above"));
}

TEST_CASE("the size changes little on an eighteenth birthday", "[models][limb]") {
  for (const Sex sex : {Sex::female, Sex::male}) {
    casefile::Limb limb;
    limb.sex = sex;
    limb.age_years = 17.99;
    const LimbSize before = size_of(limb);
    limb.age_years = 18.0;
    const LimbSize after = size_of(limb);
    for (const char* name : {kArm, kForearm, kHand}) {
      INFO(name);
      CHECK(before.mean_mm(name) == Approx(after.mean_mm(name)).epsilon(0.05));
    }
  }
}

TEST_CASE("an unknown measure is refused with the nearest names", "[models][limb]") {
  casefile::Limb limb;
  limb.measured_mm["forarm length"] = 250.0;
  const Error error = refusal(limb);
  CHECK(error.fault == Fault::input);
  CHECK(error.problems.front().place == "/limb/measured/forarm length");
  CHECK(error.problems.front().mend.find("forearm length") != std::string::npos);
}

TEST_CASE("a length in another unit is wrong input, a giant's is outside the model",
          "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_mm = 178.0;
  CHECK(refusal(limb).fault == Fault::input);
  CHECK(refusal(limb).problems.front().place == "/limb/stature_mm");
  CHECK(refusal(limb).problems.front().mend.find("mm") != std::string::npos);
  limb.stature_mm = 2300.0;
  CHECK(refusal(limb).fault == Fault::outside_model);
  limb.stature_mm.reset();
  limb.measured_mm["hand length"] = std::nan("");
  CHECK(refusal(limb).fault == Fault::input);
  limb.measured_mm.clear();
  limb.age_years = -1.0;
  CHECK(refusal(limb).problems.front().place == "/limb/age_years");
}

TEST_CASE("lengths that contradict each other are refused, those that repeat are not",
          "[models][limb]") {
  casefile::Limb limb = adult(Sex::female);
  limb.measured_mm = {{"acromion-radiale length", 310.0}, {"radiale-stylion length", 240.0}};
  limb.measured_mm["acromion-stylion length"] = 550.0;
  CHECK(size_of(limb).mean_mm("acromion-stylion length") == Approx(550.0));
  limb.measured_mm["acromion-stylion length"] = 590.0;
  const Error error = refusal(limb);
  CHECK(error.fault == Fault::input);
  CHECK(error.problems.front().place == "/limb/measured");
}

TEST_CASE("lengths that hardly occur together raise a warning", "[models][limb]") {
  casefile::Limb limb = adult(Sex::female);
  limb.stature_mm = 1500.0;
  limb.measured_mm["forearm length"] = 300.0;
  CHECK(says(size_of(limb), "fits together in less than one limb in a thousand"));
  limb.measured_mm["forearm length"] = 232.0;
  CHECK_FALSE(says(size_of(limb), "less than one limb in a thousand"));
}

TEST_CASE("what is not given is said", "[models][limb]") {
  casefile::Limb limb;
  limb.stature_mm = 1650.0;
  const LimbSize size = size_of(limb);
  CHECK(says(size, "Sex is not given"));
  CHECK(says(size, "an adult is assumed"));
  limb.sex = Sex::female;
  limb.age_years = 34.0;
  CHECK_FALSE(says(size_of(limb), "Sex is not given"));
  CHECK_FALSE(says(size_of(limb), "an adult is assumed"));
}
