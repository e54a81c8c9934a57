#pragma once
// Where labels stand so that none covers another, nor the limb where there is room beside, above or
// below it: each near its place, joined to it by a line that crosses no other label or line.
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <cstddef>
#include <vector>

namespace endplate::ui {

struct LabelWish {
  QSizeF size;
  QPointF anchor;    // the place that it names
  int priority = 0;  // the lower the more wanted
};

struct PlacedLabel {
  std::size_t wish = 0;
  QRectF box;
  QPointF from;  // on the box, where its line begins
};

struct LabelRoom {
  QRectF area;                   // labels stay within
  std::vector<QPointF> subject;  // points all over what they stand beside
  std::vector<QRectF> taken;
};

// What does not fit is left out, the least wanted first.
std::vector<PlacedLabel> place_labels(const std::vector<LabelWish>& wishes, const LabelRoom& room);

}  // namespace endplate::ui
