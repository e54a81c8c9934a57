#include "ui/panels/transfer_panel.hpp"

#include <QCheckBox>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "models/transfer/transfers.hpp"
#include "src/output/transfer_words.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/panels/result_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using transfer::Candidate;
using transfer::ReachState;
using transfer::TransferAnswer;
using transfer::TransferCandidate;

Cell donor_cell(transfer::DonorState state) {
  switch (state) {
    case transfer::DonorState::strong:
      return {TransferPanel::tr("strong"), 0, {}, Tone::whole};
    case transfer::DonorState::weak:
      return {TransferPanel::tr("weak"), 1, {}, Tone::weak};
    case transfer::DonorState::dead:
      return {TransferPanel::tr("dead"), 3, {}, Tone::lost};
    case transfer::DonorState::not_judged:
      break;
  }
  return {TransferPanel::tr("not judged"), 2, {}, Tone::alert};
}

Cell reach_cell(const TransferCandidate& candidate) {
  if (!candidate.joined) return {"-", -1.0, TransferPanel::tr("A tendon or muscle: not a gap.")};
  const transfer::Reach& reach = candidate.joined->reach;
  switch (reach.state) {
    case ReachState::reaches:
      return {TransferPanel::tr("yes, %1").arg(chance_words(reach.chance)), reach.chance + 2.0,
              TransferPanel::tr("The chance of meeting without a graft"), Tone::whole};
    case ReachState::with_graft:
      return {TransferPanel::tr("graft, %1").arg(chance_words(reach.chance)), reach.chance + 1.0,
              TransferPanel::tr("A graft would be needed; the chance without one"), Tone::weak};
    case ReachState::does_not_reach:
      return {TransferPanel::tr("no, %1").arg(chance_words(reach.chance)),
              reach.chance,
              {},
              Tone::lost};
    case ReachState::not_computable:
      break;
  }
  return {TransferPanel::tr("not computed"), -1.0, told(reach.why), Tone::faint};
}

// What a transfer is about: both nerves, what gives and what shall come back.
QStringList names_of(const Candidate& candidate) {
  QStringList names;
  for (const auto* of : {&candidate.donor_nodes, &candidate.recipient_nodes,
                         &candidate.donor_muscles, &candidate.target_keys}) {
    for (const std::string& name : *of) names << text_of(name);
  }
  names.removeDuplicates();
  return names;
}

QString function_words(transfer::Synergy synergy) {
  switch (synergy) {
    case transfer::Synergy::synergist:
      return TransferPanel::tr("synergist");
    case transfer::Synergy::neutral:
      return TransferPanel::tr("neutral");
    case transfer::Synergy::antagonist:
      return TransferPanel::tr("ANTAGONIST");
    case transfer::Synergy::not_known:
      break;
  }
  return TransferPanel::tr("not known");
}

}  // namespace

TransferPanel::TransferPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("Who can give to whom?"), Kind::result, Body::fills, {Question::transfer},
            parent) {
  unpublished_ = new QCheckBox(
      tr("also pairs that nobody has published, kept apart and never combined"), this);
  body()->addWidget(unpublished_);
  connect(unpublished_, &QCheckBox::toggled, this, [this](bool on) {
    Asked asked = desk_.answers.asked();
    asked.unpublished = on;
    desk_.answers.set_asked(asked);
  });
  tabs_ = new QTabWidget(this);
  tabs_->setDocumentMode(true);
  auto* split = new QSplitter(Qt::Vertical);
  split->setChildrenCollapsible(false);
  candidates_ = new RowTable(tr("Transfers side by side"), split);
  detail_ = paragraph({}, split);
  detail_->setContentsMargins(4, 4, 4, 4);
  auto* scroll = new QScrollArea(split);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(detail_);
  split->addWidget(candidates_);
  split->addWidget(scroll);
  split->setStretchFactor(0, 3);
  split->setStretchFactor(1, 2);
  split->setSizes({330, 190});
  tabs_->addTab(split, tr("Side by side"));
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  together_words_ = paragraph({}, page);
  together_ = new RowTable(tr("Transfers that go together"), page);
  left_out_ = new RowTable(tr("Left out of the combination"), page);
  layout->addWidget(together_words_);
  layout->addWidget(together_, 1);
  layout->addWidget(heading(tr("Left out, and why"), page));
  layout->addWidget(left_out_, 1);
  tabs_->addTab(page, tr("Together"));
  rejected_ = new RowTable(tr("Rejected transfers"), this);
  tabs_->addTab(rejected_, tr("Rejected"));
  body()->addWidget(tabs_, 1);
  notes_ = paragraph({}, this);
  body()->addWidget(notes_);
  connect(candidates_, &RowTable::chosen_changed, this, &TransferPanel::show_detail);
  for (const RowTable* table : {candidates_, together_, rejected_}) {
    connect(table, &RowTable::subject_chosen, this, &Panel::subject_chosen);
    connect(table, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  }
}

void TransferPanel::show_answers() {
  const auto& held = desk_.answers.transfer();
  tabs_->setVisible(held.answer != nullptr);
  shown_.clear();
  if (held.answer == nullptr) {
    notes_->clear();
    return;
  }
  show_candidates();
  show_together();
  show_rejected();
  QStringList notes{
      tr("Reach: the chance of meeting without a graft through the postoperative range, a computed "
         "guide that agrees with %1 of %2 dissected figures: measure before you cut. The published "
         "series differ in whom they let in. Whether to transfer at all, and by when, is answered "
         "by the options.")
          .arg(transfer::kDissectedInside)
          .arg(transfer::kDissectedFigures)};
  for (const std::string& warning : held.answer->warnings) {
    notes << tr("Warning: ") + told(warning);
  }
  notes_->setText(notes.join('\n'));
}

void TransferPanel::show_candidates() {
  const TransferAnswer& answer = *desk_.answers.transfer().answer;
  const Settings& settings = desk_.settings;
  std::vector<Cells> rows;
  const auto add = [&](const TransferCandidate& candidate, const QString& function) {
    const Candidate& judged = candidate.judged;
    const bool reckoned = candidate.joined && candidate.joined->reach.slack_mm.has_value();
    const double slack = reckoned ? candidate.joined->reach.slack_mm->p50 : -1e9;
    shown_.push_back(&candidate);
    rows.push_back(
        {{told(judged.what.empty() ? judged.donor : judged.what), {}, text_of(judged.id)},
         verdict_cell(judged.verdict),
         donor_cell(judged.donor_state),
         reach_cell(candidate),
         {reckoned ? settings.length(slack) : "-", slack},
         {candidate.axons_arrive_days ? months_words(candidate.axons_arrive_days->p50) : "-",
          candidate.axons_arrive_days ? candidate.axons_arrive_days->p50 : 1e9},
         {judged.results.empty() ? tr("none found") : published_words(judged.results.front())},
         {function}});
  };
  for (const transfer::TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      add(candidate, opening(told(group.function)));
    }
  }
  for (const TransferCandidate& candidate : answer.unpublished) {
    add(candidate, tr("NOT PUBLISHED: %1").arg(told(candidate.judged.function)));
  }
  candidates_->set({{tr("Transfer"), false, true, {}, 180},
                    {tr("Verdict")},
                    {tr("Donor is")},
                    {tr("Reach")},
                    {tr("Slack, %1").arg(settings.unit()), true, false,
                     tr("Spare length in the middle limb; negative is missing")},
                    {tr("Axons, mo"), true, false,
                     tr("Axons at the nearest target, months from the injury, if done today")},
                    {tr("Published")},
                    {tr("Restores"), false, true}},
                   std::move(rows));
  std::vector<QStringList> behind;
  std::vector<QStringList> about;
  for (const TransferCandidate* candidate : shown_) {
    const Candidate& judged = candidate->judged;
    behind.push_back(judged.published ? QStringList{text_of(judged.id)} : QStringList());
    about.push_back(names_of(judged));
  }
  candidates_->set_behind(std::move(behind));
  candidates_->set_about(std::move(about));
  if (candidates_->chosen() < 0 && !shown_.empty()) candidates_->choose(0);
  show_detail();
}

// On the limb, where both ends are cut at a place of their own.
void TransferPanel::show_way() {
  const int row = candidates_->chosen();
  if (row >= 0 && static_cast<std::size_t>(row) < shown_.size()) {
    const auto& joined = shown_[static_cast<std::size_t>(row)]->joined;
    if (joined && joined->reach.donor_cut && joined->reach.recipient_cut) {
      Q_EMIT transfer_shown(text_of(joined->donor), joined->reach.donor_cut->from_origin_mm.p50,
                            text_of(joined->recipient),
                            joined->reach.recipient_cut->from_origin_mm.p50);
      return;
    }
  }
  Q_EMIT transfer_shown({}, 0.0, {}, 0.0);
}

void TransferPanel::show_detail() {
  show_way();
  const int row = candidates_->chosen();
  if (row < 0 || static_cast<std::size_t>(row) >= shown_.size()) {
    detail_->clear();
    return;
  }
  const TransferCandidate& candidate = *shown_[static_cast<std::size_t>(row)];
  const Candidate& judged = candidate.judged;
  QStringList lines{
      tr("%1 to %2 (%3)").arg(told(judged.donor), told(judged.recipient), text_of(judged.id))};
  const auto add = [&](const QString& what, const QString& words) {
    if (!words.isEmpty()) lines << what + ": " + words;
  };
  add(tr("For"), joined_words(judged.targets, ", "));
  add(tr("Donor"), joined_words(judged.donor_reasons, "; "));
  add(tr("Examine first"), joined_words(judged.examine_first, "; "));
  add(tr("Reasons"), joined_words(judged.reasons, "; "));
  if (candidate.joined && candidate.joined->reach.slack_mm) {
    const Summary& slack = *candidate.joined->reach.slack_mm;
    const Settings& settings = desk_.settings;
    add(tr("Slack"), tr("%1 (%2 to %3) %4")
                         .arg(settings.length(slack.p50), settings.length(slack.p05),
                              settings.length(slack.p95), settings.unit()));
    const Summary& way = candidate.joined->reach.to_nearest_mm;
    if (candidate.axons_arrive_days) {
      add(tr("Way to the nearest target"), settings.length(way.p50) + ' ' + settings.unit());
      add(tr("Axons arrive"),
          tr("%1 months from the injury").arg(months_words(*candidate.axons_arrive_days)));
    }
  }
  if (judged.axon_ratio) {
    add(tr("Axon ratio"), tr("%1, %2; shown, never a gate")
                              .arg(judged.axon_ratio->ratio, 0, 'f', 2)
                              .arg(told(judged.axon_ratio->words)));
  }
  add(tr("Function"),
      function_words(judged.synergy) +
          (judged.synergy_words.empty() ? QString() : ", " + told(judged.synergy_words)));
  add(tr("Costs"), told(judged.donor_cost));
  add(tr("Also spends"), joined_words(judged.also_spends, "; "));
  add(tr("Published"), told(judged.result_words));
  add(tr("Study"), text_of(judged.study));
  add(tr("Timing"), joined_words(judged.timing, "; "));
  add(tr("Said"), joined_words(judged.said, "; "));
  add(tr("Better"), judged.beaten_by.empty() ? QString() : told(judged.beaten_by));
  detail_->setText(lines.join('\n'));
}

void TransferPanel::show_together() {
  const TransferAnswer& answer = *desk_.answers.transfer().answer;
  std::vector<Cells> rows;
  std::vector<QStringList> about;
  std::vector<QStringList> behind;
  const auto add = [&](const transfer::Combination& combination, const Cell& when) {
    for (const transfer::ChosenOption& option : combination.chosen) {
      QString what = text_of(option.id);
      about.emplace_back();
      behind.push_back({text_of(option.id)});
      for (const TransferCandidate* candidate : shown_) {
        if (candidate->judged.id != option.id) continue;
        if (!candidate->judged.what.empty()) what = told(candidate->judged.what);
        about.back() = names_of(candidate->judged);
      }
      rows.push_back({when, {what, {}, text_of(option.id)}, {joined_words(option.serves, ", ")}});
    }
  };
  add(answer.combination, {tr("shown to work"), 0, {}, Tone::whole});
  add(answer.if_shown,
      {tr("if shown to work"), 1, tr("Donors and conditions that were not examined, if they do"),
       Tone::alert});
  QStringList without;
  for (const transfer::DemandAnswer& demand : answer.combination.demands) {
    if (!demand.met) without << told(demand.demand.target);
  }
  QString words = answer.combination.chosen.empty()
                      ? tr("Nothing yet that was shown to work can be done.")
                      : tr("The best set of what was shown to work stands first.");
  if (!without.isEmpty()) words += '\n' + tr("Stays without: %1.").arg(without.join(", "));
  together_words_->setText(words);
  together_->set({{tr("Set")}, {tr("Transfer"), false, true}, {tr("Serves"), false, true}},
                 std::move(rows));
  together_->set_about(std::move(about));
  together_->set_behind(std::move(behind));
  std::vector<Cells> left;
  for (const transfer::LeftOut& out : answer.combination.left_out) {
    left.push_back({{text_of(out.id)}, {told(cli::left_out_words(out))}});
  }
  left_out_->set({{tr("Transfer"), false, true}, {tr("Why"), false, true}}, std::move(left));
}

void TransferPanel::show_rejected() {
  std::vector<Cells> rows;
  std::vector<QStringList> about;
  std::vector<QStringList> behind;
  for (const Candidate& candidate : desk_.answers.transfer().answer->rejected) {
    about.push_back(names_of(candidate));
    behind.push_back({text_of(candidate.id)});
    rows.push_back({{told(candidate.what.empty() ? candidate.donor : candidate.what),
                     {},
                     text_of(candidate.id)},
                    {told(candidate.function)},
                    {told(candidate.rejected_because)}});
  }
  rejected_->set({{tr("Transfer"), false, true},
                  {tr("Restores"), false, true},
                  {tr("Rejected because"), false, true}},
                 std::move(rows));
  rejected_->set_about(std::move(about));
  rejected_->set_behind(std::move(behind));
}

}  // namespace endplate::ui
