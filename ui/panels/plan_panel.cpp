#include "ui/panels/plan_panel.hpp"

#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include "models/plan/answer.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/result_words.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using plan::Option;
using plan::OptionState;

Cell state_cell(const Option& option) {
  if (option.first && option.state == OptionState::open) {
    return {PlanPanel::tr("FIRST STEP"), 0, {}, Tone::whole};
  }
  if (option.first && option.state == OptionState::not_judged) {
    return {PlanPanel::tr("FIRST: examine"), 0, {}, Tone::alert};
  }
  switch (option.state) {
    case OptionState::open:
      return {PlanPanel::tr("open"), 1, {}, Tone::whole};
    case OptionState::later:
      return {PlanPanel::tr("later"), 2};
    case OptionState::not_judged:
      return {PlanPanel::tr("not judged"), 3, {}, Tone::alert};
    case OptionState::unlikely:
      return {PlanPanel::tr("unlikely"), 4, {}, Tone::weak};
    case OptionState::closed:
      break;
  }
  return {PlanPanel::tr("closed"), 5, {}, Tone::faint};
}

}  // namespace

PlanPanel::PlanPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("Which options are there?"), Kind::result, Body::fills, {Question::plan},
            parent) {
  head_ = paragraph({}, this);
  body()->addWidget(head_);
  split_ = new QSplitter(Qt::Vertical, this);
  split_->setChildrenCollapsible(false);
  options_ = new RowTable(tr("Options side by side"), this);
  split_->addWidget(options_);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 4, 4, 0);
  detail_ = paragraph({}, page);
  series_ = new RowTable(tr("Published series of the option"), page);
  series_->set_whole(true);
  candidates_ = new RowTable(tr("Candidates of the option"), page);
  candidates_->set_whole(true);
  layout->addWidget(detail_);
  layout->addWidget(series_);
  compare_ = paragraph({}, page);
  layout->addWidget(candidates_);
  layout->addWidget(compare_);
  layout->addStretch(1);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(page);
  split_->addWidget(scroll);
  split_->setStretchFactor(0, 3);
  split_->setStretchFactor(1, 2);
  body()->addWidget(split_, 1);
  notes_ = paragraph({}, this);
  body()->addWidget(notes_);
  connect(series_, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  connect(options_, &RowTable::chosen_changed, this, &PlanPanel::show_option);
}

void PlanPanel::show_answers() {
  const auto& held = desk_.answers.plan();
  split_->setVisible(held.answer != nullptr);
  if (held.answer == nullptr) {
    head_->clear();
    notes_->clear();
    return;
  }
  const plan::PlanAnswer& answer = *held.answer;
  const auto patient = desk_.document.last_valid();
  const bool visited = patient != nullptr && !patient->observations.empty();
  head_->setText(visited ? tr("Before what later visits showed: %1. The decision weighs them.")
                               .arg(told(answer.recovery.decision.next))
                         : told(answer.recovery.decision.next) + '.');
  std::vector<Cells> rows;
  for (const Option& option : answer.options) {
    const bool shown = option.state != OptionState::closed && answer.not_run.empty();
    const bool model = shown && option.model_chance;
    const bool moves = shown && option.first_movement;
    rows.push_back(
        {{opening(told(option.name)), {}, told(option.entry_condition)},
         state_cell(option),
         {shown && !option.published.empty() ? published_words(option.published.front()) : "-"},
         {model ? chance_words(option.model_chance->chance) + ' ' + told(option.model_chance->scale)
                : "-",
          model ? option.model_chance->chance : -1.0,
          model ? told(option.model_chance->of) : QString()},
         {moves ? months_words(option.first_movement->days) : "-",
          moves ? option.first_movement->days.p50 : 1e9,
          moves ? told(option.first_movement->of) : QString()}});
  }
  options_->set(
      {{tr("Option"), false, true},
       {tr("State")},
       {tr("Published"), false, false, tr("The largest counted series, on its own scale")},
       {tr("Model"), true, false,
        tr("This program's chance of use if done today; it does not weigh how many axons "
           "a donor brings")},
       {tr("M1, mo"), true, false, tr("First movement, months from the injury")}},
      std::move(rows));
  if (options_->chosen() < 0 && !answer.options.empty()) options_->choose(0);
  show_option(options_->chosen());
  QStringList notes{
      tr("The first step stands first, then the order of the trade: not the order of "
         "chances.")};
  if (!answer.not_run.empty()) {
    notes << tr("Not run: %1; no chance and no time is given.").arg(told(answer.not_run));
  }
  compare_->setText(
      answer.not_ranked.size() > 1
          ? tr("The series let in different patients, so their figures do not compare: %1.")
                .arg(joined_words(answer.not_ranked, "; "))
          : QString());
  if (answer.not_ranked.size() > 1) {
    notes << tr("The series let in different patients: their figures do not compare.");
  }
  for (const std::string& warning : answer.recovery.warnings) {
    notes << tr("Warning: ") + told(warning);
  }
  notes_->setText(notes.join(' '));
}

void PlanPanel::show_option(int row) {
  const auto& held = desk_.answers.plan();
  const bool any = held.answer != nullptr && row >= 0 &&
                   static_cast<std::size_t>(row) < held.answer->options.size();
  detail_->setVisible(any);
  series_->setVisible(false);
  candidates_->setVisible(false);
  if (!any) return;
  const Option& option = held.answer->options[static_cast<std::size_t>(row)];
  QStringList lines{opening(told(option.name))};
  const auto add = [&](const QString& what, const QString& words) {
    if (!words.isEmpty()) lines << what + ": " + words;
  };
  add(tr("Why"), told(option.state_words));
  add(tr("Needs"), told(option.entry_condition));
  add(tr("For"), joined_words(option.targets, ", "));
  add(tr("Finds"), joined_words(option.finds, "; "));
  add(tr("Costs"), told(option.donor_cost));
  add(tr("Spends"), joined_words(option.spends, "; "));
  for (const plan::GraftNeed& need : option.grafts) {
    QString words = text_of(need.nerve) + ", " + told(need.gap_words);
    if (need.cables_high > 0) {
      words +=
          need.cables_low == need.cables_high
              ? tr("; %1 cables of sural nerve").arg(need.cables_high)
              : tr("; %1 to %2 cables of sural nerve").arg(need.cables_low).arg(need.cables_high);
    }
    if (need.needed_low_mm && need.needed_high_mm) {
      words += tr("; %1 to %2 mm of graft in all")
                   .arg(*need.needed_low_mm, 0, 'f', 0)
                   .arg(*need.needed_high_mm, 0, 'f', 0);
    }
    QStringList donors;
    for (const plan::GraftDonor& donor : need.donors) {
      donors << text_of(donor.nerve) +
                    (donor.covers.empty() ? QString() : " (" + told(donor.covers) + ')');
    }
    add(tr("Graft"), words);
    add(tr("Graft donors"), donors.join("; "));
    add(tr("Not available"), joined_words(need.unavailable, ", "));
  }
  add(tr("Notes"), joined_words(option.reasons, "; "));
  add(tr("Source"), text_of(option.source) + " (" + told(option.provenance) + ')');
  detail_->setText(lines.join('\n'));

  std::vector<Cells> series;
  std::vector<QStringList> behind;
  for (const plan::PublishedResult& result : option.published) {
    series.push_back({{published_words(result)},
                      {told(result.entry)},
                      {text_of(result.study)},
                      {told(result.provenance)}});
    behind.push_back({text_of(result.row)});
  }
  series_->set_behind(std::move(behind));
  series_->setVisible(!series.empty());
  series_->set({{tr("Published")},
                {tr("Who was let in"), false, true},
                {tr("Study"), false, true},
                {tr("Known by")}},
               std::move(series));
  std::vector<Cells> candidates;
  for (const plan::Candidate& candidate : option.candidates) {
    QString why = joined_words(candidate.reasons, "; ");
    if (!candidate.examine_first.empty()) {
      why = tr("Examine first: %1. ").arg(joined_words(candidate.examine_first, "; ")) + why;
    }
    candidates.push_back({{told(candidate.donor)},
                          {told(candidate.recipient)},
                          verdict_cell(candidate.verdict),
                          {why}});
  }
  candidates_->setVisible(!candidates.empty());
  candidates_->set({{tr("Donor"), false, true},
                    {tr("Recipient"), false, true},
                    {tr("Verdict")},
                    {tr("Why"), false, true}},
                   std::move(candidates));
}

}  // namespace endplate::ui
