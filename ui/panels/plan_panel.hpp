#pragma once
// Which options there are, side by side: what each needs, brings and costs.
#include "ui/panels/panel.hpp"

class QSplitter;

namespace endplate::ui {

class RowTable;

class PlanPanel : public Panel {
  Q_OBJECT

 public:
  explicit PlanPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_answers() override;

 private:
  void show_option(int row);

  QLabel* head_;
  QSplitter* split_;
  RowTable* options_;
  QLabel* detail_;
  RowTable* series_;
  RowTable* candidates_;
  QLabel* compare_;
  QLabel* notes_;
};

}  // namespace endplate::ui
