#include "paths.hpp"

#include "models/evidence/datasets_folder.hpp"

namespace endplate::cli {

std::filesystem::path default_datasets() {
  return evidence::datasets_folder(ENDPLATE_INSTALLED_DATASETS, ENDPLATE_SOURCE_DATASETS);
}

}  // namespace endplate::cli
