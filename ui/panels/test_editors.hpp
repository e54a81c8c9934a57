#pragma once
// Pages of the examination beside the list of findings: needle and conduction studies, and how far
// the joints move.
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"

class QFormLayout;

namespace endplate::ui {

class ChoiceField;
class DateField;
class ItemList;
class NumberField;
class TermField;

// "/electrodiagnosis": each study with its date and one muscle or nerve.
class StudyEditor : public QWidget {
  Q_OBJECT

 public:
  explicit StudyEditor(Desk desk, QWidget* parent = nullptr);
  void refresh();

 private:
  void show_study();
  Desk desk_;
  ItemList* list_;
  QWidget* form_;
  DateField* date_;
  TermField* muscle_;
  TermField* nerve_;
  ChoiceField* fibrillation_;
  ChoiceField* units_;
  ChoiceField* snap_;
  ChoiceField* cmap_;
  ChoiceField* stimulation_;
};

// "movements" of one visit: active and passive range.
class RangeEditor : public QWidget {
  Q_OBJECT

 public:
  explicit RangeEditor(Desk desk, QWidget* parent = nullptr);
  void set_visit(const std::string& visit);  // "/examination"

 private:
  void show_range();
  Desk desk_;
  ItemList* list_;
  QWidget* form_;
  TermField* movement_;
  NumberField* active_;
  NumberField* passive_;
};

}  // namespace endplate::ui
