#pragma once
// Copies of the case that is being edited, so that a crash costs no more than the last seconds.
#include <QDateTime>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "ui/document/case_file.hpp"

class QLockFile;

namespace endplate::ui {

class CaseDocument;

// A case that a desk had not saved when it ended.
struct LostCase {
  QString file;   // of the copy
  QString path;   // of the case; empty when it had none
  QString label;  // in words
  QDateTime at;
  std::string text;
};

// Every desk writes one copy under a name of its own and holds a lock on it while it runs. A copy
// whose lock is free belongs to a desk that ended without removing it. Copies are written and
// removed on a thread of their own, one after the other: a slow disk holds nobody up.
class RecoveryStore : public QObject {
  Q_OBJECT

 public:
  // From the first change after a copy to the next copy, so that nothing older is lost.
  static constexpr int kDelay_ms = 2000;

  using Write = std::function<Expected<void>(const QString& path, const std::string& bytes)>;

  // What desks that were killed left in `folder` beside their copies is cleared. `write` is called
  // on the other thread.
  RecoveryStore(CaseDocument& document, const QString& folder, QObject* parent = nullptr,
                Write write = write_bytes);
  // Removes the copy: a desk that ends in order has saved, or was told not to.
  ~RecoveryStore() override;
  Q_DISABLE_COPY_MOVE(RecoveryStore)

  // What was found of desks that ended; the newest first. Taken by this desk, so that no other one
  // offers it at the same time.
  std::vector<LostCase> find_lost();
  void discard(const LostCase& lost);

  // The moment whose case the copy holds; invalid while there is none.
  QDateTime last_copy() const { return last_copy_; }

 Q_SIGNALS:
  void copied();
  void failed(const QString& why);

 private:
  void note_change();
  void write_copy();
  void end_copy(const QDateTime& at, bool wanted, const Expected<void>& written);
  void remove_copy();

  CaseDocument& document_;
  QString folder_;
  QString name_;
  Write write_;
  std::unique_ptr<QLockFile> lock_;
  std::vector<std::unique_ptr<QLockFile>> taken_;
  QTimer timer_;
  QDateTime last_copy_;
  int removals_ = 0;      // a copy that was begun before the last one no longer counts
  bool copying_ = false;  // on the other thread
  bool late_ = false;     // another copy was due meanwhile
  bool kept_ = false;     // a copy is there or is being written
  QThreadPool disk_;
};

}  // namespace endplate::ui
