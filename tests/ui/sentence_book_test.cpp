// Sentences found by themselves, whole or by templates.
#include "ui/words/sentence_book.hpp"

#include <QElapsedTimer>
#include <catch2/catch.hpp>

namespace endplate::ui {
namespace {

SentenceBook book() {
  SentenceBook book({{"now", "jetzt"},
                     {"operate", "operieren"},
                     {"a nerve is cut; it waits", "ein Nerv ist durchtrennt; er wartet"},
                     {"and", "und"},
                     {"%1 is not examined", "%1: nicht untersucht"},
                     {"%1 to %2", "%1 auf %2"},
                     {"%2 of %1 mm", "%2, %1 mm"},
                     {"gap of %1 mm after %2", "nach %2 Defekt von %1 mm"},
                     {"%1 is no nerve", "%1 ist kein Nerv"},
                     {"Write one of: {1}.", "Eines davon schreiben: {1}."},
                     {"long head", "Caput longum"},
                     {"%1 (%2)", "%1 (%2)"}});
  book.set_names({"deltoid", "biceps", "branch to biceps"});
  return book;
}

TEST_CASE("a sentence is told whole or by a template", "[words]") {
  const SentenceBook german = book();
  CHECK(german.tell("now") == "jetzt");
  CHECK(german.tell("deltoid is not examined") == "deltoid: nicht untersucht");
  CHECK(german.tell("biceps (long head) is not examined") ==
        "biceps (Caput longum): nicht untersucht");
  CHECK(german.tell("gap of 45 mm after now") == "nach jetzt Defekt von 45 mm");
  CHECK(german.tell("branch to biceps to deltoid") == "branch to biceps auf deltoid");
}

TEST_CASE("several sentences are told one by one", "[words]") {
  const SentenceBook german = book();
  CHECK(german.tell("now; operate.") == "jetzt; operieren.");
  CHECK(german.tell("now, operate and deltoid") == "jetzt, operieren und deltoid");
  CHECK(german.tell("now; a nerve is cut; it waits; operate") ==
        "jetzt; ein Nerv ist durchtrennt; er wartet; operieren");
}

TEST_CASE("what is not known stays whole in its own language", "[words]") {
  const SentenceBook german = book();
  CHECK_FALSE(german.tell("never heard of"));
  CHECK_FALSE(german.tell("now; never heard of"));
  CHECK_FALSE(german.tell("a stranger is not examined"));
  CHECK_FALSE(german.tell("deltoid is not examined today"));
  CHECK_FALSE(german.tell(""));
}

TEST_CASE("names, figures and keys stay, and so does what is kept to the letter", "[words]") {
  const SentenceBook german = book();
  for (const char* same : {"deltoid", "C5", "2026-06-01", "7 mm", "san_to_mcn", "Baltzer 2016"}) {
    CHECK(german.tell(same) == same);
    CHECK(german.stays(same));
  }
  CHECK(german.tell("\"nreve now\" is no nerve") == "\"nreve now\" ist kein Nerv");
  CHECK(german.tell("Write one of: now, operate.") == "Eines davon schreiben: now, operate.");
  CHECK_FALSE(german.stays("now"));
}

TEST_CASE("a place takes its own captured words, whatever signs they hold", "[words]") {
  const SentenceBook german = book();
  CHECK(german.tell("\"%2 100 %\" is no nerve") == "\"%2 100 %\" ist kein Nerv");
}

TEST_CASE("a long sentence that is not known is given up quickly", "[words]") {
  const SentenceBook german = book();
  QString sentence = "unknown";
  for (int i = 0; i < 40; ++i) sentence += i % 3 == 0 ? "; unknown" : ", now and unknown (x) to y";
  QElapsedTimer clock;
  clock.start();
  CHECK_FALSE(german.tell(sentence));
  CHECK(clock.elapsed() < 1000);
}

}  // namespace
}  // namespace endplate::ui
