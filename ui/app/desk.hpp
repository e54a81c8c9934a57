#pragma once

namespace endplate::ui {

class AnswerRunner;
class CaseDocument;
class Settings;

// What every panel is given: the case, its answers, and how they are shown. Outlives the panels.
struct Desk {
  CaseDocument& document;
  AnswerRunner& answers;
  Settings& settings;
};

}  // namespace endplate::ui
