#pragma once
// What is injured, where, how and when; and what cannot wait.
#include <map>

#include "ui/panels/panel.hpp"

class QCheckBox;
class QListWidget;

namespace endplate::ui {

class ChoiceField;
class DateField;
class PlaceEditor;
class TermField;

class InjuryPanel : public Panel {
  Q_OBJECT

 public:
  explicit InjuryPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_case() override;
  void show_answers() override;

 private:
  void add_list();
  void add_form();
  void add_flags();
  void show_injury(int index);
  void set_flag(const std::string& flag, bool on);

  int shown_ = -1;
  QListWidget* list_;
  QWidget* form_;
  TermField* nerve_;
  PlaceEditor* place_;
  QLabel* echo_;
  ChoiceField* mechanism_;
  ChoiceField* grade_;
  ChoiceField* extent_;
  ChoiceField* seen_;
  DateField* date_;
  QLabel* problems_;
  std::map<std::string, QCheckBox*> flags_;
};

}  // namespace endplate::ui
