#pragma once
// The colours of the view. Every set tells the five great nerves apart for eyes that see no red or
// no green; nothing is told by colour alone, names stand beside.
#include <QColor>
#include <QString>
#include <array>

#include "models/limb/limb_scene.hpp"

namespace endplate::ui {

enum class PaletteKind { light, dark, print, contrast };

struct Palette {
  QColor background;
  QColor text;
  QColor leader;  // from a label to its place
  QColor label;   // behind a label
  QColor skin;
  QColor bone;
  QColor muscle;
  QColor landmark;
  QColor branch_point;
  QColor motor_entry;
  QColor highlight;  // muscles, bones and landmarks asked for
  QColor lesion;
  QColor route;
  QColor incision;
  QColor measure;
  std::array<QColor, 6> nerves;  // by limb::NerveFamily
  std::array<QColor, 5> scale;   // of values on the skin, low to high, ever darker or ever lighter
  double skin_opacity = 0.2;     // seen straight on
  double skin_rim = 0.7;         // and at its edge
  double dimmed = 0.72;          // towards the background, of what is not asked for
};

const Palette& palette_of(PaletteKind kind);

QColor mixed(const QColor& from, const QColor& to, double share);
// Lighter the smaller the nerve, on the palette's background.
QColor nerve_colour(const Palette& palette, limb::NerveFamily family, limb::NerveRank rank);
// `share` 0 to 1 of the scale.
QColor scale_colour(const Palette& palette, double share);

}  // namespace endplate::ui
