#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>
#include <QUndoStack>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/findings.hpp"
#include "ui/document/recovery_store.hpp"

namespace endplate::ui {
namespace {

constexpr auto kCase = "humeral-shaft-radial-palsy";

TEST_CASE("an opened case that was not changed keeps its bytes", "[document]") {
  for (const char* name : {kCase, "upper-trunk-injury", "birth-palsy", "high-median-injury"}) {
    CaseDocument document(tables(), kToday);
    const std::string bytes = bytes_of(example(name));
    REQUIRE(document.open(bytes, example(name)));
    CHECK(document.text() == bytes);
    CHECK_FALSE(document.is_changed());
  }
}

TEST_CASE("undo leads back to the bytes of the file and redo to those of the edit", "[document]") {
  CaseDocument document(tables(), kToday);
  const std::string bytes = bytes_of(example(kCase));
  REQUIRE(document.open(bytes, example(kCase)));
  document.set("/limb/age_years", 41, "age");
  document.set("/injuries/0/mechanism", "gunshot", "mechanism");
  document.remove("/limb/stature_mm", "stature");
  const std::string edited = document.text();
  CHECK(edited != bytes);
  CHECK(document.is_changed());
  for (int i = 0; i < 3; ++i) document.steps().undo();
  CHECK(document.text() == bytes);
  CHECK_FALSE(document.is_changed());
  for (int i = 0; i < 3; ++i) document.steps().redo();
  CHECK(document.text() == edited);
  REQUIRE(document.read());
  CHECK(document.read()->limb.age_years == 41.0);
  CHECK(document.read()->injuries.front().mechanism == casefile::Mechanism::gunshot);
}

TEST_CASE("what a file holds and no panel shows stays through an edit", "[document]") {
  CaseDocument document(tables(), kToday);
  REQUIRE(document.open(bytes_of(example(kCase)), {}));
  document.set("/limb/sex", "male", "sex");
  const Json before = Json::parse(bytes_of(example(kCase)));
  Json after = Json::parse(document.text());
  CHECK(after["limb"]["sex"] == "male");
  after["limb"]["sex"] = "female";
  CHECK(after == before);
  CHECK(after.dump() == before.dump());
}

TEST_CASE("the edits of one gesture are one step", "[document]") {
  CaseDocument document(tables(), kToday);
  REQUIRE(document.open(bytes_of(example(kCase)), {}));
  for (int degrees = 1; degrees <= 50; ++degrees) {
    document.set("/limb/pose/elbow_flexion_deg", degrees, "elbow", 7);
  }
  CHECK(document.steps().count() == 1);
  document.set("/limb/pose/elbow_flexion_deg", 60, "elbow", 8);
  CHECK(document.steps().count() == 2);
  document.steps().undo();
  CHECK(document.number_at("/limb/pose/elbow_flexion_deg") == 50.0);
  document.steps().undo();
  CHECK(document.at("/limb/pose") == nullptr);
}

TEST_CASE("what cannot be written back as it was is not opened", "[document]") {
  CaseDocument document(tables(), kToday);
  const std::string before = document.text();
  CHECK_FALSE(document.open(R"({"endplate_case": 1, "label": "a", "label": "b"})", {}));
  CHECK_FALSE(document.open("[1]", {}));
  CHECK_FALSE(document.open("{", {}));
  CHECK(document.text() == before);
}

TEST_CASE("a case that is not valid is opened with the models' problems", "[document]") {
  CaseDocument document(tables(), kToday);
  REQUIRE(document.open(R"({"endplate_case": 1, "limb": {"side": "middle"}})", {}));
  REQUIRE_FALSE(document.read());
  const Problem& problem = document.read().error().problems.front();
  CHECK(problem.place == "/limb/side");
  CHECK_FALSE(problem.mend.empty());
  document.set("/limb/side", "left", "side");
  REQUIRE(document.read());
  CHECK(document.read()->limb.side == Side::left);
}

TEST_CASE("a finding of a part splits the entry that stood for the whole", "[document]") {
  Json visit = Json::parse(R"({"muscles": [{"muscle": "deltoid", "mrc": 0}, {"muscle": "FCU",
                               "mrc": "4-"}]})");
  const auto& terms = tables()->terms;
  const auto before = findings(visit, FindingKind::muscle, terms);
  CHECK(before.at("FCU") == "4-");
  std::string part;
  for (const auto& [name, grade] : before) {
    if (name != "FCU") part = name;
  }
  REQUIRE_FALSE(part.empty());
  set_finding(visit, FindingKind::muscle, part, "3", terms);
  const auto after = findings(visit, FindingKind::muscle, terms);
  CHECK(after.size() == before.size());
  CHECK(after.at(part) == "3");
  for (const auto& [name, grade] : before) {
    if (name != part) CHECK(after.at(name) == grade);
  }
  set_finding(visit, FindingKind::muscle, "FCU", "", terms);
  CHECK_FALSE(findings(visit, FindingKind::muscle, terms).contains("FCU"));
}

TEST_CASE("an S grade and a two-point distance stand beside the state of an area", "[document]") {
  const std::string text = R"({"sensation": [{"area": "lateral shoulder patch", "state": "reduced"},
                                             {"area": "first dorsal web space", "s_grade": "S1"}]})";
  Json visit = Json::parse(text);
  const auto& terms = tables()->terms;
  set_area_detail(visit, "lateral shoulder patch", "two_point_mm", 7.5, terms);
  CHECK(visit["sensation"][0] ==
        Json{{"area", "lateral shoulder patch"}, {"state", "reduced"}, {"two_point_mm", 7.5}});
  CHECK(area_details(visit, terms).at("lateral shoulder patch").two_point_mm == "7.5");
  CHECK(area_details(visit, terms).at("first dorsal web space").s_grade == "S1");
  set_area_detail(visit, "lateral shoulder patch", "two_point_mm", Json(), terms);
  CHECK(visit == Json::parse(text));
  // The last finding of an area takes its entry along; what was never there makes none.
  set_area_detail(visit, "first dorsal web space", "s_grade", Json(), terms);
  CHECK(visit["sensation"].size() == 1);
  set_area_detail(visit, "first dorsal web space", "s_grade", Json(), terms);
  CHECK(visit["sensation"].size() == 1);
  set_area_detail(visit, "first dorsal web space", "s_grade", "S3+", terms);
  CHECK(visit["sensation"][1] == Json{{"area", "first dorsal web space"}, {"s_grade", "S3+"}});
}

TEST_CASE("a file that cannot be written leaves the old one", "[document]") {
  const QTemporaryDir folder;
  const QString path = folder.path() + "/case.json";
  REQUIRE(write_bytes(path, "old"));
  CHECK_FALSE(write_bytes(folder.path() + "/no/such/case.json", "new"));
  REQUIRE(write_bytes(path, "new"));
  CHECK(bytes_of(path) == "new");
  CHECK(QDir(folder.path()).entryList(QDir::Files).size() == 1);
}

TEST_CASE("two desks do not hold one case", "[document]") {
  const QTemporaryDir folder;
  const CaseLock first(folder.path(), "a.json");
  CHECK(first.held());
  const CaseLock second(folder.path(), "a.json");
  CHECK_FALSE(second.held());
  const CaseLock other(folder.path(), "b.json");
  CHECK(other.held());
}

// What a killed desk had edited, and what is found of it afterwards.
TEST_CASE("a desk that is killed loses nothing older than ten seconds", "[document]") {
  constexpr int kEdits_per_second = 20;
  constexpr int kMostLost = 10 * kEdits_per_second;
  for (const int moment_ms : {2600, 3700, 4300, 5100, 6900}) {
    const QTemporaryDir folder;
    QProcess desk;
    desk.start(QCoreApplication::applicationFilePath(), {"--edit-for-ever", folder.path()});
    REQUIRE(desk.waitForReadyRead(30'000));
    QByteArray said;
    wait_until([&] { return false; }, moment_ms);
    desk.kill();  // SIGKILL
    desk.waitForFinished();
    said = desk.readAllStandardOutput();
    const int edits = said.trimmed().split('\n').last().toInt();
    REQUIRE(edits > 20);

    CaseDocument document(tables(), kToday);
    RecoveryStore store(document, folder.path());
    const auto lost = store.find_lost();
    REQUIRE(lost.size() == 1);
    REQUIRE(document.open(lost.front().text, {}, false));
    REQUIRE(document.read());
    CHECK(document.is_changed());
    const int kept = document.text_at("/label").mid(5).toInt();
    INFO("edits " << edits << ", kept " << kept);
    CHECK(kept > 0);
    CHECK(edits - kept <= kMostLost);
    // Well within: a copy is written two seconds after the first change since the last.
    CHECK(edits - kept <= 4 * kEdits_per_second);
    store.discard(lost.front());
    CHECK(store.find_lost().empty());
  }
}

TEST_CASE("the copy of a desk that runs is offered to nobody", "[document]") {
  const QTemporaryDir folder;
  CaseDocument document(tables(), kToday);
  RecoveryStore store(document, folder.path());
  document.set("/label", "mine", "label");
  REQUIRE(wait_until([&] { return store.last_copy().isValid(); }, 10'000));
  CaseDocument other(tables(), kToday);
  RecoveryStore other_store(other, folder.path());
  CHECK(other_store.find_lost().empty());
}

}  // namespace
}  // namespace endplate::ui
