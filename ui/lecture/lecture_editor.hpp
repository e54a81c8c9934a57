#pragma once
// Edits a lecture: words, order, what each step shows. Saves nothing itself: the owner asks for
// lecture() when the dialog was accepted.
#include <QDialog>

#include "ui/lecture/lecture.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPlainTextEdit;
class QPushButton;

namespace endplate::ui {

class LectureEditor : public QDialog {
  Q_OBJECT

 public:
  LectureEditor(Lecture lecture, LectureVocabulary vocabulary, QWidget* parent = nullptr);

  const Lecture& lecture() const { return lecture_; }

 public Q_SLOTS:
  void add_step();
  void remove_step();
  void move_step(int by);

 private:
  void build_form();
  void show_steps(int current);
  void show_step(int at);
  void take_edits();
  void set_enabled_by_kind();
  void check();

  Lecture lecture_;
  LectureVocabulary vocabulary_;
  int shown_ = -1;  // the step in the form
  bool filling_ = false;

  QListWidget* list_ = nullptr;
  QLineEdit* lecture_title_ = nullptr;
  QLineEdit* title_ = nullptr;
  QComboBox* kind_ = nullptr;
  QComboBox* nerve_ = nullptr;
  QComboBox* view_ = nullptr;
  QComboBox* region_ = nullptr;
  QListWidget* layers_ = nullptr;
  QPlainTextEdit* say_ = nullptr;
  QLineEdit* rules_ = nullptr;
  QLabel* problem_ = nullptr;
  QPushButton* accept_ = nullptr;
};

}  // namespace endplate::ui
