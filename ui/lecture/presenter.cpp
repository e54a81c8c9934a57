#include "ui/lecture/presenter.hpp"

#include <QCloseEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPointer>
#include <utility>

#include "ui/lecture/step_page.hpp"

namespace endplate::ui {
namespace {

// Of the width.
constexpr int kPictureShare = 3;
constexpr int kWordsShare = 2;

}  // namespace

Presenter::Presenter(Lecture lecture, PresenterPicture picture, Facts facts, QWidget* parent)
    : QWidget(parent),
      lecture_(std::move(lecture)),
      picture_(std::move(picture)),
      facts_(std::move(facts)),
      page_(new StepPage(this)) {
  setWindowTitle(lecture_.title);
  setAccessibleName(tr("Lecture"));
  setAccessibleDescription(
      tr("Right or Space: next step. Left: step before. Home, End: first and last. S: save this "
         "step as a figure. F11: whole screen. Escape: close."));
  setFocusPolicy(Qt::StrongFocus);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  if (picture_.widget != nullptr) row->addWidget(picture_.widget, kPictureShare);
  row->addWidget(page_, kWordsShare);
  go_to(0);
}

void Presenter::go_to(qsizetype step) {
  const qsizetype last = lecture_.steps.size() - 1;
  step = std::clamp<qsizetype>(step, 0, std::max<qsizetype>(last, 0));
  if (step == at_ || last < 0) return;
  at_ = step;
  const LectureStep& shown = lecture_.steps[at_];
  if (picture_.show) picture_.show(shown);
  page_->show_step(shown, facts_(shown), at_ + 1, lecture_.steps.size(), picture_.side);
  Q_EMIT step_changed(at_);
}

void Presenter::take_figure(QSize pixels, std::function<void(const QImage&)> taken) {
  const int split = pixels.width() * kPictureShare / (kPictureShare + kWordsShare);
  const QPointer<Presenter> there(this);
  auto compose = [there, pixels, split, at = at_, taken = std::move(taken)](const QImage& picture) {
    if (there) taken(there->slide(pixels, split, picture, at));
  };
  picture_.take ? picture_.take(QSize(split, pixels.height()), compose) : compose({});
}

QImage Presenter::slide(QSize pixels, int split, const QImage& picture, qsizetype at) const {
  QImage image(pixels, QImage::Format_RGB32);
  image.fill(palette().color(QPalette::Window));
  QPainter painter(&image);
  if (!picture.isNull()) painter.drawImage(QRect(0, 0, split, pixels.height()), picture);
  // Laid out anew at the size of the figure, on a page of its own.
  StepPage words;
  words.setPalette(palette());
  words.resize(pixels.width() - split, pixels.height());
  words.setAttribute(Qt::WA_DontShowOnScreen);
  const LectureStep& step = lecture_.steps[at];
  words.show_step(step, facts_(step), at + 1, lecture_.steps.size(), picture_.side);
  words.show();
  words.render(&painter, QPoint(split, 0));
  return image;
}

void Presenter::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
    case Qt::Key_PageDown:
    case Qt::Key_Return:
    case Qt::Key_Enter:
      go_to(at_ + 1);
      return;
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_Backspace:
    case Qt::Key_PageUp:
      go_to(at_ - 1);
      return;
    case Qt::Key_Home:
      go_to(0);
      return;
    case Qt::Key_End:
      go_to(lecture_.steps.size() - 1);
      return;
    case Qt::Key_S:
      Q_EMIT figure_wanted();
      return;
    case Qt::Key_F11:
      setWindowState(windowState() ^ Qt::WindowFullScreen);
      return;
    case Qt::Key_Escape:
      close();
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void Presenter::closeEvent(QCloseEvent* event) {
  QWidget::closeEvent(event);
  Q_EMIT closed();
}

}  // namespace endplate::ui
