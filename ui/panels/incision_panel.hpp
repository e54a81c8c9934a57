#pragma once
// How near a cut, portal, pin or needle comes to each nerve.
#include "ui/panels/panel.hpp"

class QComboBox;
class QLineEdit;
class QStackedWidget;
class QTabWidget;

namespace endplate::ui {

class CorridorPage;
class CurveChart;
class IncisionEditor;
class RowTable;

class IncisionPanel : public Panel {
  Q_OBJECT

 public:
  explicit IncisionPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_case() override;
  void show_answers() override;

 private:
  void add_choice();
  void choose();

  QComboBox* from_;
  QStackedWidget* pages_;
  QComboBox* approach_;
  QComboBox* of_case_;
  QComboBox* kind_;
  QLineEdit* marks_;
  QLineEdit* depth_;
  QLabel* where_;
  QTabWidget* tabs_;
  RowTable* nerves_;
  CurveChart* profile_;
  CorridorPage* corridor_;
  RowTable* rules_;
  IncisionEditor* editor_;
  QLabel* notes_;
};

}  // namespace endplate::ui
