#pragma once
#include <filesystem>

namespace endplate::evidence {

// The evidence tables beside the installed program, else those of the source tree it was built in.
// `installed` counts from the prefix, the folder above that of the program ("share/endplate").
std::filesystem::path datasets_folder(const std::filesystem::path& installed,
                                      const std::filesystem::path& of_source_tree);

}  // namespace endplate::evidence
