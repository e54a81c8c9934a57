#pragma once
#include <QStyledItemDelegate>

namespace endplate::ui {

// Of a row that is about what was picked: true draws a bar before its first cell.
inline constexpr int kPointedRole = Qt::UserRole + 20;

// Items with air around their words; the ground of a chosen item fills the whole of it.
class AiryDelegate : public QStyledItemDelegate {
 public:
  AiryDelegate(int beside, int above, QObject* parent)
      : QStyledItemDelegate(parent), beside_(beside), above_(above) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  int beside_;
  int above_;
};

}  // namespace endplate::ui
