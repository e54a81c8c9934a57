#include <fmt/format.h>

#include <algorithm>

#include "models/casefile/json_text.hpp"
#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

using anatomy::TermKind;

// Range of any joint, hyperextension included.
constexpr double kLargestAngle_deg = 190.0;
constexpr double kSmallestAngle_deg = -90.0;

std::optional<MrcGrade> read_mrc(ObjectReader& object) {
  constexpr std::string_view kMend =
      "Write 0 to 5, or a text with a plain hyphen or plus such as \"4-\"; leave the muscle out "
      "where it was not examined.";
  object.require("mrc", kMend);
  const nlohmann::json* value = object.take("mrc");
  if (value == nullptr) return std::nullopt;
  std::optional<MrcGrade> grade;
  if (value->is_string()) {
    grade = mrc_grade(value->get<std::string>());
  } else if (value->is_number()) {
    const double figure = value->get<double>();
    if (figure == 0.0 || figure == 1.0 || figure == 2.0 || figure == 3.0 || figure == 4.0 ||
        figure == 5.0) {
      grade = MrcGrade{figure, fmt::format("{}", static_cast<int>(figure))};
    }
  }
  if (!grade) {
    const std::string written =
        value->is_string() ? in_quotes(value->get<std::string>()) : in_quotes(value->dump());
    object.add("mrc", fmt::format("{} is no grade of the MRC scale", written), std::string(kMend));
  }
  return grade;
}

// Adds `name` to what was listed before, or reports that it stands there already.
bool first_time(std::vector<std::string>& listed, const std::string& name, TermKind kind,
                ObjectReader& object, std::string_view key) {
  if (std::ranges::find(listed, name) == listed.end()) {
    listed.push_back(name);
    return true;
  }
  object.add(key, fmt::format("{} is listed already", object.reading().terms.full_name(kind, name)),
             "Keep one entry; a later finding belongs to observations.");
  return false;
}

void read_muscles(ObjectReader& object, Examination& examination) {
  std::vector<std::string> listed;
  object.each_object("muscles", [&](ObjectReader& item) {
    item.require("muscle", "Name the muscle.");
    const auto names = item.terms("muscle", TermKind::muscle);
    const auto grade = read_mrc(item);
    item.finish();
    for (const std::string& name : names) {
      if (!first_time(listed, name, TermKind::muscle, item, "muscle")) break;
      if (grade) examination.muscles.push_back({name, *grade});
    }
  });
}

void read_movements(ObjectReader& object, Examination& examination) {
  std::vector<std::string> listed;
  object.each_object("movements", [&](ObjectReader& item) {
    item.require("movement", "Name the movement.");
    const auto name = item.term("movement", TermKind::movement);
    const auto active = item.number("active_deg", kSmallestAngle_deg, kLargestAngle_deg, "degrees");
    const auto passive =
        item.number("passive_deg", kSmallestAngle_deg, kLargestAngle_deg, "degrees");
    if (!item.has("active_deg") && !item.has("passive_deg")) {
      item.require("active_deg", "Give active_deg, passive_deg or both in degrees.");
    }
    item.finish();
    if (active && passive && *active > *passive) {
      item.add("active_deg", "the active range is larger than the passive one",
               "Check both; the limb cannot move itself further than it can be moved.");
    }
    if (name && first_time(listed, *name, TermKind::movement, item, "movement")) {
      examination.movements.push_back({*name, active, passive});
    }
  });
}

void check_sensory_grade(ObjectReader& item, const SensoryFinding& finding) {
  if (!finding.state || !finding.s_grade) return;
  const std::string& grade = *finding.s_grade;
  const bool useful = grade.starts_with("S3") || grade == "S4";
  const bool none = grade == "S0" || grade == "S1" || grade == "S1+";
  if ((*finding.state == SensoryState::absent && useful) ||
      (*finding.state == SensoryState::normal && (none || grade == "S2"))) {
    item.add("s_grade",
             fmt::format("{} contradicts the state {}", grade, to_string(*finding.state)),
             "Keep the one that was found.");
  }
}

void read_sensation(ObjectReader& object, Examination& examination) {
  constexpr double kWidestTwoPoint_mm = 100.0;
  std::vector<std::string> listed;
  object.each_object("sensation", [&](ObjectReader& item) {
    item.require("area", "Name the skin area.");
    const auto areas = item.terms("area", TermKind::area);
    SensoryFinding finding;
    finding.state = item.word("state", kSensoryStates);
    finding.s_grade = item.word("s_grade", kSensoryGrades);
    finding.two_point_mm = item.number("two_point_mm", 1.0, kWidestTwoPoint_mm, "mm");
    if (!item.has("state") && !item.has("s_grade") && !item.has("two_point_mm")) {
      item.require("state",
                   "Give state, s_grade or two_point_mm; leave the area out where it was "
                   "not examined.");
    }
    item.finish();
    check_sensory_grade(item, finding);
    for (const std::string& area : areas) {
      if (!first_time(listed, area, TermKind::area, item, "area")) break;
      finding.area = area;
      examination.sensation.push_back(finding);
    }
  });
}

void read_signs(ObjectReader& object, Examination& examination) {
  constexpr std::array<Word<bool>, 2> kStates{{{"present", true}, {"absent", false}}};
  std::vector<std::string> listed;
  object.each_object("signs", [&](ObjectReader& item) {
    item.require("sign", "Name the sign.");
    item.require("state", "Write \"present\" or \"absent\".");
    const auto sign = item.word("sign", std::span<const std::string_view>(kSigns));
    const auto present = item.word("state", kStates);
    item.finish();
    if (!sign || !present) return;
    if (std::ranges::find(listed, *sign) != listed.end()) {
      item.add("sign", fmt::format("{} is listed already", *sign), "Keep one entry.");
      return;
    }
    listed.push_back(*sign);
    examination.signs.push_back({*sign, *present});
  });
}

void read_tinel(ObjectReader& object, Examination& examination) {
  object.each_object("tinel", [&](ObjectReader& item) {
    item.require("nerve", "Name the nerve that was tapped.");
    auto nerve = item.term("nerve", TermKind::nerve);
    auto at = read_place(item, "at", true);
    item.finish();
    if (nerve && at) examination.tinel.push_back({std::move(*nerve), std::move(*at)});
  });
}

}  // namespace

Examination read_examination(ObjectReader& object) {
  Examination examination;
  examination.date = object.date("date", DatedPart::Kind::finding);
  read_muscles(object, examination);
  read_movements(object, examination);
  read_sensation(object, examination);
  read_signs(object, examination);
  read_tinel(object, examination);
  object.finish();
  return examination;
}

std::vector<Electrodiagnosis> read_electrodiagnosis(ObjectReader& object) {
  Electrodiagnosis test;
  test.date = object.date("date", DatedPart::Kind::finding);
  if (object.has("muscle") && object.has("nerve")) {
    object.add("nerve", "one entry holds the test of a muscle or of a nerve, not of both",
               "Make two entries.");
  }
  if (!object.has("muscle") && !object.has("nerve")) {
    object.require("muscle", "Name the muscle or the nerve that was tested.");
  }
  const auto muscles = object.terms("muscle", TermKind::muscle);
  test.nerve = object.term("nerve", TermKind::nerve);
  test.fibrillation = object.boolean("fibrillation");
  test.units = object.word("units", std::span<const std::string_view>(kMotorUnits));
  test.snap = object.word("snap", std::span<const std::string_view>(kPotentials));
  test.cmap = object.word("cmap", std::span<const std::string_view>(kPotentials));
  test.stimulation = object.word("stimulation", std::span<const std::string_view>(kStimulation));
  object.finish();

  bool any = false;
  for (const std::string_view key : {"fibrillation", "units", "snap", "cmap", "stimulation"}) {
    any = any || object.has(key);
  }
  if (!any) {
    object.reading().add(object.place(), "the test has no finding",
                         "Give fibrillation, units, snap, cmap or stimulation.");
  }
  if (object.has("nerve") && !object.has("muscle")) {
    for (const std::string_view key : {"fibrillation", "units"}) {
      if (object.has(key)) {
        object.add(key, "this is found in a muscle, not in a nerve", "Name the muscle.");
      }
    }
  }
  if (object.has("muscle") && !object.has("nerve") && object.has("snap")) {
    object.add("snap", "a sensory potential is recorded from a nerve, not from a muscle",
               "Name the nerve.");
  }
  std::vector<Electrodiagnosis> tests;
  for (const std::string& muscle : muscles) {
    test.muscle = muscle;
    tests.push_back(test);
  }
  if (test.nerve && muscles.empty()) tests.push_back(test);
  return tests;
}

}  // namespace endplate::casefile
