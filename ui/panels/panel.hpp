#pragma once
// One question on the right of the window: its head with the side in capitals and the age of what
// is known, its body, and the standing caution where it shows results.
#include <QLabel>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <vector>

#include "models/core/error.hpp"
#include "ui/answers/answers.hpp"
#include "ui/app/desk.hpp"
#include "ui/panels/place_words.hpp"

class QFrame;
class QPushButton;
class QVBoxLayout;

namespace endplate::ui {

class Veil;

class Panel : public QWidget {
  Q_OBJECT

 public:
  enum class Kind { entry, result };
  enum class Body { scrolls, fills };  // `fills`: its tables scroll by themselves

  // `question` is the head, `asked` the answers that are shown, the most urgent first.
  Panel(Desk desk, const QString& question, Kind kind, Body body, std::vector<Question> asked,
        QWidget* parent = nullptr);

  const QString& question() const { return question_; }
  const std::vector<Question>& asked() const { return asked_; }

  // Asks for what it shows and brings it up to date; called when it comes on screen.
  void come_forward();
  QString head_text() const;  // side and dates, as shown
  // What was picked on the limb, in standard terms: rows about it stand out.
  virtual void point_out(const QStringList& names);
  QString notice_text() const;  // of the bar above the body; empty while it is hidden

 Q_SIGNALS:
  // A nerve transfer whose way is wanted on the limb: cut so far along donor and recipient, mm from
  // their origins. Empty names: none.
  void transfer_shown(const QString& donor, double donor_cut_mm, const QString& recipient,
                      double recipient_cut_mm);
  // A row of a table whose published figures are wanted.
  void evidence_wanted(const QString& row);
  // The reader chose a row about these nerves, muscles (by their key) or areas.
  void subject_chosen(const QStringList& names);
  // Another question, by its name in the window.
  void panel_wanted(const QString& name);

 protected:
  // What stands in the case has changed; what stands in an answer has.
  virtual void show_case() {}
  virtual void show_answers() {}

  QVBoxLayout* body() { return body_; }
  void changeEvent(QEvent* event) override;
  void refresh();

  Desk desk_;

 private:
  void refresh_head();
  void refresh_notice();

  QString question_;
  Kind kind_;
  std::vector<Question> asked_;
  QLabel* side_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* dates_ = nullptr;
  QFrame* notice_ = nullptr;
  QLabel* notice_text_ = nullptr;
  QPushButton* again_ = nullptr;
  QVBoxLayout* body_ = nullptr;
  Veil* veil_ = nullptr;
};

// The standing caution in the language of the screen.
QString caution_words();
// Words that wrap and can be copied.
QLabel* paragraph(const QString& text = {}, QWidget* parent = nullptr);
// A small head between the parts of a panel.
QLabel* heading(const QString& text, QWidget* parent = nullptr);

}  // namespace endplate::ui
