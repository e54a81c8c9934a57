// One broken table a defect: fixtures/broken_tables/defects, with the expected place and words in
// expected.csv. Each stands in for points.csv of the small package beside it.
#include <unistd.h>

#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "models/evidence/csv.hpp"
#include "models/evidence/data_package.hpp"

namespace {

namespace fs = std::filesystem;
using endplate::evidence::DataPackage;

const fs::path kFixtures = fs::path(ENDPLATE_SOURCE_DIR) / "tests/fixtures/broken_tables";

std::string text_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

void write(const fs::path& path, const std::string& text) {
  std::ofstream(path, std::ios::binary) << text;
}

std::string replaced(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return fmt::format("{}{}{}", text.substr(0, at), to, text.substr(at + from.size()));
}

// A folder of its own that goes away with the test.
struct Folder {
  fs::path path;
  explicit Folder(const std::string& name)
      : path(fs::temp_directory_path() / fmt::format("endplate_{}_{}", name, getpid())) {
    fs::create_directories(path);
    for (const char* file : {"datapackage.json", "nerves.csv", "points.csv"}) {
      fs::copy_file(kFixtures / file, path / file, fs::copy_options::overwrite_existing);
    }
  }
  ~Folder() { fs::remove_all(path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
};

}  // namespace

TEST_CASE("the package that the broken tables are made from is sound", "[evidence]") {
  const Folder folder("sound");
  CHECK(DataPackage::read(folder.path).has_value());
}

TEST_CASE("each kind of defect in a table is reported with file, row and column", "[evidence]") {
  const auto expected =
      endplate::evidence::parse_csv(text_of(kFixtures / "expected.csv"), "expected");
  REQUIRE(expected);
  REQUIRE(expected->lines.size() >= 40);
  for (std::size_t i = 0; i < expected->lines.size(); ++i) {
    const auto cell = [&](std::size_t column) {
      return std::string(expected->cells[4 * i + column]);
    };
    DYNAMIC_SECTION(cell(0)) {
      const Folder folder(cell(0));
      fs::copy_file(kFixtures / "defects" / fmt::format("{}.csv", cell(0)),
                    folder.path / "points.csv", fs::copy_options::overwrite_existing);
      const auto package = DataPackage::read(folder.path);
      REQUIRE_FALSE(package.has_value());
      REQUIRE(package.error().problems.size() == 1);
      const auto& problem = package.error().problems.front();
      const std::string column = cell(2).empty() ? cell(2) : fmt::format(", column {}", cell(2));
      CHECK(problem.place == fmt::format("points.csv, row {}{}", cell(1), column));
      CHECK_THAT(problem.what, Catch::Contains(cell(3), Catch::CaseSensitive::No));
      CHECK_FALSE(problem.mend.empty());
    }
  }
}

TEST_CASE("every broken table has its expectation", "[evidence]") {
  const std::string expected = text_of(kFixtures / "expected.csv");
  for (const auto& file : fs::directory_iterator(kFixtures / "defects")) {
    CHECK_THAT(expected, Catch::Contains(fmt::format("\n{},", file.path().stem().string())));
  }
}

TEST_CASE("all defects of a table are reported at once", "[evidence]") {
  const Folder folder("several");
  std::string text = text_of(folder.path / "points.csv");
  text = replaced(replaced(text, "read", "seen"), ",97,", ",x,");
  write(folder.path / "points.csv", text);
  const auto package = DataPackage::read(folder.path);
  REQUIRE_FALSE(package.has_value());
  CHECK(package.error().problems.size() == 2);
}

TEST_CASE("a missing, an undescribed or a misdescribed table is an error", "[evidence]") {
  const auto first_problem = [](const fs::path& path) {
    const auto package = DataPackage::read(path);
    REQUIRE_FALSE(package.has_value());
    return package.error().problems.front();
  };
  SECTION("a listed file is missing") {
    const Folder folder("missing");
    fs::remove(folder.path / "nerves.csv");
    CHECK_THAT(first_problem(folder.path).place, Catch::EndsWith("nerves.csv"));
  }
  SECTION("a file is not listed") {
    const Folder folder("unlisted");
    write(folder.path / "extra.csv", "id\na\n");
    CHECK(first_problem(folder.path).place == "extra.csv");
    CHECK_THAT(first_problem(folder.path).what, Catch::Contains("no schema"));
  }
  SECTION("the descriptor is missing") {
    const Folder folder("bare");
    fs::remove(folder.path / "datapackage.json");
    CHECK_THAT(first_problem(folder.path).place, Catch::EndsWith("datapackage.json"));
  }
  SECTION("the descriptor is no JSON") {
    const Folder folder("garbled");
    write(folder.path / "datapackage.json", "{");
    CHECK_THAT(first_problem(folder.path).what, Catch::Contains("not a data package"));
  }
  const auto with_change = [&](const std::string& from, const std::string& to) {
    const Folder folder("descriptor");
    const fs::path file = folder.path / "datapackage.json";
    write(file, replaced(text_of(file), from, to));
    return first_problem(folder.path);
  };
  SECTION("a field type is unknown") {
    const auto problem = with_change("\"type\": \"integer\"", "\"type\": \"whole\"");
    CHECK(problem.place == "datapackage.json, resource points");
    CHECK_THAT(problem.what, Catch::Contains("type of field n"));
  }
  SECTION("an order names an unknown column") {
    CHECK_THAT(with_change("[\"count\", \"n\"]", "[\"count\", \"m\"]").what,
               Catch::Contains("no field m"));
  }
  SECTION("a resource has no path") {
    CHECK(with_change("\"path\": \"points.csv\"", "\"file\": \"points.csv\"").place ==
          "datapackage.json, resource points");
  }
  SECTION("a foreign key names an unknown table") {
    CHECK_THAT(with_change("\"resource\": \"nerves\", \"fields\": \"nerve\"",
                           "\"resource\": \"nerv\", \"fields\": \"nerve\"")
                   .what,
               Catch::Contains("table nerv"));
  }
}
