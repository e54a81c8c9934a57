#pragma once
// Points of nerves that ultrasound found: "/limb/ultrasound".
#include <QWidget>

#include "ui/app/desk.hpp"

namespace endplate::ui {

class ItemList;
class LandmarkFields;
class NumberField;
class TermField;

class UltrasoundEditor : public QWidget {
  Q_OBJECT

 public:
  explicit UltrasoundEditor(Desk desk, QWidget* parent = nullptr);
  void refresh();

 private:
  void show_point();

  Desk desk_;
  ItemList* list_;
  QWidget* form_;
  TermField* nerve_;
  TermField* point_;
  LandmarkFields* place_;
  NumberField* error_;
};

}  // namespace endplate::ui
