#include "command.hpp"

namespace endplate::cli {

void register_recovery(Registry&) {}

}  // namespace endplate::cli
