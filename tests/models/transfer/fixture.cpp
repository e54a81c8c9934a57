#include "fixture.hpp"

#include <ranges>

#include "models/anatomy/terms.hpp"
#include "models/casefile/read.hpp"

namespace transfer_tests {

const evidence::DataPackage& package() {
  static const evidence::DataPackage kPackage = [] {
    auto read = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    REQUIRE(read);
    return std::move(*read);
  }();
  return kPackage;
}

const anatomy::Anatomy& all_anatomy() {
  static const anatomy::Anatomy kAnatomy = *anatomy::Anatomy::from(package());
  return kAnatomy;
}

casefile::Case case_of(const Arm& arm) {
  const auto join = [](const auto& items, const auto& words) {
    std::string text;
    for (const auto& item : items)
      text = text.empty() ? words(item) : fmt::format("{}, {}", text, words(item));
    return text;
  };
  const std::string muscles = join(arm.grades, [](const auto& one) {
    return fmt::format(R"({{"muscle": "{}", "mrc": "{}"}})", one.first, one.second);
  });
  const std::string areas = join(arm.areas, [](const auto& one) {
    return fmt::format(R"({{"area": "{}", "state": "{}"}})", one.first, one.second);
  });
  const std::string signs = join(arm.signs, [](const auto& one) {
    return fmt::format(R"({{"sign": "{}", "state": "present"}})", one);
  });
  const std::string units = join(arm.units, [](const auto& one) {
    return fmt::format(R"({{"muscle": "{}", "units": "{}"}})", one.first, one.second);
  });
  const std::string text = fmt::format(
      R"({{"endplate_case": 1, "limb": {{"side": "right", "sex": "male", "age_years": {}}},
      "injuries": [{}], "examination": {{"date": "2026-05-01", "muscles": [{}],
      "sensation": [{}], "signs": [{}]}}, "electrodiagnosis": [{}]{}}})",
      arm.age_years, arm.injuries, muscles, areas, signs, units, arm.more);
  static const anatomy::Terms kTerms = *anatomy::Terms::from(package());
  auto read = casefile::read_case(text, kTerms, {casefile::pose_limits(package()), nullptr, {}});
  if (!read) {
    for (const Problem& problem : read.error().problems) {
      UNSCOPED_INFO(problem.place << ": " << problem.what << ". " << problem.mend);
    }
  }
  REQUIRE(read);
  return std::move(*read);
}

transfer::Judgement judged(const Arm& arm) {
  // The arms differ in their age at the most, on which no length depends in the grown.
  static const auto kLimb = *limb::CaseLimb::from(package(), all_anatomy().tree(),
                                                  case_of(textbook(kUpperTrunk, {})).limb);
  static const auto kLimbs = kLimb.sample(10, 1);
  const casefile::Case patient = case_of(arm);
  const auto now = transfer::Situation::of(patient, all_anatomy(), kLimb, kLimbs);
  REQUIRE(now);
  return transfer::judge(*now, package(), {arm.days});
}

const transfer::Candidate* find(const transfer::Judgement& judgement, std::string_view id) {
  for (const transfer::Group& group : judgement.groups) {
    for (const transfer::Candidate& one : group.candidates) {
      if (one.id == id) return &one;
    }
  }
  return nullptr;
}

std::string rejected(const transfer::Judgement& judgement, std::string_view id) {
  for (const transfer::Candidate& one : judgement.rejected) {
    if (one.id == id) return one.rejected_because;
  }
  return "";
}

int place(const transfer::Judgement& judgement, std::string_view id) {
  for (const transfer::Group& group : judgement.groups) {
    int at = 0;
    for (const transfer::Candidate& one : group.candidates) {
      at += one.way == transfer::Way::nerve ? 1 : 0;
      if (one.id == id) return at;
    }
  }
  return 0;
}

std::string injury(const std::string& place) {
  return "{" + place +
         R"(, "mechanism": "closed traction", "complete": true, "date": "2026-01-10"})";
}

Arm textbook(std::string injuries, const std::set<std::string>& weak,
             const std::set<std::string>& numb) {
  Arm arm;
  arm.injuries = std::move(injuries);
  for (const anatomy::Muscle& muscle : all_anatomy().muscles()) {
    arm.grades.emplace(muscle.id, weak.contains(muscle.id) ? "0" : "5");
  }
  arm.units.emplace("PQ", weak.contains("PQ") ? "none" : "normal");
  for (const anatomy::SkinArea& area : all_anatomy().areas()) {
    arm.areas.emplace(area.name, numb.contains(area.name) ? "absent" : "normal");
  }
  return arm;
}

Arm pattern(std::string injuries, std::string_view id, std::string_view also_weak) {
  for (const evidence::Row row : package().table("patterns")) {
    if (row.text("id") != id) continue;
    std::set<std::string> weak;
    for (const auto part : std::views::split(also_weak, ';')) {
      weak.emplace(std::string_view(part));
    }
    for (std::string& muscle : row.list("muscles_weak")) weak.insert(std::move(muscle));
    std::set<std::string> numb;
    for (std::string& area : row.list("sensory_loss")) numb.insert(std::move(area));
    return textbook(std::move(injuries), weak, numb);
  }
  throw std::out_of_range(std::string(id));
}

const std::string kUpperTrunk = injury(R"("at": {"trunk": "upper"})");
const std::string kAxillary = injury(
    R"("nerve": "axillary nerve", "at": {"branch": "axillary nerve", "from_origin_mm": 20})");
const std::string kMusculocutaneous = injury(
    R"("nerve": "musculocutaneous nerve", "at": {"landmark": "coracoid process", "offset_mm": 60, "toward": "distal"})");
const std::string kHighUlnar = injury(
    R"("nerve": "ulnar nerve", "at": {"landmark": "medial epicondyle", "offset_mm": 120, "toward": "proximal"})");
const std::string kHighMedian = injury(
    R"("nerve": "median nerve", "at": {"landmark": "medial epicondyle", "offset_mm": 80, "toward": "proximal"})");
const std::string kHighRadial = injury(
    R"("nerve": "radial nerve", "at": {"landmark": "lateral epicondyle", "offset_mm": 120, "toward": "proximal"})");
const std::string kLowUlnar = injury(
    R"("nerve": "ulnar nerve", "at": {"landmark": "distal wrist crease", "offset_mm": 30, "toward": "proximal"})");
const std::string kLowerTrunk = injury(R"("at": {"trunk": "lower"})");

std::string roots(const std::vector<std::string>& torn) {
  std::string text;
  for (const std::string& root : torn) {
    const std::string one =
        injury(fmt::format(R"("at": {{"root": "{}", "level": "preganglionic"}})", root));
    text = text.empty() ? one : fmt::format("{}, {}", text, one);
  }
  return text;
}

}  // namespace transfer_tests
