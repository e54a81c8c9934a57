#pragma once
// A lecture on the whole screen: the picture on the left, the words on the right, driven by the
// keyboard.
#include <QImage>
#include <QWidget>
#include <functional>

#include "ui/lecture/lecture.hpp"

namespace endplate::ui {

class StepPage;

/// The picture beside the words. The presenter takes the widget over.
struct PresenterPicture {
  QWidget* widget = nullptr;
  std::function<void(const LectureStep&)> show;
  // As it stands, at that many pixels, handed over when it is drawn.
  std::function<void(QSize, std::function<void(const QImage&)>)> take;
  QString side;  // "RIGHT" or "LEFT"
};

class Presenter : public QWidget {
  Q_OBJECT

 public:
  using Facts = std::function<QVector<struct StepFact>(const LectureStep&)>;

  Presenter(Lecture lecture, PresenterPicture picture, Facts facts, QWidget* parent = nullptr);

  qsizetype step() const { return at_; }
  const Lecture& lecture() const { return lecture_; }
  /// The picture with its words, as a slide of that size; handed over when it is drawn.
  void take_figure(QSize pixels, std::function<void(const QImage&)> taken);

 public Q_SLOTS:
  /// Stays within the lecture.
  void go_to(qsizetype step);

 Q_SIGNALS:
  void step_changed(qsizetype step);
  void figure_wanted();
  void closed();  // before it is gone: the picture can be taken back

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void closeEvent(QCloseEvent* event) override;

 private:
  QImage slide(QSize pixels, int split, const QImage& picture, qsizetype at) const;

  Lecture lecture_;
  PresenterPicture picture_;
  Facts facts_;
  StepPage* page_;
  qsizetype at_ = -1;
};

}  // namespace endplate::ui
