#include "ui/document/case_file.hpp"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <QSaveFile>

#include "models/casefile/json_text.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

Expected<std::string> read_bytes(const QString& path, qint64 most) {
  static_assert(kCaseBytes == static_cast<qint64>(casefile::kLargestFile_bytes) + 1);
  const auto refuse = [&](const char* what, const char* mend) {
    return std::unexpected(Error::input({plain(path), what, mend}));
  };
  const QFileInfo info(path);
  if (!info.exists()) return refuse("there is no such file", "Check the name and the folder.");
  if (info.isDir()) return refuse("this is a folder", "Choose the case file in it.");
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return refuse("the file cannot be opened", "Check that you may read it.");
  }
  return file.read(most).toStdString();
}

Expected<void> write_bytes(const QString& path, const std::string& bytes) {
  QSaveFile file(path);
  const auto size = static_cast<qint64>(bytes.size());
  if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit()) {
    return {};
  }
  return std::unexpected(
      Error::input({plain(path), "the file cannot be written: " + plain(file.errorString()),
                    "Choose another folder, or check whether you may write there."}));
}

void clear_dead_locks(const QString& folder) {
  const QDir locks(folder);
  for (const QString& name : locks.entryList({"*.lock"}, QDir::Files)) {
    if (locks.exists(QFileInfo(name).completeBaseName())) continue;
    QLockFile lock(locks.filePath(name));
    lock.setStaleLockTime(0);
    // Taken from whoever died with it, it goes with this variable.
    lock.tryLock(0);
  }
}

CaseLock::CaseLock(const QString& folder, const QString& case_path) {
  QDir().mkpath(folder);
  clear_dead_locks(folder);
  const QString canonical = QFileInfo(case_path).absoluteFilePath();
  const QByteArray name =
      QCryptographicHash::hash(canonical.toUtf8(), QCryptographicHash::Sha1).toHex();
  lock_ = std::make_unique<QLockFile>(folder + '/' + QString::fromLatin1(name) + ".lock");
  // Only the end of its program frees a lock, however long the case stays open.
  lock_->setStaleLockTime(0);
  held_ = lock_->tryLock(0);
}

CaseLock::~CaseLock() = default;

}  // namespace endplate::ui
