#pragma once
// How the limb lies: one slider a joint, within the largest published range.
#include <QWidget>
#include <string>
#include <vector>

#include "ui/app/desk.hpp"

class QCheckBox;
class QSlider;
class QSpinBox;

namespace endplate::ui {

class PoseSliders : public QWidget {
  Q_OBJECT

 public:
  explicit PoseSliders(Desk desk, QWidget* parent = nullptr);

  // The slider of a joint, for tests and for dragging from elsewhere.
  QSlider* slider(const std::string& key) const;

 private:
  struct Joint {
    std::string key;
    QString words;
    QSlider* slider;
    QSpinBox* figure;
  };
  void refresh();
  void set(const Joint& joint, int degrees);

  Desk desk_;
  std::vector<Joint> joints_;
  QCheckBox* small_ = nullptr;  // shows the joints of thumb and fingers
  std::size_t large_ = 0;       // so many joints come before them
  int gesture_ = 1;
};

}  // namespace endplate::ui
