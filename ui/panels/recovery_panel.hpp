#pragma once
// When, and with what chance, each muscle and skin area comes back.
#include "ui/panels/panel.hpp"

class QTabWidget;

namespace endplate::ui {

class CurveChart;
class RowTable;
class SourceTable;
class TimelineChart;

class RecoveryPanel : public Panel {
  Q_OBJECT

 public:
  explicit RecoveryPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_answers() override;

 private:
  void show_timeline();
  void show_targets();
  void show_window();
  void show_tinel();
  void show_sheet();

  QLabel* lesions_;
  QTabWidget* tabs_;
  TimelineChart* timeline_;
  RowTable* targets_;
  QLabel* window_words_;
  CurveChart* window_;
  RowTable* window_table_;
  QLabel* tinel_words_;
  RowTable* tinel_;
  QLabel* sheet_words_;
  RowTable* sheet_;
  RowTable* emg_;
  SourceTable* sources_;
  QLabel* notes_;
};

}  // namespace endplate::ui
