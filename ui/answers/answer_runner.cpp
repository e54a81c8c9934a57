#include "ui/answers/answer_runner.hpp"

#include <QFutureWatcher>
#include <QtConcurrent>
#include <algorithm>
#include <utility>

#include "ui/answers/reckon.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"

namespace endplate::ui {
namespace {

// A slider that is being dragged asks for no answer before it rests for so long.
constexpr int kRest_ms = 150;
// One that counts and one that was thrown away: a model cannot be stopped in the middle.
constexpr int kMostRuns = 2;

constexpr std::array kAll{Question::check,    Question::deficit, Question::recovery,
                          Question::followup, Question::plan,    Question::transfer,
                          Question::incision, Question::limb,    Question::evidence};
static_assert(kAll.size() == kQuestions);

std::size_t number_of(Question question) {
  return static_cast<std::size_t>(question);
}

}  // namespace

AnswerRunner::AnswerRunner(CaseDocument& document, QObject* parent)
    : QObject(parent), document_(document) {
  asked_.today = document.today();
  pool_.setMaxThreadCount(kMostRuns);
  delay_.setSingleShot(true);
  delay_.setInterval(kRest_ms);
  connect(&delay_, &QTimer::timeout, this, &AnswerRunner::start_next);
  connect(&document_, &CaseDocument::another_opened, this, &AnswerRunner::forget);
  connect(&document_, &CaseDocument::changed, this, &AnswerRunner::note_case);
}

AnswerRunner::~AnswerRunner() {
  pool_.waitForDone();
}

QString AnswerRunner::words(Question question) {
  switch (question) {
    case Question::check:
      return tr("the place of the injury");
    case Question::deficit:
      return tr("the deficit");
    case Question::recovery:
      return tr("the recovery");
    case Question::followup:
      return tr("the course");
    case Question::plan:
      return tr("the options");
    case Question::transfer:
      return tr("the transfers");
    case Question::incision:
      return tr("the incision");
    case Question::limb:
      return tr("the limb");
    case Question::evidence:
      return tr("the evidence");
  }
  return {};
}

HeldState& AnswerRunner::held(Question question) {
  switch (question) {
    case Question::check:
      return check_;
    case Question::deficit:
      return deficit_;
    case Question::recovery:
      return recovery_;
    case Question::followup:
      return followup_;
    case Question::plan:
      return plan_;
    case Question::transfer:
      return transfer_;
    case Question::incision:
      return incision_;
    case Question::limb:
      return limb_;
    case Question::evidence:
      break;
  }
  return evidence_;
}

const HeldState& AnswerRunner::state(Question question) const {
  return const_cast<AnswerRunner*>(this)->held(question);
}

Inputs AnswerRunner::inputs() const {
  return {document_.shared_tables(), document_.last_valid(), asked_, incision_request_,
          evidence_request_};
}

void AnswerRunner::want(const std::vector<Question>& questions) {
  wanted_ = questions;
  // What nobody looks at any more waits no longer; what runs may end.
  for (const Question question : kAll) {
    HeldState& state = held(question);
    if (state.progress == Progress::waiting) state.progress = Progress::idle;
  }
  for (const Question question : wanted_) {
    HeldState& state = held(question);
    if (is_needed(question)) state.progress = Progress::waiting;
  }
  Q_EMIT progress();
  start_next();
}

bool AnswerRunner::is_needed(Question question) const {
  if (paused_) return false;
  const HeldState& state = this->state(question);
  if (!state.stale || state.progress == Progress::running) return false;
  if (question == Question::evidence) return true;
  // Of a case that cannot be read nothing is asked.
  return document_.last_valid_revision() == document_.revision();
}

void AnswerRunner::outdate(Question question) {
  HeldState& state = held(question);
  state.stale = true;
  run_[number_of(question)] = 0;
  state.progress = Progress::idle;
  const bool shown = std::ranges::find(wanted_, question) != wanted_.end();
  if (shown && is_needed(question)) state.progress = Progress::waiting;
  Q_EMIT answered(question);
}

// Nothing that was said of one patient may stand beside another, not even greyed.
void AnswerRunner::forget() {
  const auto drop = [](auto& answer) { answer = {}; };
  drop(check_);
  drop(deficit_);
  drop(recovery_);
  drop(followup_);
  drop(plan_);
  drop(transfer_);
  drop(incision_);
  drop(limb_);
  run_.fill(0);
  incision_request_ = {};
}

void AnswerRunner::note_case() {
  paused_ = false;
  for (const Question question : kAll) {
    if (question != Question::evidence) outdate(question);
  }
  Q_EMIT progress();
  delay_.start();
}

void AnswerRunner::set_asked(const Asked& asked) {
  if (asked == asked_) return;
  asked_ = asked;
  note_case();
}

void AnswerRunner::set_incision(const IncisionRequest& request) {
  if (request == incision_request_ && !incision_.stale) return;
  incision_request_ = request;
  outdate(Question::incision);
  start_next();
}

void AnswerRunner::set_evidence(const EvidenceRequest& request) {
  if (request == evidence_request_ && !evidence_.stale) return;
  evidence_request_ = request;
  outdate(Question::evidence);
  start_next();
}

bool AnswerRunner::is_idle() const {
  if (delay_.isActive()) return false;
  return std::ranges::none_of(kAll, [&](Question question) {
    const Progress now = state(question).progress;
    return now == Progress::running || now == Progress::waiting;
  });
}

QStringList AnswerRunner::running() const {
  QStringList list;
  for (const Question question : kAll) {
    if (state(question).progress == Progress::running) list << words(question);
  }
  return list;
}

void AnswerRunner::cancel() {
  paused_ = true;
  delay_.stop();
  for (const Question question : kAll) {
    HeldState& state = held(question);
    if (state.progress == Progress::idle) continue;
    state.progress = Progress::cancelled;
    run_[number_of(question)] = 0;
    Q_EMIT answered(question);
  }
  Q_EMIT progress();
}

void AnswerRunner::resume() {
  paused_ = false;
  want(std::vector<Question>(wanted_));
}

void AnswerRunner::start_next() {
  if (delay_.isActive()) return;
  for (const Question question : wanted_) {
    if (running_ >= kMostRuns) break;
    // One that counts at a time: two would only make both late.
    if (!running().isEmpty()) break;
    if (is_needed(question)) ask(question);
  }
  Q_EMIT progress();
}

void AnswerRunner::ask(Question question) {
  switch (question) {
    case Question::check:
      return launch(question, check_, reckon_check);
    case Question::deficit:
      return launch(question, deficit_, reckon_deficit);
    case Question::recovery:
      return launch(question, recovery_, reckon_recovery);
    case Question::followup:
      return launch(question, followup_, reckon_followup);
    case Question::plan:
      return launch(question, plan_, reckon_plan);
    case Question::transfer:
      return launch(question, transfer_, reckon_transfer);
    case Question::incision:
      return launch(question, incision_, reckon_incision);
    case Question::limb:
      return launch(question, limb_, reckon_limb);
    case Question::evidence:
      return launch(question, evidence_, reckon_evidence);
  }
}

template <class T, class Reckon>
void AnswerRunner::launch(Question question, Held<T>& held, Reckon reckon) {
  const int run = next_run_++;
  run_[number_of(question)] = run;
  ++running_;
  held.progress = Progress::running;
  const int revision = document_.revision();
  auto* watcher = new QFutureWatcher<std::shared_ptr<Reckoned<T>>>(this);
  connect(watcher, &QFutureWatcherBase::finished, this,
          [this, watcher, question, run, revision, &held] {
            watcher->deleteLater();
            --running_;
            if (run_[number_of(question)] == run) {
              Reckoned<T> result = std::move(*watcher->result());
              held.answer = result ? std::move(*result) : nullptr;
              held.error = result ? std::nullopt : std::optional(std::move(result.error()));
              held.stale = false;
              held.progress = Progress::idle;
              held.revision = revision;
              held.at = QDateTime::currentDateTime();
              Q_EMIT answered(question);
            }
            start_next();
          });
  watcher->setFuture(QtConcurrent::run(&pool_, [reckon, asked = inputs()] {
    try {
      return std::make_shared<Reckoned<T>>(reckon(asked));
    } catch (const std::exception& fault) {
      return std::make_shared<Reckoned<T>>(std::unexpected(
          Error::internal({"program", fault.what(), "Please report this with the case file."})));
    }
  }));
}

}  // namespace endplate::ui
