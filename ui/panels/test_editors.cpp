#include "ui/panels/test_editors.hpp"

#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "models/casefile/words.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/item_list.hpp"
#include "ui/panels/panel.hpp"

namespace endplate::ui {
namespace {

constexpr auto kStudy = "/electrodiagnosis/0";
constexpr auto kRange = "/examination/movements/0";

QFormLayout* form_of(QWidget* page) {
  auto* form = new QFormLayout(page);
  form->setContentsMargins(0, 0, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  return form;
}

QVBoxLayout* layout_of(QWidget* page) {
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 6, 0, 0);
  return layout;
}

}  // namespace

StudyEditor::StudyEditor(Desk desk, QWidget* parent)
    : QWidget(parent), desk_(desk), form_(new QWidget(this)) {
  using anatomy::TermKind;
  CaseDocument& document = desk_.document;
  const auto& terms = document.tables().terms;
  const std::string at = kStudy;
  auto* layout = layout_of(this);
  layout->addWidget(
      paragraph(tr("Of all visits, each with its own date. A study is of one muscle or of one "
                   "nerve."),
                this));
  list_ = new ItemList(
      desk_, "/electrodiagnosis", tr("study"),
      [this](const std::string& study) {
        QStringList parts;
        for (const char* key : {"date", "muscle", "nerve"}) {
          parts << desk_.document.text_at(study + '/' + key);
        }
        if (desk_.document.text_at(study + "/fibrillation") == "true") parts << tr("fibrillation");
        for (const char* key : {"units", "snap", "cmap", "stimulation"}) {
          const QString value = desk_.document.text_at(study + '/' + key);
          if (!value.isEmpty()) parts << QString("%1 %2").arg(key, value);
        }
        parts.removeAll(QString());
        return parts.isEmpty() ? tr("nothing given yet") : parts.join(", ");
      },
      "{}", this);
  layout->addWidget(list_);
  auto* form = form_of(form_);
  date_ = new DateField(document, {at + "/date", tr("date of the study")}, this);
  muscle_ = new TermField(document, {at + "/muscle", tr("muscle of the study")},
                          names_of(terms.names(TermKind::muscle)), this);
  nerve_ = new TermField(document, {at + "/nerve", tr("nerve of the study")},
                         names_of(terms.names(TermKind::nerve)), this);
  fibrillation_ =
      new ChoiceField(document, {at + "/fibrillation", tr("fibrillation")}, yes_or_no(), this);
  units_ = new ChoiceField(document, {at + "/units", tr("motor units")}, unit_choices(), this);
  snap_ = new ChoiceField(document, {at + "/snap", tr("sensory nerve action potential")},
                          potential_choices(), this);
  cmap_ = new ChoiceField(document, {at + "/cmap", tr("compound muscle action potential")},
                          potential_choices(), this);
  stimulation_ = new ChoiceField(document, {at + "/stimulation", tr("on stimulation")},
                                 stimulation_choices(), this);
  form->addRow(tr("Date"), date_);
  form->addRow(tr("Muscle"), muscle_);
  form->addRow(tr("or nerve"), nerve_);
  form->addRow(tr("Fibrillation"), fibrillation_);
  form->addRow(tr("Motor units"), units_);
  form->addRow(tr("Sensory potential"), snap_);
  form->addRow(tr("Motor potential"), cmap_);
  form->addRow(tr("On stimulation"), stimulation_);
  layout->addWidget(form_);
  layout->addStretch(1);
  connect(list_, &ItemList::chosen_changed, this, &StudyEditor::show_study);
  refresh();
}

void StudyEditor::refresh() {
  list_->refresh();
}

void StudyEditor::show_study() {
  const std::string at = list_->chosen_pointer();
  form_->setVisible(!at.empty());
  if (at.empty()) return;
  date_->set_pointer(at + "/date");
  muscle_->set_pointer(at + "/muscle");
  nerve_->set_pointer(at + "/nerve");
  fibrillation_->set_pointer(at + "/fibrillation");
  units_->set_pointer(at + "/units");
  snap_->set_pointer(at + "/snap");
  cmap_->set_pointer(at + "/cmap");
  stimulation_->set_pointer(at + "/stimulation");
}

RangeEditor::RangeEditor(Desk desk, QWidget* parent)
    : QWidget(parent), desk_(desk), form_(new QWidget(this)) {
  CaseDocument& document = desk_.document;
  const std::string at = kRange;
  auto* layout = layout_of(this);
  list_ = new ItemList(
      desk_, "/examination/movements", tr("movement"),
      [this](const std::string& range) {
        const auto degrees = [&](const char* key) {
          const QString value = desk_.document.text_at(range + '/' + key);
          return value.isEmpty() ? tr("not known") : value + QString::fromUtf8("\u00b0");
        };
        const QString name = desk_.document.text_at(range + "/movement");
        return tr("%1: active %2, passive %3")
            .arg(name.isEmpty() ? tr("movement not named") : name, degrees("active_deg"),
                 degrees("passive_deg"));
      },
      "{}", this);
  layout->addWidget(list_);
  auto* form = form_of(form_);
  movement_ =
      new TermField(document, {at + "/movement", tr("movement")},
                    names_of(document.tables().terms.names(anatomy::TermKind::movement)), this);
  active_ =
      new NumberField(document, {at + "/active_deg", tr("active range")}, tr("degrees"), this);
  passive_ =
      new NumberField(document, {at + "/passive_deg", tr("passive range")}, tr("degrees"), this);
  form->addRow(tr("Movement"), movement_);
  form->addRow(tr("Active, degrees"), active_);
  form->addRow(tr("Passive, degrees"), passive_);
  layout->addWidget(form_);
  layout->addStretch(1);
  connect(list_, &ItemList::chosen_changed, this, &RangeEditor::show_range);
}

void RangeEditor::set_visit(const std::string& visit) {
  list_->set_pointer(visit + "/movements");
  list_->refresh();
}

void RangeEditor::show_range() {
  const std::string at = list_->chosen_pointer();
  form_->setVisible(!at.empty());
  if (at.empty()) return;
  movement_->set_pointer(at + "/movement");
  active_->set_pointer(at + "/active_deg");
  passive_->set_pointer(at + "/passive_deg");
}

}  // namespace endplate::ui
