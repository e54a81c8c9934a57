#include "ui/panels/skin_mark_fields.hpp"

#include <QFormLayout>
#include <QHBoxLayout>

#include "ui/document/case_document.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/landmark_fields.hpp"

namespace endplate::ui {

SkinMarkFields::SkinMarkFields(Desk desk, const std::string& pointer, QWidget* parent)
    : QWidget(parent) {
  CaseDocument& document = desk.document;
  along_ = new LandmarkFields(desk, pointer, this);
  aside_mm_ = new NumberField(document, {pointer + "/aside_mm", tr("distance across the limb")},
                              tr("mm"), this);
  aside_ = new ChoiceField(document, {pointer + "/aside", tr("direction across the limb")},
                           aside_choices(), this);
  surface_ = new ChoiceField(document, {pointer + "/surface", tr("side whose skin is meant")},
                             aside_choices(), this);
  surface_->setToolTip(tr("Not known: the skin nearest to the mark"));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  form->addRow(tr("Along the limb"), along_);
  auto* across = new QHBoxLayout;
  across->addWidget(aside_mm_);
  across->addWidget(aside_);
  across->addStretch(1);
  form->addRow(tr("Across it"), across);
  form->addRow(tr("On the skin"), surface_);
}

void SkinMarkFields::set_pointer(const std::string& pointer) {
  along_->set_pointer(pointer);
  aside_mm_->set_pointer(pointer + "/aside_mm");
  aside_->set_pointer(pointer + "/aside");
  surface_->set_pointer(pointer + "/surface");
}

QString skin_mark_words(const Desk& desk, const std::string& pointer) {
  const auto shown = [&](const char* key) {
    const QString text = desk.document.text_at(pointer + '/' + key);
    for (const Choice& choice : aside_choices()) {
      if (choice.json == '"' + text.toStdString() + '"') return choice.shown;
    }
    return text;
  };
  QString words = landmark_words(desk, pointer);
  const QString aside = desk.document.text_at(pointer + "/aside_mm");
  if (!aside.isEmpty()) words += SkinMarkFields::tr(", %1 mm %2").arg(aside, shown("aside"));
  const QString surface = shown("surface");
  if (!surface.isEmpty()) words += SkinMarkFields::tr(", on %1").arg(surface);
  return words;
}

}  // namespace endplate::ui
