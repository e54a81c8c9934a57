#include "ui/panels/joint_slider.hpp"

#include <QPainter>
#include <QStyle>
#include <QStyleOptionSlider>
#include <algorithm>

namespace endplate::ui {
namespace {

constexpr int kGroove_px = 4;
constexpr int kNeutral_px = 14;

}  // namespace

JointSlider::JointSlider(QWidget* parent) : QSlider(Qt::Horizontal, parent) {}

void JointSlider::paintEvent(QPaintEvent*) {
  QStyleOptionSlider option;
  initStyleOption(&option);
  const int handle = style()->pixelMetric(QStyle::PM_SliderLength, &option, this);
  const auto place = [&](int value) {
    return handle / 2 + QStyle::sliderPositionFromValue(minimum(), maximum(), value,
                                                        width() - handle, option.upsideDown);
  };
  const int middle = height() / 2;
  const int neutral = place(std::clamp(0, minimum(), maximum()));
  const int now = place(sliderPosition());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette().color(QPalette::Mid));
  painter.drawRoundedRect(QRect(handle / 2, middle - kGroove_px / 2, width() - handle, kGroove_px),
                          2.0, 2.0);
  painter.setBrush(palette().color(isEnabled() ? QPalette::Highlight : QPalette::Mid));
  painter.drawRect(QRect(QPoint(std::min(neutral, now), middle - kGroove_px / 2),
                         QPoint(std::max(neutral, now), middle + kGroove_px / 2 - 1)));
  painter.setBrush(palette().color(QPalette::Text));
  painter.drawRect(QRect(neutral - 1, middle - kNeutral_px / 2, 2, kNeutral_px));
  painter.setRenderHint(QPainter::Antialiasing, false);
  option.subControls = QStyle::SC_SliderHandle;
  style()->drawComplexControl(QStyle::CC_Slider, &option, &painter, this);
}

}  // namespace endplate::ui
