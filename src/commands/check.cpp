#include "command.hpp"

namespace endplate::cli {

void register_check(Registry&) {}

}  // namespace endplate::cli
