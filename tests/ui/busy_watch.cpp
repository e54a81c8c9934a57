#include "tests/ui/busy_watch.hpp"

#include <QEvent>
#include <QMetaEnum>
#include <chrono>
#include <ctime>
#include <utility>

namespace endplate::ui {

double thread_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

bool WatchedApplication::notify(QObject* receiver, QEvent* event) {
  if (depth_ > 0) return QApplication::notify(receiver, event);
  // Both may be gone when the event is over.
  const QString what = QString("%1 to %2 %3")
                           .arg(QMetaEnum::fromType<QEvent::Type>().valueToKey(event->type()),
                                receiver->metaObject()->className(), receiver->objectName());
  const double processor = thread_ms();
  const auto clock = std::chrono::steady_clock::now();
  ++depth_;
  const bool done = QApplication::notify(receiver, event);
  --depth_;
  const double took_ms = thread_ms() - processor;
  if (took_ms > longest_.processor_ms) {
    const std::chrono::duration<double, std::milli> passed =
        std::chrono::steady_clock::now() - clock;
    longest_ = {took_ms, passed.count(), what};
  }
  return done;
}

BusyTime WatchedApplication::take_longest() {
  return std::exchange(longest_, {});
}

}  // namespace endplate::ui
