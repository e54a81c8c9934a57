#include "ui/view/palette.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::ui {
namespace {

QColor rgb(QRgb value) {
  return QColor::fromRgb(value);
}

// The hues are those of Okabe and Ito (Color Universal Design, 2008), darker on white and lighter
// on black.
Palette light() {
  Palette p;
  p.background = rgb(0xf4f5f6);
  p.text = rgb(0x1b2229);
  p.leader = rgb(0x7b858e);
  p.label = rgb(0xfbfbfb);
  p.skin = rgb(0xc9a68f);
  p.bone = rgb(0xe6dfcd);
  p.muscle = rgb(0xc39a91);
  p.landmark = rgb(0x3d4650);
  p.branch_point = rgb(0x333b44);
  p.motor_entry = rgb(0x6b4a86);
  p.highlight = rgb(0x8a6d00);
  p.lesion = rgb(0x111111);
  p.route = rgb(0x7a3b00);
  p.incision = rgb(0x8b1a4a);
  p.measure = rgb(0x10455c);
  p.nerves = {rgb(0xd98f00), rgb(0xc4649c), rgb(0xb84400),
              rgb(0x005a9c), rgb(0x008560), rgb(0x6c747c)};
  p.scale = {rgb(0xfff3c4), rgb(0xf6c266), rgb(0xd8743a), rgb(0x97304a), rgb(0x3f0f3d)};
  return p;
}

Palette dark() {
  Palette p;
  p.background = rgb(0x14181d);
  p.text = rgb(0xe9edf0);
  p.leader = rgb(0x8c97a1);
  p.label = rgb(0x1d2329);
  p.skin = rgb(0xb9a191);
  p.bone = rgb(0xb5af9f);
  p.muscle = rgb(0x8c625b);
  p.landmark = rgb(0xdfe5ea);
  p.branch_point = rgb(0xf0f3f5);
  p.motor_entry = rgb(0xcdb2e4);
  p.highlight = rgb(0xf0e442);
  p.lesion = rgb(0xffffff);
  p.route = rgb(0xf2c48d);
  p.incision = rgb(0xff8fb8);
  p.measure = rgb(0x9fd8f2);
  p.nerves = {rgb(0xf0ad1f), rgb(0xdf95be), rgb(0xf0743a),
              rgb(0x5fb4ea), rgb(0x2fc394), rgb(0xa3abb3)};
  p.scale = {rgb(0x2b1030), rgb(0x7a2548), rgb(0xc95a3a), rgb(0xf0b050), rgb(0xfff6cf)};
  p.skin_opacity = 0.16;
  p.skin_rim = 0.75;
  p.dimmed = 0.5;  // the same share takes more of a light colour on black
  return p;
}

Palette print() {
  Palette p = light();
  p.background = rgb(0xffffff);
  p.text = rgb(0x000000);
  p.leader = rgb(0x555555);
  p.label = rgb(0xffffff);
  p.skin = rgb(0xa08a7c);
  p.bone = rgb(0xe9e4d6);
  p.nerves = {rgb(0xc98600), rgb(0xbd5f98), rgb(0xa83e00),
              rgb(0x00407c), rgb(0x007a55), rgb(0x50565c)};
  p.skin_opacity = 0.10;
  p.skin_rim = 0.75;
  return p;
}

Palette contrast() {
  Palette p = light();
  p.background = rgb(0xffffff);
  p.text = rgb(0x000000);
  p.leader = rgb(0x404040);
  p.skin = rgb(0x9a9a9a);
  p.bone = rgb(0xdedede);
  p.muscle = rgb(0xbcbcbc);
  p.highlight = rgb(0x000000);
  p.nerves = {rgb(0xe69f00), rgb(0xcc79a7), rgb(0xd55e00),
              rgb(0x0072b2), rgb(0x009e73), rgb(0x000000)};
  p.skin_opacity = 0.08;
  p.skin_rim = 0.8;
  return p;
}

}  // namespace

const Palette& palette_of(PaletteKind kind) {
  static const std::array<Palette, 4> palettes{light(), dark(), print(), contrast()};
  return palettes[static_cast<std::size_t>(kind)];
}

QColor mixed(const QColor& from, const QColor& to, double share) {
  const auto mix = [&](int a, int b) {
    return static_cast<int>(std::lround(std::lerp(a, b, share)));
  };
  return {mix(from.red(), to.red()), mix(from.green(), to.green()), mix(from.blue(), to.blue())};
}

QColor nerve_colour(const Palette& palette, limb::NerveFamily family, limb::NerveRank rank) {
  const QColor& own = palette.nerves[static_cast<std::size_t>(family)];
  switch (rank) {
    case limb::NerveRank::great:
    case limb::NerveRank::girdle:
      return own;
    case limb::NerveRank::deep:
      return mixed(own, palette.background, 0.15);
    case limb::NerveRank::small:
    case limb::NerveRank::chest:
      break;
  }
  return mixed(own, palette.background, 0.35);
}

QColor scale_colour(const Palette& palette, double share) {
  const double steps = std::clamp(share, 0.0, 1.0) * static_cast<double>(palette.scale.size() - 1);
  const auto k = std::min(static_cast<std::size_t>(steps), palette.scale.size() - 2);
  return mixed(palette.scale[k], palette.scale[k + 1], steps - static_cast<double>(k));
}

}  // namespace endplate::ui
