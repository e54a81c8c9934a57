#include "tests/ui/desk_support.hpp"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QThread>
#include <stdexcept>

#include "ui/answers/answer_runner.hpp"
#include "ui/panels/panel.hpp"

namespace endplate::ui {

std::shared_ptr<const CaseTables> tables() {
  static const auto read = CaseTables::from(ENDPLATE_SOURCE_DIR "/datasets");
  if (!read) throw std::runtime_error("the tables cannot be read");
  return *read;
}

QString example(const QString& name) {
  return QString(ENDPLATE_SOURCE_DIR "/datasets/cases/%1.json").arg(name);
}

std::string bytes_of(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    throw std::runtime_error("cannot read " + path.toStdString());
  return file.readAll().toStdString();
}

bool wait_until(const std::function<bool()>& done, int milliseconds) {
  QElapsedTimer clock;
  clock.start();
  while (!done() && clock.elapsed() < milliseconds) {
    QApplication::processEvents(QEventLoop::AllEvents, 20);
    QThread::msleep(2);
  }
  return done();
}

DeskUnderTest::DeskUnderTest()
    : window_(std::make_unique<MainWindow>(tables(), kToday, folder_.path())) {
  window_->resize(1280, 800);
  window_->show();
}

CaseDocument& DeskUnderTest::document() {
  return window_->desk().document;
}

AnswerRunner& DeskUnderTest::answers() {
  return window_->desk().answers;
}

QWidget* DeskUnderTest::widget(const QString& question) {
  return window_->panel(question);
}

bool DeskUnderTest::wait_idle() {
  return wait_until([&] { return answers().is_idle(); });
}

Panel& DeskUnderTest::ask(const QString& question) {
  window_->show_question(question);
  if (!wait_idle()) throw std::runtime_error("no answer to " + question.toStdString());
  QApplication::processEvents();
  return *window_->panel(question);
}

nlohmann::json program_json(const QStringList& arguments) {
  QProcess program;
  program.start(ENDPLATE_PROGRAM, QStringList(arguments) << "--json"
                                                         << "--quiet");
  program.waitForFinished(180'000);
  const std::string text = program.readAllStandardOutput().toStdString();
  if (program.exitCode() != 0) {
    throw std::runtime_error(program.readAllStandardError().toStdString());
  }
  return nlohmann::json::parse(text);
}

}  // namespace endplate::ui
