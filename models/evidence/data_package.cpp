#include "models/evidence/data_package.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <set>
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
  in.seekg(0, std::ios::end);
  std::string text(static_cast<std::size_t>(in.tellg()), '\0');
  in.seekg(0);
  in.read(text.data(), static_cast<std::streamsize>(text.size()));
  return text;
}

// A table without a schema would be read by nobody or unchecked.
void add_unlisted_tables(const std::filesystem::path& directory,
                         const std::set<std::string>& listed, std::vector<Problem>& problems) {
  std::vector<std::string> unlisted;
  for (const auto& entry : std::filesystem::directory_iterator(directory)) {
    const auto name = entry.path().filename().string();
    if (entry.path().extension() == ".csv" && !listed.contains(name)) unlisted.push_back(name);
  }
  std::ranges::sort(unlisted);
  for (const std::string& name : unlisted) {
    problems.push_back({name, "the table has no schema in datapackage.json",
                        "Describe it there or move it out of the folder."});
  }
}

}  // namespace

Expected<DataPackage> DataPackage::read(const std::filesystem::path& directory) {
  const auto descriptor_text = read_file(directory / "datapackage.json");
  if (!descriptor_text) return std::unexpected(descriptor_text.error());
  const auto descriptor = nlohmann::json::parse(*descriptor_text, nullptr, false);
  if (descriptor.is_discarded() || !descriptor.is_object() ||
      !descriptor.value("resources", nlohmann::json()).is_array()) {
    return std::unexpected(Error::internal({(directory / "datapackage.json").string(),
                                            "this is not a data package descriptor",
                                            "Restore the file from a release."}));
  }

  DataPackage package;
  std::vector<Problem> problems;
  std::vector<std::pair<TableSchema, std::string>> schemas;  // with the name of the table
  std::set<std::string> listed;
  for (const auto& resource : descriptor["resources"]) {
    try {
      const auto path = resource.at("path").get<std::string>();
      auto name = resource.at("name").get<std::string>();
      listed.insert(path);
      TableSchema schema(path, resource.at("schema"));
      const auto text = read_file(directory / path);
      if (!text) return std::unexpected(text.error());
      auto csv = parse_csv(*text, path);
      if (!csv) {
        std::ranges::move(csv.error().problems, std::back_inserter(problems));
        continue;
      }
      schema.check(*csv, problems);
      package.tables_.emplace(
          name, Table(name, std::move(csv->header), std::move(csv->cells), std::move(csv->lines)));
      schemas.emplace_back(std::move(schema), std::move(name));
    } catch (const std::exception& fault) {  // of the descriptor: a key is missing or misused
      problems.push_back({fmt::format("datapackage.json, resource {}", resource.value("name", "?")),
                          fault.what(), "Restore the file from a release."});
    }
  }
  add_unlisted_tables(directory, listed, problems);
  if (problems.empty()) {
    for (const auto& [schema, name] : schemas) {
      schema.check_foreign_keys(package.tables_.at(name), package.tables_, problems);
    }
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
