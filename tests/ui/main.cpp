#define CATCH_CONFIG_RUNNER
#include <QStandardPaths>
#include <catch2/catch.hpp>
#include <cstring>
#include <string>

#include "tests/ui/busy_watch.hpp"
#include "tests/ui/edit_for_ever.hpp"
#include "ui/app/start.hpp"

int main(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);  // nothing of the user's is read or written
  if (argc == 4 && std::strcmp(argv[1], "--edit-for-ever") == 0) {
    return endplate::ui::edit_for_ever(argc, argv, argv[2],
                                       static_cast<unsigned>(std::stoul(argv[3])));
  }
  if (argc == 4 && std::strcmp(argv[1], "--edit-a-desk-for-ever") == 0) {
    return endplate::ui::edit_a_desk_for_ever(argc, argv, argv[2],
                                              static_cast<unsigned>(std::stoul(argv[3])));
  }
  endplate::ui::WatchedApplication application(argc, argv);
  endplate::ui::prepare(application);
  return Catch::Session().run(argc, argv);
}
