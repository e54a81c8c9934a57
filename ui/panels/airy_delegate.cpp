#include "ui/panels/airy_delegate.hpp"

#include <QPainter>
#include <QStyle>
#include <QWidget>

namespace endplate::ui {

void AiryDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
  QStyleOptionViewItem ground(option);
  initStyleOption(&ground, index);
  option.widget->style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &ground, painter,
                                        option.widget);
  if (index.column() == 0 && index.data(kPointedRole).toBool()) {
    constexpr int kBar = 3;
    painter->fillRect(QRect(option.rect.topLeft(), QSize(kBar, option.rect.height())),
                      option.palette.color(QPalette::Highlight));
  }
  QStyleOptionViewItem inner(option);
  inner.rect.adjust(beside_, above_, -beside_, -above_);
  QStyledItemDelegate::paint(painter, inner, index);
}

QSize AiryDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  // Words wrap in the room that is left for them.
  QStyleOptionViewItem inner(option);
  if (inner.rect.width() > 2 * beside_) inner.rect.adjust(beside_, 0, -beside_, 0);
  return QStyledItemDelegate::sizeHint(inner, index) + QSize(2 * beside_, 2 * above_);
}

}  // namespace endplate::ui
