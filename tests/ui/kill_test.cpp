// Desks that are killed while they edit, copy and save, and what is found of them afterwards.
#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <map>
#include <memory>
#include <nlohmann/json.hpp>
#include <random>
#include <vector>

#include "tests/ui/desk_support.hpp"
#include "tests/ui/edit_for_ever.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/recovery_store.hpp"

namespace endplate::ui {
namespace {

constexpr int kAtATime = 8;
constexpr qint64 kMostLost_ms = 10'000;

// What a process said until it was killed.
struct Said {
  std::map<int, qint64> edits;  // number to moment
  int save_begun = 0;
  int saved = 0;

  explicit Said(const QByteArray& output) {
    for (const QByteArray& line : output.split('\n')) {
      const auto words = line.split(' ');
      // The last line may be cut off.
      if (words[0] == "edit" && words.size() == 3) edits[words[1].toInt()] = words[2].toLongLong();
      if (words[0] == "save") save_begun = words[1].toInt();
      if (words[0] == "saved") saved = words[1].toInt();
    }
  }
};

// One process, to be killed at its moment.
class Victim {
 public:
  // `in_save`: in a save, the first that begins after the moment; `whole`: with its window.
  Victim(unsigned seed, int moment_ms, bool in_save, bool whole)
      : moment_ms_(moment_ms), in_save_(in_save) {
    desk_.start(QCoreApplication::applicationFilePath(),
                {whole ? "--edit-a-desk-for-ever" : "--edit-for-ever", folder_.path(),
                 QString::number(seed)});
  }

  bool is_killed() const { return killed_ms_ != 0; }
  QString folder() const { return folder_.path(); }
  qint64 killed_ms() const { return killed_ms_; }
  Said said() const { return Said(output_); }

  // Kills it when it is time.
  void look() {
    const qsizetype before = output_.size();
    output_ += desk_.readAllStandardOutput();
    if (output_.isEmpty()) {
      // A start that takes so long is no start.
      REQUIRE(since_start_.elapsed() < 120'000);
      return;
    }
    if (!editing_.isValid()) editing_.start();
    if (editing_.elapsed() < moment_ms_) return;
    if (in_save_ && !output_.mid(std::max<qsizetype>(before - 4, 0)).contains("save ")) return;
    REQUIRE(desk_.state() == QProcess::Running);
    killed_ms_ = monotonic_ms();
    desk_.kill();  // SIGKILL
    desk_.waitForFinished();
    output_ += desk_.readAllStandardOutput();
  }

 private:
  QTemporaryDir folder_;
  QProcess desk_;
  int moment_ms_;
  bool in_save_;
  QElapsedTimer since_start_ = started();
  QElapsedTimer editing_;
  QByteArray output_;
  qint64 killed_ms_ = 0;

  static QElapsedTimer started() {
    QElapsedTimer clock;
    clock.start();
    return clock;
  }
};

struct Toll {
  int kills = 0;
  int in_save = 0;  // a save had begun and had not ended
  int copied = 0;   // a copy was found
  qint64 oldest_lost_ms = 0;
};

// The number of the edit that a text of a case holds; the text must be whole.
int edit_in(const std::string& text) {
  CaseDocument document(tables(), kToday);
  REQUIRE(document.open(text, {}, false));
  REQUIRE(document.read());
  CHECK(document.is_changed());
  const int edit = edit_of_label(document.text_at("/label"));
  CHECK(edit > 0);
  return edit;
}

int edit_in_file(const Victim& victim, const Said& said, Toll& toll) {
  const QString path = victim.folder() + "/case.json";
  toll.in_save += said.save_begun != said.saved ? 1 : 0;
  if (!QFile::exists(path)) {
    CHECK(said.saved == 0);
    return 0;
  }
  // The old file or the new one, whole.
  const int edit = edit_in(bytes_of(path));
  CHECK((edit == said.saved || edit == said.save_begun));
  return edit;
}

int edit_in_copy(const Victim& victim, Toll& toll) {
  const QString folder = victim.folder() + "/recovery";
  int edit = 0;
  {
    CaseDocument document(tables(), kToday);
    RecoveryStore store(document, folder);
    const auto lost = store.find_lost();
    CHECK(lost.size() <= 1);
    for (const LostCase& copy : lost) {
      edit = edit_in(copy.text);
      ++toll.copied;
      store.discard(copy);
    }
    CHECK(store.find_lost().empty());
  }
  // A copy that cannot be read would still be there.
  CHECK(QDir(folder).entryList(QDir::Files).isEmpty());
  return edit;
}

void judge(const Victim& victim, Toll& toll) {
  const Said said = victim.said();
  const int in_file = edit_in_file(victim, said, toll);
  const int kept = std::max(in_file, edit_in_copy(victim, toll));
  INFO("edits " << said.edits.rbegin()->first << ", kept " << kept);
  ++toll.kills;
  const auto first_lost = said.edits.find(kept + 1);
  if (first_lost == said.edits.end()) {
    CHECK(kept == said.edits.rbegin()->first);
    return;
  }
  const qint64 lost_ms = victim.killed_ms() - first_lost->second;
  CHECK(lost_ms <= kMostLost_ms);
  toll.oldest_lost_ms = std::max(toll.oldest_lost_ms, lost_ms);
}

// Half of the kills at any moment, half in a save; one desk of five with its window.
Toll kill(int how_many, unsigned seed) {
  std::mt19937 chance(seed);
  std::uniform_int_distribution<int> moment_ms(300, 7000);
  Toll toll;
  std::vector<std::unique_ptr<Victim>> running;
  int begun = 0;
  while (begun < how_many || !running.empty()) {
    while (begun < how_many && running.size() < kAtATime) {
      const int moment = moment_ms(chance);
      running.push_back(std::make_unique<Victim>(seed + static_cast<unsigned>(begun), moment,
                                                 begun % 2 == 1, begun % 5 == 0));
      ++begun;
    }
    wait_until([] { return false; }, 1);
    for (const auto& victim : running) victim->look();
    std::erase_if(running, [&](const auto& victim) {
      if (!victim->is_killed()) return false;
      judge(*victim, toll);
      return true;
    });
  }
  WARN(toll.kills << " kills, " << toll.in_save << " of them in a save, " << toll.copied
                  << " copies found; the oldest edit lost was " << toll.oldest_lost_ms
                  << " ms old");
  return toll;
}

}  // namespace

TEST_CASE("a desk that is killed loses nothing older than ten seconds", "[document]") {
  const Toll toll = kill(5, 1);
  CHECK(toll.kills == 5);
}

TEST_CASE("of a hundred desks killed at any moment none loses what is older than ten seconds",
          "[.kill]") {
  const Toll toll = kill(100, 1000);
  CHECK(toll.kills == 100);
  // Else nothing of the kind was tried.
  CHECK(toll.copied > 20);
  CHECK(toll.in_save > 10);
  CHECK(toll.oldest_lost_ms > 0);
}

}  // namespace endplate::ui
