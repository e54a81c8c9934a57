#pragma once
// A mark on the skin: from a landmark along the limb, then across it, on the side whose skin is
// meant.
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"

namespace endplate::ui {

class ChoiceField;
class LandmarkFields;
class NumberField;

class SkinMarkFields : public QWidget {
  Q_OBJECT

 public:
  // `pointer`: of the mark, "/incisions/0/points/0".
  SkinMarkFields(Desk desk, const std::string& pointer, QWidget* parent = nullptr);
  void set_pointer(const std::string& pointer);

 private:
  LandmarkFields* along_;
  NumberField* aside_mm_;
  ChoiceField* aside_;
  ChoiceField* surface_;
};

// As it stands in the case: "250 mm proximal to olecranon tip, on posterior".
QString skin_mark_words(const Desk& desk, const std::string& pointer);

}  // namespace endplate::ui
