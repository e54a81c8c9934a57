#include "command.hpp"

namespace endplate::cli {

void register_distance(Registry&) {}

}  // namespace endplate::cli
