// Names of nerves in the language that the reader wants them in.
#include <QSplitter>
#include <QStackedWidget>
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/term_book.hpp"

namespace endplate::ui {

TEST_CASE("terms are told in Latin, names without a Latin one stay whole", "[words]") {
  const TermBook book(
      {{"radial nerve", "nervus radialis"},
       {"superficial branch of radial nerve", "ramus superficialis nervi radialis"}},
      {"radial nerve", "articular branch of radial nerve", "radial artery"});
  CHECK(book.in("radial nerve") == "nervus radialis");
  CHECK(book.in("cut with the radial nerve, 5 mm") == "cut with the nervus radialis, 5 mm");
  CHECK(book.in("superficial branch of radial nerve") == "ramus superficialis nervi radialis");
  CHECK(book.in("articular branch of radial nerve") == "articular branch of radial nerve");
  CHECK(book.in("radial nerves, biradial nerve") == "radial nerves, biradial nerve");
  CHECK(book.in("") == "");
  CHECK(TermBook().in("radial nerve") == "radial nerve");
}

TEST_CASE("the table of aliases has Latin terms of the great nerves and of many others",
          "[words]") {
  const auto terms = latin_terms(tables()->package);
  CHECK(terms.value("median nerve") == "nervus medianus");
  CHECK(terms.value("posterior interosseous nerve") == "nervus interosseus antebrachii posterior");
  CHECK(terms.size() >= 30);
  for (auto term = terms.begin(); term != terms.end(); ++term) {
    INFO(term.key().toStdString());
    CHECK(tables()->anatomy.tree().find(term.key().toStdString()).has_value());
  }
}

TEST_CASE("the settings turn names of nerves to Latin in panels and picture, and back",
          "[window]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("deficit");
  const auto& muscles = desk.find<RowTable>("deficit", "Muscles");
  CHECK(muscles.shown(0, 3) == "radial nerve");
  const LimbView& view = *desk.window().stage().view();
  const auto labelled = [&](const QString& text) {
    const auto& texts = view.layout().texts;
    return view.is_up_to_date() && std::ranges::find(texts, text) != texts.end();
  };
  REQUIRE(wait_until([&] { return labelled("radial nerve"); }));
  Choices choices = desk.window().desk().settings.choices();
  const Choices before = choices;
  choices.terms = TermLanguage::latin;
  desk.window().desk().settings.set(choices);
  REQUIRE(desk.wait_idle());
  CHECK(muscles.shown(0, 3) == "nervus radialis");
  CHECK(wait_until([&] { return labelled("nervus radialis"); }));
  // The case keeps its own words.
  CHECK(desk.document().text() == bytes_of(example("humeral-shaft-radial-palsy")));
  desk.window().desk().settings.set(before);
  REQUIRE(desk.wait_idle());
  CHECK(muscles.shown(0, 3) == "radial nerve");
}

TEST_CASE("the panel stands on the side of the working hand", "[window]") {
  DeskUnderTest desk;
  const auto* panels = desk.window().findChild<QStackedWidget*>();
  const auto* stage = &desk.window().stage();
  REQUIRE(panels != nullptr);
  const auto x = [&](const QWidget* widget) { return widget->mapTo(&desk.window(), QPoint()).x(); };
  CHECK(x(panels) > x(stage));
  Choices choices = desk.window().desk().settings.choices();
  const Choices before = choices;
  choices.hand = Hand::left;
  desk.window().desk().settings.set(choices);
  REQUIRE(wait_until([&] { return x(panels) < x(stage); }));
  CHECK(panels->width() > stage->width());
  desk.window().desk().settings.set(before);
  REQUIRE(wait_until([&] { return x(panels) > x(stage); }));
}

}  // namespace endplate::ui
