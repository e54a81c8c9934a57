// Changed example cases: the reader never crashes and never accepts a value of a wrong kind.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <sstream>

#include "models/casefile/read.hpp"

using namespace endplate::casefile;
using nlohmann::json;

namespace {

constexpr unsigned kSeed = 20260601;

struct Reader {
  endplate::evidence::DataPackage package =
      endplate::evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets").value();
  endplate::anatomy::Terms terms = endplate::anatomy::Terms::from(package).value();
  endplate::anatomy::NerveTree tree = endplate::anatomy::NerveTree::from(package).value();
  ReadRules rules{pose_limits(package), &tree, std::nullopt};

  endplate::Expected<Case> read(const std::string& text) const {
    return read_case(text, terms, rules);
  }
};

std::vector<std::string> examples() {
  std::vector<std::string> paths;
  for (const auto& entry :
       std::filesystem::directory_iterator(ENDPLATE_SOURCE_DIR "/datasets/cases")) {
    if (entry.path().extension() == ".json") paths.push_back(entry.path().string());
  }
  std::ranges::sort(paths);
  std::vector<std::string> texts;
  for (const std::string& path : paths) {
    std::ostringstream text;
    text << std::ifstream(path).rdbuf();
    texts.push_back(text.str());
  }
  return texts;
}

// Places of all values but the whole document.
std::vector<json::json_pointer> places_of(const json& document) {
  std::vector<json::json_pointer> places;
  const json flat = document.flatten();
  for (const auto& [pointer, value] : flat.items()) {
    json::json_pointer place(pointer);
    while (!place.empty()) {
      if (std::ranges::find(places, place) == places.end()) places.push_back(place);
      place = place.parent_pointer();
    }
  }
  return places;
}

bool well_formed(const endplate::Error& error) {
  return !error.problems.empty() && std::ranges::all_of(error.problems, [](const auto& problem) {
    return !problem.place.empty() && !problem.what.empty() && !problem.mend.empty() &&
           (problem.place + problem.what + problem.mend).find('\n') == std::string::npos;
  });
}

}  // namespace

TEST_CASE("flipped, dropped and doubled bytes are refused in words or read as another case",
          "[fuzz]") {
  const Reader reader;
  std::mt19937 random(kSeed);
  int refused = 0;
  for (const std::string& original : examples()) {
    for (int round = 0; round < 200; ++round) {
      std::string text = original;
      const int changes = 1 + static_cast<int>(random() % 3);
      for (int change = 0; change < changes; ++change) {
        const std::size_t at = random() % text.size();
        switch (random() % 4) {
          case 0:
            text[at] = static_cast<char>(random() % 256);
            break;
          case 1:
            text.erase(at, 1 + random() % 5);
            break;
          case 2:
            text.insert(at, text.substr(at, 1 + random() % 20));
            break;
          default:
            text.resize(at + 1);
        }
      }
      const auto answer = reader.read(text);
      CAPTURE(text);
      if (!answer) {
        ++refused;
        CHECK(well_formed(answer.error()));
      } else {
        // What is accepted is JSON with the version and nothing but known keys.
        const json document = json::parse(text, nullptr, false);
        REQUIRE(document.is_object());
        CHECK(document.value("endplate_case", 0.0) == 1.0);
      }
    }
  }
  CHECK(refused > 1500);
}

TEST_CASE("a value of a wrong kind is refused at its place", "[fuzz]") {
  const Reader reader;
  std::mt19937 random(kSeed);
  const std::vector<json> garbage = {nullptr,
                                     -1e12,
                                     1e12,
                                     "zzq xjk",
                                     "",
                                     json::object({{"zzq", 1}}),
                                     json::array({json::array()}),
                                     json::array({"zzq xjk"})};
  for (const std::string& original : examples()) {
    const json document = json::parse(original);
    const auto places = places_of(document);
    for (int round = 0; round < 50; ++round) {
      const json::json_pointer& place = places[random() % places.size()];
      if (place.to_string() == "/label") continue;  // any text is a label
      json changed = document;
      changed[place] = garbage[random() % garbage.size()];
      // Which points a nerve has the limb knows, not the reader.
      if (place.back() == "point" && changed[place] == "zzq xjk") continue;
      const std::string text = changed.dump();
      CAPTURE(place.to_string(), text);
      const auto answer = reader.read(text);
      REQUIRE_FALSE(answer);
      CHECK(well_formed(answer.error()));
      const std::string parent = place.parent_pointer().to_string();
      CHECK(std::ranges::any_of(answer.error().problems, [&](const auto& problem) {
        return problem.place.starts_with(parent);
      }));
    }
  }
}

TEST_CASE("a key that is taken away makes a value unknown or is missed by name", "[fuzz]") {
  const Reader reader;
  std::mt19937 random(kSeed);
  for (const std::string& original : examples()) {
    const json document = json::parse(original);
    const auto places = places_of(document);
    for (int round = 0; round < 40; ++round) {
      const json::json_pointer& place = places[random() % places.size()];
      json changed = document;
      json& parent = changed[place.parent_pointer()];
      if (!parent.is_object()) continue;
      parent.erase(place.back());
      CAPTURE(place.to_string());
      const auto answer = reader.read(changed.dump());
      if (!answer) CHECK(well_formed(answer.error()));
      if (place.to_string() == "/endplate_case") {
        REQUIRE_FALSE(answer);
        CHECK(answer.error().problems.front().place == "/endplate_case");
      }
    }
  }
}
