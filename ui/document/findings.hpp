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

// Sets or, with an empty `value`, takes away the finding of one muscle, area or sign. An entry that
// stands for several parts ("deltoid") is split into them first.
void set_finding(Json& visit, FindingKind kind, const std::string& name, const std::string& value,
                 const anatomy::Terms& terms);

}  // namespace endplate::ui
