#pragma once
// What was picked on the limb, and what it supplies or is supplied by, in a few lines below the
// picture.
#include <QFrame>
#include <QStringList>

#include "ui/view/view_types.hpp"

class QLabel;

namespace endplate::ui {

struct CaseTables;

class PickCard : public QFrame {
  Q_OBJECT

 public:
  explicit PickCard(const CaseTables& tables, QWidget* parent = nullptr);

  /// Tells of it, and returns the standard terms that belong to it: a nerve with its branches and
  /// its muscles, a muscle with its nerve.
  QStringList show_pick(const Pick& pick);
  void say(const QString& words);
  QString words() const;

 Q_SIGNALS:
  void closed();

 private:
  QStringList tell_nerve(const QString& name, double arc_mm);
  QStringList tell_muscle(const QString& name, const QString& part);

  const CaseTables& tables_;
  QLabel* words_;
};

}  // namespace endplate::ui
