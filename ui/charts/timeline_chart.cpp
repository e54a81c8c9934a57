#include "ui/charts/timeline_chart.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "models/recovery/decision.hpp"
#include "ui/charts/axis.hpp"
#include "ui/charts/colours.hpp"
#include "ui/panels/time_words.hpp"

namespace endplate::ui {
namespace {

constexpr double kMonth_days = 365.25 / 12.0;
constexpr double kLongest_days = 60.0 * kMonth_days;  // beyond it a bar ends in an arrow
constexpr int kLabelShare = 3;  // of the width, at most one part in three for names

void draw_interval(QPainter& painter, const Axis& axis, const Summary& days, double y,
                   const QColor& colour, bool diamond) {
  painter.setPen(QPen(colour, 2.0, Qt::SolidLine, Qt::FlatCap));
  const double last = axis.high();
  const double right = axis.at(std::min(days.p95, last));
  painter.drawLine(QPointF(axis.at(std::min(days.p05, last)), y), QPointF(right, y));
  for (const double end : {days.p05, days.p95}) {
    if (end > last) continue;
    painter.drawLine(QPointF(axis.at(end), y - 3), QPointF(axis.at(end), y + 3));
  }
  if (days.p95 > last) {
    painter.drawLine(QPointF(right, y), QPointF(right - 5, y - 4));
    painter.drawLine(QPointF(right, y), QPointF(right - 5, y + 4));
  }
  if (days.p50 > last) return;
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  const QPointF middle(axis.at(days.p50), y);
  if (diamond) {
    painter.drawPolygon(QPolygonF{
        {middle.x() - 5, y}, {middle.x(), y - 5}, {middle.x() + 5, y}, {middle.x(), y + 5}});
  } else {
    painter.drawEllipse(middle, 4, 4);
  }
}

}  // namespace

TimelineChart::TimelineChart(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Order of return, in months from the injury"));
}

void TimelineChart::set(std::vector<TimelineRow> rows, std::vector<TimelineMark> marks,
                        std::optional<casefile::Date> injury) {
  rows_ = std::move(rows);
  marks_ = std::move(marks);
  injury_ = injury;
  updateGeometry();
  update();
}

int TimelineChart::row_height() const {
  return fontMetrics().height() + 10;
}

int TimelineChart::head_height() const {
  const int lines = 2 + static_cast<int>(marks_.size());
  return lines * (fontMetrics().height() + 2) + 8;
}

double TimelineChart::last_day() const {
  double last = 6.0 * kMonth_days;
  for (const TimelineRow& row : rows_) {
    for (const auto& days : {row.first, row.useful}) {
      if (days) last = std::max(last, days->p95);
    }
  }
  for (const TimelineMark& mark : marks_) last = std::max(last, mark.days);
  return std::min(last * 1.03, kLongest_days);
}

QSize TimelineChart::sizeHint() const {
  const int axis = 2 * fontMetrics().height() + 14;
  return {560, head_height() + axis + row_height() * static_cast<int>(rows_.size())};
}

QSize TimelineChart::minimumSizeHint() const {
  return {420, sizeHint().height()};
}

void TimelineChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Colours colours(palette());
  painter.fillRect(rect(), colours.paper);
  const QFontMetrics metrics = fontMetrics();
  int names = 0;
  int chances = metrics.horizontalAdvance(tr("useful"));
  for (const TimelineRow& row : rows_) {
    names = std::max(names, metrics.horizontalAdvance(row.label));
    chances = std::max(chances, metrics.horizontalAdvance(row.chance));
  }
  names = std::min(names, width() / kLabelShare) + 12;
  chances += 14;
  const int top = head_height();
  const int bottom = top + row_height() * static_cast<int>(rows_.size());
  const Axis axis(0.0, last_day(), names, width() - chances - 8);

  // What the two signs mean, then each mark on a line of its own: labels never meet.
  int y = metrics.ascent() + 4;
  double x = 8;
  const auto legend = [&](const QString& words, const QColor& colour, bool diamond) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double middle = y - metrics.ascent() / 2.0 + 1;
    if (diamond) {
      painter.drawPolygon(
          QPolygonF{{x, middle}, {x + 5, middle - 5}, {x + 10, middle}, {x + 5, middle + 5}});
    } else {
      painter.drawEllipse(QPointF(x + 5, middle), 4, 4);
    }
    painter.setPen(colours.ink);
    painter.drawText(QPointF(x + 15, y), words);
    x += 15 + metrics.horizontalAdvance(words) + 18;
  };
  legend(tr("first movement (M1)"), colours.first, false);
  legend(tr("useful (M3, S3)"), colours.second, true);
  painter.drawText(QRectF(width() - chances, y - metrics.ascent(), chances - 4, metrics.height()),
                   Qt::AlignRight, tr("useful"));

  const double month_to_days = kMonth_days;
  const Axis months(0.0, last_day() / month_to_days, axis.at(0.0), axis.at(last_day()));
  for (const double month : months.marks(8)) {
    const double at = months.at(month);
    painter.setPen(QPen(colours.faint, 1));
    painter.drawLine(QPointF(at, top), QPointF(at, bottom));
    painter.setPen(colours.ink);
    // Above as well: a long list is read from its top.
    for (const double line : {bottom + 3.0, top - metrics.height() - 3.0}) {
      painter.drawText(QRectF(at - 30, line, 60, metrics.height()), Qt::AlignHCenter,
                       QString::number(month));
    }
  }
  for (const double line : {bottom + 3.0, top - metrics.height() - 3.0}) {
    painter.drawText(QRectF(4, line, names - 24, metrics.height()), Qt::AlignRight, tr("months"));
  }
  if (injury_) {
    painter.setPen(colours.absent);
    double free = 0.0;
    for (const double month : months.marks(4)) {
      const QString date = date_words(recovery::plus_days(*injury_, month * month_to_days));
      const double half = metrics.horizontalAdvance(date) / 2.0;
      const double at = std::clamp(months.at(month), half + 2, width() - half - 2);
      if (at - half < free) continue;
      free = at + half + 10;
      painter.drawText(QPointF(at - half, bottom + 3 + 2 * metrics.height()), date);
    }
  }

  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const TimelineRow& row = rows_[i];
    const double row_top = top + static_cast<double>(i) * row_height();
    const double middle = row_top + row_height() / 2.0;
    if (i % 2 == 1) {
      painter.fillRect(
          QRectF(0, row_top, width(), row_height()),
          QColor(colours.faint.red(), colours.faint.green(), colours.faint.blue(), 40));
    }
    painter.setPen(colours.ink);
    painter.drawText(QRectF(6, row_top, names - 12, row_height()), Qt::AlignVCenter,
                     metrics.elidedText(row.label, Qt::ElideRight, names - 12));
    painter.drawText(QRectF(width() - chances, row_top, chances - 4, row_height()),
                     Qt::AlignVCenter | Qt::AlignRight, row.chance);
    const double apart = row.first && row.useful ? row_height() / 4.5 : 0.0;
    if (row.first) draw_interval(painter, axis, *row.first, middle - apart, colours.first, false);
    if (row.useful) {
      draw_interval(painter, axis, *row.useful, middle + apart, colours.second, true);
    }
  }

  y = metrics.ascent() + 4;
  for (const TimelineMark& mark : marks_) {
    y += metrics.height() + 2;
    const double at = axis.at(mark.days);
    painter.setPen(QPen(mark.today ? colours.ink : colours.absent, mark.today ? 2.0 : 1.5,
                        mark.today ? Qt::SolidLine : Qt::DashLine));
    painter.drawLine(QPointF(at, y - metrics.ascent() + 2), QPointF(at, bottom));
    painter.setPen(colours.ink);
    const double width_px = metrics.horizontalAdvance(mark.label);
    const double left = at + 5 + width_px < width() - 4 ? at + 5 : at - 5 - width_px;
    painter.drawText(QPointF(left, y), mark.label);
  }
}

bool TimelineChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int index = (help->pos().y() - head_height()) / row_height();
  if (help->pos().y() < head_height() || index < 0 || index >= static_cast<int>(rows_.size())) {
    QToolTip::hideText();
    return true;
  }
  const TimelineRow& row = rows_[static_cast<std::size_t>(index)];
  QStringList words{row.label};
  if (row.first) words << tr("first movement: %1 months").arg(months_words(*row.first));
  if (row.useful) words << tr("useful: %1 months").arg(months_words(*row.useful));
  QToolTip::showText(help->globalPos(), words.join('\n'), this);
  return true;
}

}  // namespace endplate::ui
