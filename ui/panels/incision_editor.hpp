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
  ItemList* list_ = nullptr;
  QPushButton* judge_ = nullptr;
  QWidget* form_ = nullptr;
  TextField* label_ = nullptr;
  ChoiceField* kind_ = nullptr;
  NumberField* depth_ = nullptr;
  ItemList* marks_ = nullptr;
  SkinMarkFields* mark_ = nullptr;
  QLabel* aim_head_ = nullptr;
  SkinMarkFields* aim_ = nullptr;
};

}  // namespace endplate::ui
