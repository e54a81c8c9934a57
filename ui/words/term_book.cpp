#include "ui/words/term_book.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <utility>

#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr qsizetype kRemembered = 20'000;

constexpr std::array kShortened{
    QT_TRANSLATE_NOOP("terms", "nervus"),  QT_TRANSLATE_NOOP("terms", "nervi"),
    QT_TRANSLATE_NOOP("terms", "ramus"),   QT_TRANSLATE_NOOP("terms", "fasciculus"),
    QT_TRANSLATE_NOOP("terms", "truncus"),
};

QString shortened(const QString& latin) {
  QStringList words = latin.split(' ');
  for (QString& word : words) {
    for (const char* whole : kShortened) {
      if (word == QLatin1String(whole)) word = QCoreApplication::translate("terms", whole);
    }
  }
  return words.join(' ');
}

}  // namespace

TermBook::TermBook(QHash<QString, QString> latin, const QSet<QString>& names)
    : latin_(std::move(latin)) {
  QSet<QString> all = names;
  for (auto term = latin_.keyBegin(); term != latin_.keyEnd(); ++term) all.insert(*term);
  QStringList longest_first(all.begin(), all.end());
  std::ranges::sort(longest_first, std::greater{}, &QString::size);
  for (QString& name : longest_first) name = QRegularExpression::escape(name);
  any_.setPattern("\\b(?:" + longest_first.join('|') + ")\\b");
}

QString TermBook::in(const QString& text) const {
  if (latin_.isEmpty()) return text;
  if (const auto known = remembered_.constFind(text); known != remembered_.constEnd()) {
    return *known;
  }
  QString result;
  qsizetype end = 0;
  for (auto found = any_.globalMatch(text); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    result += text.mid(end, match.capturedStart() - end);
    result += latin_.value(match.captured(), match.captured());
    end = match.capturedEnd();
  }
  result += text.mid(end);
  if (remembered_.size() > kRemembered) remembered_.clear();
  return *remembered_.insert(text, result);
}

QHash<QString, QString> latin_terms(const evidence::DataPackage& package) {
  QHash<QString, QString> terms;
  for (const evidence::Row row : package.table("aliases")) {
    if (row.text("kind") != "nerve" || !row.text("source").starts_with("Latin name")) continue;
    const QString english = text_of(row.text("standard"));
    // The first of two is the current term.
    if (!terms.contains(english)) terms.insert(english, shortened(text_of(row.text("alias"))));
  }
  return terms;
}

}  // namespace endplate::ui
