#pragma once

#include <QMainWindow>

namespace endplate::ui {

/// The one window of the desk.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(QWidget* parent = nullptr);
};

}  // namespace endplate::ui
