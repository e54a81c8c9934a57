#pragma once
// Sentences and their text in another language, found by the sentence itself: whoever makes a
// sentence need not know that there are languages.
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace endplate::ui {

// Places: %1 to %9 hold words that are told themselves, {1} to {9} what is kept to the letter.
// Each place of the one stands in the other once.
struct SentencePair {
  QString english;
  QString other;
};

class SentenceBook {
 public:
  explicit SentenceBook(const std::vector<SentencePair>& pairs);

  // Names that stay as they are: nerves, muscles, landmarks.
  void set_names(QSet<QString> names) { names_ = std::move(names); }

  // The sentence in the other language, or nothing where any word of it is not known: never a
  // sentence half in one language. First the sentence itself; else the template with the most
  // fixed letters; else its parts between full stops, semicolons, commas and "and".
  std::optional<QString> tell(const QString& english) const;

  // A name, a number, a date or a key of the tables, which is the same in every language.
  bool stays(const QString& words) const;

 private:
  struct Place {
    int number = 0;
    bool to_the_letter = false;
  };
  struct Template {
    QRegularExpression shortest;  // the first places as short as can be
    QRegularExpression longest;   // or as long
    QString other;
    QString fixed;  // the longest fixed piece, to be looked for first
    std::vector<Place> places;
  };

  // What is known of the parts of one sentence, so that none is looked for twice.
  using Memo = QHash<QString, std::optional<QString>>;

  static Template template_of(const SentencePair& pair);
  std::optional<QString> tell_at(const QString& english, Memo& memo) const;
  std::optional<QString> tell_one(const QString& english, Memo& memo) const;
  std::optional<QString> fill(const Template& one, const QRegularExpression& pattern,
                              const QString& english, Memo& memo) const;
  std::optional<QString> tell_parts(const QString& english, Memo& memo) const;
  std::optional<QString> tell_row(const QStringList& parts, const QString& between,
                                  Memo& memo) const;

  QHash<QString, QString> whole_;
  QSet<QString> names_;
  std::vector<Template> templates_;              // most fixed letters first
  QHash<QString, std::vector<int>> by_opening_;  // first word, of templates that begin with one
  std::vector<int> open_;                        // those that begin with a place
};

}  // namespace endplate::ui
