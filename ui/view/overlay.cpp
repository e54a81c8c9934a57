#include "ui/view/overlay.hpp"

#include <QCoreApplication>
#include <QLinearGradient>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/view/label_placer.hpp"

namespace endplate::ui {
namespace {

constexpr double kMargin_px = 12.0;
// Names wrap sooner in a narrow picture, where there is less room beside the limb.
constexpr double kWidestLabel_px = 190.0;
constexpr double kLeastLabel_px = 100.0;
constexpr double kLabelShare = 0.27;
constexpr double kPad_px = 4.0;

QString said(const char* text) {
  return QCoreApplication::translate("LimbOverlay", text);
}

class Sheet {
 public:
  Sheet(QPainter& painter, const Overlay& overlay) : painter_(painter), o_(overlay) {}

  OverlayLayout paint() {
    painter_.setRenderHint(QPainter::Antialiasing);
    side();
    scale();
    if (o_.legend) legend();
    if (!o_.banner.isEmpty()) banner();
    labels();
    return layout_;
  }

 private:
  QFont font_of(double points, bool bold = false) const {
    QFont font = o_.font;
    font.setPointSizeF(points);
    font.setBold(bold);
    return font;
  }

  QColor veil() const {
    QColor colour = o_.palette.label;
    colour.setAlpha(215);
    return colour;
  }

  void side() {
    const QFont font = font_of(17.0, true);
    painter_.setFont(font);
    const QSizeF size = QFontMetricsF(font, painter_.device()).size(Qt::TextSingleLine, o_.side);
    layout_.side_text = o_.side;
    layout_.side = QRectF(QPointF(kMargin_px, kMargin_px), size);
    painter_.setPen(o_.palette.text);
    painter_.drawText(layout_.side, Qt::AlignLeft | Qt::AlignVCenter, o_.side);
  }

  // A round length of at most a fifth of the picture.
  void scale() {
    const double per_px = o_.camera.mm_per_pixel(o_.size);
    const double most_mm = per_px * std::min(160.0, 0.2 * o_.size.width());
    const double power = std::pow(10.0, std::floor(std::log10(most_mm)));
    double length_mm = power;
    for (const double step : {2.0, 5.0}) {
      if (step * power <= most_mm) length_mm = step * power;
    }
    const double length_px = length_mm / per_px;
    const QFont font = font_of(9.0);
    painter_.setFont(font);
    const QString text =
        length_mm < 1.0 ? said("%1 mm").arg(length_mm) : said("%1 mm").arg(std::lround(length_mm));
    const QFontMetricsF metrics(font, painter_.device());
    const double y = o_.size.height() - kMargin_px - 2.0;
    const double width = std::max(length_px, metrics.horizontalAdvance(text));
    layout_.scale = QRectF(kMargin_px, y - metrics.height() - 6.0, width, metrics.height() + 8.0);
    painter_.setPen(QPen(o_.palette.text, 1.5));
    painter_.drawLine(QPointF(kMargin_px, y), QPointF(kMargin_px + length_px, y));
    for (const double x : {kMargin_px, kMargin_px + length_px}) {
      painter_.drawLine(QPointF(x, y - 4.0), QPointF(x, y + 1.0));
    }
    painter_.drawText(QPointF(kMargin_px, y - 6.0), text);
  }

  void legend() {
    const SkinLegend& legend = *o_.legend;
    const QFont font = font_of(9.0);
    const QFontMetricsF metrics(font, painter_.device());
    painter_.setFont(font);
    const double width = std::max({180.0, metrics.horizontalAdvance(legend.title),
                                   metrics.horizontalAdvance(legend.low_text) +
                                       metrics.horizontalAdvance(legend.high_text) + 12.0});
    const double height = 2.0 * metrics.height() + 16.0;
    const QRectF box(o_.size.width() - kMargin_px - width, o_.size.height() - kMargin_px - height,
                     width, height);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(veil());
    painter_.drawRoundedRect(box.adjusted(-kPad_px, -kPad_px, kPad_px, kPad_px), 3.0, 3.0);
    const QRectF bar(box.left(), box.top() + metrics.height() + 2.0, width, 10.0);
    QLinearGradient gradient(bar.topLeft(), bar.topRight());
    const auto steps = static_cast<double>(o_.palette.scale.size() - 1);
    for (std::size_t k = 0; k < o_.palette.scale.size(); ++k) {
      gradient.setColorAt(static_cast<double>(k) / steps, o_.palette.scale[k]);
    }
    painter_.setBrush(gradient);
    painter_.drawRect(bar);
    painter_.setPen(o_.palette.text);
    const QRectF title(box.topLeft(), QSizeF(width, metrics.height()));
    const QRectF ends(box.left(), bar.bottom() + 2.0, width, metrics.height());
    painter_.drawText(title, Qt::AlignLeft, legend.title);
    painter_.drawText(ends, Qt::AlignLeft, legend.low_text);
    painter_.drawText(ends, Qt::AlignRight, legend.high_text);
    layout_.legend = box;
  }

  void banner() {
    const QFont font = font_of(10.5);
    const QFontMetricsF metrics(font, painter_.device());
    painter_.setFont(font);
    // In the upper right corner, where the limb, which is longest up and down, seldom reaches.
    const double width = std::max(160.0, 0.42 * o_.size.width());
    const QRectF room(o_.size.width() - kMargin_px - 8.0 - width, kMargin_px + 5.0, width,
                      0.4 * o_.size.height());
    constexpr int kFlags = Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap;
    layout_.banner = metrics.boundingRect(room, kFlags, o_.banner).adjusted(-8, -5, 8, 5);
    painter_.setPen(QPen(o_.palette.leader, 1.0));
    painter_.setBrush(veil());
    painter_.drawRoundedRect(layout_.banner, 4.0, 4.0);
    painter_.setPen(o_.palette.text);
    painter_.drawText(room, kFlags, o_.banner);
  }

  void labels() {
    std::vector<LabelWish> wishes;
    const QFont plain = font_of(9.5);
    const QFont bold = font_of(9.5, true);
    constexpr int kFlags = Qt::AlignLeft | Qt::TextWordWrap;
    const double widest_px =
        std::clamp(kLabelShare * o_.size.width(), kLeastLabel_px, kWidestLabel_px);
    for (const OverlayLabel& label : o_.labels) {
      const QFontMetricsF metrics(label.bold ? bold : plain, painter_.device());
      const QRectF text =
          metrics.boundingRect(QRectF(0.0, 0.0, widest_px, 1000.0), kFlags, label.text);
      wishes.push_back({QSizeF(std::ceil(text.width()), std::ceil(text.height())) +
                            QSizeF(2.0 * kPad_px + 5.0, 2.0),
                        o_.camera.to_picture(label.place_mm, o_.size), label.priority});
    }
    const auto placed = place_labels(wishes, room());
    painter_.setBrush(Qt::NoBrush);
    for (const PlacedLabel& each : placed) {
      painter_.setPen(QPen(o_.palette.leader, 1.0));
      painter_.drawLine(each.from, wishes[each.wish].anchor);
    }
    for (const PlacedLabel& each : placed) {
      const OverlayLabel& label = o_.labels[each.wish];
      painter_.fillRect(each.box, veil());
      // A stroke of the nerve's colour on the side of its line.
      const bool on_left = each.from.x() > each.box.center().x() + 1.0;
      painter_.fillRect(QRectF(on_left ? each.box.right() - 3.0 : each.box.left(), each.box.top(),
                               3.0, each.box.height()),
                        label.colour);
      painter_.fillRect(QRectF(wishes[each.wish].anchor - QPointF(2.0, 2.0), QSizeF(4.0, 4.0)),
                        label.colour);
      painter_.setFont(label.bold ? bold : plain);
      painter_.setPen(o_.palette.text);
      const QRectF text = each.box.adjusted(on_left ? kPad_px : kPad_px + 4.0, 1.0,
                                            on_left ? -kPad_px - 4.0 : -kPad_px, 1.0);
      painter_.drawText(text.adjusted(0.0, 0.0, 2.0, 2.0), kFlags, label.text);
      layout_.labels.push_back(each.box);
      layout_.texts.push_back(label.text);
    }
  }

  LabelRoom room() const {
    LabelRoom room;
    room.area = QRectF(QPointF(0.0, 0.0), o_.size)
                    .adjusted(kMargin_px, kMargin_px, -kMargin_px, -kMargin_px);
    for (const QRectF& taken : {layout_.side, layout_.scale, layout_.legend, layout_.banner}) {
      if (taken.isValid()) room.taken.push_back(taken);
    }
    for (const Eigen::Vector3d& place : o_.outline_mm) {
      room.subject.push_back(o_.camera.to_picture(place, o_.size));
    }
    return room;
  }

  QPainter& painter_;
  const Overlay& o_;
  OverlayLayout layout_;
};

}  // namespace

OverlayLayout paint_overlay(QPainter& painter, const Overlay& overlay) {
  return Sheet(painter, overlay).paint();
}

}  // namespace endplate::ui
