#pragma once
// Colours that stay apart for every kind of colour vision (Okabe and Ito), on light and on dark.
#include <QColor>
#include <QPalette>

namespace endplate::ui {

struct Colours {
  explicit Colours(const QPalette& palette);

  bool dark = false;
  QColor paper;    // behind everything
  QColor ink;      // words and axes
  QColor faint;    // grids, and what is of less weight
  QColor absent;   // not examined, not known
  QColor whole;    // normal, intact
  QColor weak;     // between
  QColor lost;     // denervated, absent
  QColor on_fill;  // words on `whole` and `lost`
  QColor first;    // the first and the second curve of a chart
  QColor second;
  QColor alert;     // behind a warning
  QColor on_alert;  // words on it
  QColor pointed;   // behind what was picked on the limb
};

// Two palettes of the widgets.
QPalette light_palette();
QPalette dark_palette();

}  // namespace endplate::ui
