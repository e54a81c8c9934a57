#include "case_input.hpp"

#include <cstdio>
#include <fstream>
#include <iostream>
#include <sstream>

namespace endplate::cli {
namespace {

using casefile::Date;

std::optional<Date> date_of(const Json& object) {
  if (!object.contains("date")) return std::nullopt;
  int y = 0;
  unsigned m = 0;
  unsigned d = 0;
  if (std::sscanf(object["date"].get<std::string>().c_str(), "%4d-%2u-%2u", &y, &m, &d) != 3) {
    return std::nullopt;
  }
  return Date{std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

casefile::Place place_of(const Json& at) {
  if (at.contains("root")) {
    const bool pre = at.value("level", "postganglionic") == "preganglionic";
    return casefile::AtRoot{
        at["root"], pre ? casefile::RootLevel::preganglionic : casefile::RootLevel::postganglionic};
  }
  if (at.contains("trunk")) return casefile::AtTrunk{at["trunk"]};
  if (at.contains("cord")) return casefile::AtCord{at["cord"]};
  if (at.contains("branch"))
    return casefile::AtBranch{at["branch"], at.value("from_origin_mm", 0.0)};
  return casefile::AtLandmark{at.value("landmark", ""), at.value("offset_mm", 0.0),
                              at.value("toward", "distal") == "proximal"
                                  ? casefile::Toward::proximal
                                  : casefile::Toward::distal};
}

template <class E>
E word(const Json& object, const char* key, std::initializer_list<std::pair<const char*, E>> words,
       E otherwise) {
  const std::string text = object.value(key, std::string());
  for (const auto& [name, value] : words) {
    if (text == name) return value;
  }
  return otherwise;
}

casefile::Examination examination_of(const Json& object) {
  casefile::Examination examination;
  examination.date = date_of(object);
  for (const Json& item : object.value("muscles", Json::array())) {
    casefile::MuscleFinding finding;
    finding.muscle = item.value("muscle", "");
    const Json mrc = item.value("mrc", Json(0));
    finding.grade.text = mrc.is_string() ? mrc.get<std::string>() : mrc.dump();
    finding.grade.value = finding.grade.text.empty() ? 0.0 : finding.grade.text[0] - '0';
    examination.muscles.push_back(finding);
  }
  return examination;
}

}  // namespace

Expected<casefile::Case> load_case(const CommonOptions& options, const evidence::DataPackage&) {
  std::ostringstream text;
  if (options.case_path == "-") {
    text << std::cin.rdbuf();
  } else if (!options.case_path.empty()) {
    std::ifstream in(options.case_path);
    if (!in) {
      return std::unexpected(Error::input(
          {options.case_path, "the file cannot be read", "Check the name of the case file."}));
    }
    text << in.rdbuf();
  } else {
    return casefile::Case{};
  }
  const Json json = Json::parse(text.str(), nullptr, false);
  if (json.is_discarded()) {
    return std::unexpected(Error::input({"case", "this is not JSON", "Correct the file."}));
  }
  casefile::Case result;
  if (json.contains("limb")) {
    const Json& limb = json["limb"];
    result.limb.side_given = limb.contains("side");
    if (limb.value("side", "right") == "left") result.limb.side = Side::left;
    if (limb.contains("age_years")) result.limb.age_years = limb["age_years"].get<double>();
  }
  using M = casefile::Mechanism;
  using G = casefile::Grade;
  for (const Json& item : json.value("injuries", Json::array())) {
    casefile::Injury injury;
    injury.nerve = item.value("nerve", "");
    if (item.contains("at")) injury.at = place_of(item["at"]);
    injury.mechanism = word<M>(item, "mechanism",
                               {{"open sharp", M::open_sharp},
                                {"open crush", M::open_crush},
                                {"gunshot", M::gunshot},
                                {"closed traction", M::closed_traction},
                                {"fracture or dislocation", M::fracture_or_dislocation},
                                {"iatrogenic", M::iatrogenic},
                                {"compression", M::compression},
                                {"injection", M::injection},
                                {"inflammatory", M::inflammatory},
                                {"birth", M::birth},
                                {"spinal cord", M::spinal_cord}},
                               M::unknown);
    injury.grade = word<G>(item, "grade",
                           {{"neurapraxia", G::neurapraxia},
                            {"axonotmesis", G::axonotmesis},
                            {"neurotmesis", G::neurotmesis}},
                           G::unknown);
    if (item.contains("complete")) injury.complete = item["complete"].get<bool>();
    if (item.contains("nerve_seen")) injury.nerve_seen = item["nerve_seen"].get<bool>();
    injury.date = date_of(item);
    result.injuries.push_back(std::move(injury));
  }
  result.red_flags = json.value("red_flags", std::vector<std::string>());
  if (json.contains("examination")) result.examination = examination_of(json["examination"]);
  for (const Json& item : json.value("observations", Json::array())) {
    result.observations.push_back(examination_of(item));
  }
  for (const Json& item : json.value("electrodiagnosis", Json::array())) {
    casefile::Electrodiagnosis study;
    study.date = date_of(item);
    if (item.contains("muscle")) study.muscle = item["muscle"];
    if (item.contains("units")) study.units = item["units"];
    result.electrodiagnosis.push_back(std::move(study));
  }
  for (const Json& item : json.value("operations", Json::array())) {
    casefile::Operation operation;
    operation.date = date_of(item);
    operation.state = item.value("state", "planned") == "done" ? casefile::OperationState::done
                                                               : casefile::OperationState::planned;
    if (item.contains("gap_after_resection_mm")) {
      operation.gap_after_resection_mm = item["gap_after_resection_mm"].get<double>();
    }
    for (const Json& done : item.value("done", Json::array())) {
      casefile::Procedure procedure;
      procedure.procedure = done.value("procedure", "");
      if (done.contains("nerve")) procedure.nerve = done["nerve"];
      operation.done.push_back(std::move(procedure));
    }
    result.operations.push_back(std::move(operation));
  }
  return result;
}

}  // namespace endplate::cli
