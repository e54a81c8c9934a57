// The sentences of the models and of the tables in German, over every example case.
#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QLabel>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTranslator>
#include <algorithm>
#include <catch2/catch.hpp>
#include <iostream>
#include <map>
#include <optional>
#include <string_view>
#include <vector>

#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/panels/case_words.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/words/model_sentences.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/sentence_lists.hpp"

namespace endplate::ui {
namespace {

class German {
 public:
  German() {
    if (!german_.load(ENDPLATE_GERMAN)) throw std::runtime_error("no German");
    QCoreApplication::installTranslator(&german_);
  }
  ~German() {
    watch_told(nullptr);
    QCoreApplication::removeTranslator(&german_);
  }
  German(const German&) = delete;
  German& operator=(const German&) = delete;

 private:
  QTranslator german_;
};

TEST_CASE("every joint has its German words", "[german]") {
  const auto& limits = tables()->pose;
  REQUIRE(limits.size() > 20);
  std::map<std::string, QString> english;
  for (const auto& [key, limit] : limits) english[key] = joint_words(key);
  const German german;
  for (const auto& [key, words] : english) {
    INFO(key);
    CHECK(joint_words(key) != words);
  }
}

// Every sentence that was told; nothing beside it where it stayed English.
using Sentences = std::map<QString, std::optional<QString>>;

void look_at_everything(DeskUnderTest& desk) {
  for (const QString& question : desk.window().questions()) {
    Panel& panel = desk.ask(question);
    for (auto* tabs : panel.findChildren<QTabWidget*>()) {
      for (int i = tabs->count() - 1; i >= 0; --i) tabs->setCurrentIndex(i);
    }
    for (auto* table : panel.findChildren<RowTable*>()) {
      for (int row = 0; row < table->rows().rowCount(); ++row) table->choose(row);
    }
  }
}

QStringList found_in(const QString& text, const QString& pattern) {
  static std::map<QString, QRegularExpression> compiled;
  auto& expression = compiled[pattern];
  if (expression.pattern().isEmpty()) {
    expression = QRegularExpression(pattern, QRegularExpression::UseUnicodePropertiesOption |
                                                 QRegularExpression::CaseInsensitiveOption);
  }
  QStringList found;
  for (auto all = expression.globalMatch(text); all.hasNext();) found << all.next().captured();
  found.sort();
  return found;
}

// Places are told apart from figures by their signs.
QStringList numbers(QString text) {
  return found_in(text.remove(QRegularExpression(R"(%[1-9]|\{[1-9]\})")), R"(\d+([.,]\d+)?)");
}

QStringList units(const QString& text) {
  return found_in(text, R"((?<![%\w])(mm2?|cm|kg)\b|%(?![1-9]))");
}

bool denies(const QString& english) {
  return !found_in(english, R"(\b(not|no|never|without|none|nothing|nobody|nor|neither|cannot)\b)")
              .isEmpty();
}

bool denies_in_german(const QString& german) {
  return !found_in(
              german,
              R"(\b(nicht|kein\w*|nie|ohne|nichts|niemand|weder|nein|un\w+|\w+lose?n?|\w+freie?)\b)")
              .isEmpty();
}

// Of a sentence and its German: the same figures and units, and "not" where the other has it.
void compare(const QString& english, const QString& german) {
  INFO(english.toStdString() << "\n" << german.toStdString());
  CHECK(numbers(english).join(' ').toStdString() == numbers(german).join(' ').toStdString());
  CHECK(units(english).join(' ').toStdString() == units(german).join(' ').toStdString());
  CHECK((!denies(english) || denies_in_german(german)));
}

TEST_CASE("the sentences of the models are German over every example case", "[german]") {
  Sentences sentences;
  {
    const German language;
    DeskUnderTest desk;
    watch_told([&](const QString& english, const std::optional<QString>& told) {
      sentences.emplace(english, told);
    });
    const QDir cases(ENDPLATE_SOURCE_DIR "/datasets/cases");
    for (const QString& name : cases.entryList({"*.json"})) {
      REQUIRE(desk.window().open_file(cases.filePath(name)));
      look_at_everything(desk);
    }
  }
  REQUIRE(sentences.size() > 1500);
  std::size_t german = 0;
  std::size_t names = 0;
  QStringList beside;  // for a person who reads German
  for (const auto& [english, told] : sentences) {
    beside << english + '\t' + told.value_or("-");
    if (!told) {
      std::cout << "still English: " << english.toStdString() << '\n';
      continue;
    }
    ++german;
    names += *told == english ? 1 : 0;
    compare(english, *told);
  }
  REQUIRE(QDir().mkpath(ENDPLATE_SCREENSHOTS));
  REQUIRE(write_bytes(ENDPLATE_SCREENSHOTS "/sentences-de.tsv", beside.join('\n').toStdString()));
  std::cout << german << " of " << sentences.size() << " sentences are told in German, " << names
            << " of them names and figures that stay\n";
  CHECK(100 * (sentences.size() - german) <= sentences.size());
}

TEST_CASE("the decision is German, with its date and its exception", "[german]") {
  const German language;
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("decision");
  const std::string english =
      program_json({"followup", example("humeral-shaft-radial-palsy"), "--today", "2026-10-01"})
          .at("decision")
          .at("next");
  const QString german = desk.find<QLabel>("decision", "next").text();
  INFO(english << "\n" << german.toStdString());
  CHECK(german != QString::fromStdString(english) + '.');
  CHECK(german == told(english) + '.');
}

TEST_CASE("a case that cannot be read says so in German, what was typed to the letter",
          "[german]") {
  const German language;
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("upper-trunk-injury")));
  desk.document().set("/injuries/1/nerve", "suprascapular nreve of", "nerve");
  REQUIRE(desk.wait_idle());
  const QString notice = desk.ask("injury").notice_text();
  INFO(notice.toStdString());
  CHECK(notice.contains("suprascapular nreve of"));
  CHECK(notice.contains("kein Nerv, den die Tabellen kennen"));
  CHECK(notice.contains(QString::fromUtf8("Ähnlichste Namen: ")));
}

TEST_CASE("in English the sentences stay as the models say them", "[german]") {
  {
    const German language;
    CHECK(told("without an operation") == "ohne Operation");
  }
  CHECK(told("without an operation") == "without an operation");
}

TEST_CASE("every sentence of the list is translated, figures, units and negations kept",
          "[german]") {
  const German language;
  QStringList seen;
  for (const char* english : model_sentences()) {
    const QString german = QCoreApplication::translate("models", english);
    INFO(english);
    CHECK_FALSE(german.isEmpty());
    CHECK_FALSE(seen.contains(english));
    seen << english;
    compare(english, german);
    const QString places = R"(%[1-9]|\{[1-9]\})";
    CHECK(found_in(english, places) == found_in(german, places));
  }
  // And the translations hold no sentence that the list lacks.
  const QString all =
      QString::fromStdString(bytes_of(ENDPLATE_SOURCE_DIR "/ui/translations/endplate_de.ts"));
  const qsizetype from = all.indexOf("<name>models</name>");
  const QString context = all.mid(from, all.indexOf("</context>", from) - from);
  CHECK(context.count("<message>") == seen.size());
}

// The literals of a C++ file, those that stand side by side as one.
QString literals_of(const QString& code) {
  static const QRegularExpression literal(R"re("((?:[^"\\\n]|\\.)*)")re");
  QString text;
  qsizetype end = 0;
  for (auto all = literal.globalMatch(code); all.hasNext();) {
    const QRegularExpressionMatch one = all.next();
    if (!code.mid(end, one.capturedStart() - end).trimmed().isEmpty()) text += '\n';
    text += one.captured(1);
    end = one.capturedEnd();
  }
  return text.replace("\\\"", "\"").replace("{{", "{").replace("}}", "}");
}

void gather(const QString& folder, const QStringList& names, QString& code, QString& tables) {
  const QDir dir(folder);
  for (const QFileInfo& entry : dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    gather(entry.filePath(), names, code, tables);
  }
  for (const QFileInfo& entry : dir.entryInfoList(names, QDir::Files)) {
    const QString text = QString::fromStdString(bytes_of(entry.filePath()));
    if (entry.suffix() == "csv") {
      tables += QString(text).replace("\"\"", "\"");
    } else {
      code += literals_of(text) + '\n';
    }
  }
}

// Whether words stand in a text, in one piece or in several that end with a word.
bool stands_in(const QString& all, const QString& words, int pieces) {
  if (words.isEmpty() || all.contains(words)) return true;
  if (pieces == 1) return false;
  for (qsizetype end = words.lastIndexOf(' '); end > 0; end = words.lastIndexOf(' ', end - 1)) {
    if (!all.contains(words.left(end))) continue;
    return stands_in(all, words.mid(end).trimmed(), pieces - 1);
  }
  return false;
}

TEST_CASE("every sentence of the list comes from the models or the tables", "[german]") {
  QString code;
  QString tables;
  for (const char* folder : {"/models", "/src/output", "/ui/answers"}) {
    gather(QString(ENDPLATE_SOURCE_DIR) + folder, {"*.cpp", "*.hpp"}, code, tables);
  }
  gather(ENDPLATE_SOURCE_DIR "/datasets", {"*.csv"}, code, tables);
  const QString all = code + tables;
  constexpr int kJoined = 5;
  static const QRegularExpression place(R"(%[1-9]|\{[1-9]\})");
  for (const char* english : model_sentences()) {
    const bool joined = std::ranges::find(joined_sentences(), std::string_view(english)) !=
                        joined_sentences().end();
    for (const QString& piece : QString(english).split(place)) {
      QString fixed = piece.trimmed();
      while (fixed.endsWith(',') || fixed.endsWith(':')) fixed.chop(1);
      INFO(english << "\nhas no source for: " << piece.toStdString());
      CHECK(stands_in(all, fixed, joined ? kJoined : 1));
    }
  }
  CHECK_FALSE(stands_in(all, "the muscle is alive, so it moves when the sling comes off", 1));
}

TEST_CASE("a panel's sentences are told in no time", "[german]") {
  const German language;
  REQUIRE(told("without an operation") == "ohne Operation");
  QElapsedTimer clock;
  clock.start();
  for (int i = 0; i < 1000; ++i) {
    told("a graft of " + std::to_string(i) + " mm (2 to 64) would be needed");
  }
  INFO(clock.elapsed() << " ms for 1,000 sentences not told before");
  CHECK(clock.elapsed() < 1000);
}

}  // namespace
}  // namespace endplate::ui
