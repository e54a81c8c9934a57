#pragma once
// What a picture of the limb is drawn from, and the picture. Values that are handed between
// threads: what they share is not changed any more.
#include <QImage>
#include <QSize>
#include <QtGlobal>
#include <memory>

#include "ui/view/orbit_camera.hpp"
#include "ui/view/overlay.hpp"
#include "ui/view/scene_extras.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/scene_style.hpp"

namespace endplate::ui {

struct PictureOrder {
  quint64 number = 0;  // of those who order
  std::shared_ptr<const SceneMeshes> meshes;
  std::shared_ptr<const SceneStyle> style;
  std::shared_ptr<const ExtraMarks> marks;
  OrbitCamera camera;
  QSize pixels;
  int samples = 4;     // a pixel; 0: edges are jagged
  double scale = 1.0;  // pixels of the picture for one of the overlay
  Overlay overlay;
};

struct Picture {
  quint64 number = 0;  // of its order
  std::shared_ptr<const SceneMeshes> meshes;
  QImage image;  // opaque; null where it could not be drawn
  OverlayLayout layout;
  int gl_errors = 0;
  double drawn_ms = 0.0;
};

// Anything that turns an order into a picture, on one thread.
class PictureMaker {
 public:
  virtual ~PictureMaker() = default;
  virtual Picture draw(const PictureOrder& order) = 0;
};

}  // namespace endplate::ui
