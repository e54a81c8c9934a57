#pragma once
#include <QString>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"

namespace endplate::ui {

// A JSON Pointer into a case as people say it: "/injuries/0/nerve_seen" is "Injury 1, nerve seen".
// Other places stay as they are.
QString place_words(std::string_view pointer);

// "PLACE: WHAT. MEND", a line each.
QString problem_words(const std::vector<Problem>& problems);

}  // namespace endplate::ui
