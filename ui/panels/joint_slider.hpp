#pragma once
// A slider of a joint: its angle counts from the neutral position, which is marked, not from the
// left end.
#include <QSlider>

namespace endplate::ui {

class JointSlider : public QSlider {
  Q_OBJECT

 public:
  explicit JointSlider(QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace endplate::ui
