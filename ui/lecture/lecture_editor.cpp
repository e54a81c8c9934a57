#include "ui/lecture/lecture_editor.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <utility>

namespace endplate::ui {
namespace {

QString kind_word(qsizetype kind) {
  static const char* const words[] = {
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "words alone"),
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "course of a nerve"),
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "muscles it moves"),
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "skin it serves"),
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "exceptions"),
      QT_TRANSLATE_NOOP("endplate::ui::LectureEditor", "danger zones")};
  return LectureEditor::tr(words[kind]);
}

}  // namespace

LectureEditor::LectureEditor(Lecture lecture, LectureVocabulary vocabulary, QWidget* parent)
    : QDialog(parent), lecture_(std::move(lecture)), vocabulary_(std::move(vocabulary)) {
  setWindowTitle(tr("Edit lecture"));
  resize(980, 640);
  build_form();
  show_steps(0);
}

void LectureEditor::build_form() {
  auto* whole = new QVBoxLayout(this);
  auto* head = new QFormLayout;
  lecture_title_ = new QLineEdit(lecture_.title);
  head->addRow(tr("&Lecture"), lecture_title_);
  whole->addLayout(head);

  auto* row = new QHBoxLayout;
  auto* left = new QVBoxLayout;
  list_ = new QListWidget;
  list_->setAccessibleName(tr("Steps, in order"));
  list_->setMinimumWidth(320);
  left->addWidget(list_, 1);
  auto* buttons = new QHBoxLayout;
  const auto button = [&](const QString& text, const QString& name, auto action) {
    auto* made = new QPushButton(text);
    made->setAccessibleName(name);
    made->setToolTip(name);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, action);
    buttons->addWidget(made);
  };
  button(tr("&Up"), tr("Move the step up"), [this] { move_step(-1); });
  button(tr("&Down"), tr("Move the step down"), [this] { move_step(1); });
  button(tr("&Add"), tr("Add a step after this one"), [this] { add_step(); });
  button(tr("&Remove"), tr("Remove the step"), [this] { remove_step(); });
  left->addLayout(buttons);
  row->addLayout(left);

  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  title_ = new QLineEdit;
  kind_ = new QComboBox;
  for (qsizetype k = 0; k < lecture_kinds().size(); ++k) kind_->addItem(kind_word(k));
  nerve_ = new QComboBox;
  nerve_->setEditable(true);
  nerve_->setInsertPolicy(QComboBox::NoInsert);
  nerve_->addItems(vocabulary_.nerves);
  nerve_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  view_ = new QComboBox;
  view_->addItems(lecture_views());
  region_ = new QComboBox;
  region_->addItems(lecture_regions());
  layers_ = new QListWidget;
  layers_->setFlow(QListView::LeftToRight);
  layers_->setMaximumHeight(34);
  for (const QString& layer : lecture_layers()) {
    auto* item = new QListWidgetItem(layer, layers_);
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
  }
  say_ = new QPlainTextEdit;
  say_->setPlaceholderText(tr("One paragraph a line"));
  say_->setTabChangesFocus(true);
  rules_ = new QLineEdit;
  rules_->setPlaceholderText(tr("AP_004, AP_005: rows of approaches.csv"));
  form->addRow(tr("&Title"), title_);
  form->addRow(tr("S&hows"), kind_);
  form->addRow(tr("&Nerve"), nerve_);
  form->addRow(tr("Seen &from"), view_);
  form->addRow(tr("R&egion"), region_);
  form->addRow(tr("La&yers"), layers_);
  form->addRow(tr("&Words"), say_);
  form->addRow(tr("Ru&les"), rules_);
  row->addLayout(form, 1);
  whole->addLayout(row, 1);

  problem_ = new QLabel;
  problem_->setWordWrap(true);
  whole->addWidget(problem_);
  auto* box = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  accept_ = box->button(QDialogButtonBox::Ok);
  whole->addWidget(box);

  connect(box, &QDialogButtonBox::accepted, this, [this] {
    take_edits();
    accept();
  });
  connect(box, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int at) {
    if (filling_) return;
    take_edits();
    show_step(at);
  });
  const auto edited = [this] {
    if (filling_) return;
    take_edits();
    set_enabled_by_kind();
    check();
  };
  connect(lecture_title_, &QLineEdit::textEdited, this, edited);
  connect(title_, &QLineEdit::textEdited, this, edited);
  connect(kind_, &QComboBox::currentIndexChanged, this, edited);
  connect(nerve_, &QComboBox::currentTextChanged, this, edited);
  connect(view_, &QComboBox::currentIndexChanged, this, edited);
  connect(region_, &QComboBox::currentIndexChanged, this, edited);
  connect(layers_, &QListWidget::itemChanged, this, edited);
  connect(say_, &QPlainTextEdit::textChanged, this, edited);
  connect(rules_, &QLineEdit::textEdited, this, edited);
}

void LectureEditor::show_steps(int current) {
  filling_ = true;
  list_->clear();
  for (qsizetype i = 0; i < lecture_.steps.size(); ++i) {
    list_->addItem(QString("%1  %2").arg(i + 1).arg(lecture_.steps[i].title));
  }
  current = std::clamp(current, 0, static_cast<int>(lecture_.steps.size()) - 1);
  list_->setCurrentRow(current);
  filling_ = false;
  shown_ = -1;
  show_step(current);
}

void LectureEditor::show_step(int at) {
  if (at < 0 || at >= lecture_.steps.size()) return;
  filling_ = true;
  shown_ = at;
  const LectureStep& step = lecture_.steps[at];
  title_->setText(step.title);
  kind_->setCurrentIndex(static_cast<int>(step.kind));
  nerve_->setCurrentText(step.nerve);
  view_->setCurrentText(step.view);
  region_->setCurrentText(step.region);
  for (int i = 0; i < layers_->count(); ++i) {
    layers_->item(i)->setCheckState(step.layers.contains(layers_->item(i)->text()) ? Qt::Checked
                                                                                   : Qt::Unchecked);
  }
  say_->setPlainText(step.say.join("\n"));
  rules_->setText(step.rules.join(", "));
  filling_ = false;
  set_enabled_by_kind();
  check();
}

void LectureEditor::take_edits() {
  lecture_.title = lecture_title_->text();
  if (shown_ < 0 || shown_ >= lecture_.steps.size()) return;
  LectureStep& step = lecture_.steps[shown_];
  step.title = title_->text();
  step.kind = static_cast<StepKind>(kind_->currentIndex());
  step.nerve = step.kind == StepKind::text ? QString() : nerve_->currentText();
  step.view = view_->currentText();
  step.region = region_->currentText();
  step.layers.clear();
  for (int i = 0; i < layers_->count(); ++i) {
    if (layers_->item(i)->checkState() == Qt::Checked)
      step.layers.push_back(layers_->item(i)->text());
  }
  step.say = say_->toPlainText().split('\n', Qt::SkipEmptyParts);
  static const QRegularExpression between("[,;\\s]+");
  step.rules = step.kind == StepKind::danger ? rules_->text().split(between, Qt::SkipEmptyParts)
                                             : QStringList();
  list_->item(shown_)->setText(QString("%1  %2").arg(shown_ + 1).arg(step.title));
}

void LectureEditor::set_enabled_by_kind() {
  const auto kind = static_cast<StepKind>(kind_->currentIndex());
  nerve_->setEnabled(kind != StepKind::text);
  rules_->setEnabled(kind == StepKind::danger);
}

// The same reader that will open the file.
void LectureEditor::check() {
  const auto read = read_lecture(write_lecture(lecture_), vocabulary_);
  accept_->setEnabled(read.has_value());
  if (read) {
    problem_->clear();
    return;
  }
  const Problem& first = read.error().problems.front();
  problem_->setText(tr("%1: %2. %3")
                        .arg(QString::fromStdString(first.place),
                             QString::fromStdString(first.what),
                             QString::fromStdString(first.mend)));
}

void LectureEditor::add_step() {
  take_edits();
  LectureStep step;
  step.title = tr("New step");
  step.view = lecture_views().front();
  step.region = lecture_regions().front();
  step.layers = QStringList{"skin", "bones", "nerves"};
  lecture_.steps.insert(shown_ + 1, step);
  show_steps(shown_ + 1);
}

void LectureEditor::remove_step() {
  if (lecture_.steps.size() < 2 || shown_ < 0) return;
  lecture_.steps.removeAt(shown_);
  show_steps(shown_);
}

void LectureEditor::move_step(int by) {
  take_edits();
  const int to = shown_ + by;
  if (shown_ < 0 || to < 0 || to >= lecture_.steps.size()) return;
  lecture_.steps.move(shown_, to);
  show_steps(to);
}

}  // namespace endplate::ui
