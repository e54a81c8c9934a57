#pragma once
// What was found, muscle by muscle and area by area, entered with one key each. Not examined,
// normal and weak are told apart by their words and their shape, not by colour alone.
#include <QTableWidget>
#include <string>
#include <vector>

#include "ui/document/findings.hpp"

namespace endplate::ui {

struct FindingRow {
  bool head = false;  // only a title
  FindingKind kind = FindingKind::muscle;
  std::string name;  // standard
  QString shown;
  QString expected;  // of the model, before any finding
  QString found;     // empty: not examined
};

class FindingTable : public QTableWidget {
  Q_OBJECT

 public:
  explicit FindingTable(QWidget* parent = nullptr);

  void set(std::vector<FindingRow> rows);
  const std::vector<FindingRow>& rows() const { return findings_; }
  // "weak 4-", "normal 5", "not examined"
  static QString words(const FindingRow& row);

 Q_SIGNALS:
  // `value` as a case file has it; empty takes the finding away.
  void entered(FindingKind kind, const std::string& name, const QString& value);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void enter(int row, const QString& value);
  void step(int from);
  void show_row(int at);

  std::vector<FindingRow> findings_;
  int last_ = -1;  // the row entered last, which a following + or - still means
};

}  // namespace endplate::ui
