#include "tests/ui/edit_for_ever.hpp"

#include <QApplication>
#include <QTimer>
#include <cstdio>
#include <nlohmann/json.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/recovery_store.hpp"

namespace endplate::ui {

int edit_for_ever(const char* folder) {
  CaseDocument document(tables(), kToday);
  RecoveryStore store(document, folder);
  QTimer timer;
  int edit = 0;
  QObject::connect(&timer, &QTimer::timeout, &document, [&] {
    std::printf("%d\n", ++edit);
    std::fflush(stdout);
    document.set("/limb/age_years", 1 + edit % 100, "age");
    document.set("/label", "edit " + std::to_string(edit), "label");
  });
  timer.start(50);
  return QApplication::exec();
}

}  // namespace endplate::ui
