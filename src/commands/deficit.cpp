#include "command.hpp"

namespace endplate::cli {

void register_deficit(Registry&) {}

}  // namespace endplate::cli
