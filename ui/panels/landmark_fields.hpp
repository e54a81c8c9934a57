#pragma once
// "118 mm proximal to the lateral epicondyle": `landmark`, `offset_mm` and `toward` of one object
// of the case.
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"

namespace endplate::ui {

class ChoiceField;
class NumberField;
class TermField;

class LandmarkFields : public QWidget {
  Q_OBJECT

 public:
  // `pointer`: of the object that has the keys, "/injuries/0/at".
  LandmarkFields(Desk desk, const std::string& pointer, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);

 private:
  NumberField* offset_;
  ChoiceField* toward_;
  TermField* landmark_;
};

// As it stands in the case: "118 mm proximal to lateral epicondyle"; "place not known".
QString landmark_words(const Desk& desk, const std::string& pointer);

}  // namespace endplate::ui
