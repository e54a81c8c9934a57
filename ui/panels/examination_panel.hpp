#pragma once
// What was found, at which visit: power, feeling, signs, and the advancing Tinel sign.
#include "ui/panels/panel.hpp"

class QCheckBox;
class QComboBox;

namespace endplate::ui {

class AreaFields;
class DateField;
class FindingTable;
class ItemList;
class PlaceEditor;
class RangeEditor;
class StudyEditor;
class TermField;
struct FindingRow;

class ExaminationPanel : public Panel {
  Q_OBJECT

 public:
  explicit ExaminationPanel(Desk desk, QWidget* parent = nullptr);

  FindingTable& table() { return *table_; }
  void point_out(const QStringList& names) override;

 protected:
  void show_case() override;
  void show_answers() override;

 private:
  void add_visits();
  QWidget* add_tinel();
  void show_visit();
  void show_area();
  std::vector<FindingRow> rows() const;

  std::string visit_ = "/examination";
  QComboBox* visits_;
  DateField* date_;
  QCheckBox* all_;
  QLabel* summary_;
  FindingTable* table_;
  AreaFields* area_;
  ItemList* tinel_;
  QWidget* tinel_form_;
  TermField* tinel_nerve_;
  PlaceEditor* tinel_place_;
  RangeEditor* ranges_;
  StudyEditor* studies_;
};

}  // namespace endplate::ui
