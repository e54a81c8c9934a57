#pragma once
// What next, by when, unless what, and why.
#include "ui/panels/panel.hpp"

class QPushButton;

namespace endplate::ui {

class RowTable;

class DecisionPanel : public Panel {
  Q_OBJECT

 public:
  explicit DecisionPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_answers() override;

 private:
  // What the decision rests on; null while it is not there.
  struct Basis {
    const recovery::RecoveryAnswer* answer = nullptr;
    const schedule::Schedule* schedule = nullptr;
    bool stale = true;
    bool visited = false;
  };
  Basis basis() const;
  void show_decision();
  void show_changes();
  void save_calendar();
  void withdraw_calendar();
  // The schedule for a calendar; nothing, and why is said, while it is not current.
  const schedule::Schedule* current_schedule();
  void keep_calendar(const Expected<std::string>& text);

  QLabel* next_;
  QWidget* facts_;
  QLabel* by_;
  QLabel* unless_;
  QLabel* because_;
  QLabel* evidence_;
  QLabel* lesions_;
  QLabel* course_;
  QLabel* practice_;
  QLabel* dates_head_;
  RowTable* dates_;
  QPushButton* calendar_;
  QPushButton* withdraw_;
  QLabel* first_head_;
  QLabel* first_;
  QLabel* changes_head_;
  RowTable* changes_;
  QLabel* unknown_head_;
  QLabel* unknown_;
};

}  // namespace endplate::ui
