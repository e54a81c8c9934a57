#include "ui/panels/operations_panel.hpp"

#include <QFormLayout>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/item_list.hpp"
#include "ui/panels/name_list.hpp"
#include "ui/panels/place_editor.hpp"

namespace endplate::ui {
namespace {

QStringList names(const CaseTables& tables, std::initializer_list<anatomy::TermKind> kinds) {
  QStringList list;
  for (const auto kind : kinds) list << names_of(tables.terms.names(kind));
  return list;
}

QFormLayout* form_of(QWidget* page) {
  auto* form = new QFormLayout(page);
  form->setContentsMargins(0, 0, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  return form;
}

}  // namespace

OperationsPanel::OperationsPanel(Desk desk, QWidget* parent)
    : Panel(desk, tr("What was done, what is planned, what is wanted?"), Kind::entry, Body::scrolls,
            {}, parent) {
  using anatomy::TermKind;
  const CaseTables& tables = desk_.document.tables();
  body()->addWidget(heading(tr("Operations"), this));
  add_operation();
  add_step();
  body()->addWidget(heading(tr("What the patient needs most, first things first"), this));
  body()->addWidget(new NameList(desk_, "/priorities", tr("needed most"),
                                 names(tables, {TermKind::movement, TermKind::area}), this));
  body()->addWidget(heading(tr("Not available: muscles, nerves, graft donors"), this));
  body()->addWidget(new NameList(
      desk_, "/unavailable", tr("not available"),
      names(tables, {TermKind::graft_donor, TermKind::muscle, TermKind::nerve}), this));
  body()->addWidget(heading(tr("Variants known of this limb"), this));
  body()->addWidget(
      new NameList(desk_, "/variants", tr("variants"), names(tables, {TermKind::variant}), this));
  body()->addStretch(1);
}

void OperationsPanel::add_operation() {
  CaseDocument& document = desk_.document;
  operations_ = new ItemList(
      desk_, "/operations", tr("operation"),
      [this](const std::string& at) {
        const QString date = desk_.document.text_at(at + "/date");
        const QString state = desk_.document.text_at(at + "/state");
        QStringList steps;
        for (std::size_t i = 0; i < desk_.document.count(at + "/done"); ++i) {
          steps << desk_.document.text_at(at + "/done/" + std::to_string(i) + "/procedure");
        }
        return QStringList{date.isEmpty() ? tr("date not known") : date,
                           state.isEmpty() ? tr("planned or done is not said") : state,
                           steps.join(", ")}
            .join(", ");
      },
      R"({"state": "planned"})", this);
  body()->addWidget(operations_);
  operation_form_ = new QWidget(this);
  auto* form = form_of(operation_form_);
  const std::string at = "/operations/0";
  date_ = new DateField(document, {at + "/date", tr("date of the operation")}, this);
  state_ = new ChoiceField(document, {at + "/state", tr("planned or done")},
                           operation_state_choices(), this);
  potential_ =
      new ChoiceField(document, {at + "/nerve_action_potential", tr("nerve action potential")},
                      action_potential_choices(), this);
  gap_ = new NumberField(document, {at + "/gap_after_resection_mm", tr("gap after resection")},
                         tr("mm"), this);
  form->addRow(tr("Date"), date_);
  form->addRow(tr("State"), state_);
  form->addRow(tr("Nerve action potential"), potential_);
  form->addRow(tr("Gap after resection, mm"), gap_);
  body()->addWidget(operation_form_);
  connect(operations_, &ItemList::chosen_changed, this, &OperationsPanel::show_operation);
}

void OperationsPanel::add_step() {
  CaseDocument& document = desk_.document;
  using anatomy::TermKind;
  const CaseTables& tables = document.tables();
  auto* all = new QVBoxLayout;
  steps_ = new ItemList(
      desk_, "/operations/0/done", tr("step"),
      [this](const std::string& step) {
        QStringList parts{desk_.document.text_at(step + "/procedure"),
                          desk_.document.text_at(step + "/nerve")};
        parts.removeAll(QString());
        return parts.isEmpty() ? tr("not named") : parts.join(", ");
      },
      R"({"procedure": "exploration"})", this);
  step_form_ = new QWidget(this);
  auto* form = form_of(step_form_);
  const std::string at = "/operations/0/done/0";
  procedure_ =
      new ChoiceField(document, {at + "/procedure", tr("procedure")}, procedure_choices(), this);
  nerve_ = new TermField(document, {at + "/nerve", tr("nerve that was operated")},
                         names(tables, {TermKind::nerve}), this);
  place_ = new PlaceEditor(desk_, at + "/at", true, this);
  cables_ = new NumberField(document, {at + "/cables", tr("cables of the graft")}, {}, this);
  donor_ = new TermField(document, {at + "/donor", tr("donor of the graft or transfer")},
                         names(tables, {TermKind::graft_donor, TermKind::nerve}), this);
  layer_ = new ChoiceField(document, {at + "/layer", tr("layer of a transposed ulnar nerve")},
                           layer_choices(), this);
  form->addRow(tr("Step"), procedure_);
  form->addRow(tr("Nerve"), nerve_);
  form->addRow(tr("Place"), place_);
  form->addRow(tr("Cables"), cables_);
  form->addRow(tr("Donor"), donor_);
  form->addRow(tr("Layer"), layer_);
  all->addWidget(steps_);
  all->addWidget(step_form_);
  body()->addLayout(all);
  connect(steps_, &ItemList::chosen_changed, this, &OperationsPanel::show_step);
}

void OperationsPanel::show_operation() {
  const std::string at = operations_->chosen_pointer();
  operation_form_->setVisible(!at.empty());
  steps_->setVisible(!at.empty());
  if (at.empty()) {
    step_form_->hide();
    return;
  }
  date_->set_pointer(at + "/date");
  state_->set_pointer(at + "/state");
  potential_->set_pointer(at + "/nerve_action_potential");
  gap_->set_pointer(at + "/gap_after_resection_mm");
  steps_->set_pointer(at + "/done");
  show_step();
}

void OperationsPanel::show_step() {
  const std::string at = steps_->chosen_pointer();
  step_form_->setVisible(!at.empty() && !operations_->chosen_pointer().empty());
  if (at.empty()) return;
  procedure_->set_pointer(at + "/procedure");
  nerve_->set_pointer(at + "/nerve");
  place_->set_pointer(at + "/at");
  cables_->set_pointer(at + "/cables");
  donor_->set_pointer(at + "/donor");
  layer_->set_pointer(at + "/layer");
}

void OperationsPanel::show_case() {
  operations_->refresh();
  steps_->refresh();
}

}  // namespace endplate::ui
