#pragma once
// A list of names in the case: what the patient needs most, what is not available, variants.
#include <QStringList>
#include <QWidget>
#include <string>

#include "ui/app/desk.hpp"

class QComboBox;
class QListWidget;

namespace endplate::ui {

class NameList : public QWidget {
  Q_OBJECT

 public:
  NameList(Desk desk, const std::string& pointer, const QString& what, const QStringList& names,
           QWidget* parent = nullptr);

 private:
  void refresh();
  void add();
  void take();

  Desk desk_;
  std::string pointer_;
  QString what_;
  QListWidget* list_;
  QComboBox* name_;
};

}  // namespace endplate::ui
