#pragma once
// Which published rows stand behind a number, and how they were pooled.
#include "ui/panels/panel.hpp"

class QComboBox;
class QLineEdit;
class QSplitter;

namespace endplate::ui {

class ForestChart;
class RowTable;

class EvidencePanel : public Panel {
  Q_OBJECT

 public:
  explicit EvidencePanel(Desk desk, QWidget* parent = nullptr);

  // The rows behind one row of a table.
  void ask_row(const QString& id);

 protected:
  void show_answers() override;

 private:
  void ask();
  void show_quantity(int row);
  void show_distance(std::size_t at);
  void show_share(std::size_t at);
  void show_table_row(std::size_t at);

  QLineEdit* words_;
  QComboBox* table_;
  QLabel* count_;
  QSplitter* split_;
  RowTable* quantities_;
  QLabel* pooled_;
  ForestChart* forest_;
  RowTable* rows_;
};

}  // namespace endplate::ui
