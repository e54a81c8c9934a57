#include "models/evidence/data_package.hpp"

#include <fmt/format.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <stdexcept>

#include "models/evidence/csv.hpp"
#include "models/evidence/table_schema.hpp"

namespace endplate::evidence {
namespace {

Expected<std::string> read_file(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) {
    return std::unexpected(Error::internal({path.string(), "the file cannot be read",
                                            "Name the folder of the tables with --datasets."}));
  }
  std::ostringstream text;
  text << in.rdbuf();
  return std::move(text).str();
}

}  // namespace

Expected<DataPackage> DataPackage::read(const std::filesystem::path& directory) {
  const auto descriptor_text = read_file(directory / "datapackage.json");
  if (!descriptor_text) return std::unexpected(descriptor_text.error());
  const auto descriptor = nlohmann::json::parse(*descriptor_text, nullptr, false);
  if (descriptor.is_discarded() || !descriptor.contains("resources")) {
    return std::unexpected(Error::internal({(directory / "datapackage.json").string(),
                                            "this is not a data package descriptor",
                                            "Restore the file from a release."}));
  }

  DataPackage package;
  std::vector<Problem> problems;
  std::vector<TableSchema> schemas;
  for (const auto& resource : descriptor["resources"]) {
    const auto path = resource.at("path").get<std::string>();
    const auto text = read_file(directory / path);
    if (!text) return std::unexpected(text.error());
    auto csv = parse_csv(*text, path);
    if (!csv) {
      problems.insert(problems.end(), csv.error().problems.begin(), csv.error().problems.end());
      continue;
    }
    auto name = resource.at("name").get<std::string>();
    TableSchema schema(path, resource.at("schema"));
    schema.check(*csv, problems);
    schemas.push_back(std::move(schema));
    package.tables_.emplace(name, Table(name, std::move(csv->header), std::move(csv->cells),
                                        std::move(csv->lines)));
  }
  if (problems.empty()) {
    for (const TableSchema& schema : schemas) schema.check_foreign_keys(package.tables_, problems);
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return package;
}

const Table& DataPackage::table(std::string_view name) const {
  const auto found = tables_.find(name);
  if (found == tables_.end()) {
    throw std::out_of_range("the data package has no table " + std::string(name));
  }
  return found->second;
}

}  // namespace endplate::evidence
