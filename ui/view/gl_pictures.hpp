#pragma once
// Pictures by VTK, in an OpenGL context of their own that no window sees.
#include <QOpenGLContext>
#include <memory>

#include "ui/view/picture.hpp"
#include "ui/view/scene_stage.hpp"

class QOffscreenSurface;

namespace endplate::ui {

class GlPictures : public PictureMaker {
 public:
  // Made, used and ended on one thread. The surface, which only the interface thread may make and
  // destroy, outlives this.
  explicit GlPictures(QOffscreenSurface& surface);
  ~GlPictures() override;
  Q_DISABLE_COPY_MOVE(GlPictures)

  // False where the driver refused after all; then nothing can be drawn.
  bool is_ready() const { return ready_; }
  Picture draw(const PictureOrder& order) override;

 private:
  void set(const PictureOrder& order);

  QOffscreenSurface& surface_;
  QOpenGLContext context_;
  SceneStage stage_;
  bool ready_ = false;
  // What the stage holds.
  std::shared_ptr<const SceneMeshes> meshes_;
  std::shared_ptr<const SceneStyle> style_;
  std::shared_ptr<const ExtraMarks> marks_;
};

}  // namespace endplate::ui
