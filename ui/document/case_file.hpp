#pragma once
// Case files on disk.
#include <QString>
#include <memory>
#include <string>

#include "models/core/error.hpp"

class QLockFile;

namespace endplate::ui {

// The bytes of a file, `most` of them: one more than a case file may have is enough to see that it
// is too large.
inline constexpr qint64 kCaseBytes = 1'000'001;
Expected<std::string> read_bytes(const QString& path, qint64 most = kCaseBytes);

// Writes beside the file and then puts it in its place, so that the old or the new stands there
// whatever happens in between.
Expected<void> write_bytes(const QString& path, const std::string& bytes);

// Removes the locks in `folder` that guard nothing any more: NAME.lock where there is no NAME, left
// by a program that was killed.
void clear_dead_locks(const QString& folder);

// A case that is open on a desk. Kept in `folder`, not beside the case, so that nothing is left
// among the files of the user.
class CaseLock {
 public:
  CaseLock(const QString& folder, const QString& case_path);
  ~CaseLock();
  Q_DISABLE_COPY_MOVE(CaseLock)
  // False when another desk has it open.
  bool held() const { return held_; }

 private:
  std::unique_ptr<QLockFile> lock_;
  bool held_ = false;
};

}  // namespace endplate::ui
