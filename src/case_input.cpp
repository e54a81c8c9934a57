#include "case_input.hpp"

#include <fmt/format.h>

#include <fstream>
#include <iostream>
#include <sstream>

namespace endplate::cli {
namespace {

casefile::Place place_of(const Json& at) {
  if (at.contains("root")) {
    const bool torn = at.value("level", "") == "preganglionic";
    return casefile::AtRoot{at["root"], torn ? casefile::RootLevel::preganglionic
                                             : casefile::RootLevel::postganglionic};
  }
  if (at.contains("trunk")) return casefile::AtTrunk{at["trunk"]};
  if (at.contains("cord")) return casefile::AtCord{at["cord"]};
  if (at.contains("branch"))
    return casefile::AtBranch{at["branch"], at.value("from_origin_mm", 0.0)};
  return casefile::AtLandmark{at.at("landmark"), at.value("offset_mm", 0.0),
                              at.value("toward", "distal") == "proximal"
                                  ? casefile::Toward::proximal
                                  : casefile::Toward::distal};
}

}  // namespace

// Provisional: only the keys that the deficit needs, in standard terms.
Expected<casefile::Case> load_case(const CommonOptions& options, const evidence::DataPackage&) {
  std::ostringstream text;
  if (options.case_path == "-") {
    text << std::cin.rdbuf();
  } else {
    text << std::ifstream(options.case_path).rdbuf();
  }
  const Json document = Json::parse(text.str(), nullptr, false);
  if (!document.is_object()) {
    return std::unexpected(
        Error::input({options.case_path, "this is no case file", "Write it as JSON"}));
  }
  casefile::Case result;
  const Json limb = document.value("limb", Json::object());
  result.limb.side = limb.value("side", "right") == "left" ? Side::left : Side::right;
  result.limb.side_given = limb.contains("side");
  result.variants = document.value("variants", std::vector<std::string>());
  for (const Json& item : document.value("injuries", Json::array())) {
    casefile::Injury injury;
    injury.nerve = item.value("nerve", "");
    if (item.contains("at")) injury.at = place_of(item["at"]);
    if (item.contains("complete")) injury.complete = item["complete"].get<bool>();
    if (item.value("grade", "") == "neurapraxia") injury.grade = casefile::Grade::neurapraxia;
    if (item.value("mechanism", "") == "spinal cord") {
      injury.mechanism = casefile::Mechanism::spinal_cord;
    }
    result.injuries.push_back(std::move(injury));
  }
  if (document.contains("examination")) {
    casefile::Examination examination;
    for (const Json& item : document["examination"].value("muscles", Json::array())) {
      const std::string grade =
          item["mrc"].is_string() ? item["mrc"].get<std::string>() : item["mrc"].dump();
      examination.muscles.push_back({item["muscle"], {0.0, grade}});
    }
    for (const Json& item : document["examination"].value("sensation", Json::array())) {
      examination.sensation.push_back({item["area"],
                                       item.value("state", "") == "absent"
                                           ? casefile::SensoryState::absent
                                           : casefile::SensoryState::normal,
                                       std::nullopt, std::nullopt});
    }
    result.examination = std::move(examination);
  }
  return result;
}

}  // namespace endplate::cli
