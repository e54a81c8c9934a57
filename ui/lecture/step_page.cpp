#include "ui/lecture/step_page.hpp"

#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

namespace endplate::ui {
namespace {

constexpr int kLeastPixels = 13;

QLabel* label(QWidget* parent, const char* name) {
  auto* made = new QLabel(parent);
  made->setObjectName(name);
  made->setWordWrap(true);
  made->setTextFormat(Qt::PlainText);
  made->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return made;
}

void set_pixels(QWidget* widget, int pixels, bool bold = false) {
  QFont font = widget->font();
  font.setPixelSize(std::max(kLeastPixels, pixels));
  font.setBold(bold);
  widget->setFont(font);
}

}  // namespace

StepPage::StepPage(QWidget* parent) : QWidget(parent) {
  setObjectName("step page");
  setAccessibleName(tr("Words of this step"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 20, 24, 16);
  column->setSpacing(14);
  place_ = label(this, "step place");
  title_ = label(this, "step title");
  say_ = label(this, "step words");
  scroll_ = new QScrollArea(this);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  fact_list_ = new QWidget;
  fact_rows_ = new QVBoxLayout(fact_list_);
  fact_rows_->setContentsMargins(0, 0, 0, 0);
  scroll_->setWidget(fact_list_);
  caution_ = label(this, "step caution");
  caution_->setText(
      tr("A limb of average build, calibrated to published measurements. Vessels and tendons are "
         "not in the model."));
  column->addWidget(place_);
  column->addWidget(title_);
  column->addWidget(say_);
  column->addWidget(scroll_, 1);
  column->addWidget(caution_);
}

void StepPage::show_step(const LectureStep& step, const QVector<StepFact>& facts, qsizetype number,
                         qsizetype count, const QString& side) {
  place_->setText(tr("%1 LIMB  -  step %2 of %3").arg(side).arg(number).arg(count));
  title_->setText(step.title);
  say_->setText(step.say.join("\n\n"));
  while (QLayoutItem* item = fact_rows_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  QStringList sources;
  for (const StepFact& fact : facts) {
    auto* line = label(fact_list_, "step fact");
    line->setText("\u2022 " + fact.text);
    fact_rows_->addWidget(line);
    if (!fact.source.isEmpty() && !sources.contains(fact.source)) sources.push_back(fact.source);
  }
  if (!sources.isEmpty()) {
    auto* line = label(fact_list_, "step sources");
    line->setText(tr("Sources: %1").arg(sources.join("; ")));
    fact_rows_->addWidget(line);
  }
  fact_rows_->addStretch(1);
  set_type_sizes();
}

void StepPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  set_type_sizes();
}

// By the width of the page: a title of some thirty letters a line.
void StepPage::set_type_sizes() {
  const int unit = width() / 22;
  set_pixels(place_, unit * 5 / 8, true);
  set_pixels(title_, unit * 5 / 4, true);
  set_pixels(say_, unit);
  for (auto* line : fact_list_->findChildren<QLabel*>("step fact")) set_pixels(line, unit * 7 / 9);
  for (auto* line : fact_list_->findChildren<QLabel*>("step sources")) set_pixels(line, unit / 2);
  set_pixels(caution_, unit / 2);
}

}  // namespace endplate::ui
