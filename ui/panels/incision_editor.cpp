#include "ui/panels/incision_editor.hpp"

#include <QFormLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/document/case_document.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/fields.hpp"
#include "ui/panels/item_list.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/skin_mark_fields.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// Where the fields stand before anything is chosen.
constexpr const char* kFirst = "/incisions/0";

}  // namespace

IncisionEditor::IncisionEditor(Desk desk, QWidget* parent)
    : QWidget(parent), desk_(desk), form_(new QWidget(this)) {
  CaseDocument& document = desk_.document;
  const std::string at = kFirst;
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 4, 0);
  list_ = new ItemList(
      desk_, "/incisions", tr("incision"),
      [this](const std::string& incision) {
        const QString label = desk_.document.text_at(incision + "/label");
        return tr("%1, marks: %2")
            .arg(label.isEmpty() ? tr("without a name") : label)
            .arg(desk_.document.count(incision + "/points"));
      },
      R"({"kind": "line", "points": [{}]})", this);
  layout->addWidget(list_);
  judge_ = new QPushButton(tr("Judge this incision"), this);
  layout->addWidget(judge_, 0, Qt::AlignLeft);
  auto* all = new QVBoxLayout(form_);
  all->setContentsMargins(0, 0, 0, 0);
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  label_ = new TextField(document, {at + "/label", tr("name of the incision")},
                         tr("such as posterior arm"), this);
  label_->setMinimumWidth(260);
  kind_ = new ChoiceField(document, {at + "/kind", tr("kind of cut")}, cut_kind_choices(), this);
  kind_->setToolTip(tr("Not known: a line"));
  depth_ = new NumberField(document, {at + "/depth_mm", tr("depth")}, tr("mm"), this);
  depth_->setToolTip(tr("Straight in from the skin; empty: to the first bone."));
  form->addRow(tr("Name"), label_);
  form->addRow(tr("Kind"), kind_);
  form->addRow(tr("Depth, mm"), depth_);
  all->addLayout(form);
  all->addWidget(add_marks());
  layout->addWidget(form_);
  layout->addStretch(1);
  connect(list_, &ItemList::chosen_changed, this, &IncisionEditor::show_incision);
  connect(judge_, &QPushButton::clicked, this, [this] { Q_EMIT judge_wanted(list_->chosen()); });
  show_incision();
}

QWidget* IncisionEditor::add_marks() {
  const std::string at = kFirst;
  auto* page = new QWidget(form_);
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(heading(tr("Marks, in their order"), page));
  marks_ = new ItemList(
      desk_, at + "/points", tr("mark"),
      [this](const std::string& mark) { return skin_mark_words(desk_, mark); }, "{}", page);
  layout->addWidget(marks_);
  mark_ = new SkinMarkFields(desk_, at + "/points/0", page);
  layout->addWidget(mark_);
  aim_head_ = heading(tr("Aimed at (empty: straight in)"), page);
  layout->addWidget(aim_head_);
  aim_ = new SkinMarkFields(desk_, at + "/aimed_at", page);
  layout->addWidget(aim_);
  connect(marks_, &ItemList::chosen_changed, this, &IncisionEditor::show_mark);
  return page;
}

void IncisionEditor::refresh() {
  list_->refresh();
}

void IncisionEditor::show_incision() {
  const std::string at = list_->chosen_pointer();
  form_->setVisible(!at.empty());
  judge_->setEnabled(!at.empty());
  if (at.empty()) return;
  label_->set_pointer(at + "/label");
  kind_->set_pointer(at + "/kind");
  depth_->set_pointer(at + "/depth_mm");
  marks_->set_pointer(at + "/points");
  aim_->set_pointer(at + "/aimed_at");
  // A line is not aimed; what the file has all the same can be taken away here.
  const QString kind = desk_.document.text_at(at + "/kind");
  const bool track = !kind.isEmpty() && kind != "line";
  const bool aimed = track || desk_.document.at(at + "/aimed_at") != nullptr;
  aim_head_->setVisible(aimed);
  aim_->setVisible(aimed);
  show_mark();
}

void IncisionEditor::show_mark() {
  const std::string at = marks_->chosen_pointer();
  mark_->setVisible(!at.empty());
  if (!at.empty()) mark_->set_pointer(at);
}

}  // namespace endplate::ui
