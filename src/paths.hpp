#pragma once
#include <filesystem>

namespace endplate::cli {

// The evidence tables beside the installed program, else those of the source tree it was built in.
std::filesystem::path default_datasets();

}  // namespace endplate::cli
