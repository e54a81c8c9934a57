#include <iostream>

#include "program.hpp"

int main(int argc, char** argv) {
  std::ios::sync_with_stdio(false);
  return endplate::cli::run_program(argc, argv, std::cout, std::cerr);
}
