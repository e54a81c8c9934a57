#include "ui/panels/place_words.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <string>

#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

struct ListWord {
  const char* key;
  const char* item;
};

constexpr std::array kLists{
    ListWord{"injuries", QT_TRANSLATE_NOOP("endplate::ui", "injury")},
    ListWord{"observations", QT_TRANSLATE_NOOP("endplate::ui", "later visit")},
    ListWord{"operations", QT_TRANSLATE_NOOP("endplate::ui", "operation")},
    ListWord{"electrodiagnosis", QT_TRANSLATE_NOOP("endplate::ui", "EMG study")},
    ListWord{"incisions", QT_TRANSLATE_NOOP("endplate::ui", "incision")},
    ListWord{"muscles", QT_TRANSLATE_NOOP("endplate::ui", "muscle")},
    ListWord{"sensation", QT_TRANSLATE_NOOP("endplate::ui", "skin area")},
    ListWord{"movements", QT_TRANSLATE_NOOP("endplate::ui", "movement")},
    ListWord{"tinel", QT_TRANSLATE_NOOP("endplate::ui", "Tinel point")},
    ListWord{"done", QT_TRANSLATE_NOOP("endplate::ui", "step")},
    ListWord{"points", QT_TRANSLATE_NOOP("endplate::ui", "mark")},
};

bool is_number(const QString& token) {
  bool number = false;
  token.toUInt(&number);
  return number;
}

QString key_words(QString key) {
  for (const char* unit : {"_mm", "_deg", "_years"}) {
    if (key.endsWith(unit)) key.chop(static_cast<qsizetype>(std::string_view(unit).size()));
  }
  if (key == "at") return QCoreApplication::translate("endplate::ui", "place");
  return key.replace('_', ' ');
}

}  // namespace

QString place_words(std::string_view pointer) {
  const QString whole = text_of(pointer);
  if (!whole.startsWith('/')) return whole;
  const QStringList tokens = whole.mid(1).split('/');
  QStringList words;
  for (qsizetype i = 0; i < tokens.size(); ++i) {
    // What stands of the limb says so by itself.
    if (tokens[i] == "limb" && tokens.size() > 1) continue;
    const bool item = i + 1 < tokens.size() && is_number(tokens[i + 1]);
    QString word = key_words(tokens[i]);
    for (const ListWord& list : kLists) {
      if (item && tokens[i] == list.key) {
        word = QCoreApplication::translate("endplate::ui", list.item);
      }
    }
    if (item) word += ' ' + QString::number(tokens[++i].toUInt() + 1);
    words << word;
  }
  return opening(words.join(", "));
}

QString problem_words(const std::vector<Problem>& problems) {
  QStringList lines;
  for (const Problem& problem : problems) {
    lines << QString("%1: %2. %3")
                 .arg(place_words(problem.place), told(problem.what), told(problem.mend));
  }
  return lines.join('\n');
}

}  // namespace endplate::ui
