#pragma once
// The case on the desk: the JSON of a case file, what the models read in it, and every edit as a
// step that can be undone.
#include <QDateTime>
#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "ui/document/case_json.hpp"

class QUndoStack;

namespace endplate::ui {

struct CaseTables;

// The case as it stood at one moment. Cheap to take, and safe on any thread.
struct CaseSnapshot {
  std::shared_ptr<const Json> now;
  std::shared_ptr<const Json> opened;              // as it was read
  std::shared_ptr<const std::string> opened_text;  // its bytes

  // The bytes of the case file. Of a case that was opened and not changed, or whose changes were
  // undone, the bytes that were read.
  std::string text() const;
};

class CaseDocument : public QObject {
  Q_OBJECT

 public:
  CaseDocument(std::shared_ptr<const CaseTables> tables, casefile::Date today,
               QObject* parent = nullptr);
  ~CaseDocument() override;
  Q_DISABLE_COPY_MOVE(CaseDocument)

  // Another case takes the place of this one; the steps to undo are gone.
  void start_new();
  // `path` is where it will be saved; empty for a case that has no file. `saved` is false for one
  // that was recovered: it counts as changed.
  Expected<void> open(std::string_view text, const QString& path, bool saved = true);

  const Json& json() const;
  CaseSnapshot snapshot() const { return now_; }
  std::string text() const { return now_.text(); }

  // What the models read; the problems with their place and mend otherwise.
  const Expected<casefile::Case>& read() const;
  // The last case that could be read, and the revision it belongs to.
  std::shared_ptr<const casefile::Case> last_valid() const;
  int last_valid_revision() const;

  // Edits. `what` names the step for the undo menu. Edits of one `gesture` other than 0 (a slider
  // that is being dragged) make one step.
  void set(const std::string& pointer, Json value, const QString& what, int gesture = 0);
  void remove(const std::string& pointer, const QString& what);
  void edit(const std::function<void(Json&)>& change, const QString& what, int gesture = 0);

  const Json* at(const std::string& pointer) const;
  // As text, empty when it is not there; numbers as they are written.
  QString text_at(const std::string& pointer) const;
  std::optional<double> number_at(const std::string& pointer) const;
  std::size_t count(const std::string& pointer) const;

  QUndoStack& steps();
  int revision() const { return revision_; }  // grows with every change, undo and redo included
  // The words of the steps between two revisions, the newest first, each once.
  QStringList changes_since(int revision) const;

  QString path() const { return path_; }
  void saved_as(const QString& path);  // it was written there
  bool is_changed() const;
  QString label() const;  // of the case, else of its file
  casefile::Date today() const { return today_; }
  const CaseTables& tables() const { return *tables_; }
  std::shared_ptr<const CaseTables> shared_tables() const { return tables_; }

 Q_SIGNALS:
  void changed();         // what stands in the case
  void file_changed();    // the name of the file, or whether there is anything to save
  void another_opened();  // before `changed` of the new case

 private:
  friend class CaseStep;
  void take(std::shared_ptr<const Json> now, const QString& what);

  std::shared_ptr<const CaseTables> tables_;
  casefile::Date today_;
  CaseSnapshot now_;
  std::unique_ptr<Expected<casefile::Case>> read_;
  std::shared_ptr<const casefile::Case> last_valid_;
  int last_valid_revision_ = 0;
  int revision_ = 0;
  std::vector<std::pair<int, QString>> history_;
  QString path_;
  std::unique_ptr<QUndoStack> steps_;
};

}  // namespace endplate::ui
