#include "command.hpp"

namespace endplate::cli {

void register_limb(Registry&) {}

}  // namespace endplate::cli
