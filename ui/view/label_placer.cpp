#include "ui/view/label_placer.hpp"

#include <QLineF>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace endplate::ui {
namespace {

constexpr double kGap_px = 3.0;
constexpr double kAside_px = 26.0;
constexpr double kStrip_px = 10.0;
constexpr double kStep_px = 7.0;
constexpr int kSteps = 30;  // to either side
// What it costs, in pixels away from where it would like to stand.
constexpr double kOtherSide = 60.0;
constexpr double kOverSubject = 250.0;
constexpr double kAbove = 40.0;
constexpr double kPerLine_px = 0.8;

struct Reach {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();

  bool empty() const { return low > high; }
  void join(const Reach& other) {
    low = std::min(low, other.low);
    high = std::max(high, other.high);
  }
};

// How far the subject reaches across, strip by strip of the picture.
class Strips {
 public:
  Strips(double from, double length) : from_(from) {
    strips_.resize(static_cast<std::size_t>(std::max(0.0, length) / kStrip_px) + 1);
  }
  void add(double along, double across) {
    const double strip = (along - from_) / kStrip_px;
    if (!(strip >= 0.0 && strip < static_cast<double>(strips_.size()))) return;
    strips_[static_cast<std::size_t>(strip)].join({across, across});
  }
  Reach between(double from, double to) const {
    Reach reach;
    const double last = static_cast<double>(strips_.size()) - 1.0;
    const auto strip = [&](double at) {
      return static_cast<std::size_t>(std::clamp((at - from_) / kStrip_px, 0.0, last));
    };
    for (auto k = strip(from - kStrip_px); k <= strip(to + kStrip_px); ++k) reach.join(strips_[k]);
    return reach;
  }

 private:
  double from_;
  std::vector<Reach> strips_;
};

enum class Where { left, right, above, below };

bool meet(const QLineF& line, const QRectF& box) {
  if (box.contains(line.p1()) || box.contains(line.p2())) return true;
  const std::array edges{
      QLineF(box.topLeft(), box.topRight()), QLineF(box.topRight(), box.bottomRight()),
      QLineF(box.bottomRight(), box.bottomLeft()), QLineF(box.bottomLeft(), box.topLeft())};
  return std::ranges::any_of(edges, [&](const QLineF& edge) {
    return line.intersects(edge, nullptr) == QLineF::BoundedIntersection;
  });
}

class Placer {
 public:
  Placer(const std::vector<LabelWish>& wishes, const LabelRoom& room)
      : wishes_(wishes),
        room_(room),
        rows_(room.area.top(), room.area.height()),
        columns_(room.area.left(), room.area.width()) {
    for (const QPointF& p : room.subject) {
      rows_.add(p.y(), p.x());
      columns_.add(p.x(), p.y());
    }
  }

  std::vector<PlacedLabel> place() {
    std::vector<std::size_t> order(wishes_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t w) { return wishes_[w].priority; });
    for (const std::size_t w : order) {
      if (const auto best = best_for(w)) placed_.push_back(*best);
    }
    return std::move(placed_);
  }

 private:
  std::optional<PlacedLabel> best_for(std::size_t w) const {
    const LabelWish& wish = wishes_[w];
    const Reach here = rows_.between(wish.anchor.y() - kStrip_px, wish.anchor.y() + kStrip_px);
    const bool on_left = !here.empty() && wish.anchor.x() < 0.5 * (here.low + here.high);
    std::optional<PlacedLabel> best;
    double least = std::numeric_limits<double>::infinity();
    for (const bool over : {false, true}) {
      if (over && best) break;
      for (const Where where : {Where::left, Where::right, Where::above, Where::below}) {
        const double aside = where == Where::above || where == Where::below ? kAbove
                             : (where == Where::left) == on_left            ? 0.0
                                                                            : kOtherSide;
        for (int k = -kSteps; k <= kSteps; ++k) {
          const PlacedLabel at = placed_at(w, where, k * kStep_px, over);
          const double cost = std::abs(k * kStep_px) + aside + (over ? kOverSubject : 0.0) +
                              kPerLine_px * QLineF(at.from, wish.anchor).length();
          if (cost >= least || !is_free(wish, at.box, at.from)) continue;
          least = cost;
          best = at;
        }
      }
    }
    return best;
  }

  // Beside the subject, or over it beside the place itself.
  PlacedLabel placed_at(std::size_t w, Where where, double moved, bool over) const {
    const QPointF& at = wishes_[w].anchor;
    const QSizeF& size = wishes_[w].size;
    if (where == Where::left || where == Where::right) {
      const double top = at.y() - 0.5 * size.height() + moved;
      Reach beside = rows_.between(top, top + size.height());
      if (over) beside = {};
      beside.join({at.x(), at.x()});
      const bool left = where == Where::left;
      const QRectF box(
          QPointF(left ? beside.low - kAside_px - size.width() : beside.high + kAside_px, top),
          size);
      return {w, box, QPointF(left ? box.right() : box.left(), box.center().y())};
    }
    const double left = at.x() - 0.5 * size.width() + moved;
    Reach beside = columns_.between(left, left + size.width());
    if (over) beside = {};
    beside.join({at.y(), at.y()});
    const bool above = where == Where::above;
    const QRectF box(
        QPointF(left, above ? beside.low - kAside_px - size.height() : beside.high + kAside_px),
        size);
    return {w, box, QPointF(box.center().x(), above ? box.bottom() : box.top())};
  }

  bool is_free(const LabelWish& wish, const QRectF& box, const QPointF& from) const {
    if (!room_.area.contains(box)) return false;
    const QRectF wide = box.adjusted(-kGap_px, -kGap_px, kGap_px, kGap_px);
    const QLineF line(from, wish.anchor);
    for (const QRectF& taken : room_.taken) {
      if (wide.intersects(taken) || meet(line, taken)) return false;
    }
    for (const PlacedLabel& other : placed_) {
      const QLineF other_line(other.from, wishes_[other.wish].anchor);
      if (wide.intersects(other.box) || meet(line, other.box) || meet(other_line, wide))
        return false;
      if (line.intersects(other_line, nullptr) == QLineF::BoundedIntersection) return false;
    }
    return true;
  }

  const std::vector<LabelWish>& wishes_;
  const LabelRoom& room_;
  Strips rows_;
  Strips columns_;
  std::vector<PlacedLabel> placed_;
};

}  // namespace

std::vector<PlacedLabel> place_labels(const std::vector<LabelWish>& wishes, const LabelRoom& room) {
  return Placer(wishes, room).place();
}

}  // namespace endplate::ui
