#include "ui/view/surface_format.hpp"

#include <QSurfaceFormat>

namespace endplate::ui {

QSurfaceFormat surface_format() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setVersion(3, 2);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setSwapBehavior(QSurfaceFormat::DoubleBuffer);
  format.setDepthBufferSize(24);
  format.setSamples(0);
  return format;
}

}  // namespace endplate::ui
