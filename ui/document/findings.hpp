#pragma once
// The findings of one visit, in a case file's JSON: looked up by the tables' names however they
// were written, and changed without losing anything beside them.
#include <map>
#include <string>
#include <string_view>

#include "ui/document/case_json.hpp"

namespace endplate::anatomy {
class Terms;
}

namespace endplate::ui {

enum class FindingKind { muscle, area, sign };

// By standard name: a muscle's MRC grade ("4-"), the state of an area or a sign ("absent").
// `visit`: of "/examination" or of one of "/observations"; what is not in it was not examined.
std::map<std::string, std::string> findings(const Json& visit, FindingKind kind,
                                            const anatomy::Terms& terms);

// What a visit has of an area beside its state, as it is written; empty where it has not.
struct AreaDetail {
  std::string s_grade;       // "S3+"
  std::string two_point_mm;  // "8"
};
std::map<std::string, AreaDetail> area_details(const Json& visit, const anatomy::Terms& terms);

// Sets "s_grade" or "two_point_mm" of one area or, with null, takes it away, and the entry with it
// when nothing else was found there. An entry for several areas is split as below.
void set_area_detail(Json& visit, const std::string& area, const std::string& key,
                     const Json& value, const anatomy::Terms& terms);

// Sets or, with an empty `value`, takes away the finding of one muscle, area or sign. An entry that
// stands for several parts ("deltoid") is split into them first.
void set_finding(Json& visit, FindingKind kind, const std::string& name, const std::string& value,
                 const anatomy::Terms& terms);

}  // namespace endplate::ui
