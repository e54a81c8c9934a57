#include "ui/charts/curve_chart.hpp"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/charts/axis.hpp"
#include "ui/charts/colours.hpp"

namespace endplate::ui {

CurveChart::CurveChart(const QString& name, QWidget* parent) : QWidget(parent) {
  setAccessibleName(name);
}

void CurveChart::set(std::vector<QPointF> points, const QString& unit, std::vector<CurveMark> marks,
                     double shade_from) {
  points_ = std::move(points);
  unit_ = unit;
  marks_ = std::move(marks);
  shade_from_ = shade_from;
  update();
}

void CurveChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Colours colours(palette());
  painter.fillRect(rect(), colours.paper);
  if (points_.size() < 2) return;
  const QFontMetrics metrics = fontMetrics();
  const double left = metrics.horizontalAdvance("100 %") + 14;
  const double top = static_cast<double>(marks_.size()) * (metrics.height() + 2) + 10;
  const double bottom = height() - 2 * metrics.height() - 12;
  double low = points_.front().x();
  double high = points_.back().x();
  for (const CurveMark& mark : marks_) {
    low = std::min(low, mark.at);
    high = std::max(high, mark.at);
  }
  const Axis across(low, high, left, width() - 14);
  const Axis up(0.0, 1.0, bottom, top);

  if (shade_from_ < high) {
    const double from = across.at(std::max(shade_from_, low));
    painter.fillRect(QRectF(from, top, across.at(high) - from, bottom - top),
                     QBrush(colours.faint, Qt::BDiagPattern));
  }
  for (const double chance : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    painter.setPen(QPen(colours.faint, 1));
    painter.drawLine(QPointF(left, up.at(chance)), QPointF(width() - 14, up.at(chance)));
    painter.setPen(colours.ink);
    painter.drawText(QRectF(0, up.at(chance) - metrics.height() / 2.0, left - 6, metrics.height()),
                     Qt::AlignRight, QString("%1 %").arg(100.0 * chance));
  }
  for (const double mark : across.marks(8)) {
    painter.setPen(QPen(colours.faint, 1));
    painter.drawLine(QPointF(across.at(mark), bottom), QPointF(across.at(mark), bottom + 4));
    painter.setPen(colours.ink);
    painter.drawText(QRectF(across.at(mark) - 30, bottom + 5, 60, metrics.height()),
                     Qt::AlignHCenter, QString::number(mark));
  }
  painter.drawText(
      QRectF(left, bottom + 5 + metrics.height(), width() - left - 14, metrics.height()),
      Qt::AlignRight, unit_);

  QPainterPath path;
  path.moveTo(across.at(points_.front().x()), up.at(points_.front().y()));
  for (const QPointF& point : points_) path.lineTo(across.at(point.x()), up.at(point.y()));
  painter.setPen(QPen(colours.first, 2.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);

  double y = metrics.ascent() + 4;
  for (const CurveMark& mark : marks_) {
    const double at = across.at(mark.at);
    painter.setPen(QPen(mark.strong ? colours.ink : colours.absent, mark.strong ? 2.0 : 1.5,
                        mark.strong ? Qt::SolidLine : Qt::DashLine));
    painter.drawLine(QPointF(at, y - metrics.ascent() + 2), QPointF(at, bottom));
    painter.setPen(colours.ink);
    const double width_px = metrics.horizontalAdvance(mark.label);
    painter.drawText(QPointF(at + 5 + width_px < width() - 4 ? at + 5 : at - 5 - width_px, y),
                     mark.label);
    y += metrics.height() + 2;
  }
}

}  // namespace endplate::ui
