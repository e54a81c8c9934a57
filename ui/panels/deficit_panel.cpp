#include "ui/panels/deficit_panel.hpp"

#include <QCheckBox>
#include <QTabWidget>
#include <QVBoxLayout>

#include "models/examination/case_deficit.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/source_table.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using namespace examination;

QString joined(const std::vector<std::string>& parts, const char* between = ", ") {
  QStringList list;
  for (const std::string& part : parts) list << text_of(part);
  return list.join(between);
}

Cell state_cell(MuscleState state) {
  switch (state) {
    case MuscleState::denervated:
      return {DeficitPanel::tr("denervated"), 0, {}, Tone::lost};
    case MuscleState::partial:
      return {DeficitPanel::tr("partial"), 1, {}, Tone::weak};
    case MuscleState::may_be_weak:
      return {DeficitPanel::tr("may be weak"), 2, {}, Tone::weak};
    case MuscleState::intact:
      break;
  }
  return {DeficitPanel::tr("intact"), 3, {}, Tone::whole};
}

Cell state_cell(AreaState state) {
  switch (state) {
    case AreaState::absent:
      return {DeficitPanel::tr("absent"), 0, {}, Tone::lost};
    case AreaState::reduced:
      return {DeficitPanel::tr("reduced"), 1, {}, Tone::weak};
    case AreaState::intact:
      break;
  }
  return {DeficitPanel::tr("intact"), 3, {}, Tone::whole};
}

int by_state(const Line& row) {
  return row.cells.front().sort.toInt();
}

Cell not_examined() {
  return {DeficitPanel::tr("not examined"), {}, {}, Tone::faint};
}

Cell found_cell(const std::optional<casefile::MrcGrade>& grade) {
  return grade ? Cell('M' + text_of(grade->text), grade->value) : not_examined();
}

Cell found_cell(const std::optional<casefile::SensoryFinding>& finding) {
  if (!finding) return not_examined();
  QStringList parts;
  if (finding->state) {
    switch (*finding->state) {
      case casefile::SensoryState::absent:
        parts << DeficitPanel::tr("absent");
        break;
      case casefile::SensoryState::reduced:
        parts << DeficitPanel::tr("reduced");
        break;
      case casefile::SensoryState::normal:
        parts << DeficitPanel::tr("normal");
        break;
      case casefile::SensoryState::hyperaesthetic:
        parts << DeficitPanel::tr("hyperaesthetic");
        break;
    }
  }
  if (finding->s_grade) parts << text_of(*finding->s_grade);
  if (finding->two_point_mm) {
    parts << DeficitPanel::tr("two points at %1 mm").arg(*finding->two_point_mm);
  }
  return Cell(parts.join(", "));
}

}  // namespace

DeficitPanel::DeficitPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What is lost, and what is spared?"), Kind::result, Body::fills,
            {Question::deficit}, parent) {
  injuries_ = paragraph({}, this);
  body()->addWidget(injuries_);
  intact_ = new QCheckBox(tr("show what is intact as well"), this);
  body()->addWidget(intact_);
  connect(intact_, &QCheckBox::toggled, this, &DeficitPanel::show_answers);
  tabs_ = new QTabWidget(this);
  tabs_->setDocumentMode(true);
  muscles_ = new RowTable(tr("Muscles"), this);
  areas_ = new RowTable(tr("Skin areas"), this);
  movements_ = new RowTable(tr("Movements"), this);
  variants_ = new RowTable(tr("Variants to test for"), this);
  tabs_->addTab(muscles_, tr("Muscles"));
  tabs_->addTab(areas_, tr("Skin"));
  tabs_->addTab(movements_, tr("Movements"));
  tabs_->addTab(variants_, tr("Variants to test for"));
  sources_ = new SourceTable(this);
  connect(sources_, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  tabs_->addTab(sources_, tr("Sources"));
  for (const RowTable* table : {muscles_, areas_, movements_, variants_}) {
    connect(table, &RowTable::subject_chosen, this, &Panel::subject_chosen);
    connect(table, &RowTable::behind_wanted, this, &Panel::evidence_wanted);
  }
  body()->addWidget(tabs_, 1);
  notes_ = paragraph({}, this);
  body()->addWidget(notes_);
}

void DeficitPanel::show_answers() {
  const auto& held = desk_.answers.deficit();
  tabs_->setVisible(held.answer != nullptr);
  if (held.answer == nullptr) {
    injuries_->clear();
    notes_->clear();
    return;
  }
  const auto& tree = desk_.document.tables().anatomy.tree();
  QStringList lines;
  for (const TreeInjury& injury : held.answer->injuries.injuries) {
    const QString name = told(tree.node(injury.lesion.at.nerve).name);
    const QString place = told(injury.lesion.words);
    QString line = place.contains(name) ? place : name + ", " + place;
    if (injury.extent == Extent::partial) line += tr("; partial");
    if (injury.extent == Extent::conduction_block) line += tr("; conduction block");
    lines << line;
  }
  injuries_->setText(lines.join('\n'));
  show_muscles();
  show_areas();
  show_movements();
  show_variants();
  sources_->show_sources(held.answer->answer.sources, desk_.document.tables().package);
  QStringList notes;
  for (const std::string& warning : held.answer->warnings) {
    notes << tr("Warning: ") + told(warning);
  }
  for (const std::string& note : held.answer->answer.notes) notes << told(note);
  notes_->setText(notes.join('\n'));
}

void DeficitPanel::show_muscles() {
  const CaseDeficit& of_case = *desk_.answers.deficit().answer;
  const anatomy::Anatomy& anatomy = desk_.document.tables().anatomy;
  std::vector<Line> rows;
  for (const MuscleDeficit& row : of_case.answer.muscles) {
    if (row.state == MuscleState::intact && !intact_->isChecked()) continue;
    const anatomy::Muscle& muscle = anatomy.muscles()[row.muscle];
    const QString part = muscle.part == "whole" ? QString() : ", " + told(muscle.part);
    rows.push_back({{state_cell(row.state),
                     {text_of(muscle.id) + "  " + told(muscle.name) + part},
                     found_cell(of_case.examined.muscles[row.muscle]),
                     {told(anatomy.tree().node(muscle.nerve).name)},
                     {joined(row.roots_lost)},
                     {told(row.why)}},
                    {text_of(muscle.id)},
                    {text_of(muscle.id)}});
  }
  std::ranges::stable_sort(rows, {}, by_state);
  muscles_->set({{tr("Expected")},
                 {tr("Muscle"), false, true},
                 {tr("Found")},
                 {tr("Nerve"), false, true},
                 {tr("Roots lost")},
                 {tr("Why"), false, true}},
                std::move(rows));
}

void DeficitPanel::show_areas() {
  const CaseDeficit& of_case = *desk_.answers.deficit().answer;
  const anatomy::Anatomy& anatomy = desk_.document.tables().anatomy;
  std::vector<Line> rows;
  for (const AreaDeficit& row : of_case.answer.areas) {
    if (row.state == AreaState::intact && !intact_->isChecked()) continue;
    const anatomy::SkinArea& area = anatomy.areas()[row.area];
    rows.push_back({{state_cell(row.state),
                     {told(area.name) + (area.autonomous_zone.empty() ? "" : " *"),
                      {},
                      told(area.autonomous_zone)},
                     found_cell(of_case.examined.areas[row.area]),
                     {told(anatomy.tree().node(area.nerve).name)},
                     {told(row.why)}},
                    {text_of(area.name)},
                    {}});
  }
  std::ranges::stable_sort(rows, {}, by_state);
  areas_->set({{tr("Expected")},
               {tr("Skin area (* autonomous zone)"), false, true},
               {tr("Found")},
               {tr("Nerve"), false, true},
               {tr("Why"), false, true}},
              std::move(rows));
}

void DeficitPanel::show_movements() {
  const CaseDeficit& of_case = *desk_.answers.deficit().answer;
  const anatomy::Anatomy& anatomy = desk_.document.tables().anatomy;
  std::vector<Line> rows;
  const auto ids = [&](const std::vector<std::size_t>& muscles) {
    QStringList list;
    for (const std::size_t muscle : muscles) list << text_of(anatomy.muscles()[muscle].id);
    return list;
  };
  const auto add = [&](const std::vector<MovementDeficit>& list, const Cell& state) {
    for (const MovementDeficit& row : list) {
      const anatomy::Movement& movement = anatomy.movements()[row.movement];
      const QStringList lost = ids(row.lost);
      const QStringList kept = ids(row.kept_by);
      const QStringList muscles = lost + ids(row.weakened) + kept;
      rows.push_back({{state,
                       {opening(told(movement.name))},
                       {lost.join(", ")},
                       {kept.join(", ")},
                       {told(movement.how_substituted)}},
                      muscles,
                      muscles});
    }
  };
  add(of_case.answer.movements_lost, {tr("lost"), 0, {}, Tone::lost});
  add(of_case.answer.movements_weakened, {tr("weakened"), 1, {}, Tone::weak});
  add(of_case.answer.movements_kept_by_others,
      {tr("kept by others"), 2, tr("A dead muscle is hidden by those that still move."),
       Tone::alert});
  movements_->set({{tr("Movement is")},
                   {tr("Movement"), false, true},
                   {tr("Denervated"), false, true},
                   {tr("Kept by"), false, true},
                   {tr("How"), false, true}},
                  std::move(rows));
}

void DeficitPanel::show_variants() {
  const CaseDeficit& of_case = *desk_.answers.deficit().answer;
  const anatomy::Anatomy& anatomy = desk_.document.tables().anatomy;
  std::vector<Line> rows;
  for (const VariantToTest& test : of_case.answer.variants_to_test) {
    const anatomy::Variant& variant = anatomy.variants()[test.variant];
    const auto& share = variant.prevalence;
    QString limbs = tr("not known");
    if (share.pooled) {
      limbs = chance_words(*share.pooled);
      const QString low = chance_words(*share.lowest);
      const QString high = chance_words(*share.highest);
      if (low != high) limbs += tr(" (%1 to %2)").arg(low, high);
    }
    QStringList changes;
    QStringList about;
    for (const VariantChange& change : test.changes) {
      const std::string& name = change.is_muscle ? anatomy.muscles()[change.target].id
                                                 : anatomy.areas()[change.target].name;
      changes << told(name) + ' ' + told(change.with);
      about << told(name);
    }
    QStringList behind;
    for (const auto& row : share.rows) behind << text_of(row.id);
    rows.push_back(
        {{{told(variant.name)},
          {limbs, share.pooled.value_or(-1.0)},
          {changes.join(", ")},
          {variant.how_to_test.empty() ? tr("examine and stimulate") : told(variant.how_to_test)}},
         about,
         behind});
  }
  variants_->set({{tr("Variant"), false, true},
                  {tr("Of limbs")},
                  {tr("If it is there"), false, true},
                  {tr("How to test"), false, true}},
                 std::move(rows));
}

}  // namespace endplate::ui
