#pragma once
// What was picked on the limb or chosen in a table, and what it supplies or is supplied by, in a
// few lines below the picture.
#include <QFrame>
#include <QStringList>

#include "models/anatomy/anatomy.hpp"
#include "ui/view/view_types.hpp"

class QLabel;

namespace endplate::ui {

struct CaseTables;

/// What the reader points at, in standard terms; a muscle by its key.
struct Subject {
  QStringList names;  // it, and what hangs on it: a nerve with its branches, muscles and areas
  QStringList way;    // the nerves that lead to it; they stand out on the limb alone
};

class PickCard : public QFrame {
  Q_OBJECT

 public:
  explicit PickCard(const CaseTables& tables, QWidget* parent = nullptr);

  /// Tells of what was picked.
  Subject show_pick(const Pick& pick);
  /// Tells of a nerve, muscle (by its key) or area, or lists several; hides when there is none.
  Subject show_names(const QStringList& names);
  void say(const QString& words);
  QString words() const;

 Q_SIGNALS:
  void closed();

 private:
  Subject tell_nerve(const QString& name, double arc_mm);
  Subject tell_muscle(const anatomy::Muscle& muscle);
  Subject tell_area(const anatomy::SkinArea& area);
  Subject tell(const QString& name);
  static QString listed(const QStringList& items);  // as many as the card holds
  const anatomy::Muscle* muscle_called(const QString& name, const QString& part) const;
  const anatomy::Muscle* muscle_of(const QString& id) const;
  // The nerves from the roots to a branch.
  QStringList way_to(anatomy::NodeIndex branch) const;

  const CaseTables& tables_;
  QLabel* words_;
};

}  // namespace endplate::ui
