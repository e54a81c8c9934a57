#pragma once
// Anatomical terms in Latin (Terminologia Anatomica) within what is told.
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QString>

#include "models/evidence/data_package.hpp"

namespace endplate::ui {

class TermBook {
 public:
  TermBook() = default;  // of no term
  // `latin`: by English term. `names`: all names of the tables: one without a Latin term stays
  // whole, though another term stands within it.
  TermBook(QHash<QString, QString> latin, const QSet<QString>& names);

  // The text with every term that has a Latin one in Latin.
  QString in(const QString& text) const;

 private:
  QHash<QString, QString> latin_;
  QRegularExpression any_;
  mutable QHash<QString, QString> remembered_;
};

// Of the nerves, as far as the table of aliases has them; shortened as the language of the program
// does ("N. medianus" in German).
QHash<QString, QString> latin_terms(const evidence::DataPackage& package);

}  // namespace endplate::ui
