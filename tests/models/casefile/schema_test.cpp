// The published schema and the reader agree.
#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <fstream>
#include <nlohmann/json.hpp>

#include "models/casefile/read.hpp"
#include "models/casefile/words.hpp"

using namespace endplate::casefile;
using nlohmann::json;

namespace {

const json& schema() {
  static const json read =
      json::parse(std::ifstream(ENDPLATE_SOURCE_DIR "/datasets/case.schema.json"));
  return read;
}

template <class Words>
json texts(const Words& words) {
  json list = json::array();
  for (const auto& word : words) {
    if constexpr (requires { word.text; }) {
      list.push_back(word.text);
    } else {
      list.push_back(word);
    }
  }
  return list;
}

json enum_at(const std::string& pointer) {
  return schema().at(json::json_pointer(pointer + "/enum"));
}

}  // namespace

TEST_CASE("the schema lists the words that the reader takes", "[casefile][schema]") {
  CHECK(enum_at("/properties/limb/properties/side") == texts(kSides));
  CHECK(enum_at("/properties/limb/properties/sex") == texts(kSexes));
  CHECK(enum_at("/properties/red_flags/items") == texts(kRedFlags));
  CHECK(enum_at("/$defs/injury/properties/mechanism") == texts(kMechanisms));
  CHECK(enum_at("/$defs/injury/properties/grade") == texts(kGrades));
  CHECK(enum_at("/$defs/place/anyOf/1/properties/toward") == texts(kDirections));
  CHECK(enum_at("/$defs/place/anyOf/2/properties/root") == texts(kRoots));
  CHECK(enum_at("/$defs/place/anyOf/2/properties/level") == texts(kRootLevels));
  CHECK(enum_at("/$defs/place/anyOf/3/properties/trunk") == texts(kTrunks));
  CHECK(enum_at("/$defs/place/anyOf/4/properties/cord") == texts(kCords));
  const std::string finding = "/$defs/examination/properties/";
  CHECK(enum_at(finding + "sensation/items/properties/state") == texts(kSensoryStates));
  CHECK(enum_at(finding + "sensation/items/properties/s_grade") == texts(kSensoryGrades));
  CHECK(enum_at(finding + "signs/items/properties/sign") == texts(kSigns));
  CHECK(enum_at("/$defs/electrodiagnosis/properties/units") == texts(kMotorUnits));
  CHECK(enum_at("/$defs/electrodiagnosis/properties/snap") == texts(kPotentials));
  CHECK(enum_at("/$defs/electrodiagnosis/properties/stimulation") == texts(kStimulation));
  CHECK(enum_at("/$defs/operation/properties/state") == texts(kOperationStates));
  CHECK(enum_at("/$defs/operation/properties/nerve_action_potential") == texts(kActionPotential));
  CHECK(enum_at("/$defs/operation/properties/done/items/properties/procedure") ==
        texts(kProcedures));
  CHECK(enum_at("/$defs/operation/properties/done/items/properties/layer") == texts(kLayers));
}

TEST_CASE("the schema's joint ranges are those of the table", "[casefile][schema]") {
  const auto package = endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package);
  const json& pose = schema().at("/properties/limb/properties/pose/properties"_json_pointer);
  const PoseLimits limits = pose_limits(*package);
  CHECK(pose.size() == limits.size());
  for (const auto& [key, limit] : limits) {
    CAPTURE(key);
    CHECK(pose.at(key).at("minimum").get<double>() == limit.low_deg);
    CHECK(pose.at(key).at("maximum").get<double>() == limit.high_deg);
  }
}

TEST_CASE("a JSON Schema validator agrees with the reader on every good and broken file",
          "[casefile][schema]") {
  const std::string command =
      "/usr/bin/python3 " ENDPLATE_SOURCE_DIR "/tests/casefiles/validate.py " ENDPLATE_SOURCE_DIR
      "/datasets/case.schema.json " ENDPLATE_SOURCE_DIR "/datasets/cases " ENDPLATE_SOURCE_DIR
      "/tests/casefiles/broken 2>&1";
  FILE* pipe = ::popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string printed;
  std::array<char, 4096> buffer{};
  while (std::fgets(buffer.data(), buffer.size(), pipe) != nullptr) printed += buffer.data();
  CAPTURE(printed);
  CHECK(::pclose(pipe) == 0);
}
