#pragma once
// What a tape found on this limb and on the other, measure by measure.
#include <QStringList>
#include <QWidget>

#include "ui/app/desk.hpp"

class QComboBox;
class QGridLayout;

namespace endplate::ui {

class MeasureFields : public QWidget {
  Q_OBJECT

 public:
  explicit MeasureFields(Desk desk, QWidget* parent = nullptr);
  // Rows for what the case holds; one that was added and is empty stays.
  void refresh();

 private:
  void forget();
  void add_chosen();
  void add_row(const QString& name);

  Desk desk_;
  QWidget* table_;
  QGridLayout* rows_;
  QComboBox* measure_;
  QStringList shown_;
};

}  // namespace endplate::ui
