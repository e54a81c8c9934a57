#pragma once
// A desk to try things on, and what the command line says of the same case.
#include <QString>
#include <QTemporaryDir>
#include <QWidget>
#include <chrono>
#include <functional>
#include <memory>
#include <nlohmann/json.hpp>
#include <string>

#include "models/casefile/case.hpp"
#include "ui/app/main_window.hpp"
#include "ui/document/case_tables.hpp"

namespace endplate::ui {

inline constexpr casefile::Date kToday{std::chrono::year(2026), std::chrono::month(10),
                                       std::chrono::day(1)};

std::shared_ptr<const CaseTables> tables();  // read once
QString example(const QString& name);        // path of an example case
std::string bytes_of(const QString& path);

// Lets the window work until `done` or the time is over; what `done` said last.
bool wait_until(const std::function<bool()>& done, int milliseconds = 120'000);

class DeskUnderTest {
 public:
  DeskUnderTest();
  MainWindow& window() { return *window_; }
  CaseDocument& document();
  AnswerRunner& answers();
  QString folder() const { return folder_.path(); }
  // Shows a question and waits until it is answered.
  Panel& ask(const QString& question);
  bool wait_idle();

  template <class T>
  T& find(const QString& question, const QString& name) {
    T* found = widget(question)->findChild<T*>(name);
    if (found == nullptr) throw std::runtime_error("no widget " + name.toStdString());
    return *found;
  }

 private:
  QWidget* widget(const QString& question);
  QTemporaryDir folder_;
  std::unique_ptr<MainWindow> window_;
};

// The JSON of a command about a case file.
nlohmann::json program_json(const QStringList& arguments);

}  // namespace endplate::ui
