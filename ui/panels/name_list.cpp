#include "ui/panels/name_list.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <nlohmann/json.hpp>

#include "ui/document/case_document.hpp"
#include "ui/panels/fields.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr int kShownRows = 3;

}  // namespace

NameList::NameList(Desk desk, const std::string& pointer, const QString& what,
                   const QStringList& names, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      pointer_(pointer),
      what_(what),
      list_(new QListWidget(this)),
      name_(new QComboBox(this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  auto* row = new QHBoxLayout;
  make_completing(*name_, names);
  name_->setCurrentIndex(-1);
  name_->setAccessibleName(tr("Add to: %1").arg(what));
  name_->lineEdit()->setPlaceholderText(tr("add a name"));
  auto* add_button = new QPushButton(tr("Add"), this);
  auto* take_button = new QPushButton(tr("Remove"), this);
  row->addWidget(name_, 1);
  row->addWidget(add_button);
  row->addWidget(take_button);
  list_->setAccessibleName(what);
  list_->setMaximumHeight(kShownRows * list_->fontMetrics().lineSpacing() + 10);
  all->addWidget(list_);
  all->addLayout(row);
  connect(add_button, &QPushButton::clicked, this, &NameList::add);
  connect(name_->lineEdit(), &QLineEdit::returnPressed, this, &NameList::add);
  connect(take_button, &QPushButton::clicked, this, &NameList::take);
  connect(&desk_.document, &CaseDocument::changed, this, &NameList::refresh);
  refresh();
}

void NameList::refresh() {
  list_->clear();
  for (std::size_t i = 0; i < desk_.document.count(pointer_); ++i) {
    list_->addItem(desk_.document.text_at(pointer_ + '/' + std::to_string(i)));
  }
  if (list_->count() == 0) {
    auto* none = new QListWidgetItem(tr("none given"), list_);
    none->setFlags(Qt::NoItemFlags);
  }
}

void NameList::add() {
  const QString name = name_->currentText().trimmed();
  if (name.isEmpty()) return;
  desk_.document.set(pointer_ + '/' + std::to_string(desk_.document.count(pointer_)), plain(name),
                     what_);
  name_->setCurrentIndex(-1);
  name_->clearEditText();
}

void NameList::take() {
  const int row = list_->currentRow();
  if (row < 0 || desk_.document.count(pointer_) == 0) return;
  desk_.document.remove(pointer_ + '/' + std::to_string(row), what_);
}

}  // namespace endplate::ui
