#pragma once
// Who can give to whom, does it reach, and what goes together.
#include "ui/panels/panel.hpp"

class QCheckBox;
class QTabWidget;

namespace endplate::transfer {
struct TransferCandidate;
}

namespace endplate::ui {

class RowTable;

class TransferPanel : public Panel {
  Q_OBJECT

 public:
  explicit TransferPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_answers() override;

 private:
  void show_candidates();
  void show_together();
  void show_rejected();
  void show_detail();
  void show_way();

  QCheckBox* unpublished_;
  QTabWidget* tabs_;
  RowTable* candidates_;
  QLabel* detail_;
  RowTable* together_;
  QLabel* together_words_;
  RowTable* left_out_;
  RowTable* rejected_;
  QLabel* notes_;
  std::vector<const transfer::TransferCandidate*> shown_;
};

}  // namespace endplate::ui
