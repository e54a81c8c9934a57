#include "ui/app/main_window.hpp"

#include <QApplication>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QStyleHints>
#include <QUndoStack>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "ui/app/lecture_room.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/main_window_parts.hpp"
#include "ui/app/scan_dialog.hpp"
#include "ui/charts/colours.hpp"
#include "ui/panels/airy_delegate.hpp"
#include "ui/panels/decision_panel.hpp"
#include "ui/panels/deficit_panel.hpp"
#include "ui/panels/evidence_panel.hpp"
#include "ui/panels/examination_panel.hpp"
#include "ui/panels/incision_panel.hpp"
#include "ui/panels/injury_panel.hpp"
#include "ui/panels/operations_panel.hpp"
#include "ui/panels/patient_panel.hpp"
#include "ui/panels/plan_panel.hpp"
#include "ui/panels/recovery_panel.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/panels/transfer_panel.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/table_names.hpp"
#include "ui/words/term_book.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr int kListWidth = 160;
constexpr int kMiddleWidth = 390;
constexpr int kPanelWidth = 720;

}  // namespace

MainWindow::MainWindow(std::shared_ptr<const CaseTables> tables, casefile::Date today,
                       const QString& folder, QWidget* parent)
    : QMainWindow(parent), parts_(std::make_unique<Parts>(std::move(tables), today, folder)) {
  const CaseTables& known = desk().document.tables();
  keep_names(table_names(known.anatomy, known.terms));
  // Before anything that tells.
  apply_terms();
  connect(&parts_->settings, &Settings::changed, this, &MainWindow::apply_terms);
  apply_palette();
  setAcceptDrops(true);
  auto* all = new QWidget(this);
  auto* column = new QVBoxLayout(all);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  add_bar();
  column->addWidget(bar_);
  split_ = new QSplitter(Qt::Horizontal, all);
  split_->setChildrenCollapsible(false);
  list_ = new QListWidget(split_);
  list_->setAccessibleName(tr("Questions"));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setMinimumWidth(kListWidth);
  list_->setMaximumWidth(kListWidth + 60);
  list_->setItemDelegate(new AiryDelegate(8, 6, list_));
  stage_ = new LimbStage(desk(), split_);
  stack_ = new QStackedWidget(split_);
  stack_->setMinimumWidth(kPanelWidth - 120);
  split_->addWidget(list_);
  split_->addWidget(stage_);
  split_->addWidget(stack_);
  split_->setSizes({kListWidth, kMiddleWidth, kPanelWidth});
  apply_hand();
  column->addWidget(split_, 1);
  setCentralWidget(all);

  lectures_ = new LectureRoom(desk(), *stage_, this);
  connect(stage_, &LimbStage::incision_asked, this, [this] { show_question("incision"); });

  add_panels();
  add_menus();
  add_status();
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row < 0) return;
    stack_->setCurrentIndex(row);
    const Entry& entry = entries_[static_cast<std::size_t>(row)];
    entry.panel->come_forward();
    stage_->show_question(entry.name);
  });
  connect(&parts_->document, &CaseDocument::file_changed, this, &MainWindow::refresh_title);
  connect(&parts_->document, &CaseDocument::changed, this, &MainWindow::refresh_title);
  connect(&parts_->answers, &AnswerRunner::progress, this, &MainWindow::refresh_progress);
  connect(&parts_->settings, &Settings::changed, this, [this] {
    apply_palette();
    apply_hand();
    Asked asked = parts_->answers.asked();
    asked.samples = parts_->settings.choices().samples;
    asked.seed = parts_->settings.choices().seed;
    parts_->answers.set_asked(asked);
  });
  Asked asked = parts_->answers.asked();
  asked.samples = parts_->settings.choices().samples;
  asked.seed = parts_->settings.choices().seed;
  parts_->answers.set_asked(asked);
  refresh_title();
  refresh_progress();
  resize(1280, 800);
  restoreGeometry(parts_->settings.geometry());
  offer_lost();
  show_question("decision");
}

MainWindow::~MainWindow() {
  // Panels and the scan hold references into the parts, so they go first.
  delete scan_;
  delete takeCentralWidget();
}

Desk MainWindow::desk() {
  return {parts_->document, parts_->answers, parts_->settings};
}

void MainWindow::add_panel(const QString& name, const QString& shown, Panel* panel) {
  entries_.push_back({name, shown, panel});
  stack_->addWidget(panel);
  auto* item = new QListWidgetItem(shown, list_);
  const auto count = entries_.size();
  if (count <= 10) {
    item->setToolTip(tr("%1 (Alt+%2)").arg(panel->question()).arg(count % 10));
  } else {
    item->setToolTip(panel->question());
  }
  connect(panel, &Panel::panel_wanted, this, &MainWindow::show_question);
  connect(panel, &Panel::transfer_shown, stage_, &LimbStage::show_transfer);
  connect(panel, &Panel::subject_chosen, stage_, &LimbStage::point_out);
  connect(stage_, &LimbStage::pointed_at, panel, &Panel::point_out);
  connect(panel, &Panel::evidence_wanted, this, [this](const QString& row) {
    show_question("evidence");
    static_cast<EvidencePanel*>(this->panel("evidence"))->ask_row(row);
  });
}

void MainWindow::add_panels() {
  const Desk with = desk();
  add_panel("decision", tr("Decision"), new DecisionPanel(with));
  add_panel("patient", tr("Patient and limb"), new PatientPanel(with));
  add_panel("injury", tr("Injury"), new InjuryPanel(with));
  add_panel("examination", tr("Examination"), new ExaminationPanel(with));
  add_panel("operations", tr("Operations"), new OperationsPanel(with));
  add_panel("deficit", tr("Deficit"), new DeficitPanel(with));
  add_panel("recovery", tr("Recovery"), new RecoveryPanel(with));
  add_panel("transfer", tr("Transfers"), new TransferPanel(with));
  add_panel("incision", tr("Incision"), new IncisionPanel(with));
  add_panel("plan", tr("Options"), new PlanPanel(with));
  add_panel("evidence", tr("Evidence"), new EvidencePanel(with));
}

void MainWindow::add_bar() {
  bar_ = new QFrame(this);
  bar_->setAutoFillBackground(true);
  bar_->setObjectName("bar");
  auto* row = new QHBoxLayout(bar_);
  bar_words_ = paragraph({}, bar_);
  bar_yes_ = new QPushButton(bar_);
  bar_no_ = new QPushButton(bar_);
  bar_yes_->setObjectName("bar yes");
  bar_no_->setObjectName("bar no");
  row->addWidget(bar_words_, 1);
  row->addWidget(bar_yes_);
  row->addWidget(bar_no_);
  bar_->hide();
}

void MainWindow::tell(const QString& words) {
  const Colours colours(palette());
  QPalette ground = bar_->palette();
  ground.setColor(QPalette::Window, colours.alert);
  ground.setColor(QPalette::WindowText, colours.on_alert);
  bar_->setPalette(ground);
  bar_words_->setText(words);
  bar_yes_->hide();
  bar_no_->setText(tr("Close"));
  bar_no_->disconnect();
  connect(bar_no_, &QPushButton::clicked, bar_, &QFrame::hide);
  bar_->show();
}

void MainWindow::offer_lost() {
  parts_->lost = parts_->store.find_lost();
  if (parts_->lost.empty()) return;
  const LostCase lost = parts_->lost.front();
  tell(tr("A case was not saved when the desk ended: %1, copied %2.")
           .arg(lost.label, lost.at.toString("yyyy-MM-dd HH:mm:ss")));
  bar_yes_->setText(tr("Open the copy"));
  bar_no_->setText(tr("Throw it away"));
  bar_yes_->show();
  bar_yes_->disconnect();
  bar_no_->disconnect();
  connect(bar_yes_, &QPushButton::clicked, this, [this, lost] {
    if (!may_leave()) return;
    const auto opened = parts_->document.open(lost.text, lost.path, false);
    if (!opened) return tell(problem_words(opened.error().problems));
    parts_->store.discard(lost);
    bar_->hide();
  });
  connect(bar_no_, &QPushButton::clicked, this, [this, lost] {
    parts_->store.discard(lost);
    bar_->hide();
    offer_lost();
  });
}

void MainWindow::add_status() {
  working_ = new QLabel(this);
  busy_ = new QProgressBar(this);
  busy_->setRange(0, 0);
  busy_->setMaximumWidth(120);
  busy_->setTextVisible(false);
  cancel_ = new QPushButton(tr("Stop"), this);
  cancel_->setToolTip(tr("Stop reckoning; the last answer stays (Esc)"));
  cancel_->setShortcut(Qt::Key_Escape);
  copied_ = new QLabel(this);
  statusBar()->addWidget(working_);
  statusBar()->addWidget(busy_);
  statusBar()->addWidget(cancel_);
  statusBar()->addPermanentWidget(copied_);
  connect(cancel_, &QPushButton::clicked, &parts_->answers, &AnswerRunner::cancel);
  connect(&parts_->store, &RecoveryStore::copied, this, [this] {
    copied_->setText(tr("Safety copy %1").arg(parts_->store.last_copy().toString("HH:mm:ss")));
  });
  connect(&parts_->store, &RecoveryStore::failed, this,
          [this](const QString& why) { copied_->setText(tr("NO safety copy: %1").arg(why)); });
}

void MainWindow::refresh_progress() {
  const QStringList running = parts_->answers.running();
  const bool works = !parts_->answers.is_idle();
  working_->setText(works
                        ? tr("Reckoning %1").arg(running.isEmpty() ? QString() : running.join(", "))
                        : QString());
  busy_->setVisible(works);
  cancel_->setVisible(works);
}

void MainWindow::refresh_title() {
  setWindowTitle(tr("%1[*] - Endplate").arg(parts_->document.label()));
  setWindowModified(parts_->document.is_changed());
}

void MainWindow::apply_terms() {
  const TermLanguage chosen = desk().settings.choices().terms;
  // A translation says so; without one it stays as it is.
  const bool program_in_latin =
      QCoreApplication::translate("terms", "english terms") == "latin terms";
  const bool latin =
      chosen == TermLanguage::latin || (chosen == TermLanguage::program && program_in_latin);
  tell_in_latin(latin ? latin_terms(desk().document.tables().package) : QHash<QString, QString>());
}

// The panel stands on the side of the hand that works on it, so that the arm does not cover the
// limb.
void MainWindow::apply_hand() {
  const bool left = desk().settings.choices().hand == Hand::left;
  const std::array<QWidget*, 3> order{left ? static_cast<QWidget*>(stack_) : list_, stage_,
                                      left ? static_cast<QWidget*>(list_) : stack_};
  if (split_->widget(0) != order[0]) {
    QList<int> sizes = split_->sizes();
    for (int at = 0; at < 3; ++at) split_->insertWidget(at, order[static_cast<std::size_t>(at)]);
    std::ranges::reverse(sizes);
    split_->setSizes(sizes);
  }
  split_->setStretchFactor(split_->indexOf(list_), 0);
  split_->setStretchFactor(1, 1);
  split_->setStretchFactor(split_->indexOf(stack_), 1);
}

void MainWindow::apply_palette() {
  switch (parts_->settings.choices().lightness) {
    case Lightness::light:
      QApplication::setPalette(light_palette());
      break;
    case Lightness::dark:
      QApplication::setPalette(dark_palette());
      break;
    case Lightness::system:
      // The palette of a desktop may be either; ours of the same lightness keeps its contrasts.
      QApplication::setPalette(QPalette().color(QPalette::Window).lightnessF() < 0.5F
                                   ? dark_palette()
                                   : light_palette());
      break;
  }
}

std::vector<QString> MainWindow::questions() const {
  std::vector<QString> names;
  for (const Entry& entry : entries_) names.push_back(entry.name);
  return names;
}

void MainWindow::show_question(const QString& name) {
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    if (entries_[i].name == name) list_->setCurrentRow(static_cast<int>(i));
  }
}

Panel* MainWindow::panel(const QString& name) const {
  for (const Entry& entry : entries_) {
    if (entry.name == name) return entry.panel;
  }
  return nullptr;
}

}  // namespace endplate::ui
