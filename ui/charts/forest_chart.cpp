#include "ui/charts/forest_chart.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "ui/charts/axis.hpp"
#include "ui/charts/colours.hpp"

namespace endplate::ui {

ForestChart::ForestChart(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Forest plot of the studies"));
}

void ForestChart::set(std::vector<ForestRow> rows, const QString& unit) {
  rows_ = std::move(rows);
  unit_ = unit;
  updateGeometry();
  update();
}

QSize ForestChart::sizeHint() const {
  return {520, row_height() * static_cast<int>(rows_.size()) + 2 * fontMetrics().height() + 16};
}

void ForestChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Colours colours(palette());
  painter.fillRect(rect(), colours.paper);
  if (rows_.empty()) return;
  const QFontMetrics metrics = fontMetrics();
  int names = 0;
  int figures = 0;
  double low = rows_.front().low;
  double high = rows_.front().high;
  for (const ForestRow& row : rows_) {
    names = std::max(names, metrics.horizontalAdvance(row.label));
    figures = std::max(figures, metrics.horizontalAdvance(row.figures));
    low = std::min(low, row.low);
    high = std::max(high, row.high);
  }
  names = std::min(names, static_cast<int>(width() * 0.42)) + 14;
  figures += 14;
  const double room = (high - low) * 0.03;
  const Axis axis(low - room, high + room, names, width() - figures - 6);
  const double bottom = 6.0 + row_height() * static_cast<double>(rows_.size());

  for (const double mark : axis.marks(6)) {
    painter.setPen(QPen(colours.faint, 1));
    painter.drawLine(QPointF(axis.at(mark), 4), QPointF(axis.at(mark), bottom));
    painter.setPen(colours.ink);
    painter.drawText(QRectF(axis.at(mark) - 40, bottom + 3, 80, metrics.height()), Qt::AlignHCenter,
                     QString::number(mark));
  }
  painter.drawText(QRectF(0, bottom + 3 + metrics.height(), width() - 8, metrics.height()),
                   Qt::AlignRight, unit_);
  for (const ForestRow& row : rows_) {
    if (row.kind != ForestRow::Kind::pooled) continue;
    painter.setPen(QPen(colours.absent, 1, Qt::DotLine));
    painter.drawLine(QPointF(axis.at(row.centre), 4), QPointF(axis.at(row.centre), bottom));
  }
  double y = 6.0;
  for (const ForestRow& row : rows_) {
    const double middle = y + row_height() / 2.0;
    painter.setPen(colours.ink);
    painter.drawText(QRectF(6, y, names - 12, row_height()), Qt::AlignVCenter,
                     metrics.elidedText(row.label, Qt::ElideRight, names - 12));
    painter.drawText(QRectF(width() - figures, y, figures - 6, row_height()),
                     Qt::AlignVCenter | Qt::AlignRight, row.figures);
    const QColor colour = row.kind == ForestRow::Kind::study ? colours.first : colours.second;
    painter.setPen(
        QPen(colour, 1.6, row.kind == ForestRow::Kind::spread ? Qt::DashLine : Qt::SolidLine));
    painter.drawLine(QPointF(axis.at(row.low), middle), QPointF(axis.at(row.high), middle));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const double centre = axis.at(row.centre);
    if (row.kind == ForestRow::Kind::study) {
      const double half = 2.5 + 5.0 * std::sqrt(row.weight);
      painter.drawRect(QRectF(centre - half, middle - half, 2 * half, 2 * half));
    } else if (row.kind == ForestRow::Kind::pooled) {
      painter.drawPolygon(QPolygonF{{axis.at(row.low), middle},
                                    {centre, middle - 6},
                                    {axis.at(row.high), middle},
                                    {centre, middle + 6}});
    }
    y += row_height();
  }
}

bool ForestChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int index = (help->pos().y() - 6) / row_height();
  if (index >= 0 && index < static_cast<int>(rows_.size())) {
    QToolTip::showText(help->globalPos(), rows_[static_cast<std::size_t>(index)].label, this);
  }
  return true;
}

}  // namespace endplate::ui
