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
constexpr double kRow_px = 10.0;
constexpr double kStep_px = 7.0;
constexpr int kSteps = 30;  // up and down
// What it costs, in pixels away from where it would like to stand.
constexpr double kOtherSide = 60.0;
constexpr double kOverSubject = 250.0;
constexpr double kPerLine_px = 0.3;

struct Reach {
  double left = std::numeric_limits<double>::infinity();
  double right = -std::numeric_limits<double>::infinity();

  bool empty() const { return left > right; }
  void join(const Reach& other) {
    left = std::min(left, other.left);
    right = std::max(right, other.right);
  }
};

// How far the subject reaches to either side, row by row of the picture.
class Rows {
 public:
  explicit Rows(const LabelRoom& room) : top_(room.area.top()) {
    rows_.resize(static_cast<std::size_t>(std::max(0.0, room.area.height()) / kRow_px) + 1);
    for (const QPointF& p : room.subject) {
      const double row = (p.y() - top_) / kRow_px;
      if (!(row >= 0.0 && row < static_cast<double>(rows_.size()))) continue;
      rows_[static_cast<std::size_t>(row)].join({p.x(), p.x()});
    }
  }
  Reach between(double top, double bottom) const {
    Reach reach;
    const double last = static_cast<double>(rows_.size()) - 1.0;
    const auto from = static_cast<std::size_t>(std::clamp((top - top_) / kRow_px - 1.0, 0.0, last));
    const auto to =
        static_cast<std::size_t>(std::clamp((bottom - top_) / kRow_px + 1.0, 0.0, last));
    for (std::size_t row = from; row <= to; ++row) reach.join(rows_[row]);
    return reach;
  }

 private:
  double top_;
  std::vector<Reach> rows_;
};

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
      : wishes_(wishes), room_(room), rows_(room) {}

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
    const Reach here =
        rows_.between(wish.anchor.y() - 2.0 * kRow_px, wish.anchor.y() + 2.0 * kRow_px);
    const bool prefers_left =
        wish.anchor.x() < (here.empty() ? wish.anchor.x() : 0.5 * (here.left + here.right));
    std::optional<PlacedLabel> best;
    double least = std::numeric_limits<double>::infinity();
    for (const bool over : {false, true}) {
      if (over && best) break;
      for (int k = -kSteps; k <= kSteps; ++k) {
        for (const bool left : {false, true}) {
          const double top = wish.anchor.y() - 0.5 * wish.size.height() + k * kStep_px;
          const QRectF box = box_at(wish, top, left, over);
          const QPointF from(left ? box.right() : box.left(), box.center().y());
          const double cost = std::abs(k * kStep_px) + (left == prefers_left ? 0.0 : kOtherSide) +
                              (over ? kOverSubject : 0.0) +
                              kPerLine_px * QLineF(from, wish.anchor).length();
          if (cost >= least || !is_free(wish, box, from)) continue;
          least = cost;
          best = PlacedLabel{w, box, from};
        }
      }
    }
    return best;
  }

  QRectF box_at(const LabelWish& wish, double top, bool left, bool over) const {
    Reach beside = rows_.between(top, top + wish.size.height());
    if (over || beside.empty()) beside = {wish.anchor.x(), wish.anchor.x()};
    const double x = left ? std::min(beside.left, wish.anchor.x()) - kAside_px - wish.size.width()
                          : std::max(beside.right, wish.anchor.x()) + kAside_px;
    return {QPointF(x, top), wish.size};
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
  Rows rows_;
  std::vector<PlacedLabel> placed_;
};

}  // namespace

std::vector<PlacedLabel> place_labels(const std::vector<LabelWish>& wishes, const LabelRoom& room) {
  return Placer(wishes, room).place();
}

}  // namespace endplate::ui
