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
  ~LectureRoom() override;

  /// The lecture that ships with the tables.
  QString default_path() const;
  /// A box says what is wrong with the file. Null then, and where there is no picture.
  Presenter* present(const QString& path);
  /// Edits the lecture at `path`; saved under a name that the reader chooses.
  void edit(const QString& path);
  LectureVocabulary vocabulary() const;

 private:
  Expected<Lecture> read(const QString& path) const;
  void show(const LectureStep& step);
  void save_figure();

  Desk desk_;
  LimbStage& stage_;
  QWidget* window_;
  Presenter* presenter_ = nullptr;
};

}  // namespace endplate::ui
