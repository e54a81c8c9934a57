// What the shipped tables promise beyond their schemas.
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "models/evidence/data_package.hpp"

namespace {

nlohmann::json descriptor() {
  std::ifstream in(ENDPLATE_SOURCE_DIR "/datasets/datapackage.json");
  return nlohmann::json::parse(in);
}

const endplate::evidence::DataPackage& shipped() {
  static const auto package =
      endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package.has_value());
  return *package;
}

}  // namespace

TEST_CASE("every field of every table is described, and a measured one has its unit",
          "[evidence]") {
  const std::set<std::string> bare{"side_order", "order_in_nerve", "ta2_id", "fma_id"};
  for (const auto& resource : descriptor()["resources"]) {
    for (const auto& field : resource["schema"]["fields"]) {
      INFO(resource["name"] << " " << field["name"]);
      CHECK_FALSE(field.value("description", "").empty());
      const std::string type = field["type"];
      if (type != "number" && type != "integer") continue;
      if (bare.contains(field["name"].get<std::string>())) continue;
      CHECK_FALSE(field.value("unit", "").empty());
    }
  }
}

TEST_CASE("a share is a fraction in every table", "[evidence]") {
  for (const auto& resource : descriptor()["resources"]) {
    for (const auto& field : resource["schema"]["fields"]) {
      const std::string name = field["name"];
      if (name.find("_fraction") == std::string::npos) continue;
      INFO(resource["name"] << " " << name);
      CHECK(field["unit"] == "fraction");
      CHECK(field["constraints"]["maximum"] == 1);
    }
  }
}

TEST_CASE("every row with a source has a provenance, and a published one its study", "[evidence]") {
  for (const auto& [name, table] : shipped().tables()) {
    if (!table.has_column("source")) continue;
    CAPTURE(name);
    REQUIRE(table.has_column("provenance"));
    // Tables of rules and names cite common practice or other tables, not a paper of their own.
    if (table.has_column("doi_or_pmid")) REQUIRE(table.has_column("study"));
    for (const auto row : table) {
      CHECK_FALSE(row.text("provenance").empty());
      if (table.has_column("study")) CHECK_FALSE(row.text("study").empty());
    }
  }
}

TEST_CASE("one digital object identifier is one study", "[evidence]") {
  std::map<std::string, std::string> study_of;
  for (const auto& [name, table] : shipped().tables()) {
    if (!table.has_column("doi_or_pmid") || !table.has_column("study")) continue;
    for (const auto row : table) {
      std::string cell(row.text("doi_or_pmid"));
      for (char& c : cell) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
      if (!cell.starts_with("10.")) continue;
      const std::string doi = cell.substr(0, cell.find_first_of("; "));
      const auto [found, added] = study_of.emplace(doi, row.text("study"));
      INFO(doi << " in " << name);
      CHECK(found->second == row.text("study"));
    }
  }
  CHECK(study_of.size() > 200);
}

TEST_CASE("studies whose authors are not shown are not taken for one", "[evidence]") {
  std::map<std::string, std::set<std::string>> sources;
  for (const auto row : shipped().table("landmark_distances")) {
    CHECK(row.text("study").find("not shown") == std::string_view::npos);
    if (row.text("source").starts_with("Authors not shown")) {
      sources[std::string(row.text("study"))].insert(std::string(row.text("source")));
    }
  }
  CHECK(sources.size() > 30);
  for (const auto& [study, texts] : sources) {
    INFO(study);
    CHECK(texts.size() == 1);
  }
}
