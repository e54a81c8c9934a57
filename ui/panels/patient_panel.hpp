#pragma once
// Whose limb it is: side, sex, age, stature, what was measured, and how the limb lies.
#include "ui/panels/panel.hpp"

class QComboBox;
class QGridLayout;
class QRadioButton;

namespace endplate::ui {

class PoseSliders;
class RowTable;

class PatientPanel : public Panel {
  Q_OBJECT

 public:
  explicit PatientPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_case() override;
  void show_answers() override;

 private:
  void add_person();
  void add_measures();

  QRadioButton* right_;
  QRadioButton* left_;
  QWidget* measures_;
  QGridLayout* measure_rows_;
  QComboBox* measure_;
  QStringList shown_;
  PoseSliders* pose_;
  QLabel* problems_;
  RowTable* sizes_;
};

}  // namespace endplate::ui
