#pragma once
// Copies of the case that is being edited, so that a crash costs no more than the last seconds.
#include <QDateTime>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <string>
#include <vector>

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
// whose lock is free belongs to a desk that ended without removing it.
class RecoveryStore : public QObject {
  Q_OBJECT

 public:
  // From the first change after a copy to the next copy, so that nothing older is lost.
  static constexpr int kDelay_ms = 2000;

  RecoveryStore(CaseDocument& document, const QString& folder, QObject* parent = nullptr);
  ~RecoveryStore() override;

  // What was found of desks that ended; the newest first. Taken by this desk, so that no other one
  // offers it at the same time.
  std::vector<LostCase> find_lost();
  void discard(const LostCase& lost);

  // When the copy was last written; invalid while there is none.
  QDateTime last_copy() const { return last_copy_; }

 Q_SIGNALS:
  void copied();
  void failed(const QString& why);

 private:
  void note_change();
  void write_copy();
  void remove_copy();

  CaseDocument& document_;
  QString folder_;
  QString name_;
  std::unique_ptr<QLockFile> lock_;
  std::vector<std::unique_ptr<QLockFile>> taken_;
  QTimer timer_;
  QDateTime last_copy_;
};

}  // namespace endplate::ui
