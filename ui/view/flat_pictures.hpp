#pragma once
// Pictures without OpenGL: each thing filled in its colour, bones and muscles with an outline, what
// lies behind them left out but for the ghosts of the nerves. Without shading; half a second or so.
#include "ui/view/picture.hpp"

namespace endplate::ui {

class FlatPictures : public PictureMaker {
 public:
  Picture draw(const PictureOrder& order) override;
};

}  // namespace endplate::ui
