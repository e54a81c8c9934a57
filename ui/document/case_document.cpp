#include "ui/document/case_document.hpp"

#include <QFileInfo>
#include <QUndoCommand>
#include <QUndoStack>
#include <nlohmann/json.hpp>
#include <utility>

#include "ui/document/case_tables.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

// One step: the whole document before and after, which share what they can only by being small. A
// case file has a few thousand characters; what is undone is byte for byte what was there.
class CaseStep : public QUndoCommand {
 public:
  CaseStep(CaseDocument& document, std::shared_ptr<const Json> before,
           std::shared_ptr<const Json> after, const QString& what, int gesture)
      : QUndoCommand(what),
        document_(document),
        before_(std::move(before)),
        after_(std::move(after)),
        gesture_(gesture) {}

  void undo() override { document_.take(before_, text()); }
  void redo() override { document_.take(after_, text()); }
  int id() const override { return gesture_ == 0 ? -1 : 1; }
  bool mergeWith(const QUndoCommand* next) override {
    const auto* other = dynamic_cast<const CaseStep*>(next);
    if (other == nullptr || other->gesture_ != gesture_) return false;
    after_ = other->after_;
    return true;
  }

 private:
  CaseDocument& document_;
  std::shared_ptr<const Json> before_;
  std::shared_ptr<const Json> after_;
  int gesture_;
};

namespace {

// So many steps of the largest case file stay within what a desktop can spare.
constexpr int kMostSteps = 300;
constexpr std::size_t kLongestHistory = 500;

}  // namespace

std::string CaseSnapshot::text() const {
  return now == opened || *now == *opened ? *opened_text : case_text(*now);
}

CaseDocument::CaseDocument(std::shared_ptr<const CaseTables> tables, casefile::Date today,
                           QObject* parent)
    : QObject(parent),
      tables_(std::move(tables)),
      today_(today),
      steps_(std::make_unique<QUndoStack>()) {
  steps_->setUndoLimit(kMostSteps);
  connect(steps_.get(), &QUndoStack::cleanChanged, this, &CaseDocument::file_changed);
  start_new();
}

CaseDocument::~CaseDocument() = default;

void CaseDocument::start_new() {
  const Json fresh{{"endplate_case", 1}};
  // The bytes of a fresh case are read back without a problem.
  static_cast<void>(open(case_text(fresh), QString()));
}

Expected<void> CaseDocument::open(std::string_view text, const QString& path, bool saved) {
  auto parsed = parse_case_json(text);
  if (!parsed) return std::unexpected(parsed.error());
  steps_->clear();
  if (!saved) steps_->resetClean();
  const auto opened = std::make_shared<const Json>(std::move(*parsed));
  now_ = {opened, opened, std::make_shared<const std::string>(text)};
  path_ = path;
  history_.clear();
  last_valid_.reset();
  Q_EMIT another_opened();
  take(opened, tr("open another case"));
  Q_EMIT file_changed();
  return {};
}

void CaseDocument::take(std::shared_ptr<const Json> now, const QString& what) {
  now_.now = std::move(now);
  ++revision_;
  history_.emplace_back(revision_, what);
  if (history_.size() > kLongestHistory) history_.erase(history_.begin());
  read_ = std::make_unique<Expected<casefile::Case>>(tables_->read(text(), today_));
  if (*read_) {
    last_valid_ = std::make_shared<const casefile::Case>(**read_);
    last_valid_revision_ = revision_;
  }
  Q_EMIT changed();
}

const Json& CaseDocument::json() const {
  return *now_.now;
}

const Expected<casefile::Case>& CaseDocument::read() const {
  return *read_;
}

std::shared_ptr<const casefile::Case> CaseDocument::last_valid() const {
  return last_valid_;
}

int CaseDocument::last_valid_revision() const {
  return last_valid_revision_;
}

void CaseDocument::set(const std::string& pointer, Json value, const QString& what, int gesture) {
  const Json* before = at(pointer);
  if (before != nullptr && *before == value) return;
  edit([&](Json& document) { put_at(document, pointer, std::move(value)); }, what, gesture);
}

void CaseDocument::remove(const std::string& pointer, const QString& what) {
  if (at(pointer) == nullptr) return;
  edit([&](Json& document) { take_at(document, pointer); }, what);
}

void CaseDocument::edit(const std::function<void(Json&)>& change, const QString& what,
                        int gesture) {
  auto after = std::make_shared<Json>(*now_.now);
  change(*after);
  if (*after == *now_.now) return;
  steps_->push(new CaseStep(*this, now_.now, std::move(after), what, gesture));
}

const Json* CaseDocument::at(const std::string& pointer) const {
  return value_at(*now_.now, pointer);
}

QString CaseDocument::text_at(const std::string& pointer) const {
  const Json* value = at(pointer);
  if (value == nullptr || value->is_null()) return {};
  return text_of(value->is_string() ? value->get<std::string>() : value->dump());
}

std::optional<double> CaseDocument::number_at(const std::string& pointer) const {
  const Json* value = at(pointer);
  if (value == nullptr || !value->is_number()) return std::nullopt;
  return value->get<double>();
}

std::size_t CaseDocument::count(const std::string& pointer) const {
  return count_at(*now_.now, pointer);
}

QUndoStack& CaseDocument::steps() {
  return *steps_;
}

QStringList CaseDocument::changes_since(int revision) const {
  QStringList words;
  for (auto step = history_.rbegin(); step != history_.rend() && step->first > revision; ++step) {
    if (!words.contains(step->second)) words << step->second;
  }
  return words;
}

void CaseDocument::saved_as(const QString& path) {
  // A file that was written is what the steps lead back to, in its new bytes.
  path_ = path;
  steps_->setClean();
  Q_EMIT file_changed();
}

bool CaseDocument::is_changed() const {
  return !steps_->isClean();
}

QString CaseDocument::label() const {
  const QString given = text_at("/label");
  if (!given.isEmpty()) return given;
  return path_.isEmpty() ? tr("New case") : QFileInfo(path_).completeBaseName();
}

}  // namespace endplate::ui
