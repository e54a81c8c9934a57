#include "ui/app/main_window.hpp"

namespace endplate::ui {

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {}

}  // namespace endplate::ui
