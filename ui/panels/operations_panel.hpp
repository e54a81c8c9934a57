#pragma once
// What was operated or is planned, what the patient needs most, and what is not available.
#include "ui/panels/panel.hpp"

namespace endplate::ui {

class ChoiceField;
class DateField;
class ItemList;
class NumberField;
class PlaceEditor;
class TermField;

class OperationsPanel : public Panel {
  Q_OBJECT

 public:
  explicit OperationsPanel(Desk desk, QWidget* parent = nullptr);

 protected:
  void show_case() override;

 private:
  void add_operation();
  void add_step();
  void show_operation();
  void show_step();

  ItemList* operations_;
  QWidget* operation_form_;
  DateField* date_;
  ChoiceField* state_;
  ChoiceField* potential_;
  NumberField* gap_;
  ItemList* steps_;
  QWidget* step_form_;
  ChoiceField* procedure_;
  TermField* nerve_;
  PlaceEditor* place_;
  NumberField* cables_;
  TermField* donor_;
  ChoiceField* layer_;
};

}  // namespace endplate::ui
