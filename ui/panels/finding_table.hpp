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
  QString more{};    // of an area, beside its state: "S2, 8 mm"
};

class FindingTable : public QTableWidget {
  Q_OBJECT

 public:
  explicit FindingTable(QWidget* parent = nullptr);

  void set(std::vector<FindingRow> rows);
  const std::vector<FindingRow>& rows() const { return findings_; }
  // Rows of these muscles (by their key) and areas stand out; the first comes into sight where none
  // is.
  void point_out(const QStringList& names);
  bool is_pointed(int row) const;
  // "weak 4-", "normal 5", "not examined"
  static QString words(const FindingRow& row);

 Q_SIGNALS:
  // `value` as a case file has it; empty takes the finding away.
  void entered(FindingKind kind, const std::string& name, const QString& value);
  // Another row is the current one, whoever chose it.
  void row_changed();
  // The reader went to the row of this muscle or area; not told while findings are entered.
  void subject_chosen(const QStringList& names);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  static QString state_words(const FindingRow& row);
  void enter(int row, const QString& value);
  void step(int from);
  void show_row(int at);
  void mark_row(int at);
  void reveal();
  void tell_subject();

  std::vector<FindingRow> findings_;
  int last_ = -1;  // the row entered last, which a following + or - still means
  QStringList pointed_;
  bool to_reveal_ = false;  // a row that stands out has yet to come into sight
  bool moving_ = false;     // the table itself, not the reader
};

}  // namespace endplate::ui
