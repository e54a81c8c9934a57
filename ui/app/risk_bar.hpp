#pragma once
// What the map of risk is of: how near, how deep, which nerve.
#include <QWidget>

#include "ui/app/risk_layer.hpp"

class QCheckBox;
class QComboBox;
class QLabel;
class QSlider;

namespace endplate::ui {

class RiskBar : public QWidget {
  Q_OBJECT

 public:
  explicit RiskBar(QWidget* parent = nullptr);

  bool is_on() const;
  RiskWish wish() const;  // samples and seed as they stand there

 Q_SIGNALS:
  void changed();

 private:
  void refresh_words();

  QCheckBox* on_;
  QComboBox* within_;
  QSlider* depth_;
  QLabel* depth_words_;
  QComboBox* nerve_;
};

}  // namespace endplate::ui
