#pragma once
// Opens a lecture on the limb of the desk, and saves its steps as figures.
#include <QObject>
#include <memory>

#include "ui/app/desk.hpp"
#include "ui/lecture/lecture.hpp"

class QWidget;

namespace endplate::ui {

class LimbStage;
class Presenter;

class LectureRoom : public QObject {
  Q_OBJECT

 public:
  LectureRoom(Desk desk, LimbStage& stage, QWidget* window);

  /// The lecture that ships with the tables.
  QString default_path() const;
  /// Fault::input: the file, or a step of it.
  Expected<Lecture> read(const QString& path) const;
  /// On the whole screen, with the picture of the stage.
  Presenter* present(const Lecture& lecture);
  /// Saved under a name that the reader chooses; `path`: where it was read.
  void edit(const Lecture& lecture, const QString& path);
  LectureVocabulary vocabulary() const;

 private:
  void show(const LectureStep& step);
  void save_figure();

  Desk desk_;
  LimbStage& stage_;
  QWidget* window_;
  Presenter* presenter_ = nullptr;
};

}  // namespace endplate::ui
