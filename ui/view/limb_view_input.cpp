// Mouse, keyboard and tools of the view.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/view/limb_view_parts.hpp"

namespace endplate::ui {
namespace {

constexpr double kClick_px = 4.0;
constexpr double kGrab_px = 12.0;
constexpr int kHover_ms = 40;
constexpr double kKeyTurn_px = 30.0;
constexpr double kKeyZoom = 1.2;
constexpr double kLineStep_px = 4.0;
// A longer step over the skin has slipped off to another part of the limb.
constexpr double kSlip_mm = 25.0;

double length(const QPointF& way) {
  return std::hypot(way.x(), way.y());
}

}  // namespace

PictureSpot LimbView::Parts::spot(const QPointF& at) const {
  return {camera, view.size(), at};
}

Pick LimbView::Parts::pick(const QPointF& at) const {
  if (!meshes || !limb || limb->shape() != meshes->scene.shape) return {};
  return pick_at(*meshes, *limb, style, spot(at));
}

std::optional<Pick> LimbView::Parts::pick_skin(const QPointF& at) const {
  if (!meshes || !limb || limb->shape() != meshes->scene.shape) return std::nullopt;
  return ui::pick_skin(*meshes, *limb, style, spot(at));
}

Pick LimbView::pick(const QPointF& at) const {
  return parts_->pick(at);
}

std::optional<std::size_t> LimbView::Parts::lesion_at(const QPointF& at) const {
  if (!meshes) return std::nullopt;
  std::optional<std::size_t> found;
  double best = kGrab_px;
  for (std::size_t i = 0; i < lesions.size(); ++i) {
    const auto nerve = meshes->scene.shape->find_nerve(lesions[i].nerve.toStdString());
    if (!nerve) continue;
    const Eigen::Vector3d place = meshes->scene.place_mm({*nerve, lesions[i].arc_mm});
    const double away = length(camera.to_picture(place, view.size()) - at);
    if (away >= best) continue;
    best = away;
    found = i;
  }
  return found;
}

void LimbView::Parts::drag_lesion(const QPointF& at) {
  LesionMark& mark = lesions[*dragged_lesion];
  const auto nerve = meshes->scene.shape->find_nerve(mark.nerve.toStdString());
  if (!nerve) return;
  mark.arc_mm = nearest_arc_mm(meshes->scene, *nerve, spot(at));
  remark();
  Q_EMIT view.lesion_dragged(static_cast<int>(*dragged_lesion), mark.nerve, mark.arc_mm);
}

void LimbView::mousePressEvent(QMouseEvent* event) {
  Parts& p = *parts_;
  p.pressed_at = p.last_at = event->position();
  p.moved = false;
  p.dragged_lesion.reset();
  if (event->button() == Qt::LeftButton && p.tool == Tool::look) {
    p.dragged_lesion = p.lesion_at(event->position());
  }
}

void LimbView::mouseMoveEvent(QMouseEvent* event) {
  Parts& p = *parts_;
  const QPointF at = event->position();
  if (event->buttons() == Qt::NoButton) {
    if (p.since_hover.isValid() && p.since_hover.elapsed() < kHover_ms) return;
    p.since_hover.start();
    setCursor(p.tool != Tool::look ? Qt::CrossCursor
              : p.lesion_at(at)    ? Qt::OpenHandCursor
                                   : Qt::ArrowCursor);
    Q_EMIT hovered(p.pick(at));
    return;
  }
  if (!p.moved && length(at - p.pressed_at) < kClick_px) return;
  p.moved = true;
  const QPointF by = at - p.last_at;
  p.last_at = at;
  if (p.dragged_lesion) {
    p.drag_lesion(at);
    return;
  }
  p.touched = true;
  if (event->buttons().testFlag(Qt::LeftButton) &&
      !event->modifiers().testFlag(Qt::ShiftModifier)) {
    p.camera.turn(by);
  } else {
    p.camera.shift(by, size());
  }
  p.move_camera();
}

void LimbView::mouseReleaseEvent(QMouseEvent* event) {
  Parts& p = *parts_;
  if (event->button() != Qt::LeftButton) return;
  if (p.dragged_lesion && p.moved) {
    const LesionMark mark = p.lesions[*p.dragged_lesion];
    const int number = static_cast<int>(*p.dragged_lesion);
    p.dragged_lesion.reset();
    Q_EMIT lesion_dropped(number, mark.nerve, mark.arc_mm);
    return;
  }
  p.dragged_lesion.reset();
  if (!p.moved) p.click(event->position());
}

void LimbView::mouseDoubleClickEvent(QMouseEvent* event) {
  mousePressEvent(event);
  if (parts_->tool == Tool::draw_incision) finish_incision();
}

void LimbView::Parts::click(const QPointF& at) {
  switch (tool) {
    case Tool::look:
      Q_EMIT view.picked(pick(at));
      break;
    case Tool::measure: {
      const Pick found = pick(at);
      if (found.kind != PickKind::nothing) add_measured(found);
      break;
    }
    case Tool::draw_incision:
      add_incision_mark(at);
      break;
  }
}

void LimbView::Parts::add_measured(const Pick& found) {
  if (measured_ends.size() == 2) view.clear_measurement();
  measured_ends.push_back(found);
  if (measured_ends.size() == 2) {
    Measurement taken{measured_ends[0], measured_ends[1], 0.0, {}, {}, {}};
    taken.straight_mm = (taken.to.place_mm - taken.from.place_mm).norm();
    // The nerve of a point on one is its part.
    const auto nerve = [](const Pick& end) {
      const bool point = end.kind == PickKind::branch_point || end.kind == PickKind::motor_entry;
      return point ? end.part : end.kind == PickKind::nerve ? end.name : QString();
    };
    if (!nerve(taken.from).isEmpty() && nerve(taken.from) == nerve(taken.to)) {
      taken.along_nerve_mm = std::abs(taken.to.arc_mm - taken.from.arc_mm);
    }
    measurement = taken;
    measure_over_skin();
    Q_EMIT view.measured(taken);
  }
  remark();
}

void LimbView::Parts::add_incision_mark(const QPointF& at) {
  const auto found = pick_skin(at);
  if (!found) return;
  if (!incision_marks.empty()) {
    const Eigen::Vector3d before = place_mm(meshes->scene, incision_marks.back());
    const QPointF from = camera.to_picture(before, view.size());
    const int steps = std::max(1, static_cast<int>(length(at - from) / kLineStep_px));
    Eigen::Vector3d last = before;
    for (int k = 1; k < steps; ++k) {
      const auto between = pick_skin(from + (at - from) * k / steps);
      if (!between || (between->place_mm - last).norm() > kSlip_mm) continue;
      incision_line.push_back(*between->skin);
      last = between->place_mm;
    }
  }
  incision_line.push_back(*found->skin);
  incision_marks.push_back(*found->skin);
  line_at_mark.push_back(incision_line.size());
  remark();
}

void LimbView::Parts::take_last_mark_away() {
  if (line_at_mark.empty()) return;
  line_at_mark.pop_back();
  incision_marks.pop_back();
  incision_line.resize(line_at_mark.empty() ? 0 : line_at_mark.back());
  remark();
}

void LimbView::finish_incision() {
  Parts& p = *parts_;
  if (p.incision_marks.empty()) return;
  Q_EMIT incision_drawn(p.incision_marks, p.incision_line);
  set_tool(Tool::look);
}

void LimbView::set_tool(Tool tool) {
  Parts& p = *parts_;
  if (p.tool == tool) return;
  p.tool = tool;
  if (tool == Tool::measure) clear_measurement();
  if (tool == Tool::draw_incision) clear_incision();
  setCursor(tool == Tool::look ? Qt::ArrowCursor : Qt::CrossCursor);
  p.redraw();
  Q_EMIT tool_changed(tool);
}

Tool LimbView::tool() const {
  return parts_->tool;
}

QString LimbView::Parts::banner() const {
  if (measurement) {
    QStringList words{LimbView::tr("straight %1 mm").arg(std::lround(measurement->straight_mm))};
    if (measurement->along_nerve_mm) {
      words << LimbView::tr("along the nerve %1 mm").arg(std::lround(*measurement->along_nerve_mm));
    }
    if (measurement->over_skin_mm) {
      words << LimbView::tr("over the skin %1 mm").arg(std::lround(*measurement->over_skin_mm));
    } else if (!measurement->over_skin_absent.isEmpty()) {
      words << LimbView::tr("not over the skin: %1").arg(measurement->over_skin_absent);
    } else {
      words << LimbView::tr("over the skin: measuring");
    }
    return words.join(QStringLiteral("  \u00b7  "));
  }
  switch (tool) {
    case Tool::look:
      break;
    case Tool::measure:
      return measured_ends.empty() ? LimbView::tr("Click the first place to measure from.")
                                   : LimbView::tr("Click the place to measure to.");
    case Tool::draw_incision:
      return incision_marks.empty()
                 ? LimbView::tr("Click on the skin where the incision begins.")
                 : LimbView::tr(
                       "Click on along the incision; Return ends it, Backspace takes the "
                       "last point away.");
  }
  return {};
}

void LimbView::wheelEvent(QWheelEvent* event) {
  Parts& p = *parts_;
  p.touched = true;
  p.camera.zoom(std::pow(1.0015, event->angleDelta().y()), event->position(), size());
  p.move_camera();
  event->accept();
}

void LimbView::keyPressEvent(QKeyEvent* event) {
  Parts& p = *parts_;
  const QPointF middle(0.5 * width(), 0.5 * height());
  switch (event->key()) {
    case Qt::Key_1:
      return look_from(Aspect::front);
    case Qt::Key_2:
      return look_from(Aspect::back);
    case Qt::Key_3:
      return look_from(Aspect::lateral);
    case Qt::Key_4:
      return look_from(Aspect::medial);
    case Qt::Key_5:
      return look_from(Aspect::proximal);
    case Qt::Key_Home:
      p.touched = false;
      return reset_view();
    case Qt::Key_Left:
      p.camera.turn({-kKeyTurn_px, 0.0});
      break;
    case Qt::Key_Right:
      p.camera.turn({kKeyTurn_px, 0.0});
      break;
    case Qt::Key_Up:
      p.camera.turn({0.0, -kKeyTurn_px});
      break;
    case Qt::Key_Down:
      p.camera.turn({0.0, kKeyTurn_px});
      break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      p.camera.zoom(kKeyZoom, middle, size());
      break;
    case Qt::Key_Minus:
      p.camera.zoom(1.0 / kKeyZoom, middle, size());
      break;
    case Qt::Key_Escape:
      if (p.tool == Tool::look) return QWidget::keyPressEvent(event);
      return set_tool(Tool::look);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (p.tool != Tool::draw_incision) return QWidget::keyPressEvent(event);
      return finish_incision();
    case Qt::Key_Backspace:
      if (p.tool != Tool::draw_incision) return QWidget::keyPressEvent(event);
      return p.take_last_mark_away();
    default:
      return QWidget::keyPressEvent(event);
  }
  p.touched = true;
  p.move_camera();
}

void LimbView::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  Q_EMIT hovered({});
}

}  // namespace endplate::ui
