#include "ui/document/recovery_store.hpp"

#include <QDir>
#include <QFile>
#include <QLockFile>
#include <QUuid>
#include <algorithm>
#include <nlohmann/json.hpp>

#include "ui/app/words.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"

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

}  // namespace

RecoveryStore::RecoveryStore(CaseDocument& document, const QString& folder, QObject* parent)
    : QObject(parent), document_(document), folder_(folder) {
  QDir().mkpath(folder_);
  name_ = folder_ + '/' + QUuid::createUuid().toString(QUuid::WithoutBraces) + ".copy";
  lock_ = try_lock(name_);
  timer_.setSingleShot(true);
  timer_.setInterval(kDelay_ms);
  connect(&timer_, &QTimer::timeout, this, &RecoveryStore::write_copy);
  connect(&document_, &CaseDocument::changed, this, &RecoveryStore::note_change);
  connect(&document_, &CaseDocument::file_changed, this, &RecoveryStore::note_change);
}

RecoveryStore::~RecoveryStore() {
  remove_copy();
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
  const QDateTime now = QDateTime::currentDateTime();
  const Json copy{{"path", plain(document_.path())},
                  {"label", plain(document_.label())},
                  {"at", plain(now.toString(Qt::ISODate))},
                  {"case", document_.text()}};
  const auto written = write_bytes(name_, copy.dump());
  if (!written) {
    Q_EMIT failed(text_of(written.error().problems.front().what));
    timer_.start();
    return;
  }
  last_copy_ = now;
  Q_EMIT copied();
}

void RecoveryStore::remove_copy() {
  QFile::remove(name_);
  last_copy_ = {};
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
