#pragma once
// Where on a nerve: by a landmark and an offset, or a root, trunk, cord or branch.
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"

class QComboBox;
class QStackedWidget;

namespace endplate::ui {

class ChoiceField;
class LandmarkFields;
class NumberField;
class TermField;

class PlaceEditor : public QWidget {
  Q_OBJECT

 public:
  // `pointer`: of the place, "/injuries/0/at".
  PlaceEditor(Desk desk, const std::string& pointer, bool plexus, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);

 private:
  void refresh();
  void choose(int way);

  Desk desk_;
  std::string pointer_;
  bool anew_ = true;  // another place is shown
  QComboBox* way_;
  QStackedWidget* pages_;
  LandmarkFields* landmark_;
  TermField* branch_;
  NumberField* from_origin_;
  ChoiceField* root_ = nullptr;
  ChoiceField* level_ = nullptr;
  ChoiceField* trunk_ = nullptr;
  ChoiceField* cord_ = nullptr;
};

}  // namespace endplate::ui
