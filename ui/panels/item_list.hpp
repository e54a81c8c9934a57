#pragma once
// The items of a list of the case, one of them chosen: operations, steps of one, Tinel points.
#include <QWidget>
#include <functional>
#include <string>

#include "ui/app/desk.hpp"

class QListWidget;
class QPushButton;

namespace endplate::ui {

class ItemList : public QWidget {
  Q_OBJECT

 public:
  // `pointer`: of the list. `what` names one item for the undo menu. `words` says what stands at an
  // item's pointer. `fresh` is the text of a new item's JSON.
  ItemList(Desk desk, const std::string& pointer, const QString& what,
           std::function<QString(const std::string&)> words, const std::string& fresh,
           QWidget* parent = nullptr);

  void set_pointer(const std::string& pointer);
  int chosen() const { return chosen_; }
  // JSON Pointer of the chosen item; empty when there is none.
  std::string chosen_pointer() const;
  void refresh();

 Q_SIGNALS:
  void chosen_changed();
  void added();

 private:
  Desk desk_;
  std::string pointer_;
  QString what_;
  std::function<QString(const std::string&)> words_;
  std::string fresh_;
  QListWidget* list_;
  QPushButton* take_;
  int chosen_ = -1;
};

}  // namespace endplate::ui
