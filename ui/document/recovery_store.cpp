#include "ui/document/recovery_store.hpp"

#include <QDir>
#include <QFile>
#include <QLockFile>
#include <QUuid>
#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

#include "ui/document/case_document.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// A copy is a case in a text of JSON: every byte of it may take six.
constexpr qint64 kCopyBytes = 8 * kCaseBytes;

QString lock_name(const QString& copy) {
  return copy + ".lock";
}

std::unique_ptr<QLockFile> try_lock(const QString& copy) {
  auto lock = std::make_unique<QLockFile>(lock_name(copy));
  lock->setStaleLockTime(0);
  if (!lock->tryLock(0)) return nullptr;
  return lock;
}

// A desk that was killed while it wrote leaves what it had written under a name that ends in six
// letters by chance.
void clear_begun_copies(const QString& folder) {
  for (const QString& begun : QDir(folder).entryList({"*.copy.??????"}, QDir::Files)) {
    const QString file = folder + '/' + begun;
    const auto lock = try_lock(file.chopped(7));
    if (lock != nullptr) QFile::remove(file);
  }
}

}  // namespace

RecoveryStore::RecoveryStore(CaseDocument& document, const QString& folder, QObject* parent,
                             Write write)
    : QObject(parent), document_(document), folder_(folder), write_(std::move(write)) {
  QDir().mkpath(folder_);
  clear_begun_copies(folder_);
  clear_dead_locks(folder_);
  name_ = folder_ + '/' + QUuid::createUuid().toString(QUuid::WithoutBraces) + ".copy";
  lock_ = try_lock(name_);
  disk_.setMaxThreadCount(1);
  timer_.setSingleShot(true);
  timer_.setInterval(kDelay_ms);
  connect(&timer_, &QTimer::timeout, this, &RecoveryStore::write_copy);
  connect(&document_, &CaseDocument::changed, this, &RecoveryStore::note_change);
  connect(&document_, &CaseDocument::file_changed, this, &RecoveryStore::note_change);
}

RecoveryStore::~RecoveryStore() {
  disk_.waitForDone();
  QFile::remove(name_);
}

void RecoveryStore::note_change() {
  if (!document_.is_changed()) {
    timer_.stop();
    remove_copy();
  } else if (!timer_.isActive()) {
    timer_.start();
  }
}

void RecoveryStore::write_copy() {
  if (copying_) {
    late_ = true;
    return;
  }
  copying_ = true;
  kept_ = true;
  const QDateTime now = QDateTime::currentDateTime();
  disk_.start([this, now, write = write_, name = name_, snapshot = document_.snapshot(),
               path = plain(document_.path()), label = plain(document_.label()),
               removals = removals_] {
    const Json copy{{"path", path},
                    {"label", label},
                    {"at", plain(now.toString(Qt::ISODate))},
                    {"case", snapshot.text()}};
    const auto written = write(name, copy.dump());
    QMetaObject::invokeMethod(
        this, [this, now, removals, written] { end_copy(now, removals == removals_, written); },
        Qt::QueuedConnection);
  });
}

// `wanted`: it was not removed meanwhile.
void RecoveryStore::end_copy(const QDateTime& at, bool wanted, const Expected<void>& written) {
  copying_ = false;
  const bool late = std::exchange(late_, false);
  if (wanted && !written) {
    Q_EMIT failed(text_of(written.error().problems.front().what));
    timer_.start();
  } else if (wanted) {
    last_copy_ = at;
    Q_EMIT copied();
  }
  if (late) write_copy();
}

void RecoveryStore::remove_copy() {
  if (!kept_) return;
  kept_ = false;
  late_ = false;
  ++removals_;
  last_copy_ = {};
  disk_.start([name = name_] { QFile::remove(name); });
}

std::vector<LostCase> RecoveryStore::find_lost() {
  std::vector<LostCase> found;
  const QStringList copies = QDir(folder_).entryList({"*.copy"}, QDir::Files);
  for (const QString& copy : copies) {
    const QString file = folder_ + '/' + copy;
    if (file == name_) continue;
    auto lock = try_lock(file);
    if (lock == nullptr) continue;
    const auto bytes = read_bytes(file, kCopyBytes);
    const Json kept = bytes ? Json::parse(*bytes, nullptr, false) : Json(Json::value_t::discarded);
    if (!kept.is_object() || !kept.contains("case")) continue;
    found.push_back({file, text_of(kept.value("path", std::string())),
                     text_of(kept.value("label", std::string())),
                     QDateTime::fromString(text_of(kept.value("at", std::string())), Qt::ISODate),
                     kept.value("case", std::string())});
    taken_.push_back(std::move(lock));
  }
  std::ranges::sort(found, [](const LostCase& a, const LostCase& b) { return a.at > b.at; });
  return found;
}

void RecoveryStore::discard(const LostCase& lost) {
  QFile::remove(lost.file);
}

}  // namespace endplate::ui
