#pragma once
// How long the interface thread is busy with one event: what a hand on the mouse has to wait.
#include <QApplication>
#include <QString>

namespace endplate::ui {

struct BusyTime {
  double processor_ms = 0.0;  // of the interface thread alone; others may have the cores
  double clock_ms = 0.0;      // of the event that took the most processor time
  QString what;               // the event and who received it
};

class WatchedApplication : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override;

  // The longest event since the last call.
  BusyTime take_longest();
  static WatchedApplication& self() { return *static_cast<WatchedApplication*>(qApp); }

 private:
  int depth_ = 0;
  BusyTime longest_;
};

// Processor time of the calling thread.
double thread_ms();

}  // namespace endplate::ui
