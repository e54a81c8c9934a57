#include "ui/panels/patient_panel.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "models/limb/limb_answer.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/settings.hpp"
#include "ui/app/words.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/pose_sliders.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/words/model_words.hpp"

namespace endplate::ui {

PatientPanel::PatientPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("Whose limb is it, and how does it lie?"), Kind::result, Body::scrolls,
            {Question::limb}, parent) {
  add_person();
  add_measures();
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
  // Measures that were added for one patient are no question to the next.
  connect(&desk_.document, &CaseDocument::another_opened, this, [this] {
    shown_.clear();
    while (QLayoutItem* item = measure_rows_->takeAt(0)) {
      item->widget()->deleteLater();
      delete item;
    }
  });
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
  form->addRow(tr("Stature, mm"),
               new NumberField(document, {"/limb/stature_mm", tr("stature")}, unit, this));
  auto* label = new TextField(document, {"/label", tr("label")},
                              tr("a label without identity, for calendar and file"), this);
  label->setMinimumWidth(330);
  form->addRow(tr("Label"), label);
  body()->addLayout(form);
}

void PatientPanel::add_measures() {
  body()->addWidget(heading(tr("Measured on this limb"), this));
  measures_ = new QWidget(this);
  measure_rows_ = new QGridLayout(measures_);
  measure_rows_->setContentsMargins(0, 0, 0, 0);
  measure_rows_->setColumnStretch(0, 1);
  body()->addWidget(measures_);
  auto* row = new QHBoxLayout;
  measure_ = new QComboBox(this);
  make_completing(*measure_,
                  names_of(desk_.document.tables().terms.names(anatomy::TermKind::measure)));
  measure_->setCurrentIndex(-1);
  measure_->setAccessibleName(tr("Measure to add"));
  measure_->lineEdit()->setPlaceholderText(tr("a measure, such as upper arm length"));
  auto* add = new QPushButton(tr("Add"), this);
  row->addWidget(measure_, 1);
  row->addWidget(add);
  body()->addLayout(row);
  connect(add, &QPushButton::clicked, this, [this] {
    const QString name = measure_->currentText().trimmed();
    if (name.isEmpty() || shown_.contains(name)) return;
    shown_ << name;
    measure_->setCurrentIndex(-1);
    measure_->clearEditText();
    show_case();
    // Straight to the figure.
    if (auto* item = measure_rows_->itemAtPosition(static_cast<int>(shown_.size()) - 1, 1)) {
      item->widget()->setFocus();
    }
  });
}

void PatientPanel::show_case() {
  const QString side = desk_.document.text_at("/limb/side");
  for (auto* button : {right_, left_}) button->setAutoExclusive(false);
  right_->setChecked(side == "right");
  left_->setChecked(side == "left");
  for (auto* button : {right_, left_}) button->setAutoExclusive(true);

  if (const Json* measured = desk_.document.at("/limb/measured"); measured != nullptr) {
    for (const auto& [name, value] : measured->items()) {
      if (!shown_.contains(text_of(name))) shown_ << text_of(name);
    }
  }
  while (measure_rows_->count() / 2 < shown_.size()) {
    const QString name = shown_[measure_rows_->count() / 2];
    const int at = measure_rows_->count() / 2;
    // A slash and a tilde have a meaning in a JSON Pointer.
    std::string token = plain(name);
    for (std::size_t k = 0; k < token.size(); ++k) {
      if (token[k] == '~') token.replace(k++, 1, "~0");
      if (token[k] == '/') token.replace(k++, 1, "~1");
    }
    auto* label = new QLabel(name, this);
    label->setWordWrap(true);
    measure_rows_->addWidget(label, at, 0);
    measure_rows_->addWidget(
        new NumberField(desk_.document, {"/limb/measured/" + token, name}, tr("mm"), this), at, 1);
  }
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
