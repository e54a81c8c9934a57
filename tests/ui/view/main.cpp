#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <catch2/catch.hpp>

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
