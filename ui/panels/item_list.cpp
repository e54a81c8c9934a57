#include "ui/panels/item_list.hpp"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

#include "ui/document/case_document.hpp"

namespace endplate::ui {
namespace {

constexpr int kShownRows = 4;

}  // namespace

ItemList::ItemList(Desk desk, const std::string& pointer, const QString& what,
                   std::function<QString(const std::string&)> words, const std::string& fresh,
                   QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      pointer_(pointer),
      what_(what),
      words_(std::move(words)),
      fresh_(fresh),
      list_(new QListWidget(this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  list_->setAccessibleName(what);
  list_->setMaximumHeight(kShownRows * (list_->fontMetrics().lineSpacing() + 2) + 6);
  all->addWidget(list_);
  auto* buttons = new QHBoxLayout;
  auto* add = new QPushButton(tr("Add: %1").arg(what), this);
  take_ = new QPushButton(tr("Remove"), this);
  take_->setAccessibleName(tr("Remove: %1").arg(what));
  buttons->addWidget(add);
  buttons->addWidget(take_);
  buttons->addStretch(1);
  all->addLayout(buttons);
  connect(add, &QPushButton::clicked, this, [this] {
    const auto count = desk_.document.count(pointer_);
    chosen_ = static_cast<int>(count);
    desk_.document.set(pointer_ + '/' + std::to_string(count), Json::parse(fresh_),
                       tr("add: %1").arg(what_));
    Q_EMIT added();
  });
  connect(take_, &QPushButton::clicked, this, [this] {
    const std::string at = chosen_pointer();
    if (!at.empty()) desk_.document.remove(at, tr("remove: %1").arg(what_));
  });
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row == chosen_ || desk_.document.count(pointer_) == 0) return;
    chosen_ = row;
    Q_EMIT chosen_changed();
  });
  connect(&desk_.document, &CaseDocument::changed, this, &ItemList::refresh);
}

void ItemList::set_pointer(const std::string& pointer) {
  if (pointer == pointer_) return;
  pointer_ = pointer;
  chosen_ = -1;
  refresh();
}

std::string ItemList::chosen_pointer() const {
  if (chosen_ < 0 || static_cast<std::size_t>(chosen_) >= desk_.document.count(pointer_)) return {};
  return pointer_ + '/' + std::to_string(chosen_);
}

void ItemList::refresh() {
  const int count = static_cast<int>(desk_.document.count(pointer_));
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (int i = 0; i < count; ++i) {
      list_->addItem(QString("%1. %2").arg(i + 1).arg(words_(pointer_ + '/' + std::to_string(i))));
    }
    if (count == 0) {
      auto* none = new QListWidgetItem(tr("none given"), list_);
      none->setFlags(Qt::NoItemFlags);
    }
    chosen_ = std::min(std::max(chosen_, 0), count - 1);
    list_->setCurrentRow(chosen_);
  }
  take_->setEnabled(count > 0);
  Q_EMIT chosen_changed();
}

}  // namespace endplate::ui
