#pragma once
// The incisions that the case holds: "/incisions", each with its marks.
#include <QWidget>

#include "ui/app/desk.hpp"

class QLabel;
class QPushButton;

namespace endplate::ui {

class ChoiceField;
class ItemList;
class NumberField;
class SkinMarkFields;
class TextField;

class IncisionEditor : public QWidget {
  Q_OBJECT

 public:
  explicit IncisionEditor(Desk desk, QWidget* parent = nullptr);
  void refresh();

 Q_SIGNALS:
  void judge_wanted(int incision);  // index into the case's incisions

 private:
  QWidget* add_marks();
  void show_incision();
  void show_mark();

  Desk desk_;
  ItemList* list_;
  QPushButton* judge_;
  QWidget* form_;
  TextField* label_;
  ChoiceField* kind_;
  NumberField* depth_;
  ItemList* marks_;
  SkinMarkFields* mark_;
  QLabel* aim_head_;
  SkinMarkFields* aim_;
};

}  // namespace endplate::ui
