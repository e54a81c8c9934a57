#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <QSurfaceFormat>
#include <catch2/catch.hpp>

#include "ui/view/surface_format.hpp"

int main(int argc, char** argv) {
  QSurfaceFormat::setDefaultFormat(endplate::ui::surface_format());
  QCoreApplication::setAttribute(Qt::AA_ShareOpenGLContexts);
  QApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
