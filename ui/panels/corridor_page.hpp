#pragma once
// Beside the cut that is judged: the line of least risk, in words and place by place.
#include <QWidget>
#include <optional>

#include "ui/app/desk.hpp"

class QCheckBox;
class QLabel;
class QSpinBox;

namespace endplate::incision {
struct IncisionAnswer;
}

namespace endplate::ui {

class RowTable;
struct IncisionRequest;

class CorridorPage : public QWidget {
  Q_OBJECT

 public:
  explicit CorridorPage(Desk desk, QWidget* parent = nullptr);
  // Puts what is wanted here into a request.
  void write(IncisionRequest& request) const;
  // Not wanted any more: another case.
  void forget();
  // Null while there is no answer.
  void show_answer(const incision::IncisionAnswer* answer);

 Q_SIGNALS:
  void changed();  // what is wanted

 private:
  QString words(const incision::IncisionAnswer& answer) const;

  Desk desk_;
  QCheckBox* on_;
  QSpinBox* beside_;
  QSpinBox* within_;
  QLabel* words_;
  RowTable* places_;
};

}  // namespace endplate::ui
