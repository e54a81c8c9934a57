#include "models/evidence/data_package.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>
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

Expected<nlohmann::json> read_descriptor(const std::filesystem::path& directory) {
  const auto text = read_file(directory / "datapackage.json");
  if (!text) return std::unexpected(text.error());
  auto descriptor = nlohmann::json::parse(*text, nullptr, false);
  if (descriptor.is_discarded() || !descriptor.is_object() ||
      !descriptor.value("resources", nlohmann::json()).is_array()) {
    return std::unexpected(Error::internal({(directory / "datapackage.json").string(),
                                            "this is not a data package descriptor",
                                            "Restore the file from a release."}));
  }
  return descriptor;
}

// One resource of the descriptor, checked in itself.
struct Loaded {
  std::string path;
  std::string name;
  std::optional<TableSchema> schema;
  std::optional<Table> table;  // nothing when the file cannot be read as a table
  std::vector<Problem> problems;
};

Loaded load(const std::filesystem::path& directory, const nlohmann::json& resource) {
  Loaded result;
  try {
    result.path = resource.at("path").get<std::string>();
    result.name = resource.at("name").get<std::string>();
    result.schema.emplace(result.path, resource.at("schema"));
    const auto text = read_file(directory / result.path);
    auto csv = text ? parse_csv(*text, result.path) : std::unexpected(text.error());
    if (!csv) {
      result.problems = csv.error().problems;
      return result;
    }
    result.schema->check(*csv, result.problems);
    result.table.emplace(result.name, std::move(csv->header), std::move(csv->cells),
                         std::move(csv->lines));
  } catch (const std::exception& fault) {  // of the descriptor: a key is missing or misused
    result.problems.push_back(
        {fmt::format("datapackage.json, resource {}", resource.value("name", "?")), fault.what(),
         "Restore the file from a release."});
  }
  return result;
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
  const auto descriptor = read_descriptor(directory);
  if (!descriptor) return std::unexpected(descriptor.error());

  // The tables do not know of each other yet, so they are read side by side; what they report is
  // put together in the order of the descriptor.
  const auto& resources = (*descriptor)["resources"];
  std::vector<Loaded> loaded(resources.size());
  tbb::parallel_for(std::size_t{0}, resources.size(),
                    [&](std::size_t i) { loaded[i] = load(directory, resources[i]); });

  DataPackage package;
  std::vector<Problem> problems;
  std::set<std::string> listed;
  for (Loaded& one : loaded) {
    listed.insert(one.path);
    std::ranges::move(one.problems, std::back_inserter(problems));
    if (one.table) package.tables_.emplace(one.table->name(), std::move(*one.table));
  }
  add_unlisted_tables(directory, listed, problems);
  if (problems.empty()) {
    for (const Loaded& one : loaded) {
      one.schema->check_foreign_keys(package.tables_.at(one.name), package.tables_, problems);
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
