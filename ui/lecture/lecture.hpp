#pragma once
// A lecture as a file that a lecturer edits, reorders and shares: JSON, `"endplate_lecture": 1`, a
// title and steps. A step says what to show; what a nerve moves, feels and its exceptions come from
// the tables (step_facts.hpp), so that a picture cannot differ from them.
#include <QByteArray>
#include <QJsonObject>
#include <QMap>
#include <QString>
#include <QStringList>
#include <QVector>

#include "models/core/error.hpp"

namespace endplate::ui {

enum class StepKind {
  text,        // the lecturer's words alone
  course,      // a nerve on its way
  muscles,     // what it moves
  skin,        // what it feels
  exceptions,  // its variants
  danger       // published rules of approaches that meet it
};

struct LectureStep {
  StepKind kind = StepKind::text;
  QString title;
  QStringList say;
  QString nerve;       // standard term; empty only with StepKind::text
  QStringList nerves;  // others to show with it, standard terms
  QString view;        // "front", "back", "lateral" or "medial"
  QString region;      // "whole", "shoulder", "arm", "elbow", "forearm" or "hand"
  QStringList layers;  // of "skin", "bones", "muscles", "nerves", "landmarks"
  QStringList rules;   // ids of approaches.csv, with StepKind::danger
  QMap<QString, double> pose_deg;
  QJsonObject other;  // keys that this version does not know, kept for the next one
};

struct Lecture {
  QString title;
  QVector<LectureStep> steps;
  QJsonObject other;
};

/// Names that a step may use.
struct LectureVocabulary {
  QStringList nerves;
  QStringList rules;
};

/// Every problem at once, each with its place as a JSON pointer. Fault::input.
Expected<Lecture> read_lecture(const QByteArray& json, const LectureVocabulary& vocabulary);

/// Reads back to the same lecture.
QByteArray write_lecture(const Lecture& lecture);

const QStringList& lecture_views();
const QStringList& lecture_regions();
const QStringList& lecture_layers();
/// In the order of StepKind, as they stand in the file.
const QStringList& lecture_kinds();

}  // namespace endplate::ui
