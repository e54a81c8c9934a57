#include "ui/panels/measure_fields.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>
#include <nlohmann/json.hpp>

#include "ui/document/case_document.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/panels/fields.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr std::array kSides{"/limb/measured", "/limb/measured_other_side"};

// A slash and a tilde have a meaning in a JSON Pointer.
std::string token_of(const QString& name) {
  std::string token = plain(name);
  for (std::size_t k = 0; k < token.size(); ++k) {
    if (token[k] == '~') token.replace(k++, 1, "~0");
    if (token[k] == '/') token.replace(k++, 1, "~1");
  }
  return token;
}

}  // namespace

MeasureFields::MeasureFields(Desk desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  table_ = new QWidget(this);
  rows_ = new QGridLayout(table_);
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setColumnStretch(0, 1);
  all->addWidget(table_);
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
  all->addLayout(row);
  connect(add, &QPushButton::clicked, this, &MeasureFields::add_chosen);
  // Measures that were added for one patient are no question to the next.
  connect(&desk_.document, &CaseDocument::another_opened, this, &MeasureFields::forget);
  forget();
}

void MeasureFields::forget() {
  shown_.clear();
  while (QLayoutItem* item = rows_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  rows_->addWidget(new QLabel(tr("This limb"), this), 0, 1);
  rows_->addWidget(new QLabel(tr("Other side"), this), 0, 2);
  table_->hide();
}

void MeasureFields::add_row(const QString& name) {
  shown_ << name;
  const int at = static_cast<int>(shown_.size());
  auto* label = new QLabel(name, this);
  label->setWordWrap(true);
  rows_->addWidget(label, at, 0);
  const std::array whats{name, tr("%1, other side").arg(name)};
  for (std::size_t side = 0; side < kSides.size(); ++side) {
    const std::string pointer = std::string(kSides[side]) + '/' + token_of(name);
    auto* field = new NumberField(desk_.document, {pointer, whats[side]}, tr("mm"), this);
    rows_->addWidget(field, at, static_cast<int>(side) + 1);
  }
  table_->show();
}

void MeasureFields::add_chosen() {
  const QString name = measure_->currentText().trimmed();
  if (name.isEmpty() || shown_.contains(name)) return;
  measure_->setCurrentIndex(-1);
  measure_->clearEditText();
  add_row(name);
  // Straight to the figure.
  rows_->itemAtPosition(static_cast<int>(shown_.size()), 1)->widget()->setFocus();
}

void MeasureFields::refresh() {
  for (const char* side : kSides) {
    const Json* measured = desk_.document.at(side);
    if (measured == nullptr || !measured->is_object()) continue;
    for (const auto& [name, value] : measured->items()) {
      if (!shown_.contains(text_of(name))) add_row(text_of(name));
    }
  }
}

}  // namespace endplate::ui
