#pragma once
// The words of one step in type that a hall can read.
#include <QVector>
#include <QWidget>

#include "ui/lecture/lecture.hpp"
#include "ui/lecture/step_facts.hpp"

class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace endplate::ui {

class StepPage : public QWidget {
  Q_OBJECT

 public:
  explicit StepPage(QWidget* parent = nullptr);

  /// `side`: "RIGHT" or "LEFT", of the limb in the picture.
  void show_step(const LectureStep& step, const QVector<StepFact>& facts, qsizetype number,
                 qsizetype count, const QString& side);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void set_type_sizes();

  QLabel* place_;
  QLabel* title_;
  QLabel* say_;
  QWidget* fact_list_;
  QVBoxLayout* fact_rows_;
  QScrollArea* scroll_;
  QLabel* caution_;
};

}  // namespace endplate::ui
