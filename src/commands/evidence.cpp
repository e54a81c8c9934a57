#include "command.hpp"

namespace endplate::cli {

void register_evidence(Registry&) {}

}  // namespace endplate::cli
