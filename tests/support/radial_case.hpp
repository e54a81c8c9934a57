#pragma once
// A radial palsy in the arm as a case file, made up, and what every answer begins with.
#include <algorithm>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace endplate::test {

using Json = nlohmann::ordered_json;

inline Json radial_case(const std::string& mechanism, const std::string& date) {
  return {{"endplate_case", 1},
          {"limb", {{"side", "right"}, {"sex", "female"}, {"age_years", 34}, {"stature_mm", 1650}}},
          {"injuries",
           Json::array(
               {{{"nerve", "radial nerve"},
                 {"at",
                  {{"landmark", "lateral epicondyle"}, {"offset_mm", 120}, {"toward", "proximal"}}},
                 {"mechanism", mechanism},
                 {"complete", true},
                 {"date", date}}})}};
}

// Whether the document begins with the keys of the contract.
inline bool begins_as_the_contract_says(const Json& answer) {
  const std::vector<std::string> wanted{"endplate", "command",     "seed",   "side",
                                        "caution",  "assumptions", "sources"};
  std::vector<std::string> first;
  for (const auto& [key, value] : answer.items()) first.push_back(key);
  first.resize(std::min(first.size(), wanted.size()));
  return first == wanted;
}

}  // namespace endplate::test
