#pragma once
// What stands on the picture of the limb: the side in capitals, names with their lines, the scale,
// the key of the skin's colours, the measurement. Drawn the same on the screen and on paper.
#include <QFont>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "ui/view/orbit_camera.hpp"
#include "ui/view/palette.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/scene_style.hpp"
#include "ui/view/view_types.hpp"

class QPainter;

namespace endplate::ui {

struct OverlayLabel {
  QString text;
  Eigen::Vector3d place_mm;
  QColor colour;
  int priority = 0;
  bool bold = false;
};

struct Overlay {
  QFont font;
  Palette palette;
  OrbitCamera camera;
  QSizeF size;   // logical pixels
  QString side;  // in capitals
  std::vector<OverlayLabel> labels;
  std::vector<Eigen::Vector3d> outline_mm;  // places of the limb, beside which labels stand
  std::optional<SkinLegend> legend;
  QString banner;  // a measurement, or what to do next
};

// Where things came to stand, logical pixels.
struct OverlayLayout {
  QString side_text;
  QRectF side;
  QRectF scale;
  QRectF legend;
  QRectF banner;
  std::vector<QRectF> labels;
  std::vector<QString> texts;  // by label
};

OverlayLayout paint_overlay(QPainter& painter, const Overlay& overlay);

// Terms of the tables as the reader has them.
using Namer = std::function<QString(const QString&)>;

// The names that the layers and what is asked for want on the picture, at this size.
std::vector<OverlayLabel> labels_of(const limb::LimbScene& scene, const SceneStyle& style,
                                    const OrbitCamera& camera, const QSizeF& size,
                                    const Namer& namer);

// Places all over what is shown, beside which the names stand.
std::vector<Eigen::Vector3d> outline_of(const limb::LimbScene& scene, const SceneStyle& style);

}  // namespace endplate::ui
