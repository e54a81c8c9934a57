#define CATCH_CONFIG_RUNNER
#include <QStandardPaths>
#include <catch2/catch.hpp>
#include <cstring>

#include "tests/ui/busy_watch.hpp"
#include "tests/ui/edit_for_ever.hpp"
#include "ui/app/start.hpp"

int main(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);  // nothing of the user's is read or written
  endplate::ui::WatchedApplication application(argc, argv);
  endplate::ui::prepare(application);
  if (argc == 3 && std::strcmp(argv[1], "--edit-for-ever") == 0) {
    return endplate::ui::edit_for_ever(argv[2]);
  }
  return Catch::Session().run(argc, argv);
}
