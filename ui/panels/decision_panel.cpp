#include "ui/panels/decision_panel.hpp"

#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "models/examination/case_check.hpp"
#include "models/followup/follow_up.hpp"
#include "models/plan/answer.hpp"
#include "models/recovery/recover.hpp"
#include "models/schedule/schedule.hpp"
#include "src/output/calendar.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/panels/course_words.hpp"
#include "ui/panels/lesion_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QLabel* large_paragraph(QWidget* parent, double by) {
  QLabel* label = paragraph({}, parent);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * by);
  font.setBold(true);
  label->setFont(font);
  return label;
}

// The rule that decided and the rows it stands on, each a link.
QString rows_words(const recovery::Decision& decision) {
  QStringList links;
  const auto add = [&](const std::string& id) {
    const QString row = text_of(id).toHtmlEscaped();
    links << QString("<a href=\"%1\">%1</a>").arg(row);
  };
  add(decision.rule);
  for (const std::string& row : decision.rows) add(row);
  return links.join("; ");
}

// What stands behind a date: the rule of the decision, or how a needle study is read. The last day
// of a target is of the forecast, whose rows the recovery lists.
QStringList behind(const schedule::Appointment& appointment, const recovery::Decision& decision,
                   const schedule::Schedule& schedule) {
  if (appointment.key == "decision" || appointment.key.starts_with("step-")) {
    return {text_of(decision.rule)};
  }
  QStringList rows;
  for (const schedule::EmgStudy& study : schedule.emg) {
    if (study.key != appointment.key) continue;
    for (const schedule::EmgReading& reading : study.readings) rows << text_of(reading.id);
  }
  return rows;
}

QString by_words(const recovery::Decision& decision, casefile::Date today) {
  if (decision.by_from == "today" && decision.by_days == 0.0) return DecisionPanel::tr("now");
  if (decision.by_date) {
    const QString date = date_words(*decision.by_date);
    return decision.overdue ? DecisionPanel::tr("%1, today: the usual date has passed").arg(date)
                            : date + " (" + age_words(*decision.by_date, today) + ')';
  }
  return DecisionPanel::tr("%1 after the %2")
      .arg(span_words(decision.by_days), told(decision.by_from));
}

cli::CalendarCase calendar_case(const CaseDocument& document) {
  const auto patient = document.last_valid();
  return {patient->label, patient->limb.side, document.today()};
}

}  // namespace

DecisionPanel::DecisionPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What next, and by when?"), Kind::result, Body::scrolls,
            {Question::recovery, Question::followup, Question::check, Question::plan}, parent) {
  next_ = large_paragraph(this, 1.35);
  next_->setObjectName("next");
  next_->setAccessibleName(tr("Decision"));
  body()->addWidget(next_);
  facts_ = new QWidget(this);
  auto* grid = new QGridLayout(facts_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(8);
  grid->setHorizontalSpacing(12);
  grid->setColumnStretch(1, 1);
  const auto add = [&](const QString& what, QWidget* words) {
    const int row = grid->rowCount();
    grid->addWidget(new QLabel(what, this), row, 0, Qt::AlignTop);
    grid->addWidget(words, row, 1);
  };
  by_ = large_paragraph(this, 1.1);
  by_->setObjectName("by");
  unless_ = paragraph({}, this);
  because_ = paragraph({}, this);
  evidence_ = paragraph({}, this);
  evidence_->setObjectName("rows");
  evidence_->setAccessibleName(tr("Rows behind the decision"));
  evidence_->setTextFormat(Qt::RichText);
  evidence_->setTextInteractionFlags(Qt::TextBrowserInteraction);
  connect(evidence_, &QLabel::linkActivated, this, &Panel::evidence_wanted);
  lesions_ = paragraph({}, this);
  practice_ = paragraph({}, this);
  course_ = paragraph({}, this);
  add(tr("By"), by_);
  add(tr("Unless"), unless_);
  add(tr("Because"), because_);
  add(tr("Evidence"), evidence_);
  add(tr("Lesion"), lesions_);
  add(tr("Course"), course_);
  add(tr("Practice"), practice_);
  body()->addWidget(facts_);

  auto* row = new QHBoxLayout;
  dates_head_ = heading(tr("Dates from here on"), this);
  calendar_ = new QPushButton(tr("Save as calendar..."), this);
  row->addWidget(dates_head_, 1);
  withdraw_ = new QPushButton(tr("Take back..."), this);
  withdraw_->setToolTip(
      tr("From a calendar that was saved before: the entries that no longer "
         "stand, as cancelled"));
  calendar_->setObjectName("calendar");
  withdraw_->setObjectName("withdraw");
  row->addWidget(calendar_);
  row->addWidget(withdraw_);
  body()->addLayout(row);
  connect(calendar_, &QPushButton::clicked, this, &DecisionPanel::save_calendar);
  connect(withdraw_, &QPushButton::clicked, this, &DecisionPanel::withdraw_calendar);
  dates_ = new RowTable(tr("Dates"), this);
  dates_->set_whole(true);
  body()->addWidget(dates_);
  first_head_ = heading(tr("The first step among the options"), this);
  first_ = paragraph({}, this);
  body()->addWidget(first_head_);
  body()->addWidget(first_);
  changes_head_ = heading(tr("What would change this"), this);
  changes_ = new RowTable(tr("What would change the decision"), this);
  changes_->set_whole(true);
  body()->addWidget(changes_head_);
  body()->addWidget(changes_);
  for (const RowTable* table : {dates_, changes_}) {
    connect(table, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  }
  unknown_head_ = heading(tr("Not known yet, and worth knowing"), this);
  unknown_ = paragraph({}, this);
  body()->addWidget(unknown_head_);
  body()->addWidget(unknown_);
  body()->addStretch(1);
}

void DecisionPanel::show_answers() {
  show_decision();
  show_changes();
  const auto& check = desk_.answers.check();
  QStringList lines;
  if (check.answer != nullptr) {
    for (const casefile::Remark& remark : check.answer->worth_giving) {
      lines << QString::fromUtf8("\u2022 %1: %2").arg(place_words(remark.place), told(remark.why));
    }
  }
  unknown_->setText(lines.join('\n'));
  unknown_head_->setVisible(!lines.isEmpty());
  unknown_->setVisible(!lines.isEmpty());
}

// After later visits the course that they show counts; before, the forecast alone.
DecisionPanel::Basis DecisionPanel::basis() const {
  const auto patient = desk_.document.last_valid();
  const bool visited = patient != nullptr && !patient->observations.empty();
  if (visited) {
    const auto& held = desk_.answers.followup();
    if (held.answer == nullptr) return {};
    return {&held.answer->answer->recovery, held.answer->schedule.get(), held.stale, true};
  }
  const auto& held = desk_.answers.recovery();
  if (held.answer == nullptr) return {};
  return {held.answer->answer.get(), held.answer->schedule.get(), held.stale, false};
}

void DecisionPanel::show_decision() {
  const Basis now = basis();
  const bool any = now.answer != nullptr;
  for (QWidget* widget :
       std::initializer_list<QWidget*>{facts_, dates_head_, dates_, calendar_, withdraw_}) {
    widget->setVisible(any);
  }
  if (!any) {
    const bool failed = desk_.answers.recovery().error || desk_.answers.followup().error;
    next_->setText(failed ? tr("No decision: see above.") : tr("Being reckoned ..."));
    return;
  }
  const recovery::RecoveryAnswer& answer = *now.answer;
  const recovery::Decision& decision = answer.decision;
  course_->setText(now.visited
                       ? course_words(*desk_.answers.followup().answer->answer).join('\n')
                       : tr("no later visit yet: see the dates below for what to look for"));
  next_->setText(told(decision.next) + '.');
  by_->setText(by_words(decision, desk_.document.today()));
  unless_->setText(decision.unless.empty() ? tr("nothing is named") : told(decision.unless));
  QStringList reasons;
  for (const std::string& reason : decision.reasons) {
    reasons << QString::fromUtf8("\u2022 ") + told(reason);
  }
  reasons << tr("Source: %1 (%2)").arg(text_of(decision.source), told(decision.provenance));
  because_->setText(reasons.join('\n'));
  evidence_->setText(rows_words(decision));
  lesions_->setText(lesion_words(answer).join('\n'));
  practice_->setText(decision.practice.empty() ? tr("no common date") : told(decision.practice));

  std::vector<Line> rows;
  for (const schedule::Appointment& appointment : now.schedule->appointments) {
    const QString date = date_words(appointment.date);
    rows.push_back({{{date, date},
                     {age_words(appointment.date, desk_.document.today()), date},
                     {told(appointment.what)},
                     {told(appointment.why)}},
                    {},
                    behind(appointment, decision, *now.schedule)});
  }
  const bool dated = !rows.empty();
  calendar_->setEnabled(dated);
  dates_head_->setText(dated ? tr("Dates from here on")
                             : tr("No dates: the date of the injury is not known"));
  dates_->setVisible(dated);
  dates_->set({{tr("Date")}, {tr("When")}, {tr("What"), false, true}, {tr("Why"), false, true}},
              std::move(rows));
}

void DecisionPanel::show_changes() {
  const auto& plan = desk_.answers.plan();
  // The options stand on the case before later visits, and must not speak against the decision.
  const bool any = plan.answer != nullptr && !basis().visited;
  first_head_->setVisible(any);
  first_->setVisible(any);
  changes_head_->setVisible(any);
  changes_->setVisible(any && !plan.answer->what_if.empty());
  if (plan.answer == nullptr) return;
  QStringList firsts;
  for (const plan::Option& option : plan.answer->options) {
    if (option.first) firsts << opening(told(option.name)) + ": " + told(option.entry_condition);
  }
  first_->setText(firsts.isEmpty() ? tr("none of the options is the first step yet")
                                   : firsts.join('\n'));
  std::vector<Line> rows;
  for (const plan::WhatIf& change : plan.answer->what_if) {
    rows.push_back({{{told(change.input)}, {told(change.value)}, {told(change.becomes)}},
                    {},
                    {text_of(change.rule)}});
  }
  changes_head_->setText(rows.empty() ? tr("No single input of the rules changes the next step")
                                      : tr("What would change this"));
  changes_->set({{tr("If")}, {tr("were")}, {tr("then"), false, true}}, std::move(rows));
}

const schedule::Schedule* DecisionPanel::current_schedule() {
  const Basis now = basis();
  if (now.answer != nullptr && !now.stale && desk_.document.last_valid() != nullptr) {
    return now.schedule;
  }
  QMessageBox::information(this, tr("Calendar"),
                           tr("The dates are not current. Wait until they are reckoned."));
  return nullptr;
}

void DecisionPanel::keep_calendar(const Expected<std::string>& text) {
  if (!text) {
    QMessageBox::warning(this, tr("Calendar"), problem_words(text.error().problems));
    return;
  }
  const QString path = QFileDialog::getSaveFileName(this, tr("Save as calendar"), "endplate.ics",
                                                    tr("Calendar (*.ics)"));
  if (path.isEmpty()) return;
  const auto written = write_bytes(path, *text);
  if (!written) {
    QMessageBox::warning(this, tr("Calendar"), problem_words(written.error().problems));
  }
}

void DecisionPanel::save_calendar() {
  const schedule::Schedule* schedule = current_schedule();
  if (schedule == nullptr) return;
  keep_calendar(cli::calendar(calendar_case(desk_.document), schedule->appointments));
}

void DecisionPanel::withdraw_calendar() {
  const QString issued = QFileDialog::getOpenFileName(
      this, tr("The calendar that was saved before"), {}, tr("Calendar (*.ics)"));
  if (issued.isEmpty()) return;
  const auto bytes = read_bytes(issued);
  if (!bytes) return keep_calendar(std::unexpected(bytes.error()));
  const schedule::Schedule* schedule = current_schedule();
  if (schedule == nullptr) return;
  const auto text =
      cli::withdrawal(calendar_case(desk_.document), schedule->appointments, *bytes, plain(issued));
  if (text && text->empty()) {
    QMessageBox::information(this, tr("Calendar"),
                             tr("Every entry from today on still stands or only moves: save the "
                                "calendar anew, and the entries move with it."));
    return;
  }
  keep_calendar(text);
}

}  // namespace endplate::ui
