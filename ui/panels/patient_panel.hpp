#pragma once
// Whose limb it is: side, sex, age, stature, what was measured or found by ultrasound, and how the
// limb lies.
#include "ui/panels/panel.hpp"

class QRadioButton;

namespace endplate::ui {

class MeasureFields;
class NumberField;
class PoseSliders;
class RowTable;
class UltrasoundEditor;

class PatientPanel : public Panel {
  Q_OBJECT

 public:
  explicit PatientPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_case() override;
  void show_answers() override;

 private:
  void add_person();

  QRadioButton* right_;
  QRadioButton* left_;
  NumberField* stature_;
  NumberField* percentile_;
  MeasureFields* measures_;
  UltrasoundEditor* ultrasound_;
  PoseSliders* pose_;
  QLabel* problems_;
  RowTable* sizes_;
};

}  // namespace endplate::ui
