#include "ui/panels/landmark_fields.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"

namespace endplate::ui {

LandmarkFields::LandmarkFields(Desk desk, const std::string& pointer, QWidget* parent)
    : QWidget(parent) {
  CaseDocument& document = desk.document;
  offset_ = new NumberField(document, {pointer + "/offset_mm", tr("distance from the landmark")},
                            tr("mm"), this);
  toward_ = new ChoiceField(document, {pointer + "/toward", tr("direction from the landmark")},
                            direction_choices(), this);
  landmark_ =
      new TermField(document, {pointer + "/landmark", tr("landmark")},
                    names_of(document.tables().terms.names(anatomy::TermKind::landmark)), this);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(4);
  auto* line = new QHBoxLayout;
  line->addWidget(offset_);
  line->addWidget(toward_);
  line->addWidget(new QLabel(tr("to"), this));
  line->addStretch(1);
  all->addLayout(line);
  all->addWidget(landmark_, 0, Qt::AlignLeft);
}

void LandmarkFields::set_pointer(const std::string& pointer) {
  offset_->set_pointer(pointer + "/offset_mm");
  toward_->set_pointer(pointer + "/toward");
  landmark_->set_pointer(pointer + "/landmark");
}

QString landmark_words(const Desk& desk, const std::string& pointer) {
  const auto text = [&](const char* key) { return desk.document.text_at(pointer + '/' + key); };
  const QString landmark = text("landmark");
  const QString offset = text("offset_mm");
  if (landmark.isEmpty()) return LandmarkFields::tr("place not known");
  if (offset.isEmpty()) return LandmarkFields::tr("at %1").arg(landmark);
  QString toward = text("toward");
  for (const Choice& choice : direction_choices()) {
    if (choice.json == '"' + toward.toStdString() + '"') toward = choice.shown;
  }
  return LandmarkFields::tr("%1 mm %2 to %3").arg(offset, toward, landmark);
}

}  // namespace endplate::ui
