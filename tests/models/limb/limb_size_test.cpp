#include "models/limb/limb_size.hpp"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <algorithm>
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

bool warns(const LimbSize& size, const std::string& words) {
  return std::ranges::any_of(size.warnings(), [&](const std::string& warning) {
    return warning.find(words) != std::string::npos;
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
  CHECK(warns(size_of(newborn), "0.01 years is below the youngest limbs measured"));
  casefile::Limb infant;
  infant.age_years = 2.0;
  CHECK(warns(size_of(infant), "No girths were found below 3 years"));
  CHECK_FALSE(warns(size_of(infant), "youngest limbs"));
  casefile::Limb old = adult(Sex::female);
  old.age_years = 80.0;
  CHECK(warns(size_of(old), "80 years is above"));
}

TEST_CASE("a newborn is smaller than an infant of a month, of either sex or none",
          "[models][limb]") {
  for (const std::optional<Sex> sex : {std::optional<Sex>(), {Sex::female}, {Sex::male}}) {
    casefile::Limb limb;
    limb.sex = sex;
    limb.age_years = 0.0;
    const LimbSize newborn = size_of(limb);
    limb.age_years = 1.0 / 12.0;
    const LimbSize later = size_of(limb);
    for (const char* name : {kArm, kForearm, kHand}) {
      CHECK(newborn.mean_mm(name) < later.mean_mm(name));
      CHECK(newborn.mean_mm(name) > 0.8 * later.mean_mm(name));
      CHECK(newborn.sd_mm(name) > 0.0);
    }
    // Length at birth, boys 499 and girls 491 mm (AN_477, AN_496).
    CHECK(newborn.moments().mean[0] == Approx(!sex ? 495.0 : *sex == Sex::male ? 499.0 : 491.0));
  }
}

TEST_CASE("nothing jumps on an eighteenth birthday", "[models][limb]") {
  for (const std::optional<Sex> sex : {std::optional<Sex>(), {Sex::female}, {Sex::male}}) {
    casefile::Limb limb;
    limb.sex = sex;
    limb.age_years = 18.0 - 1e-6;
    const Gaussian before = size_of(limb).moments();
    limb.age_years = 18.0;
    const Gaussian after = size_of(limb).moments();
    for (Eigen::Index i = 0; i < after.mean.size(); ++i) {
      INFO(i);
      CHECK(before.mean[i] == Approx(after.mean[i]).epsilon(1e-5));
    }
    CHECK((before.covariance - after.covariance).norm() < 1e-4 * after.covariance.norm());
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

TEST_CASE(
    "a length in another unit is refused, a giant's and a dwarf's are answered with a warning",
    "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  // Centimetres, metres, inches, a tenth of a millimetre.
  for (const double stature : {178.0, 1.78, 70.0, 17800.0, -1780.0}) {
    limb.stature_mm = stature;
    CHECK(refusal(limb).fault == Fault::input);
    CHECK(refusal(limb).problems.front().place == "/limb/stature_mm");
    CHECK(refusal(limb).problems.front().mend.find("mm") != std::string::npos);
  }
  limb.stature_mm.reset();
  for (const double forearm : {26.0, 0.26, 10.2, -260.0, 2600.0}) {
    limb.measured_mm["forearm length"] = forearm;
    CHECK(refusal(limb).fault == Fault::input);
  }
  limb.measured_mm.clear();
  for (const double stature : {2300.0, 1300.0}) {
    limb.stature_mm = stature;
    const LimbSize size = size_of(limb);
    CHECK(warns(size, "outside the published range of men, 1550 to 1962 mm"));
    CHECK(warns(size, "AN_001"));
    CHECK(warns(size, "the segments do not follow stature"));
    CHECK(size.moments().mean[0] == Approx(stature));
  }
  limb.stature_mm = 1756.0;
  CHECK(size_of(limb).warnings().empty());
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
  CHECK(warns(size_of(limb), "fits together in less than one limb in a thousand"));
  limb.measured_mm["forearm length"] = 232.0;
  CHECK_FALSE(warns(size_of(limb), "less than one limb in a thousand"));
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

TEST_CASE("measured lengths of a disproportionate limb are believed", "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_mm = 1310.0;
  limb.measured_mm = {{"arm length", 190.0}, {"forearm length", 175.0}, {"hand length", 150.0}};
  const LimbSize size = size_of(limb);
  CHECK(size.mean_mm(kArm) == Approx(190.0));
  CHECK(size.mean_mm(kForearm) == Approx(175.0));
  CHECK(size.mean_mm(kHand) == Approx(150.0));
  CHECK(warns(size, "/limb/measured/arm length: 190 mm is outside the published range of men"));
  CHECK_FALSE(warns(size, "do not follow stature"));
  for (const SizedLimb& one : size.sample(20, 3)) {
    CHECK(one.scale.arm == Approx(190.0 / 300.0));
    CHECK(one.scale.breadth > 0.5);
  }
}

TEST_CASE("what differs from the other side is this limb's own", "[models][limb]") {
  casefile::Limb sound = adult(Sex::female);
  sound.measured_mm = {{"arm length", 300.0}, {"hand length", 182.0}};
  const LimbSize expected = size_of(sound);

  casefile::Limb limb = adult(Sex::female);
  limb.other_side_mm = {{"arm length", 300.0}, {"hand length", 182.0}};
  CHECK((size_of(limb).moments().mean - expected.moments().mean).norm() < 1e-9);

  limb.measured_mm = {{"arm length", 255.0}};
  const LimbSize shorter = size_of(limb);
  CHECK(shorter.mean_mm(kArm) == Approx(255.0));
  CHECK(shorter.summary(kArm).sd == 0.0);
  // The forearm does not follow the shortened arm.
  CHECK(shorter.mean_mm(kForearm) == Approx(expected.mean_mm(kForearm)));
  CHECK(shorter.sd_mm(kForearm) == Approx(expected.sd_mm(kForearm)));
  CHECK(says(shorter, "this limb is 45 mm (15 %) shorter than the other"));
  for (const SizedLimb& one : shorter.sample(20, 3)) CHECK(one.scale.arm == Approx(255.0 / 300.0));

  // Without the other side the arm is taken for that of a small person.
  casefile::Limb alone = adult(Sex::female);
  alone.measured_mm = {{"arm length", 255.0}};
  CHECK(size_of(alone).mean_mm(kForearm) < shorter.mean_mm(kForearm) - 10.0);

  limb.other_side_mm["upper limb length"] = 700.0;
  limb.measured_mm["upper limb length"] = 650.0;
  CHECK(refusal(limb).problems.front().place == "/limb/measured/upper limb length");
}

TEST_CASE("a percentile of stature is that stature, and every measure has its own",
          "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_percentile = 97.5;
  const LimbSize tall = size_of(limb);
  // 1.959964 standard deviations of 68.6 mm above 1756.2 (AN_001).
  CHECK(tall.moments().mean[0] == Approx(1756.2 + 1.959964 * 68.6).margin(1e-3));
  const Eigen::VectorXd stature = Eigen::VectorXd::Unit(tall.moments().mean.size(), 0);
  CHECK(tall.percentile(stature).value() == Approx(97.5).margin(1e-6));
  // The forearm goes along by r = 0.1608 x 68.6 / its spread, so its percentile is lower.
  const double spread_mm = std::hypot(0.1608 * 68.6, 10.8);
  const double z = 1.959964 * 0.1608 * 68.6 / spread_mm;
  CHECK(tall.percentile(tall.vocabulary().at(kForearm).weights).value() ==
        Approx(50.0 * std::erfc(-z / std::sqrt(2.0))).margin(1e-3));
  // The spread of elbow breadth is assumed.
  CHECK_FALSE(tall.percentile(tall.vocabulary().at("elbow breadth").weights).has_value());
  CHECK(says(tall, "percentile 97.5 of men"));

  limb.sex.reset();
  CHECK(refusal(limb).problems.front().place == "/limb/stature_percentile");
  limb.sex = Sex::male;
  limb.stature_percentile = 100.0;
  CHECK(refusal(limb).problems.front().place == "/limb/stature_percentile");
  CHECK_FALSE(size_of({}).percentile(stature).has_value());
}

// Growth curve of the World Health Organization, boys of 10 years: mean 137.78 cm, S 0.04626.
TEST_CASE("a child's percentile of stature has the spread of the growth curve", "[models][limb]") {
  casefile::Limb limb;
  limb.sex = Sex::male;
  limb.age_years = 10.0;
  const double mean_mm = size_of(limb).moments().mean[0];
  limb.stature_percentile = 3.0;
  const LimbSize small = size_of(limb);
  CHECK(small.moments().mean[0] == Approx(mean_mm * (1.0 - 1.880794 * 0.04626)).epsilon(1e-4));
  // Between people of one age the spread of hand length is assumed.
  CHECK_FALSE(small.percentile(small.vocabulary().at(kHand).weights).has_value());
  CHECK(small.percentile(small.vocabulary().at("mid-arm circumference").weights).has_value());
}

TEST_CASE("a measured forearm lowers the spread of the forearm points by the amount predicted",
          "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  limb.stature_mm = 1756.2;
  const LimbSize before = size_of(limb);
  // Levels of points along the forearm, by their share of its length, on 4,000 sampled limbs.
  const auto spread_of = [](const LimbSize& size, double share, const char* from) {
    const Eigen::VectorXd& arm = size.vocabulary().at(from).weights;
    const Eigen::VectorXd& forearm = size.vocabulary().at(kForearm).weights;
    double sum = 0.0;
    double squares = 0.0;
    const auto limbs = size.sample(4000, 11);
    for (const SizedLimb& one : limbs) {
      const double level = arm.dot(one.measures_mm) + share * forearm.dot(one.measures_mm);
      sum += level;
      squares += level * level;
    }
    const double n = static_cast<double>(limbs.size());
    return std::sqrt((squares - sum * sum / n) / (n - 1.0));
  };
  limb.measured_mm["forearm length"] = before.mean_mm(kForearm);
  const LimbSize after = size_of(limb);
  // Given stature: arm 10.6 and forearm 10.8 mm of the tape, tied by r = 0.353.
  const double arm_sd = 10.6 * 300.0 / 313.0;
  const double forearm_sd = 10.8 * 245.0 / 236.0;
  for (const double share : {0.25, 0.5, 0.75, 1.0}) {
    INFO(share);
    const double own = share * forearm_sd;
    const double predicted_before =
        std::sqrt(arm_sd * arm_sd + own * own + 2.0 * 0.353 * arm_sd * own);
    const double predicted_after = arm_sd * std::sqrt(1.0 - 0.353 * 0.353);
    // A spread of 4,000 limbs is known to 1.1 %.
    CHECK(spread_of(before, share, kArm) == Approx(predicted_before).epsilon(0.04));
    CHECK(spread_of(after, share, kArm) == Approx(predicted_after).epsilon(0.04));
  }
}

TEST_CASE("conditioning equals the closed form by the precision matrix", "[models][limb]") {
  casefile::Limb limb = adult(Sex::female);
  const Gaussian people = size_of(limb).moments();
  limb.measured_mm = {{"radiale-stylion length", 262.0}, {"wrist circumference", 149.0}};
  const LimbSize size = size_of(limb);
  const auto& names = size.measures();
  const auto at = [&](const char* name) {
    return static_cast<Eigen::Index>(std::ranges::find(names, name) - names.begin());
  };
  const std::vector<Eigen::Index> known{at("radiale-stylion length"), at("wrist circumference")};
  const Eigen::Vector2d apart(262.0 - people.mean[known[0]], 149.0 - people.mean[known[1]]);
  std::vector<Eigen::Index> rest;
  for (Eigen::Index i = 0; i < people.mean.size(); ++i) {
    if (std::ranges::find(known, i) == known.end()) rest.push_back(i);
  }
  // The rest given the known: covariance P_rr^-1, mean m_r - P_rr^-1 P_rk (x_k - m_k).
  const Eigen::MatrixXd precision = people.covariance.inverse();
  const Eigen::MatrixXd covariance = precision(rest, rest).inverse();
  const Eigen::VectorXd mean = people.mean(rest) - covariance * precision(rest, known) * apart;
  const Gaussian conditioned = size.moments();
  CHECK((conditioned.mean(rest) - mean).norm() < 1e-6 * mean.norm());
  CHECK((conditioned.covariance(rest, rest) - covariance).norm() < 1e-6 * covariance.norm());
}

TEST_CASE("conditioning equals rejection sampling", "[models][limb]") {
  casefile::Limb limb = adult(Sex::male);
  const LimbSize people = size_of(limb);
  const double given_mm = people.mean_mm(kForearm) + 15.0;
  limb.measured_mm["forearm length"] = given_mm;
  const LimbSize size = size_of(limb);
  const Eigen::VectorXd& forearm = people.vocabulary().at(kForearm).weights;
  const Eigen::VectorXd& hand = people.vocabulary().at(kHand).weights;
  double n = 0.0;
  double sum = 0.0;
  double squares = 0.0;
  for (const SizedLimb& one : people.sample(60000, 5)) {
    if (std::abs(forearm.dot(one.measures_mm) - given_mm) > 2.0) continue;
    const double value = hand.dot(one.measures_mm);
    n += 1.0;
    sum += value;
    squares += value * value;
  }
  REQUIRE(n > 2000.0);
  const double sd = std::sqrt((squares - sum * sum / n) / (n - 1.0));
  CHECK(sum / n == Approx(size.mean_mm(kHand)).margin(4.0 * sd / std::sqrt(n)));
  CHECK(sd == Approx(size.sd_mm(kHand)).epsilon(0.06));
}
