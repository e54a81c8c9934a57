#pragma once
// A lecture on the wall: large type, moved on by keys, any step saved as a figure.
#include <QWidget>

#include "ui/lecture/lecture.hpp"

class QLabel;
class QStackedWidget;

namespace endplate::ui {

class LectureWindow : public QWidget {
  Q_OBJECT

 public:
  // `anatomy` must outlive it.
  LectureWindow(Lecture lecture, const anatomy::Anatomy& anatomy, QWidget* parent = nullptr);

  // Shows the limb beside the words; follow step_shown() to show what a step is about.
  void set_limb_view(QWidget* view);
  int step() const { return step_; }
  void show_step(int step);  // held within the lecture
  void set_size(double times);

 Q_SIGNALS:
  void step_shown(const endplate::ui::LectureStep& step);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void save_figure();
  void set_fonts();

  Lecture lecture_;
  const anatomy::Anatomy& anatomy_;
  int step_ = 0;
  double times_ = 1.0;
  QStackedWidget* view_;
  QLabel* title_;
  QLabel* text_;
  QLabel* supply_;
  QLabel* place_;
};

}  // namespace endplate::ui
