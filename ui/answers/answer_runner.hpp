#pragma once
// Asks the models off the interface thread. The latest inputs win: a run that older inputs began is
// left to end and its answer thrown away.
#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QThreadPool>
#include <QTimer>
#include <array>
#include <functional>
#include <set>

#include "ui/answers/answers.hpp"

namespace endplate::ui {

class CaseDocument;
struct Inputs;

class AnswerRunner : public QObject {
  Q_OBJECT

 public:
  AnswerRunner(CaseDocument& document, QObject* parent = nullptr);
  ~AnswerRunner() override;
  Q_DISABLE_COPY_MOVE(AnswerRunner)

  // The questions that something on screen shows, the most urgent first. Others are not asked.
  void want(const std::vector<Question>& questions);

  void set_asked(const Asked& asked);
  const Asked& asked() const { return asked_; }
  void set_incision(const IncisionRequest& request);
  const IncisionRequest& incision_request() const { return incision_request_; }
  void set_evidence(const EvidenceRequest& request);
  const EvidenceRequest& evidence_request() const { return evidence_request_; }

  const Held<examination::CaseCheck>& check() const { return check_; }
  const Held<examination::CaseDeficit>& deficit() const { return deficit_; }
  const Held<RecoveryView>& recovery() const { return recovery_; }
  const Held<FollowupView>& followup() const { return followup_; }
  const Held<plan::PlanAnswer>& plan() const { return plan_; }
  const Held<transfer::TransferAnswer>& transfer() const { return transfer_; }
  const Held<incision::IncisionAnswer>& incision() const { return incision_; }
  const Held<limb::LimbAnswer>& limb() const { return limb_; }
  const Held<evidence::EvidenceAnswer>& evidence() const { return evidence_; }
  const HeldState& state(Question question) const;

  // Nothing waits and nothing runs.
  bool is_idle() const;
  // What is reckoned now, in words; empty when nothing is.
  QStringList running() const;

  // Throws away what waits and runs. The answers before stay, marked as not current.
  void cancel();
  // Asks again what was cancelled.
  void resume();

  static QString words(Question question);

 Q_SIGNALS:
  void answered(Question question);  // an answer, an error, or a change of its state
  void progress();                   // what runs or waits has changed

 private:
  template <class T, class Reckon>
  void launch(Question question, Held<T>& held, Reckon reckon);
  void note_case();
  void forget();
  void outdate(Question question);
  void start_next();
  bool is_needed(Question question) const;
  void ask(Question question);
  HeldState& held(Question question);
  Inputs inputs() const;

  CaseDocument& document_;
  Asked asked_;
  IncisionRequest incision_request_;
  EvidenceRequest evidence_request_;
  std::vector<Question> wanted_;
  std::array<int, kQuestions> run_{};  // the number of the run that counts
  int running_ = 0;                    // runs that have not ended, those thrown away included
  int next_run_ = 1;
  bool paused_ = false;
  QTimer delay_;
  QThreadPool pool_;

  Held<examination::CaseCheck> check_;
  Held<examination::CaseDeficit> deficit_;
  Held<RecoveryView> recovery_;
  Held<FollowupView> followup_;
  Held<plan::PlanAnswer> plan_;
  Held<transfer::TransferAnswer> transfer_;
  Held<incision::IncisionAnswer> incision_;
  Held<limb::LimbAnswer> limb_;
  Held<evidence::EvidenceAnswer> evidence_;
};

}  // namespace endplate::ui
