#include "ui/charts/colours.hpp"

namespace endplate::ui {

Colours::Colours(const QPalette& palette) {
  paper = palette.color(QPalette::Base);
  ink = palette.color(QPalette::Text);
  dark = paper.lightnessF() < 0.5F;
  faint = dark ? QColor(90, 96, 104) : QColor(200, 205, 210);
  absent = dark ? QColor(150, 156, 164) : QColor(110, 116, 124);
  whole = dark ? QColor(86, 180, 233) : QColor(0, 114, 178);
  weak = dark ? QColor(240, 190, 60) : QColor(230, 159, 0);
  lost = dark ? QColor(235, 130, 60) : QColor(190, 75, 0);
  on_fill = dark ? QColor(16, 18, 20) : QColor(255, 255, 255);
  first = whole;
  second = lost;
  alert = dark ? QColor(92, 66, 0) : QColor(255, 236, 179);
  pointed = dark ? QColor(24, 62, 82) : QColor(222, 238, 247);
  on_alert = dark ? QColor(255, 236, 179) : QColor(70, 48, 0);
}

QPalette light_palette() {
  QPalette palette(QColor(240, 241, 243), QColor(247, 248, 249));
  palette.setColor(QPalette::Base, Qt::white);
  palette.setColor(QPalette::AlternateBase, QColor(244, 246, 248));
  palette.setColor(QPalette::Text, QColor(24, 28, 32));
  palette.setColor(QPalette::WindowText, QColor(24, 28, 32));
  palette.setColor(QPalette::ButtonText, QColor(24, 28, 32));
  palette.setColor(QPalette::PlaceholderText, QColor(110, 116, 124));
  palette.setColor(QPalette::Highlight, QColor(0, 94, 150));
  palette.setColor(QPalette::HighlightedText, Qt::white);
  palette.setColor(QPalette::Link, QColor(0, 94, 150));
  return palette;
}

QPalette dark_palette() {
  QPalette palette(QColor(52, 56, 62), QColor(36, 39, 44));
  const QColor ink(230, 233, 236);
  palette.setColor(QPalette::Base, QColor(26, 28, 32));
  palette.setColor(QPalette::AlternateBase, QColor(33, 36, 40));
  palette.setColor(QPalette::Text, ink);
  palette.setColor(QPalette::WindowText, ink);
  palette.setColor(QPalette::ButtonText, ink);
  palette.setColor(QPalette::BrightText, Qt::white);
  palette.setColor(QPalette::ToolTipBase, QColor(52, 56, 62));
  palette.setColor(QPalette::ToolTipText, ink);
  palette.setColor(QPalette::PlaceholderText, QColor(150, 156, 164));
  palette.setColor(QPalette::Highlight, QColor(60, 130, 180));
  palette.setColor(QPalette::HighlightedText, Qt::white);
  palette.setColor(QPalette::Link, QColor(120, 190, 240));
  const QColor grey(130, 136, 142);
  for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, grey);
  }
  return palette;
}

}  // namespace endplate::ui
