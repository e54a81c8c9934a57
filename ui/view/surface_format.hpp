#pragma once

class QSurfaceFormat;

namespace endplate::ui {

/// The format every OpenGL surface of the desk uses; make it the default before the QApplication is
/// made. No samples: VTK multisamples in its own framebuffer, and samples here as well would turn
/// the view black without a word.
QSurfaceFormat surface_format();

}  // namespace endplate::ui
