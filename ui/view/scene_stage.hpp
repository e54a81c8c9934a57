#pragma once
// VTK's drawing of the limb in whatever OpenGL context its owner makes current, off screen.
//
// Every call but the constructor and the setters wants that context current. Nothing is drawn
// before initialise(); release() gives back all that the context holds, after which initialise()
// may be called again in another one.
#include <QImage>
#include <QSize>
#include <functional>
#include <memory>

#include "ui/view/orbit_camera.hpp"
#include "ui/view/scene_extras.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/scene_style.hpp"

namespace endplate::ui {

class SceneStage {
 public:
  struct Context {
    std::function<void()> make_current;
    std::function<bool()> is_current;
  };

  explicit SceneStage(Context context, int samples = 4);
  ~SceneStage();  // after release()
  SceneStage(const SceneStage&) = delete;
  SceneStage& operator=(const SceneStage&) = delete;

  bool initialise();
  void release();

  void set_size(const QSize& pixels);
  void set_samples(int samples);  // a pixel; 0: edges are jagged
  void set_meshes(std::shared_ptr<const SceneMeshes> meshes);
  void set_style(std::shared_ptr<const SceneStyle> style);
  void set_extras(SceneExtras extras);
  void set_camera(const OrbitCamera& camera);

  // Draws, if anything was set since the last time. Opaque, of the size that was set; null before
  // initialise().
  QImage paint();

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace endplate::ui
