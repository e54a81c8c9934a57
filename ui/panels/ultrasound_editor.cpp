#include "ui/panels/ultrasound_editor.hpp"

#include <QFormLayout>
#include <QVBoxLayout>

#include "models/limb/found_points.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/item_list.hpp"
#include "ui/panels/landmark_fields.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {

UltrasoundEditor::UltrasoundEditor(Desk desk, QWidget* parent)
    : QWidget(parent), desk_(desk), form_(new QWidget(this)) {
  CaseDocument& document = desk_.document;
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  list_ = new ItemList(
      desk_, "/limb/ultrasound", tr("point found by ultrasound"),
      [this](const std::string& at) {
        const QString nerve = desk_.document.text_at(at + "/nerve");
        const QString point = desk_.document.text_at(at + "/point");
        return tr("%1, %2: %3")
            .arg(nerve.isEmpty() ? tr("nerve not named") : nerve,
                 point.isEmpty() ? tr("point not named") : point,
                 landmark_words(desk_, at + "/at"));
      },
      "{}", this);
  layout->addWidget(list_);
  auto* form = new QFormLayout(form_);
  form->setContentsMargins(0, 0, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  const std::string at = "/limb/ultrasound/0";
  nerve_ = new TermField(document, {at + "/nerve", tr("nerve seen by ultrasound")},
                         names_of(document.tables().terms.names(anatomy::TermKind::nerve)), this);
  point_ = new TermField(document, {at + "/point", tr("point of the nerve")}, {}, this);
  place_ = new LandmarkFields(desk_, at + "/at", this);
  error_ = new NumberField(document, {at + "/error_mm", tr("error of the observer, SD")}, tr("mm"),
                           this);
  error_->setToolTip(
      tr("Standard deviation along the limb. Empty: taken from a published "
         "comparison with dissection, and listed as an assumption."));
  form->addRow(tr("Nerve or branch"), nerve_);
  form->addRow(tr("Point"), point_);
  form->addRow(tr("Found"), place_);
  form->addRow(tr("Error (SD)"), error_);
  layout->addWidget(form_);
  connect(list_, &ItemList::chosen_changed, this, &UltrasoundEditor::show_point);
  show_point();
}

void UltrasoundEditor::refresh() {
  list_->refresh();
}

void UltrasoundEditor::show_point() {
  const std::string at = list_->chosen_pointer();
  form_->setVisible(!at.empty());
  if (at.empty()) return;
  nerve_->set_pointer(at + "/nerve");
  const CaseTables& tables = desk_.document.tables();
  const auto nerve =
      tables.terms.resolve(anatomy::TermKind::nerve, plain(desk_.document.text_at(at + "/nerve")));
  const bool known = nerve && nerve->names.size() == 1;
  point_->set_names(known ? names_of(limb::points_to_find(nerve->names.front(), tables.package))
                          : QStringList());
  point_->set_pointer(at + "/point");
  place_->set_pointer(at + "/at");
  error_->set_pointer(at + "/error_mm");
}

}  // namespace endplate::ui
