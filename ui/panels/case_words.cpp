#include "ui/panels/case_words.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <utility>

#include "models/casefile/words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// For the files of translations.
[[maybe_unused]] constexpr std::array kTranslated{
    QT_TRANSLATE_NOOP("CaseWords", "right"),
    QT_TRANSLATE_NOOP("CaseWords", "left"),
    QT_TRANSLATE_NOOP("CaseWords", "female"),
    QT_TRANSLATE_NOOP("CaseWords", "male"),
    QT_TRANSLATE_NOOP("CaseWords", "open sharp"),
    QT_TRANSLATE_NOOP("CaseWords", "open crush"),
    QT_TRANSLATE_NOOP("CaseWords", "gunshot"),
    QT_TRANSLATE_NOOP("CaseWords", "closed traction"),
    QT_TRANSLATE_NOOP("CaseWords", "fracture or dislocation"),
    QT_TRANSLATE_NOOP("CaseWords", "iatrogenic"),
    QT_TRANSLATE_NOOP("CaseWords", "compression"),
    QT_TRANSLATE_NOOP("CaseWords", "injection"),
    QT_TRANSLATE_NOOP("CaseWords", "inflammatory"),
    QT_TRANSLATE_NOOP("CaseWords", "birth"),
    QT_TRANSLATE_NOOP("CaseWords", "spinal cord"),
    QT_TRANSLATE_NOOP("CaseWords", "neurapraxia"),
    QT_TRANSLATE_NOOP("CaseWords", "axonotmesis"),
    QT_TRANSLATE_NOOP("CaseWords", "neurotmesis"),
    QT_TRANSLATE_NOOP("CaseWords", "Sunderland 1"),
    QT_TRANSLATE_NOOP("CaseWords", "Sunderland 2"),
    QT_TRANSLATE_NOOP("CaseWords", "Sunderland 3"),
    QT_TRANSLATE_NOOP("CaseWords", "Sunderland 4"),
    QT_TRANSLATE_NOOP("CaseWords", "Sunderland 5"),
    QT_TRANSLATE_NOOP("CaseWords", "unknown"),
    QT_TRANSLATE_NOOP("CaseWords", "proximal"),
    QT_TRANSLATE_NOOP("CaseWords", "distal"),
    QT_TRANSLATE_NOOP("CaseWords", "preganglionic"),
    QT_TRANSLATE_NOOP("CaseWords", "postganglionic"),
    QT_TRANSLATE_NOOP("CaseWords", "upper"),
    QT_TRANSLATE_NOOP("CaseWords", "middle"),
    QT_TRANSLATE_NOOP("CaseWords", "lower"),
    QT_TRANSLATE_NOOP("CaseWords", "superior"),
    QT_TRANSLATE_NOOP("CaseWords", "inferior"),
    QT_TRANSLATE_NOOP("CaseWords", "lateral"),
    QT_TRANSLATE_NOOP("CaseWords", "posterior"),
    QT_TRANSLATE_NOOP("CaseWords", "medial"),
    QT_TRANSLATE_NOOP("CaseWords", "anterior"),
    QT_TRANSLATE_NOOP("CaseWords", "line"),
    QT_TRANSLATE_NOOP("CaseWords", "portal"),
    QT_TRANSLATE_NOOP("CaseWords", "pin"),
    QT_TRANSLATE_NOOP("CaseWords", "planned"),
    QT_TRANSLATE_NOOP("CaseWords", "done"),
    QT_TRANSLATE_NOOP("CaseWords", "absent"),
    QT_TRANSLATE_NOOP("CaseWords", "present"),
    QT_TRANSLATE_NOOP("CaseWords", "none"),
    QT_TRANSLATE_NOOP("CaseWords", "few"),
    QT_TRANSLATE_NOOP("CaseWords", "reduced"),
    QT_TRANSLATE_NOOP("CaseWords", "normal"),
    QT_TRANSLATE_NOOP("CaseWords", "contracts"),
    QT_TRANSLATE_NOOP("CaseWords", "silent"),
    QT_TRANSLATE_NOOP("CaseWords", "subcutaneous"),
    QT_TRANSLATE_NOOP("CaseWords", "submuscular"),
    QT_TRANSLATE_NOOP("CaseWords", "exploration"),
    QT_TRANSLATE_NOOP("CaseWords", "neurolysis"),
    QT_TRANSLATE_NOOP("CaseWords", "decompression"),
    QT_TRANSLATE_NOOP("CaseWords", "transposition"),
    QT_TRANSLATE_NOOP("CaseWords", "repair"),
    QT_TRANSLATE_NOOP("CaseWords", "graft"),
    QT_TRANSLATE_NOOP("CaseWords", "conduit"),
    QT_TRANSLATE_NOOP("CaseWords", "nerve transfer"),
    QT_TRANSLATE_NOOP("CaseWords", "end-to-side nerve transfer"),
    QT_TRANSLATE_NOOP("CaseWords", "reverse end-to-side nerve transfer"),
    QT_TRANSLATE_NOOP("CaseWords", "tendon transfer"),
    QT_TRANSLATE_NOOP("CaseWords", "free muscle transfer"),
    QT_TRANSLATE_NOOP("CaseWords", "joint fusion"),
    QT_TRANSLATE_NOOP("CaseWords", "fracture fixation"),
    QT_TRANSLATE_NOOP("CaseWords", "revascularisation"),
    QT_TRANSLATE_NOOP("CaseWords", "expanding haematoma"),
    QT_TRANSLATE_NOOP("CaseWords", "growing deficit"),
    QT_TRANSLATE_NOOP("CaseWords", "lost pulse"),
    QT_TRANSLATE_NOOP("CaseWords", "new deficit after an operation or block"),
    QT_TRANSLATE_NOOP("CaseWords", "pain out of proportion"),
    QT_TRANSLATE_NOOP("CaseWords", "tense compartment"),
};

QString tr(std::string_view text) {
  return QCoreApplication::translate("CaseWords", std::string(text).c_str());
}

template <class Words>
std::vector<Choice> of_words(const Words& words) {
  std::vector<Choice> choices;
  for (const auto& one : words) choices.push_back(word(tr(one.text), one.text));
  return choices;
}

template <class Words>
std::vector<Choice> of_texts(const Words& words) {
  std::vector<Choice> choices;
  for (const std::string_view one : words) choices.push_back(word(tr(one), one));
  return choices;
}

// "unknown" is what an absent key says already.
std::vector<Choice> without_unknown(std::vector<Choice> choices) {
  std::erase_if(choices, [](const Choice& choice) { return choice.json == "\"unknown\""; });
  return choices;
}

}  // namespace

std::vector<Choice> side_choices() {
  return of_words(casefile::kSides);
}
std::vector<Choice> sex_choices() {
  return of_words(casefile::kSexes);
}
std::vector<Choice> mechanism_choices() {
  return without_unknown(of_words(casefile::kMechanisms));
}
std::vector<Choice> grade_choices() {
  return without_unknown(of_words(casefile::kGrades));
}
std::vector<Choice> extent_choices() {
  return {{QCoreApplication::translate("CaseWords", "complete"), "true"},
          {QCoreApplication::translate("CaseWords", "partial"), "false"}};
}
std::vector<Choice> direction_choices() {
  return of_words(casefile::kDirections);
}
std::vector<Choice> aside_choices() {
  return of_words(casefile::kAsides);
}
std::vector<Choice> cut_kind_choices() {
  return of_words(casefile::kCutKinds);
}
std::vector<Choice> root_choices() {
  return of_words(casefile::kRoots);
}
std::vector<Choice> root_level_choices() {
  return of_words(casefile::kRootLevels);
}
std::vector<Choice> trunk_choices() {
  return of_words(casefile::kTrunks);
}
std::vector<Choice> cord_choices() {
  return of_words(casefile::kCords);
}
std::vector<Choice> operation_state_choices() {
  return of_words(casefile::kOperationStates);
}
std::vector<Choice> procedure_choices() {
  return of_texts(casefile::kProcedures);
}
std::vector<Choice> action_potential_choices() {
  return of_texts(casefile::kActionPotential);
}
std::vector<Choice> unit_choices() {
  return of_texts(casefile::kMotorUnits);
}
std::vector<Choice> potential_choices() {
  return of_texts(casefile::kPotentials);
}
std::vector<Choice> stimulation_choices() {
  return of_texts(casefile::kStimulation);
}
std::vector<Choice> layer_choices() {
  return of_words(casefile::kLayers);
}

QString red_flag_words(std::string_view flag) {
  return opening(tr(flag));
}

QString joint_words(std::string_view key) {
  QString words = text_of(key);
  if (words.endsWith("_deg")) words.chop(4);
  words.replace('_', ' ');
  words.replace("mcp", "MCP").replace("pip", "PIP").replace("dip", "DIP").replace(" ip ", " IP ");
  // By the key, whose words the table of limits decides.
  return QCoreApplication::translate("joints", plain(opening(words)).c_str());
}

}  // namespace endplate::ui
