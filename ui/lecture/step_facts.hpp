#pragma once
// What the tables say for a step of a lecture: muscles, areas, exceptions, rules.
#include <QString>
#include <QVector>

#include "models/anatomy/anatomy.hpp"
#include "models/evidence/data_package.hpp"
#include "ui/lecture/lecture.hpp"

namespace endplate::ui {

struct StepFact {
  QString text;    // one line, in the language of the program; a rule stands in quotation marks
  QString source;  // who says so
};

/// In the order of the nerve's branches, of the variants' table, of the step's rules; nothing for
/// steps of text and course.
QVector<StepFact> step_facts(const LectureStep& step, const anatomy::Anatomy& anatomy,
                             const evidence::DataPackage& package);

/// Standard names of what the step puts in the foreground: its nerves with all their branches and,
/// where it is about muscles, those by their abbreviation.
QStringList step_foreground(const LectureStep& step, const anatomy::Anatomy& anatomy);

}  // namespace endplate::ui
