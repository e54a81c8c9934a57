#pragma once
// Writing a picture takes some tenths of a second for a printed page: it is done on another thread.
#include <QImage>
#include <QString>
#include <functional>

class QObject;

namespace endplate::ui {

/// `done` is called on this thread with whether it was written, as long as `whose` is there.
void save_png(QObject* whose, const QImage& picture, const QString& path,
              std::function<void(bool)> done);

}  // namespace endplate::ui
