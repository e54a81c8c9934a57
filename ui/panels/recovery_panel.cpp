#include "ui/panels/recovery_panel.hpp"

#include <QScrollArea>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "models/recovery/recover.hpp"
#include "models/schedule/schedule.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/charts/curve_chart.hpp"
#include "ui/charts/timeline_chart.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/lesion_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/source_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using recovery::RecoveryAnswer;
using recovery::TargetKind;

QWidget* scrolled(QWidget* content) {
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(content);
  return scroll;
}

Cell months_cell(const std::optional<Summary>& days) {
  return days ? Cell(months_words(*days), days->p50) : Cell("-", 1e9);
}

QString target_words(const recovery::RecoveryTarget& target) {
  const QString kind = target.kind == TargetKind::motor ? QString() : RecoveryPanel::tr("skin: ");
  return kind + told(target.name) + (target.partial ? " *" : "");
}

QString useful_words(const recovery::TargetForecast& forecast) {
  if (!forecast.chance_useful) return RecoveryPanel::tr("not said");
  return chance_words(forecast.chance_useful->chance) + ' ' + told(forecast.chance_useful->scale);
}

// A muscle's key is its row of the table of muscles; the table of skin areas has no ids.
QStringList behind(const recovery::RecoveryTarget& target) {
  return target.kind == TargetKind::motor ? QStringList{text_of(target.id)} : QStringList();
}

// The schedule has the targets by their names alone.
QStringList about(const std::string& name, const RecoveryAnswer& answer) {
  QStringList ids;
  for (const recovery::RecoveryTarget& target : answer.targets) {
    if (target.name == name) ids << text_of(target.id);
  }
  return ids;
}

// Beside the autonomous zones, where there are any, the other areas say little.
bool leads(const recovery::RecoveryTarget& target, const RecoveryAnswer& answer) {
  const bool any =
      std::ranges::any_of(answer.targets, [](const auto& t) { return t.autonomous_zone; });
  return target.kind == TargetKind::motor || target.autonomous_zone || !any;
}

}  // namespace

RecoveryPanel::RecoveryPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("When does it come back, and with what chance?"), Kind::result, Body::fills,
            {Question::recovery}, parent) {
  lesions_ = paragraph({}, this);
  body()->addWidget(lesions_);
  tabs_ = new QTabWidget(this);
  tabs_->setDocumentMode(true);
  timeline_ = new TimelineChart(this);
  tabs_->addTab(scrolled(timeline_), tr("Timeline"));
  targets_ = new RowTable(tr("Order of return"), this);
  tabs_->addTab(targets_, tr("Table"));

  auto* window = new QWidget;
  auto* window_layout = new QVBoxLayout(window);
  window_words_ = paragraph({}, window);
  window_ = new CurveChart(tr("Chance of a useful result by the date of operation"), window);
  window_table_ = new RowTable(tr("Chance by date of operation"), window);
  window_layout->addWidget(window_words_);
  window_layout->addWidget(window_, 3);
  window_layout->addWidget(window_table_, 2);
  tabs_->addTab(window, tr("Closing window"));

  auto* tinel = new QWidget;
  auto* tinel_layout = new QVBoxLayout(tinel);
  tinel_words_ = paragraph({}, tinel);
  tinel_ = new RowTable(tr("Tinel schedule"), tinel);
  tinel_layout->addWidget(tinel_words_);
  tinel_layout->addWidget(tinel_, 1);
  tabs_->addTab(tinel, tr("Tinel"));

  auto* look = new QWidget;
  auto* look_layout = new QVBoxLayout(look);
  sheet_words_ = paragraph({}, look);
  sheet_ = new RowTable(tr("What to look for"), look);
  emg_ = new RowTable(tr("Needle studies"), look);
  look_layout->addWidget(sheet_words_);
  look_layout->addWidget(sheet_, 3);
  look_layout->addWidget(heading(tr("Needle studies"), look));
  look_layout->addWidget(emg_, 2);
  tabs_->addTab(look, tr("What to look for"));
  sources_ = new SourceTable(this);
  connect(sources_, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  tabs_->addTab(sources_, tr("Sources"));
  for (const RowTable* table : {targets_, sheet_, emg_}) {
    connect(table, &RowTable::subject_chosen, this, &Panel::subject_chosen);
    connect(table, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  }
  body()->addWidget(tabs_, 1);
  notes_ = paragraph({}, this);
  body()->addWidget(notes_);
}

void RecoveryPanel::show_answers() {
  const auto& held = desk_.answers.recovery();
  const bool any = held.answer != nullptr;
  tabs_->setVisible(any && held.answer->answer->no_forecast.empty());
  if (!any) {
    lesions_->clear();
    notes_->clear();
    return;
  }
  const RecoveryAnswer& answer = *held.answer->answer;
  QStringList lines = lesion_words(answer);
  if (!answer.no_forecast.empty()) {
    lines << tr("No forecast: %1").arg(told(answer.no_forecast));
  }
  lesions_->setText(lines.join('\n'));
  QStringList notes;
  for (const std::string& warning : answer.warnings) notes << tr("Warning: ") + told(warning);
  if (answer.no_forecast.empty()) {
    notes << tr(
        "Months from the injury: the middle, and 90 in 100 of those whose axons grow. Axons "
        "at a muscle are not movement. * part of its axons come another way or were spared.");
  }
  notes_->setText(notes.join('\n'));
  show_timeline();
  show_targets();
  show_window();
  show_tinel();
  show_sheet();
  sources_->show_sources(answer.sources, desk_.document.tables().package);
}

void RecoveryPanel::show_timeline() {
  const RecoveryAnswer& answer = *desk_.answers.recovery().answer->answer;
  std::vector<TimelineRow> rows;
  for (const recovery::RecoveryTarget& target : answer.targets) {
    if (!leads(target, answer)) continue;
    const auto& forecast = target.forecast;
    rows.push_back({target_words(target), useful_words(forecast), forecast.first_movement_days,
                    forecast.useful_days});
  }
  std::vector<TimelineMark> marks;
  if (answer.injury_date) {
    marks.push_back(
        {recovery::days_between(*answer.injury_date, desk_.document.today()), tr("today"), true});
  }
  if (answer.timing && answer.timing->best_before_days) {
    marks.push_back({*answer.timing->best_before_days,
                     tr("operate before %1, if at all")
                         .arg(day_words(answer.injury_date, *answer.timing->best_before_days)),
                     false});
  }
  timeline_->set(std::move(rows), std::move(marks), answer.injury_date);
}

void RecoveryPanel::show_targets() {
  const RecoveryAnswer& answer = *desk_.answers.recovery().answer->answer;
  const Settings& settings = desk_.settings;
  std::vector<Line> rows;
  for (const recovery::RecoveryTarget& target : answer.targets) {
    const recovery::TargetForecast& forecast = target.forecast;
    QString tip;
    if (forecast.chance_useful && forecast.chance_useful->p05) {
      tip = tr("In 90 in 100 published series: %1 to %2")
                .arg(chance_words(*forecast.chance_useful->p05),
                     chance_words(*forecast.chance_useful->p95));
    }
    rows.push_back({{{target_words(target), {}, text_of(target.nerve)},
                     {settings.length(forecast.distance_mm.p50), forecast.distance_mm.p50},
                     months_cell(forecast.axons_arrive_days),
                     months_cell(forecast.first_movement_days),
                     months_cell(forecast.useful_days),
                     {chance_words(forecast.chance_axons_in_time), forecast.chance_axons_in_time},
                     {useful_words(forecast),
                      forecast.chance_useful ? forecast.chance_useful->chance : -1.0, tip}},
                    {text_of(target.id)},
                    behind(target)});
  }
  targets_->set({{tr("Target"), false, true},
                 {tr("Way, %1").arg(settings.unit()), true},
                 {tr("Axons, mo"), true, false, tr("Axons arrive, months from the injury")},
                 {tr("M1, mo"), true, false, tr("First movement, months from the injury")},
                 {tr("M3/S3, mo"), true, false, tr("Useful, months from the injury")},
                 {tr("In time"), true, false,
                  tr("Chance that axons find a muscle that can still become useful")},
                 {tr("Useful"), true, false, tr("Chance of a useful result, with its scale")}},
                std::move(rows));
}

void RecoveryPanel::show_window() {
  const RecoveryAnswer& answer = *desk_.answers.recovery().answer->answer;
  window_->setVisible(answer.timing.has_value());
  window_table_->setVisible(answer.timing.has_value());
  if (!answer.timing) {
    window_words_->setText(told(answer.no_timing));
    return;
  }
  const recovery::OperationTiming& timing = *answer.timing;
  constexpr double kMonth_days = 365.25 / 12.0;
  std::vector<QPointF> points;
  std::vector<Cells> rows;
  for (const recovery::ChanceByDate& point : timing.chance_by_date) {
    points.emplace_back(point.days / kMonth_days, point.chance);
    rows.push_back({{day_words(answer.injury_date, point.days), point.days},
                    {months_words(point.days), point.days},
                    {chance_words(point.chance), point.chance}});
  }
  std::vector<CurveMark> marks;
  double shade = points.back().x() + 1.0;
  if (answer.injury_date) {
    marks.push_back(
        {recovery::days_between(*answer.injury_date, desk_.document.today()) / kMonth_days,
         tr("today"), true});
  }
  if (timing.best_before_days) {
    marks.push_back(
        {*timing.best_before_days / kMonth_days,
         tr("best before %1").arg(day_words(answer.injury_date, *timing.best_before_days)), false});
  }
  if (timing.unlikely_after_days) {
    shade = *timing.unlikely_after_days / kMonth_days;
    marks.push_back(
        {shade,
         tr("unlikely after %1").arg(day_words(answer.injury_date, *timing.unlikely_after_days)),
         false});
  }
  window_words_->setText(
      tr("If a %1 is needed: the chance of %2 by the date of the operation (%3). "
         "Unlikely: under one in five.")
          .arg(told(timing.procedure), told(timing.scale), told(timing.of)));
  window_->set(std::move(points), tr("months from the injury to the operation"), std::move(marks),
               shade);
  window_table_->set({{tr("Operation on")}, {tr("Months"), true}, {tr("Chance"), true}},
                     std::move(rows));
}

void RecoveryPanel::show_tinel() {
  const RecoveryAnswer& answer = *desk_.answers.recovery().answer->answer;
  const recovery::TinelSchedule& tinel = answer.tinel;
  tinel_->setVisible(!tinel.steps.empty());
  if (tinel.steps.empty()) {
    tinel_words_->setText(told(tinel.says_nothing));
    return;
  }
  const Settings& settings = desk_.settings;
  tinel_words_->setText(
      tr("If axons grow, tapping should tingle this far beyond the lesion, toward the %1.")
          .arg(told(tinel.toward)));
  std::vector<Cells> rows;
  for (const recovery::TinelStep& step : tinel.steps) {
    rows.push_back(
        {{day_words(answer.injury_date, step.days), step.days},
         {settings.length(step.advance_mm.p50), step.advance_mm.p50},
         {tr("%1 to %2")
              .arg(settings.length(step.advance_mm.p05), settings.length(step.advance_mm.p95)),
          step.advance_mm.p05}});
  }
  tinel_->set({{tr("On")},
               {tr("Beyond the lesion, %1").arg(settings.unit()), true},
               {tr("90 in 100, %1").arg(settings.unit()), true}},
              std::move(rows));
}

void RecoveryPanel::show_sheet() {
  const RecoveryView& view = *desk_.answers.recovery().answer;
  const auto& injury = view.answer->injury_date;
  std::vector<Line> rows;
  for (const schedule::SheetRow& row : view.schedule->sheet) {
    const schedule::Window& window = row.window;
    rows.push_back({{{told(row.target) + (row.partial ? " *" : "")},
                     {told(row.sign)},
                     {day_words(injury, window.early_days), window.early_days},
                     {day_words(injury, window.middle_days), window.middle_days},
                     {day_words(injury, window.late_days), window.late_days}},
                    about(row.target, *view.answer),
                    {}});
  }
  sheet_words_->setText(rows.empty()
                            ? told(view.schedule->no_sheet)
                            : tr("One in twenty shows the sign before the first date and one in "
                                 "twenty after the last, of those whose axons grow."));
  sheet_->setVisible(!rows.empty());
  sheet_->set({{tr("Target"), false, true},
               {tr("Look for"), false, true},
               {tr("Not before")},
               {tr("Expected")},
               {tr("Late after")}},
              std::move(rows));
  std::vector<Line> studies;
  for (const schedule::EmgStudy& study : view.schedule->emg) {
    for (const schedule::EmgReading& reading : study.readings) {
      studies.push_back(
          {{{tr("%1 to %2")
                 .arg(day_words(injury, study.window.early_days),
                      day_words(injury, study.window.late_days)),
             study.window.early_days},
            {study.muscle.empty() ? tr("muscles below the lesion") : told(study.muscle)},
            {told(reading.finding)},
            {told(reading.means)},
            {text_of(reading.source)}},
           about(study.muscle, *view.answer),
           {text_of(reading.id)}});
    }
  }
  emg_->setVisible(!studies.empty());
  emg_->set({{tr("When"), false, true},
             {tr("Muscle"), false, true},
             {tr("Finding"), false, true},
             {tr("Means"), false, true},
             {tr("Source"), false, true}},
            std::move(studies));
}

}  // namespace endplate::ui
