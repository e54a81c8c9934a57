#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QSemaphore>
#include <QSysInfo>
#include <QTemporaryDir>
#include <QThread>
#include <QUndoStack>
#include <atomic>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/findings.hpp"
#include "ui/document/recovery_store.hpp"
#include "ui/words/words.hpp"

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

// Saving stays on the interface thread, for it is over before a hand has left the key.
TEST_CASE("the largest case is saved in a moment", "[document]") {
  const QTemporaryDir folder;
  const QString path = folder.path() + "/case.json";
  CaseDocument document(tables(), kToday);
  document.set("/label", std::string(990'000, 'x'), "label");
  QElapsedTimer clock;
  clock.start();
  REQUIRE(write_bytes(path, document.text()));
  document.saved_as(path);
  const qint64 took_ms = clock.elapsed();
  WARN("a case of " << QFileInfo(path).size() << " bytes was saved in " << took_ms << " ms");
  CHECK(took_ms < 300);
  CHECK(bytes_of(path) == document.text());
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

// A disk that takes its time: every writing waits to be let go.
struct SlowDisk {
  std::atomic<int> begun = 0;
  std::atomic<bool> full = false;
  std::atomic<QThread*> thread = nullptr;
  QSemaphore let_go;

  RecoveryStore::Write writer() {
    return [this](const QString& path, const std::string& bytes) -> Expected<void> {
      thread = QThread::currentThread();
      ++begun;
      let_go.acquire();
      if (full) return std::unexpected(Error::input({"disk", "it is full", "Make room."}));
      return write_bytes(path, bytes);
    };
  }
};

int copies_in(const QString& folder) {
  return static_cast<int>(QDir(folder).entryList({"*.copy"}, QDir::Files).size());
}

TEST_CASE("a slow disk does not hold up who edits, and the newest edit is copied", "[document]") {
  const QTemporaryDir folder;
  SlowDisk disk;
  CaseDocument document(tables(), kToday);
  RecoveryStore store(document, folder.path(), nullptr, disk.writer());
  document.set("/label", "first", "label");
  REQUIRE(wait_until([&] { return disk.begun == 1; }, 10'000));
  CHECK(disk.thread != QThread::currentThread());
  // The next copy is due while the first is still written: it comes after it, with what is newest.
  document.set("/label", "second", "label");
  wait_until([] { return false; }, RecoveryStore::kDelay_ms + 500);
  document.set("/label", "third", "label");
  CHECK(disk.begun == 1);
  CHECK_FALSE(store.last_copy().isValid());
  disk.let_go.release();
  REQUIRE(wait_until([&] { return disk.begun == 2; }, 10'000));
  CHECK(store.last_copy().isValid());
  disk.let_go.release(2);
  REQUIRE(wait_until(
      [&] {
        const QStringList copies = QDir(folder.path()).entryList({"*.copy"}, QDir::Files);
        return bytes_of(folder.path() + '/' + copies.front()).find("third") != std::string::npos;
      },
      10'000));
}

TEST_CASE("a case that is saved while its copy is written leaves no copy", "[document]") {
  const QTemporaryDir folder;
  SlowDisk disk;
  CaseDocument document(tables(), kToday);
  RecoveryStore store(document, folder.path(), nullptr, disk.writer());
  document.set("/label", "mine", "label");
  REQUIRE(wait_until([&] { return disk.begun == 1; }, 10'000));
  document.saved_as(folder.path() + "/case.json");
  disk.let_go.release();
  wait_until([] { return false; }, 500);
  CHECK(copies_in(folder.path()) == 0);
  CHECK_FALSE(store.last_copy().isValid());
  // And the next change makes one again.
  document.set("/label", "mine again", "label");
  REQUIRE(wait_until([&] { return disk.begun == 2; }, 10'000));
  disk.let_go.release();
  CHECK(wait_until([&] { return store.last_copy().isValid(); }, 10'000));
  CHECK(copies_in(folder.path()) == 1);
}

TEST_CASE("a copy that cannot be written is told, and tried again", "[document]") {
  const QTemporaryDir folder;
  SlowDisk disk;
  disk.full = true;
  CaseDocument document(tables(), kToday);
  RecoveryStore store(document, folder.path(), nullptr, disk.writer());
  QString why;
  QObject::connect(&store, &RecoveryStore::failed, &store,
                   [&](const QString& words) { why = words; });
  document.set("/label", "mine", "label");
  disk.let_go.release(10);
  REQUIRE(wait_until([&] { return !why.isEmpty(); }, 10'000));
  CHECK(why == "it is full");
  CHECK_FALSE(store.last_copy().isValid());
  disk.full = false;
  CHECK(wait_until([&] { return store.last_copy().isValid(); }, 10'000));
}

TEST_CASE("what killed desks left is cleared, and what a desk holds is not", "[document]") {
  const QTemporaryDir folder;
  const QString path = folder.path() + '/';
  CaseDocument document(tables(), kToday);
  const RecoveryStore running(document, folder.path());
  const QStringList held = QDir(folder.path()).entryList(QDir::Files);
  REQUIRE(held.size() == 1);
  // As QLockFile writes it: process, program, machine. No process has the number 0x7ffffff0.
  const std::string dead = "2147483632\ngone\n" + plain(QSysInfo::machineHostName()) + '\n';
  REQUIRE(write_bytes(path + "a.copy.lock", dead));
  REQUIRE(write_bytes(path + "b.copy.lock", dead));
  REQUIRE(write_bytes(path + "b.copy.Ab12Cd", "{\"case\": \"half of"));
  REQUIRE(write_bytes(path + "c.copy.lock", dead));
  REQUIRE(write_bytes(path + "c.copy", R"({"case": "{}", "label": "lost"})"));
  CaseDocument other(tables(), kToday);
  {
    RecoveryStore store(other, folder.path());
    const QStringList left = QDir(folder.path()).entryList(QDir::Files);
    CHECK(left.size() == 4);  // the locks of both desks, the lost case and its lock
    CHECK(left.contains(held.front()));
    CHECK(left.contains("c.copy"));
    const auto lost = store.find_lost();
    REQUIRE(lost.size() == 1);
    CHECK(lost.front().label == "lost");
    store.discard(lost.front());
  }
  CHECK(QDir(folder.path()).entryList(QDir::Files) == held);
}

}  // namespace
}  // namespace endplate::ui
