#include "ui/panels/incision_panel.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>
#include <cmath>

#include "models/casefile/words.hpp"
#include "models/incision/approach_plans.hpp"
#include "models/incision/incision.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/charts/curve_chart.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/corridor_page.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/incision_editor.hpp"
#include "ui/panels/result_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

enum Source { by_name, of_the_case, of_ones_own, drawn };
constexpr double kShown_mm = 40.0;

QString pose_words(const std::map<std::string, double>& pose) {
  if (pose.empty()) return IncisionPanel::tr("anatomical position, forearm supinated");
  QStringList parts;
  for (const auto& [joint, degrees] : pose) {
    parts << joint_words(joint).toLower() + ' ' + QString::number(degrees) +
                 QString::fromUtf8("\u00b0");
  }
  return parts.join(", ");
}

}  // namespace

IncisionPanel::IncisionPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("Where may a knife, portal or needle go?"), Kind::result, Body::fills,
            {Question::incision}, parent) {
  add_choice();
  connect(&desk_.document, &CaseDocument::another_opened, this, [this] {
    from_->setCurrentIndex(by_name);
    pages_->setCurrentIndex(by_name);
    approach_->setCurrentIndex(-1);
    approach_->clearEditText();
    marks_->clear();
    depth_->clear();
    corridor_->forget();
  });
  where_ = paragraph({}, this);
  body()->addWidget(where_);
  tabs_ = new QTabWidget(this);
  tabs_->setDocumentMode(true);
  nerves_ = new RowTable(tr("Nerves near the cut"), this);
  profile_ = new CurveChart(tr("Chance of a nerve within 10 mm along the cut"), this);
  rules_ = new RowTable(tr("Published rules about this place"), this);
  connect(rules_, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  tabs_->addTab(nerves_, tr("Nerves"));
  tabs_->addTab(profile_, tr("Along the cut"));
  tabs_->addTab(rules_, tr("Published rules"));
  corridor_ = new CorridorPage(desk_, this);
  tabs_->addTab(corridor_, tr("Corridor"));
  connect(corridor_, &CorridorPage::changed, this, &IncisionPanel::choose);
  editor_ = new IncisionEditor(desk_, this);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(editor_);
  tabs_->addTab(scroll, tr("Of this case"));
  connect(editor_, &IncisionEditor::judge_wanted, this, [this](int incision) {
    from_->setCurrentIndex(of_the_case);
    pages_->setCurrentIndex(of_the_case);
    of_case_->setCurrentIndex(incision);
    choose();
    tabs_->setCurrentWidget(nerves_);
  });
  body()->addWidget(tabs_, 1);
  notes_ = paragraph({}, this);
  body()->addWidget(notes_);
}

void IncisionPanel::add_choice() {
  auto* row = new QHBoxLayout;
  from_ = new QComboBox(this);
  from_->setAccessibleName(tr("Which cut"));
  from_->addItems(
      {tr("Standard approach"), tr("Of this case"), tr("My own marks"), tr("Drawn on the limb")});
  pages_ = new QStackedWidget(this);
  approach_ = new QComboBox(this);
  QStringList names;
  if (const auto plans = incision::ApproachPlans::from(desk_.document.tables().package)) {
    for (const auto& plan : plans->plans()) names << text_of(plan.cut.label);
  }
  make_completing(*approach_, names);
  approach_->setCurrentIndex(-1);
  approach_->setAccessibleName(tr("Approach"));
  approach_->lineEdit()->setPlaceholderText(tr("choose or type the name of an approach"));
  of_case_ = new QComboBox(this);
  of_case_->setAccessibleName(tr("Incision of the case"));
  auto* own = new QWidget(this);
  auto* own_row = new QHBoxLayout(own);
  own_row->setContentsMargins(0, 0, 0, 0);
  kind_ = new QComboBox(own);
  kind_->setAccessibleName(tr("Kind of cut"));
  kind_->addItem(tr("line"), "line");
  kind_->addItem(tr("portal"), "portal");
  kind_->addItem(tr("pin"), "pin");
  kind_->addItem(tr("injection"), "injection");
  marks_ = new QLineEdit(own);
  marks_->setAccessibleName(tr("Marks"));
  marks_->setPlaceholderText(
      tr("olecranon tip, 250 proximal, on posterior; olecranon tip, 50 "
         "proximal, on posterior"));
  marks_->setToolTip(
      tr("A landmark, then mm along and across the limb and the side whose skin is "
         "meant; marks of a line are parted by semicolons."));
  own_row->addWidget(kind_);
  own_row->addWidget(marks_, 1);
  pages_->addWidget(approach_);
  pages_->addWidget(of_case_);
  pages_->addWidget(own);
  pages_->addWidget(
      paragraph(tr("Choose 'Draw incision' above the limb and click along the skin."), this));
  pages_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
  depth_ = new QLineEdit(this);
  depth_->setAccessibleName(tr("Depth, mm"));
  depth_->setPlaceholderText(tr("depth, mm"));
  depth_->setToolTip(tr("Straight in from the skin; empty: to the first bone."));
  depth_->setMaximumWidth(90);
  row->addWidget(from_);
  row->addWidget(pages_, 1);
  row->addWidget(depth_);
  body()->addLayout(row);
  connect(from_, &QComboBox::activated, this, [this](int index) {
    pages_->setCurrentIndex(index);
    choose();
  });
  connect(approach_, &QComboBox::activated, this, &IncisionPanel::choose);
  connect(of_case_, &QComboBox::activated, this, &IncisionPanel::choose);
  connect(kind_, &QComboBox::activated, this, &IncisionPanel::choose);
  connect(marks_, &QLineEdit::editingFinished, this, &IncisionPanel::choose);
  connect(depth_, &QLineEdit::editingFinished, this, &IncisionPanel::choose);
}

void IncisionPanel::choose() {
  IncisionRequest request;
  switch (from_->currentIndex()) {
    case by_name:
      request.approach = plain(approach_->currentText());
      break;
    case of_the_case:
      request.of_case = static_cast<std::size_t>(std::max(of_case_->currentIndex(), 0));
      break;
    case drawn:
      request.picked_mm = desk_.answers.incision_request().picked_mm;
      break;
    default:
      request.marks = plain(marks_->text().trimmed());
      request.kind = plain(kind_->currentData().toString());
      break;
  }
  bool is_number = false;
  const double depth = depth_->text().toDouble(&is_number);
  if (is_number && depth > 0.0) request.depth_mm = depth;
  corridor_->write(request);
  desk_.answers.set_incision(request);
}

void IncisionPanel::show_case() {
  const int before = of_case_->currentIndex();
  of_case_->clear();
  editor_->refresh();
  const auto patient = desk_.document.last_valid();
  if (patient == nullptr) return;
  for (std::size_t i = 0; i < patient->incisions.size(); ++i) {
    const casefile::Incision& one = patient->incisions[i];
    of_case_->addItem(one.label.empty() ? tr("incision %1").arg(i + 1) : text_of(one.label));
  }
  if (before >= 0 && before < of_case_->count()) of_case_->setCurrentIndex(before);
  // The cut of the case is what one wants to see first, where it has one.
  if (!desk_.answers.incision_request().picked_mm.empty()) {
    from_->setCurrentIndex(drawn);
    pages_->setCurrentIndex(drawn);
  }
  const bool untouched = desk_.answers.incision_request() == IncisionRequest{};
  if (untouched && of_case_->count() > 0) {
    from_->setCurrentIndex(of_the_case);
    pages_->setCurrentIndex(of_the_case);
  }
}

void IncisionPanel::show_answers() {
  if (!desk_.answers.incision_request().picked_mm.empty()) {
    from_->setCurrentIndex(drawn);
    pages_->setCurrentIndex(drawn);
  }
  const auto& held = desk_.answers.incision();
  if (held.answer == nullptr) {
    corridor_->show_answer(nullptr);
    nerves_->set({}, std::vector<Cells>());
    rules_->set({}, std::vector<Cells>());
    tabs_->setTabVisible(tabs_->indexOf(profile_), false);
    where_->clear();
    notes_->clear();
    return;
  }
  const incision::IncisionAnswer& answer = *held.answer;
  corridor_->show_answer(&answer);
  const Settings& settings = desk_.settings;
  QString where = tr("Marks: %1\nPose: %2\n")
                      .arg(joined_words(answer.marks, "; "), pose_words(answer.pose_deg));
  where += told(answer.region);
  if (answer.cut.length_mm > 0.0) {
    where += tr("; %1 %2 long").arg(settings.length(answer.cut.length_mm), settings.unit());
  }
  const QString low = settings.length(answer.depth_low_mm);
  const QString high = settings.length(answer.depth_high_mm);
  where += low == high ? tr("; %1 %2 deep").arg(low, settings.unit())
                       : tr("; %1 to %2 %3 deep").arg(low, high, settings.unit());
  if (!answer.depth_given) where += tr(" (depth not given)");
  where_->setText(where);

  std::vector<Cells> rows;
  for (const incision::NamedNearby& nerve : answer.nerves) {
    const incision::NerveNearby& near = nerve.near;
    if (near.nearest_mm.p50 > kShown_mm) continue;
    Cells cells{
        {text_of(nerve.nerve)},
        {tr("%1 (%2-%3)")
             .arg(settings.length(near.nearest_mm.p50), settings.length(near.nearest_mm.p05),
                  settings.length(near.nearest_mm.p95)),
         near.nearest_mm.p50},
        {settings.length(near.at_along_mm), near.at_along_mm},
        {settings.length(near.depth_mm.p50), near.depth_mm.p50}};
    for (const incision::ChanceWithin& within : near.chance_within) {
      // The steps in which a chance is shown: from 50 and from 5 per cent.
      const Tone tone = within.chance >= 0.475   ? Tone::danger
                        : within.chance >= 0.025 ? Tone::weak
                                                 : Tone::plain;
      cells.emplace_back(short_chance(within.chance), within.chance, QString(), tone);
    }
    rows.push_back(std::move(cells));
  }
  std::vector<Column> columns{
      {tr("Nerve"), false, true, {}, 150},
      {tr("Nearest, %1").arg(settings.unit()), true, false,
       tr("From the middle of the nerve; 90 in 100 limbs in brackets")},
      {tr("At, %1").arg(settings.unit()), true, false, tr("Along the cut from its first mark")},
      {tr("Deep, %1").arg(settings.unit()), true, false, tr("The nerve under the skin there")}};
  for (const double mm : incision::kWithin_mm) {
    columns.push_back({tr("< %1 mm").arg(mm), true, false,
                       tr("Chance that the nerve lies within %1 mm of the cut").arg(mm)});
  }
  nerves_->set(std::move(columns), std::move(rows));

  std::vector<QPointF> points;
  for (std::size_t k = 0; k < answer.along_chance.size(); ++k) {
    points.emplace_back(answer.cut.stations[k].along_mm, answer.along_chance[k]);
  }
  tabs_->setTabVisible(tabs_->indexOf(profile_), points.size() > 1);
  if (points.size() > 1) {
    profile_->set(points,
                  tr("mm along the cut: the chance of any modelled nerve within %1 mm")
                      .arg(answer.farther_than_mm),
                  {}, points.back().x() + 1.0);
  }
  std::vector<Cells> rules;
  std::vector<QStringList> behind;
  for (const incision::QuotedRule& rule : answer.rules) {
    rules.push_back(
        {{QString::fromUtf8("\u201c%1\u201d").arg(text_of(rule.rule)), {}, text_of(rule.row)},
         {text_of(rule.nerve)},
         {told(rule.surface) + (rule.pose.empty() ? QString() : "; " + told(rule.pose))},
         {told(rule.figure)},
         {text_of(rule.source)}});
    behind.push_back({text_of(rule.row)});
  }
  rules_->set_behind(std::move(behind));
  tabs_->setTabText(tabs_->indexOf(rules_), tr("Published rules: %1").arg(rules.size()));
  rules_->set({{tr("Published rule, as quoted"), false, true, {}, 190},
               {tr("Nerve"), false, true},
               {tr("Holds on, in the pose"), false, true},
               {tr("Figure"), false, true},
               {tr("Source"), false, true}},
              std::move(rules));
  QStringList notes;
  notes << (answer.first_skin_nerve
                ? tr("Met first of the nerves of skin alone: %1.")
                      .arg(text_of(*answer.first_skin_nerve))
                : tr("No nerve of skin alone within %1 mm in most limbs.").arg(incision::kMet_mm));
  for (const incision::ClearStretch& stretch : answer.clear) {
    notes << tr("From %1 to %2 %3 along the cut every modelled nerve is farther than %4 mm (%5).")
                 .arg(settings.length(stretch.from_mm), settings.length(stretch.to_mm),
                      settings.unit())
                 .arg(answer.farther_than_mm)
                 .arg(chance_words(stretch.chance));
  }
  notes << tr("Not in the model: %1.").arg(told(incision::kNotModelled));
  for (const std::string& warning : answer.warnings) notes << tr("Warning: ") + told(warning);
  notes_->setText(notes.join('\n'));
}

}  // namespace endplate::ui
