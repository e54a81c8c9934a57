#pragma once
// What the injury paralyses and numbs, and what it spares.
#include "ui/panels/panel.hpp"

class QCheckBox;
class QTabWidget;

namespace endplate::ui {

class RowTable;
class SourceTable;

class DeficitPanel : public Panel {
  Q_OBJECT

 public:
  explicit DeficitPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_answers() override;

 private:
  void show_muscles();
  void show_areas();
  void show_movements();
  void show_variants();

  QLabel* injuries_;
  QCheckBox* intact_;
  QTabWidget* tabs_;
  RowTable* muscles_;
  RowTable* areas_;
  RowTable* movements_;
  RowTable* variants_;
  SourceTable* sources_;
  QLabel* notes_;
};

}  // namespace endplate::ui
