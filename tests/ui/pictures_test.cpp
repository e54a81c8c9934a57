// A picture of every panel at two sizes, for a person to look at.
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QPixmap>
#include <QTabWidget>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "models/core/caution.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/corridor_page.hpp"
#include "ui/panels/finding_table.hpp"
#include "ui/panels/panel.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

void take(DeskUnderTest& desk, const QString& folder, const QString& name, QSize size) {
  QApplication::processEvents();
  REQUIRE(wait_until([&] { return desk.window().stage().view()->is_up_to_date(); }));
  const QPixmap picture = desk.window().grab();
  CHECK(desk.window().size() == size);
  CHECK(picture.save(folder + '/' + name + ".png"));
}

void take_all(DeskUnderTest& desk, const QString& folder, QSize size) {
  desk.window().resize(size);
  for (const QString& question : desk.window().questions()) {
    Panel& panel = desk.ask(question);
    take(desk, folder, question, size);
    for (auto* tabs : panel.findChildren<QTabWidget*>()) {
      for (int i = 1; i < tabs->count(); ++i) {
        tabs->setCurrentIndex(i);
        take(desk, folder, question + "-" + QString::number(i), size);
      }
      tabs->setCurrentIndex(0);
    }
  }
}

TEST_CASE("pictures of every panel", "[.pictures]") {
  DeskUnderTest desk;
  const int scale = qRound(desk.window().devicePixelRatioF());
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.answers().set_evidence({"posterior interosseous", "", ""});
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1200)}) {
    for (const Lightness lightness : {Lightness::light, Lightness::dark}) {
      Choices choices = desk.window().desk().settings.choices();
      choices.lightness = lightness;
      desk.window().desk().settings.set(choices);
      const QString folder = QString("%1/%2x%3-scale%4-%5")
                                 .arg(ENDPLATE_SCREENSHOTS)
                                 .arg(size.width())
                                 .arg(size.height())
                                 .arg(scale)
                                 .arg(lightness == Lightness::dark ? "dark" : "light");
      QDir().mkpath(folder);
      take_all(desk, folder, size);
    }
  }
}

TEST_CASE("pictures of what is not a finished case", "[.pictures]") {
  DeskUnderTest desk;
  const QString folder = QString(ENDPLATE_SCREENSHOTS "/unfinished-scale%1")
                             .arg(qRound(desk.window().devicePixelRatioF()));
  QDir().mkpath(folder);
  const QSize size(1280, 800);
  for (const QString& question : desk.window().questions()) {
    desk.ask(question);
    take(desk, folder, "new-" + question, size);
  }
  REQUIRE(desk.window().open_file(example("upper-trunk-injury")));
  for (const char* question : {"decision", "injury", "transfer", "recovery", "operations"}) {
    desk.ask(question);
    take(desk, folder, QString("plexus-") + question, size);
  }
  desk.ask("decision");
  desk.document().set("/limb/age_years", 40, "age");
  take(desk, folder, "stale-decision", size);
  desk.document().set("/injuries/1/nerve", "suprascapular nreve of", "nerve");
  REQUIRE(desk.wait_idle());
  take(desk, folder, "wrong-decision", size);
  desk.ask("injury");
  take(desk, folder, "wrong-injury", size);
  REQUIRE(desk.window().open_file(example("birth-palsy")));
  desk.ask("decision");
  take(desk, folder, "birth-decision", size);
  desk.ask("recovery");
  take(desk, folder, "birth-recovery", size);
}

TEST_CASE("pictures of what was picked on the limb", "[.pictures]") {
  DeskUnderTest desk;
  const QString folder = QString(ENDPLATE_SCREENSHOTS "/picked-scale%1")
                             .arg(qRound(desk.window().devicePixelRatioF()));
  QDir().mkpath(folder);
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  LimbView* view = desk.window().stage().view();
  REQUIRE(wait_until([&] { return view->scene() != nullptr; }));
  Pick pick;
  pick.kind = PickKind::nerve;
  pick.name = "posterior interosseous nerve";
  Q_EMIT view->picked(pick);
  for (const char* question : {"deficit", "recovery", "transfer", "examination"}) {
    Panel& panel = desk.ask(question);
    if (QString(question) == "recovery") panel.findChild<QTabWidget*>()->setCurrentIndex(1);
    wait_until([&] { return view->is_up_to_date(); });
    take(desk, folder, question, QSize(1280, 800));
  }
  desk.window().stage().point_out({"ECRL"});
  wait_until([&] { return view->is_up_to_date(); });
  take(desk, folder, "muscle", QSize(1280, 800));
}

TEST_CASE("pictures of fields that are filled and of a corridor", "[.pictures]") {
  DeskUnderTest desk;
  const QString folder = QString(ENDPLATE_SCREENSHOTS "/filled-scale%1")
                             .arg(qRound(desk.window().devicePixelRatioF()));
  QDir().mkpath(folder);
  const QSize size(1280, 800);
  REQUIRE(desk.window().open_file(example("radial-nerve-found-by-ultrasound")));
  desk.document().set("/limb/measured_other_side/forearm length", 270, "measure");
  desk.ask("patient");
  take(desk, folder, "patient", size);
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  Panel& examination = desk.ask("examination");
  auto& findings = *examination.findChild<FindingTable*>();
  for (int row = 0; row < findings.rowCount(); ++row) {
    if (findings.rows()[static_cast<std::size_t>(row)].name == "first dorsal web space") {
      findings.setCurrentCell(row, 2);
    }
  }
  desk.find<QComboBox>("examination", "s grade").setCurrentIndex(1);
  Q_EMIT desk.find<QComboBox>("examination", "s grade").activated(1);
  REQUIRE(desk.wait_idle());
  take(desk, folder, "examination", size);
  Panel& incision = desk.ask("incision");
  incision.findChild<QTabWidget*>()->setCurrentIndex(3);
  incision.findChild<CorridorPage*>()->findChild<QCheckBox*>()->click();
  REQUIRE(desk.wait_idle());
  LimbView* view = desk.window().stage().view();
  view->look_from(Aspect::back);
  wait_until([&] { return view->is_up_to_date(); });
  take(desk, folder, "corridor", size);
}

TEST_CASE("pictures in the other language", "[.pictures]") {
  QTranslator german;
  REQUIRE(german.load(ENDPLATE_GERMAN));
  QCoreApplication::installTranslator(&german);
  {
    DeskUnderTest desk;
    CHECK(desk.window().panel("decision")->question() != "What next, and by when?");
    CHECK(caution_words() != QString::fromStdString(std::string(standing_caution())));
    REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
    const QString folder = QString(ENDPLATE_SCREENSHOTS "/german-scale%1")
                               .arg(qRound(desk.window().devicePixelRatioF()));
    QDir().mkpath(folder);
    take_all(desk, folder, QSize(1280, 800));
  }
  QCoreApplication::removeTranslator(&german);
}

}  // namespace
}  // namespace endplate::ui
