#pragma once
#include <QDialog>

#include "ui/app/settings.hpp"

class QComboBox;
class QLineEdit;
class QSpinBox;

namespace endplate::ui {

/// What is remembered between two days. Sampling and seeds stand here and on no clinical screen.
class SettingsDialog : public QDialog {
  Q_OBJECT

 public:
  explicit SettingsDialog(const Choices& choices, QWidget* parent = nullptr);
  Choices choices() const;

 private:
  Choices before_;
  QComboBox* unit_;
  QComboBox* lightness_;
  QComboBox* language_;
  QComboBox* terms_;
  QComboBox* hand_;
  QSpinBox* samples_;
  QLineEdit* seed_;
};

}  // namespace endplate::ui
