#include "ui/app/png_file.hpp"

#include <QFutureWatcher>
#include <QtConcurrentRun>
#include <utility>

namespace endplate::ui {

void save_png(QObject* whose, const QImage& picture, const QString& path,
              std::function<void(bool)> done) {
  auto* watcher = new QFutureWatcher<bool>(whose);
  QObject::connect(watcher, &QFutureWatcherBase::finished, whose,
                   [watcher, done = std::move(done)] {
                     watcher->deleteLater();
                     done(watcher->result());
                   });
  watcher->setFuture(QtConcurrent::run([picture, path] { return picture.save(path, "PNG"); }));
}

}  // namespace endplate::ui
