#include <QApplication>
#include <QSurfaceFormat>

#include "ui/app/main_window.hpp"
#include "ui/view/surface_format.hpp"

int main(int argc, char** argv) {
  QSurfaceFormat::setDefaultFormat(endplate::ui::surface_format());
  QCoreApplication::setAttribute(Qt::AA_ShareOpenGLContexts);
  QApplication application(argc, argv);
  endplate::ui::MainWindow window;
  window.show();
  return QApplication::exec();
}
