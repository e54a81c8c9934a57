#pragma once
#include <QString>

namespace endplate::ui {

class DeskUnderTest;

// A radial palsy entered from nothing, every key as a person would press it. Returns the file that
// the case was saved to.
QString enter_a_case(DeskUnderTest& desk);

}  // namespace endplate::ui
