#include "ui/document/case_tables.hpp"

#include <utility>

namespace endplate::ui {

Expected<std::shared_ptr<const CaseTables>> CaseTables::from(const std::filesystem::path& folder) {
  auto package = evidence::DataPackage::read(folder);
  if (!package) return std::unexpected(package.error());
  auto terms = anatomy::Terms::from(*package);
  if (!terms) return std::unexpected(terms.error());
  auto anatomy = anatomy::Anatomy::from(*package);
  if (!anatomy) return std::unexpected(anatomy.error());
  auto pose = casefile::pose_limits(*package);
  return std::make_shared<const CaseTables>(CaseTables{
      folder, std::move(*package), std::move(*terms), std::move(*anatomy), std::move(pose)});
}

Expected<casefile::Case> CaseTables::read(std::string_view text, casefile::Date today) const {
  return casefile::read_patient(text, terms, {pose, &anatomy.tree(), today});
}

}  // namespace endplate::ui
