#pragma once
// What was found in one skin area beside its state: the S grade and the two-point distance.
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"
#include "ui/document/findings.hpp"

class QComboBox;
class QLabel;
class QLineEdit;

namespace endplate::ui {

class AreaFields : public QWidget {
  Q_OBJECT

 public:
  explicit AreaFields(Desk desk, QWidget* parent = nullptr);
  // `visit`: "/examination"; an empty `area`: none is chosen, and nothing can be entered.
  void show_area(const std::string& visit, const std::string& area);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  AreaDetail detail() const;  // of the area that is shown
  void enter(const char* key, const Json& value, const QString& what);
  void enter_grade(int index);
  void enter_distance();

  Desk desk_;
  std::string visit_;
  std::string area_;
  QLabel* name_;
  QComboBox* grade_;
  QLineEdit* distance_;
};

}  // namespace endplate::ui
