#pragma once
#include <QStyledItemDelegate>

namespace endplate::ui {

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
