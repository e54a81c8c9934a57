#include "ui/words/model_words.hpp"

#include <QCoreApplication>
#include <QHash>
#include <utility>
#include <vector>

#include "ui/words/model_sentences.hpp"
#include "ui/words/sentence_book.hpp"
#include "ui/words/term_book.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

// A panel asks for the same hundreds of cells over and over.
constexpr qsizetype kRemembered = 20'000;

QString translated(const char* english) {
  return QCoreApplication::translate("models", english);
}

class ModelWords {
 public:
  std::optional<QString> tell(const QString& english) {
    follow_language();
    if (!book_) return std::nullopt;
    if (const auto known = remembered_.constFind(english); known != remembered_.constEnd()) {
      return *known;
    }
    if (remembered_.size() > kRemembered) remembered_.clear();
    return *remembered_.insert(english, book_->tell(english));
  }

  void keep(QSet<QString> names) {
    names_ = std::move(names);
    remembered_.clear();
    if (book_) book_->set_names(names_);
  }

  void take_terms(const QHash<QString, QString>& terms) { terms_ = TermBook(terms, names_); }
  QString in_terms(const QString& text) const { return terms_.in(text); }

  ToldWatch watch;

 private:
  // A translator may have been installed or removed since.
  void follow_language() {
    const char* first = model_sentences().front();
    const QString sign = translated(first);
    if (sign == sign_) return;
    sign_ = sign;
    remembered_.clear();
    book_.reset();
    if (sign == text_of(first)) return;
    std::vector<SentencePair> pairs;
    for (const char* english : model_sentences()) {
      pairs.push_back({text_of(english), translated(english)});
    }
    book_.emplace(pairs);
    book_->set_names(names_);
  }

  QString sign_;
  QSet<QString> names_;
  TermBook terms_;
  std::optional<SentenceBook> book_;
  QHash<QString, std::optional<QString>> remembered_;
};

ModelWords& model_words() {
  static ModelWords words;
  return words;
}

}  // namespace

QString told(std::string_view english) {
  const QString text = text_of(english);
  if (text.isEmpty()) return text;
  const std::optional<QString> found = model_words().tell(text);
  if (model_words().watch) model_words().watch(text, found);
  return model_words().in_terms(found.value_or(text));
}

void keep_names(QSet<QString> names) {
  model_words().keep(std::move(names));
}

void tell_in_latin(const QHash<QString, QString>& terms) {
  model_words().take_terms(terms);
}

void watch_told(ToldWatch watch) {
  model_words().watch = std::move(watch);
}

}  // namespace endplate::ui
