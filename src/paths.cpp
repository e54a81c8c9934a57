#include "paths.hpp"

namespace endplate::cli {

std::filesystem::path default_datasets() {
  std::error_code ignored;
  const auto program = std::filesystem::read_symlink("/proc/self/exe", ignored);
  if (!program.empty()) {
    const auto installed =
        program.parent_path().parent_path() / std::filesystem::path(ENDPLATE_INSTALLED_DATASETS);
    if (std::filesystem::exists(installed / "datapackage.json", ignored)) return installed;
  }
  return ENDPLATE_SOURCE_DATASETS;
}

}  // namespace endplate::cli
