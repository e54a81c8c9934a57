#include "ui/panels/patient_panel.hpp"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QRadioButton>
#include <QVBoxLayout>

#include "models/limb/limb_answer.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/measure_fields.hpp"
#include "ui/panels/pose_sliders.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/panels/ultrasound_editor.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

PatientPanel::PatientPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("Whose limb is it, and how does it lie?"), Kind::result, Body::scrolls,
            {Question::limb}, parent) {
  add_person();
  body()->addWidget(heading(tr("Measured with a tape"), this));
  measures_ = new MeasureFields(desk_, this);
  body()->addWidget(measures_);
  body()->addWidget(heading(tr("Nerves found by ultrasound"), this));
  ultrasound_ = new UltrasoundEditor(desk_, this);
  body()->addWidget(ultrasound_);
  body()->addWidget(heading(tr("How the limb lies"), this));
  pose_ = new PoseSliders(desk_, this);
  body()->addWidget(pose_);
  problems_ = paragraph({}, this);
  body()->addWidget(heading(tr("How big such a limb is"), this));
  body()->addWidget(problems_);
  sizes_ = new RowTable(tr("Size of the limb"), this);
  sizes_->set_whole(true);
  body()->addWidget(sizes_);
  body()->addStretch(1);
}

void PatientPanel::add_person() {
  CaseDocument& document = desk_.document;
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  auto* sides = new QHBoxLayout;
  right_ = new QRadioButton(tr("&Right"), this);
  left_ = new QRadioButton(tr("&Left"), this);
  right_->setObjectName("side right");
  left_->setObjectName("side left");
  sides->addWidget(right_);
  sides->addWidget(left_);
  sides->addStretch(1);
  form->addRow(tr("Injured side"), sides);
  connect(right_, &QRadioButton::clicked, this,
          [this] { desk_.document.set("/limb/side", "right", tr("side")); });
  connect(left_, &QRadioButton::clicked, this,
          [this] { desk_.document.set("/limb/side", "left", tr("side")); });
  const auto unit = tr("mm");
  form->addRow(tr("Dominant side"),
               new ChoiceField(document, {"/limb/dominant_side", tr("dominant side")},
                               side_choices(), this));
  form->addRow(tr("Sex"), new ChoiceField(document, {"/limb/sex", tr("sex")}, sex_choices(), this));
  form->addRow(tr("Age, years"),
               new NumberField(document, {"/limb/age_years", tr("age")}, tr("years"), this));
  stature_ = new NumberField(document, {"/limb/stature_mm", tr("stature")}, unit, this);
  percentile_ = new NumberField(
      document, {"/limb/stature_percentile", tr("percentile of the stature")}, tr("%"), this);
  percentile_->setToolTip(
      tr("How many of a hundred people of this sex and age are shorter; instead of the stature"));
  auto* statures = new QHBoxLayout;
  statures->addWidget(stature_);
  statures->addWidget(new QLabel(tr("or percentile"), this));
  statures->addWidget(percentile_);
  statures->addStretch(1);
  form->addRow(tr("Stature, mm"), statures);
  auto* label = new TextField(document, {"/label", tr("label")},
                              tr("a label without identity, for calendar and file"), this);
  label->setMinimumWidth(480);
  form->addRow(tr("Label"), label);
  body()->addLayout(form);
}

void PatientPanel::show_case() {
  const QString side = desk_.document.text_at("/limb/side");
  for (auto* button : {right_, left_}) button->setAutoExclusive(false);
  right_->setChecked(side == "right");
  left_->setChecked(side == "left");
  for (auto* button : {right_, left_}) button->setAutoExclusive(true);

  // The stature is given once, in mm or by the percentile; a second one can only be taken away.
  stature_->setEnabled(percentile_->text().isEmpty() || !stature_->text().isEmpty());
  percentile_->setEnabled(stature_->text().isEmpty() || !percentile_->text().isEmpty());
  measures_->refresh();
  ultrasound_->refresh();
}

void PatientPanel::show_answers() {
  const auto& held = desk_.answers.limb();
  if (held.answer == nullptr) return;
  const limb::LimbAnswer& answer = *held.answer;
  QStringList warnings;
  for (const std::string& warning : answer.warnings) warnings << tr("Warning: ") + told(warning);
  problems_->setText(warnings.join('\n'));
  problems_->setVisible(!warnings.isEmpty());
  std::vector<Cells> rows;
  const Settings& settings = desk_.settings;
  const auto add = [&](const limb::SizedMeasure& measure, const QString& label) {
    const Summary& size = measure.size_mm;
    rows.push_back(
        {{opening(label), {}, told(measure.definition)},
         {settings.length(size.mean), size.mean},
         {size.sd == 0.0
              ? tr("as given")
              : tr("%1 to %2").arg(settings.length(size.p05), settings.length(size.p95))},
         {told(evidence::to_string(measure.provenance)), {}, told(measure.reason)}});
  };
  for (const auto& segment : answer.segments) add(segment, told(segment.label));
  for (const auto& breadth : answer.breadths) add(breadth, tr("breadth: ") + told(breadth.label));
  for (const auto& girth : answer.girths) add(girth, tr("girth: ") + told(girth.label));
  sizes_->set({{tr("What"), false, true},
               {settings.unit(), true},
               {tr("90 in 100 such limbs, %1").arg(settings.unit())},
               {tr("Known by")}},
              std::move(rows));
}

}  // namespace endplate::ui
