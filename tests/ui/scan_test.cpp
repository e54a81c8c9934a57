// A scanned surface on the desk: dropped, fitted, and its lengths in the case.
#include <QComboBox>
#include <QDir>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>
#include <QUrl>
#include <catch2/catch.hpp>
#include <cmath>

#include "models/scan/scan_answer.hpp"
#include "tests/ui/busy_watch.hpp"
#include "tests/ui/desk_support.hpp"
#include "tests/ui/scanned_arm.hpp"
#include "ui/app/scan_dialog.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/panels/row_table.hpp"

namespace endplate::ui {
namespace {

constexpr auto kArm = "/limb/measured/acromion to lateral epicondyle";
constexpr auto kForearm = "/limb/measured/interepicondylar line to bistyloid line";
constexpr auto kHand = "/limb/measured/distal wrist crease to middle fingertip";

class ScannedDesk {
 public:
  ScannedDesk() : arm_(write_scanned_arm(desk_.folder())) {
    REQUIRE(desk_.document().open(kScannedCase, {}));
  }
  DeskUnderTest& desk() { return desk_; }
  const ScannedArm& arm() const { return arm_; }
  ScanDialog& dialog() {
    auto* dialog = desk_.window().findChild<ScanDialog*>();
    REQUIRE(dialog != nullptr);
    return *dialog;
  }
  template <class T>
  T& find(const char* name) {
    T* found = dialog().findChild<T*>(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  QString told() { return find<QLabel>("told").text(); }

  void drop(const QStringList& paths) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& path : paths) urls << QUrl::fromLocalFile(path);
    data.setUrls(urls);
    QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    static_cast<QObject&>(desk_.window()).event(&drop);
  }
  // Chooses the unit once the surface was read.
  void choose_unit(const QString& unit) {
    auto& box = find<QComboBox>("unit");
    REQUIRE(wait_until([&] { return box.count() == 4; }, 30'000));
    box.setCurrentIndex(box.findData(unit));
  }
  // Fits, and waits for an answer or an error.
  void fit() {
    auto& button = find<QPushButton>("fit");
    REQUIRE(button.isEnabled());
    button.click();
    CHECK_FALSE(button.isEnabled());
    REQUIRE(wait_until([&] { return button.isEnabled(); }));
  }

 private:
  DeskUnderTest desk_;
  ScannedArm arm_;
};

}  // namespace

TEST_CASE("a scan that is dropped is fitted and its lengths enter the case as one step", "[scan]") {
  ScannedDesk scanned;
  CaseDocument& document = scanned.desk().document();
  scanned.drop({scanned.arm().surface});
  CHECK(scanned.dialog().isVisible());
  CHECK(document.text() == kScannedCase);
  // The landmarks lie beside it; the unit is asked.
  CHECK(scanned.find<QLineEdit>("landmarks").text() == scanned.arm().landmarks);
  auto& unit = scanned.find<QComboBox>("unit");
  REQUIRE(wait_until([&] { return unit.count() == 4; }, 30'000));
  CHECK(unit.currentIndex() == 0);
  CHECK(unit.itemText(3).contains("as an arm is"));
  CHECK_FALSE(unit.itemText(1).contains("as an arm is"));
  CHECK_FALSE(scanned.find<QPushButton>("fit").isEnabled());
  scanned.choose_unit("m");
  WatchedApplication::self().take_longest();
  scanned.fit();
  CHECK(WatchedApplication::self().take_longest().processor_ms < 50.0);

  // What the command line says of the same files.
  const auto answer =
      scan::answer_scan(tables()->package, document.read()->limb,
                        {scanned.arm().surface.toStdString(), geometry::LengthUnit::m,
                         scanned.arm().landmarks.toStdString()});
  REQUIRE(answer);
  CHECK(scanned.find<QLabel>("head").text() == "Scan of the RIGHT limb");
  CHECK(scanned.find<QLabel>("words").text().contains(
      QString("within %1 mm").arg(answer->surface_p95_mm, 0, 'f', 1)));
  CHECK(scanned.dialog().findChild<RowTable*>()->rows().rowCount() == 11);

  const int steps = document.steps().count();
  scanned.find<QPushButton>("enter").click();
  CHECK(document.steps().count() == steps + 1);
  REQUIRE(document.read());
  const auto check = [&](const char* pointer, std::size_t at, double ledger_mm, double scale) {
    INFO(pointer);
    const auto entered = document.number_at(pointer);
    REQUIRE(entered.has_value());
    CHECK(*entered == std::round(answer->lengths[at].length_mm));
    CHECK(std::abs(*entered - ledger_mm * scale) < 6.0);
  };
  check(kArm, 0, limb::kLedgerArm_mm, scanned.arm().scale.arm);
  check(kForearm, 1, limb::kLedgerForearm_mm, scanned.arm().scale.forearm);
  check(kHand, 2, limb::kLedgerHand_mm, scanned.arm().scale.hand);
  CHECK(scanned.told().contains("one undo takes them back"));
  CHECK_FALSE(scanned.find<QPushButton>("enter").isEnabled());
  document.steps().undo();
  CHECK(document.text() == kScannedCase);
}

TEST_CASE("what a scan needs is told with what to do", "[scan]") {
  ScannedDesk scanned;
  CaseDocument& document = scanned.desk().document();
  scanned.drop({scanned.arm().surface, scanned.arm().landmarks});
  scanned.choose_unit("mm");
  scanned.fit();
  CHECK(scanned.told().startsWith("Unit: in mm the surface is"));
  CHECK(scanned.told().contains("Give m"));
  CHECK_FALSE(scanned.find<QPushButton>("enter").isEnabled());

  scanned.choose_unit("m");
  document.set("/limb/side", "left", "side");
  scanned.fit();
  CHECK(scanned.told().startsWith("Landmarks: the landmarks are those of a right limb"));
  document.remove("/limb/side", "side");
  scanned.fit();
  CHECK(scanned.told().startsWith("Side: the side of the scanned limb is not given"));

  REQUIRE(write_bytes(scanned.arm().landmarks, "name,x,y,z\n"));
  document.set("/limb/side", "right", "side");
  scanned.fit();
  CHECK(scanned.told().contains("landmark,x,y,z"));

  const QString other = scanned.desk().folder() + "/arm.off";
  REQUIRE(write_bytes(other, "OFF\n3 1 0\n0 0 0\n1 0 0\n0 1 0\n3 0 1 2\n"));
  scanned.drop({other});
  REQUIRE(wait_until([&] { return scanned.told().contains("arm.off"); }, 30'000));
  CHECK(scanned.told().contains("PLY", Qt::CaseInsensitive));
  CHECK_FALSE(scanned.find<QPushButton>("fit").isEnabled());
}

TEST_CASE("the scan of one patient gives nothing to the next", "[scan]") {
  ScannedDesk scanned;
  CaseDocument& document = scanned.desk().document();
  scanned.drop({scanned.arm().surface});
  scanned.choose_unit("m");
  scanned.fit();
  auto& enter = scanned.find<QPushButton>("enter");
  REQUIRE(enter.isEnabled());
  // The limb is another one now.
  document.set("/limb/age_years", 12, "age");
  CHECK_FALSE(enter.isEnabled());
  CHECK(scanned.told().contains("fit again"));
  document.steps().undo();
  CHECK(enter.isEnabled());

  // A fit that runs while another case is opened ends unseen.
  scanned.find<QPushButton>("fit").click();
  REQUIRE(document.open(bytes_of(example("high-median-injury")), {}));
  CHECK_FALSE(scanned.dialog().isVisible());
  wait_until([] { return false; }, 15'000);
  CHECK_FALSE(enter.isEnabled());
  CHECK(scanned.find<QLineEdit>("surface").text().isEmpty());
  CHECK(document.text() == bytes_of(example("high-median-injury")));
}

TEST_CASE("pictures of a scan", "[.pictures]") {
  ScannedDesk scanned;
  const int scale = qRound(scanned.desk().window().devicePixelRatioF());
  const QString folder = QString(ENDPLATE_SCREENSHOTS "/scan-scale%1").arg(scale);
  REQUIRE(QDir().mkpath(folder));
  const auto take = [&](const char* name) {
    wait_until([] { return false; }, 200);
    CHECK(scanned.dialog().grab().save(folder + '/' + name + ".png"));
  };
  scanned.drop({scanned.arm().surface});
  scanned.choose_unit("mm");
  scanned.fit();
  take("refused");
  scanned.choose_unit("m");
  scanned.fit();
  take("fitted");
  scanned.find<QPushButton>("enter").click();
  take("entered");
}

}  // namespace endplate::ui
