#include "ui/panels/place_editor.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/landmark_fields.hpp"

namespace endplate::ui {
namespace {

enum Way { nowhere, landmark, branch, root, trunk, cord };

QWidget* row_of(std::initializer_list<QWidget*> widgets) {
  auto* page = new QWidget;
  auto* row = new QVBoxLayout(page);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  for (QWidget* widget : widgets) row->addWidget(widget, 0, Qt::AlignLeft | Qt::AlignTop);
  row->addStretch(1);
  return page;
}

// "120 mm, proximal to" as one line.
QWidget* line_of(std::initializer_list<QWidget*> widgets) {
  auto* line = new QWidget;
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  for (QWidget* widget : widgets) row->addWidget(widget);
  row->addStretch(1);
  return line;
}

}  // namespace

PlaceEditor::PlaceEditor(Desk desk, const std::string& pointer, bool plexus, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      pointer_(pointer),
      way_(new QComboBox(this)),
      pages_(new QStackedWidget(this)) {
  CaseDocument& document = desk_.document;
  const auto& terms = document.tables().terms;
  using anatomy::TermKind;
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(4);
  way_->addItems({tr("place not known"), tr("by a landmark"), tr("on a branch")});
  if (plexus) way_->addItems({tr("root"), tr("trunk"), tr("cord")});
  way_->setAccessibleName(tr("How the place is given"));
  way_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  all->addWidget(way_);
  all->addWidget(pages_);

  landmark_ = new LandmarkFields(desk_, pointer, this);
  branch_ = new TermField(document, {pointer + "/branch", tr("branch")},
                          names_of(terms.names(TermKind::nerve)), this);
  from_origin_ = new NumberField(
      document, {pointer + "/from_origin_mm", tr("distance from the origin of the branch")},
      tr("mm"), this);
  pages_->addWidget(new QWidget);
  pages_->addWidget(row_of({landmark_}));
  pages_->addWidget(
      row_of({line_of({from_origin_, new QLabel(tr("from the origin of"), this)}), branch_}));
  if (plexus) {
    root_ = new ChoiceField(document, {pointer + "/root", tr("root")}, root_choices(), this);
    level_ = new ChoiceField(document, {pointer + "/level", tr("level of the root")},
                             root_level_choices(), this);
    trunk_ = new ChoiceField(document, {pointer + "/trunk", tr("trunk")}, trunk_choices(), this);
    cord_ = new ChoiceField(document, {pointer + "/cord", tr("cord")}, cord_choices(), this);
    pages_->addWidget(row_of({line_of({root_, level_})}));
    pages_->addWidget(row_of({trunk_}));
    pages_->addWidget(row_of({cord_}));
  }
  const auto fit = [this](int shown) {
    for (int i = 0; i < pages_->count(); ++i) {
      pages_->widget(i)->setSizePolicy(QSizePolicy::Preferred,
                                       i == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    }
    pages_->adjustSize();
    updateGeometry();
  };
  connect(pages_, &QStackedWidget::currentChanged, this, fit);
  fit(0);
  connect(way_, &QComboBox::activated, this, &PlaceEditor::choose);
  connect(&document, &CaseDocument::changed, this, &PlaceEditor::refresh);
  refresh();
}

void PlaceEditor::set_pointer(const std::string& pointer) {
  pointer_ = pointer;
  anew_ = true;
  landmark_->set_pointer(pointer);
  branch_->set_pointer(pointer + "/branch");
  from_origin_->set_pointer(pointer + "/from_origin_mm");
  if (root_ != nullptr) {
    root_->set_pointer(pointer + "/root");
    level_->set_pointer(pointer + "/level");
    trunk_->set_pointer(pointer + "/trunk");
    cord_->set_pointer(pointer + "/cord");
  }
  refresh();
}

void PlaceEditor::refresh() {
  const auto has = [&](const char* key) {
    return desk_.document.at(pointer_ + '/' + key) != nullptr;
  };
  Way way = nowhere;
  if (has("landmark") || has("offset_mm") || has("toward")) way = landmark;
  if (has("branch") || has("from_origin_mm")) way = branch;
  if (has("root") || has("level")) way = root;
  if (has("trunk")) way = trunk;
  if (has("cord")) way = cord;
  // A way that was chosen and has nothing in it yet stays on screen.
  if (way == nowhere && !anew_) return;
  anew_ = false;
  if (way < way_->count()) way_->setCurrentIndex(way);
  pages_->setCurrentIndex(way_->currentIndex());
}

// The way alone is no place; what stood there goes, so that a case never has two places.
void PlaceEditor::choose(int way) {
  pages_->setCurrentIndex(way);
  desk_.document.remove(pointer_, tr("place"));
  pages_->setCurrentIndex(way);
  way_->setCurrentIndex(way);
}

}  // namespace endplate::ui
