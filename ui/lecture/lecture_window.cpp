#include "ui/lecture/lecture_window.hpp"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMessageBox>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/app/words.hpp"

namespace endplate::ui {
namespace {

constexpr double kText_pt = 22.0;
constexpr double kTitle_pt = 34.0;
constexpr double kSmall_pt = 15.0;
constexpr double kSmallest = 0.6;
constexpr double kLargest = 2.0;

QString listed(const std::vector<std::string>& names) {
  QStringList list;
  for (const std::string& name : names) list << text_of(name);
  return list.join(", ");
}

}  // namespace

LectureWindow::LectureWindow(Lecture lecture, const anatomy::Anatomy& anatomy, QWidget* parent)
    : QWidget(parent, Qt::Window),
      lecture_(std::move(lecture)),
      anatomy_(anatomy),
      view_(new QStackedWidget(this)),
      title_(new QLabel(this)),
      text_(new QLabel(this)),
      supply_(new QLabel(this)),
      place_(new QLabel(this)) {
  setWindowTitle(lecture_.title);
  setFocusPolicy(Qt::StrongFocus);
  setAutoFillBackground(true);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(40, 28, 40, 16);
  title_->setWordWrap(true);
  all->addWidget(title_);
  auto* row = new QHBoxLayout;
  auto* empty = new QLabel(view_);
  view_->addWidget(empty);
  view_->hide();
  row->addWidget(view_, 3);
  auto* words = new QVBoxLayout;
  for (QLabel* label : {text_, supply_}) {
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  }
  words->addWidget(text_);
  words->addWidget(supply_);
  words->addStretch(1);
  row->addLayout(words, 2);
  all->addLayout(row, 1);
  place_->setAlignment(Qt::AlignRight);
  all->addWidget(place_);
  set_fonts();
  show_step(0);
}

void LectureWindow::set_limb_view(QWidget* view) {
  view_->addWidget(view);
  view_->setCurrentWidget(view);
  view_->show();
}

void LectureWindow::set_size(double times) {
  times_ = qBound(kSmallest, times, kLargest);
  set_fonts();
}

void LectureWindow::set_fonts() {
  const auto sized = [&](QLabel* label, double points, bool bold) {
    QFont font = label->font();
    font.setPointSizeF(points * times_);
    font.setBold(bold);
    label->setFont(font);
  };
  sized(title_, kTitle_pt, true);
  sized(text_, kText_pt, false);
  sized(supply_, kText_pt * 0.8, false);
  sized(place_, kSmall_pt, false);
}

void LectureWindow::show_step(int step) {
  step_ = qBound(0, step, static_cast<int>(lecture_.steps.size()) - 1);
  const LectureStep& now = lecture_.steps[static_cast<std::size_t>(step_)];
  title_->setText(now.title);
  text_->setText(now.text);
  QStringList lines;
  if (now.supply) {
    const NerveSupply supply = supply_of(anatomy_, now.nerves);
    if (!supply.muscles.empty()) lines << tr("Moves: %1").arg(listed(supply.muscles));
    if (!supply.areas.empty()) lines << tr("Serves: %1").arg(listed(supply.areas));
  }
  supply_->setText(lines.join("\n\n"));
  supply_->setVisible(!lines.isEmpty());
  place_->setText(tr("%1 of %2    Space next, Backspace back, + and - size, S save, Esc leave")
                      .arg(step_ + 1)
                      .arg(lecture_.steps.size()));
  Q_EMIT step_shown(now);
}

void LectureWindow::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Space:
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_PageDown:
    case Qt::Key_Return:
      return show_step(step_ + 1);
    case Qt::Key_Backspace:
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_PageUp:
      return show_step(step_ - 1);
    case Qt::Key_Home:
      return show_step(0);
    case Qt::Key_End:
      return show_step(static_cast<int>(lecture_.steps.size()) - 1);
    case Qt::Key_Plus:
      return set_size(times_ * 1.1);
    case Qt::Key_Minus:
      return set_size(times_ / 1.1);
    case Qt::Key_S:
      return save_figure();
    case Qt::Key_Escape:
      close();
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void LectureWindow::save_figure() {
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save the step"), QString("step-%1.png").arg(step_ + 1), tr("Pictures (*.png)"));
  if (path.isEmpty()) return;
  if (!grab().save(path)) {
    QMessageBox::warning(this, tr("Save the step"), tr("The picture cannot be written there."));
  }
}

}  // namespace endplate::ui
