// The pose of the limb, worked out beside the interface thread.
#include <utility>

#include "ui/view/limb_view_parts.hpp"

namespace endplate::ui {

void LimbView::Parts::call(std::function<void()> what) {
  QMetaObject::invokeMethod(&view, std::move(what), Qt::QueuedConnection);
}

void LimbView::Parts::ask_pose(const limb::Pose& wanted) {
  pose = wanted;
  settling.forget();
  settle_soon.start();
  next_pose = wanted;
  if (!pose_under_way) begin_next_pose();
}

void LimbView::Parts::begin_next_pose() {
  pose_under_way = false;
  if (next_pose) begin_pose(*std::exchange(next_pose, std::nullopt));
}

void LimbView::Parts::begin_pose(const limb::Pose& wanted) {
  pose_under_way = true;
  const quint64 number = ++request;
  posing.ask([this, number, wanted, of = limb, like = meshes, muscles = wants_muscles()] {
    auto made = std::make_shared<SceneMeshes>(mesh_scene(of->in_pose(wanted, muscles), like.get()));
    deliver({std::move(made), wanted, number, wanted.is_neutral()});
  });
}

bool LimbView::Parts::wants_muscles() const {
  return shows(style, Batch::muscles);
}

void LimbView::Parts::ask_settle() {
  if (next_pose) begin_next_pose();  // nothing is drawn while the view is hidden
  if (!limb || pose.is_neutral()) return;
  settling.ask(
      [this, number = request.load(), wanted = pose, of = limb, muscles = wants_muscles()] {
        const limb::Pose kept = of->held(wanted);
        if (request != number) return;
        auto made = std::make_shared<SceneMeshes>(mesh_scene(of->in_pose(kept, muscles)));
        deliver({std::move(made), kept, number, true});
      });
}

void LimbView::Parts::deliver(Delivered what) {
  {
    const std::lock_guard lock(delivered_mutex);
    if (delivered && (delivered->request > what.request ||
                      (delivered->request == what.request && delivered->held))) {
      return;
    }
    delivered = std::move(what);
  }
  call([this] { take_delivered(); });
}

void LimbView::Parts::take_delivered() {
  std::optional<Delivered> what;
  {
    const std::lock_guard lock(delivered_mutex);
    what = std::exchange(delivered, std::nullopt);
  }
  if (!what) return;
  if (what->held && what->request != request) return;
  const bool new_shape = !meshes || meshes->scene.shape != what->meshes->scene.shape;
  // Values and lines of another skin say nothing about this one.
  if (new_shape && meshes) {
    style.skin_values.clear();
    legend.reset();
    incision_line.clear();
    incision_marks.clear();
    line_at_mark.clear();
    ordered_style.reset();
  }
  meshes = std::move(what->meshes);
  shown_pose = what->pose;
  measured_ends.clear();
  measurement.reset();
  tape_mm.clear();
  move();
  if (!fitted) fit();
  remark();
  poses_to_tell.emplace_back(meshes, what->held);
  pose_to_draw = true;
  if (view.isVisible()) return;  // its picture tells
  begin_next_pose();
  tell_pose(meshes);
}

void LimbView::Parts::measure_over_skin() {
  measuring.ask([this, of = limb, in = meshes, at = shown_pose, wanted = *measurement] {
    if (tape.of != in) {
      tape.tape = std::make_unique<limb::SkinTape>(of->frames(), of->envelope(), of->joints(), at);
      tape.of = in;
    }
    const auto line = tape.tape->line(wanted.from.place_mm, wanted.to.place_mm);
    call([this, line, in, wanted] {
      // Another measurement or pose has come in between.
      if (!measurement || meshes != in || measured_ends.size() != 2 ||
          measured_ends[0].place_mm != wanted.from.place_mm ||
          measured_ends[1].place_mm != wanted.to.place_mm) {
        return;
      }
      if (line) {
        measurement->over_skin_mm = line->length_mm;
        tape_mm = line->points_mm;
      } else {
        measurement->over_skin_absent = QString::fromStdString(line.error());
      }
      remark();
      Q_EMIT view.measured(*measurement);
    });
  });
}

}  // namespace endplate::ui
