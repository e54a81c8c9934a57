#include "case_input.hpp"

#include <fstream>
#include <iostream>
#include <iterator>

namespace endplate::cli {
namespace {

Error wrong(const std::string& place, const std::string& what, const std::string& mend) {
  return Error::input({place, what, mend});
}

}  // namespace

// Reads the limb only.
Expected<casefile::Case> load_case(const CommonOptions& options, const evidence::DataPackage&) {
  casefile::Case result;
  if (options.case_path.empty()) return result;
  std::string text;
  if (options.case_path == "-") {
    text.assign(std::istreambuf_iterator<char>(std::cin), {});
  } else {
    std::ifstream in(options.case_path, std::ios::binary);
    if (!in) {
      return std::unexpected(
          wrong(options.case_path, "the file cannot be read", "Check the path."));
    }
    text.assign(std::istreambuf_iterator<char>(in), {});
  }
  const Json document = Json::parse(text, nullptr, false);
  if (!document.is_object()) {
    return std::unexpected(wrong("", "this is not a JSON object", "See the case format."));
  }
  if (!document.contains("limb")) return result;
  for (const auto& [key, value] : document["limb"].items()) {
    if (key == "side" && value.is_string()) {
      result.limb.side = value == "left" ? Side::left : Side::right;
      result.limb.side_given = true;
    } else if (key == "sex" && value.is_string()) {
      result.limb.sex = value == "male" ? casefile::Sex::male : casefile::Sex::female;
    } else if (key == "age_years" && value.is_number()) {
      result.limb.age_years = value.get<double>();
    } else if (key == "stature_mm" && value.is_number()) {
      result.limb.stature_mm = value.get<double>();
    } else if (key == "measured" && value.is_object()) {
      result.limb.measured_mm = value.get<std::map<std::string, double>>();
    } else if (key == "pose" && value.is_object()) {
      result.limb.pose_deg = value.get<std::map<std::string, double>>();
    } else if (key != "dominant_side") {
      return std::unexpected(wrong("/limb/" + key, "unknown key or kind of value", "Remove it."));
    }
  }
  return result;
}

}  // namespace endplate::cli
