#pragma once
// What the view of the limb shows, takes and gives: plain values, places in the limb frame, mm.
#include <Eigen/Core>
#include <QColor>
#include <QFlags>
#include <QMetaType>
#include <QString>
#include <array>
#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace endplate::ui {

enum class Layer : unsigned {
  skin = 1u << 0,
  bones = 1u << 1,
  muscles = 1u << 2,
  nerves = 1u << 3,        // with the plexus
  small_nerves = 1u << 4,  // skin nerves, nerves of the digits, motor branches
  chest_nerves = 1u << 5,
  branch_points = 1u << 6,
  motor_entries = 1u << 7,
  landmarks = 1u << 8,
  labels = 1u << 9,
};
Q_DECLARE_FLAGS(Layers, Layer)
Q_DECLARE_OPERATORS_FOR_FLAGS(Layers)

inline constexpr Layers kUsualLayers = Layers(Layer::skin) | Layer::bones | Layer::nerves |
                                       Layer::small_nerves | Layer::branch_points | Layer::labels;

// From where the limb is looked at, whichever side it is.
enum class Aspect { front, back, lateral, medial, proximal };

enum class PickKind { nothing, nerve, branch_point, motor_entry, landmark, muscle, bone, skin };

// A place of the skin that moves with it: a triangle of the scene and shares of its corners.
struct SkinSpot {
  std::size_t triangle = 0;
  std::array<double, 3> weights{1.0, 0.0, 0.0};
};

struct Pick {
  PickKind kind = PickKind::nothing;
  QString name;  // standard term: the nerve, branch, muscle, bone, landmark or region of the skin
  QString part;  // of a muscle or bone; the nerve of a branch point or motor entry
  // Along the nerve from its own beginning, for the first three kinds.
  double arc_mm = std::numeric_limits<double>::quiet_NaN();
  Eigen::Vector3d place_mm = Eigen::Vector3d::Zero();
  std::optional<SkinSpot> skin;  // the skin in front of it, where that is shown or asked for
};

struct LesionMark {
  QString nerve;  // standard term
  double arc_mm = 0.0;
  QString label;
};

// From one place of a nerve to another; a route's next stretch is joined by a broken line.
struct RouteStretch {
  QString nerve;
  double from_mm = 0.0;
  double to_mm = 0.0;
};
struct Route {
  QString label;
  QColor colour;  // invalid: the palette's
  std::vector<RouteStretch> stretches;
  std::vector<std::vector<Eigen::Vector3d>> lines_mm;  // further lines, in the pose shown
};

struct Measurement {
  Pick from;
  Pick to;
  double straight_mm = 0.0;
  std::optional<double> along_nerve_mm;  // both on one nerve
  std::optional<double> over_skin_mm;
  QString over_skin_absent;  // why there is none; empty while it is being measured
};

// What the colours of the skin stand for.
struct SkinLegend {
  QString title;
  QString low_text;
  QString high_text;
  double low = 0.0;
  double high = 1.0;
};

// Cuts the limb from its proximal end, its front or its lateral side.
enum class ClipAxis { proximal, front, lateral };
struct ClipPlane {
  ClipAxis axis = ClipAxis::front;
  double share = 0.5;  // of the limb's extent that is cut away, 0 to 1
};

enum class Tool { look, measure, draw_incision };

}  // namespace endplate::ui

Q_DECLARE_METATYPE(endplate::ui::Pick)
Q_DECLARE_METATYPE(endplate::ui::Measurement)
