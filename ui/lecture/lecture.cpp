#include "ui/lecture/lecture.hpp"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

#include "models/casefile/json_text.hpp"
#include "ui/app/words.hpp"

namespace endplate::ui {
namespace {

using Plain = nlohmann::json;

constexpr std::array kLayers{"skin", "bones", "muscles", "nerves", "landmarks", "entries"};
constexpr std::array kViews{"anterior", "posterior", "medial", "lateral"};
constexpr std::array kStepKeys{"title", "text", "layers", "nerves", "view", "supply"};

class Reader {
 public:
  explicit Reader(const anatomy::NerveTree& tree) : tree_(tree) {}

  void add(const std::string& place, const std::string& what, const std::string& mend) {
    problems.push_back({place, what, mend});
  }

  QString text(const Plain& of, const char* key, const std::string& place, bool required) {
    if (!of.contains(key)) {
      if (required) add(place, std::string(key) + " is missing", "Give it as a text.");
      return {};
    }
    if (!of[key].is_string()) {
      add(place + '/' + key, "this is no text", "Write it in quotes.");
      return {};
    }
    return text_of(of[key].get<std::string>());
  }

  std::vector<std::string> names(const Plain& of, const char* key, const std::string& place) {
    std::vector<std::string> list;
    if (!of.contains(key)) return list;
    if (!of[key].is_array()) {
      add(place + '/' + key, "this is no list", "Write names in square brackets.");
      return list;
    }
    for (const Plain& name : of[key]) {
      if (name.is_string()) list.push_back(name);
    }
    return list;
  }

  LectureStep step(const Plain& of, const std::string& place) {
    LectureStep read;
    if (!of.is_object()) {
      add(place, "a step is an object", "Write { \"title\": ..., \"text\": ... }.");
      return read;
    }
    for (const auto& [key, value] : of.items()) {
      if (std::ranges::find(kStepKeys, key) == kStepKeys.end()) {
        add(casefile::pointer_to(place, key), "no step has this key", "Delete it.");
      }
    }
    read.title = text(of, "title", place, true);
    read.text = text(of, "text", place, false);
    read.layers = names(of, "layers", place);
    read.nerves = names(of, "nerves", place);
    for (const std::string& layer : read.layers) {
      if (std::ranges::find(kLayers, layer) == kLayers.end()) {
        add(place + "/layers", layer + " is no layer",
            "Write skin, bones, muscles, nerves, landmarks or entries.");
      }
    }
    for (const std::string& nerve : read.nerves) {
      if (!tree_.find(nerve)) {
        add(place + "/nerves", nerve + " is no nerve of the tables",
            "Write the standard name, such as radial nerve.");
      }
    }
    read.view = plain(text(of, "view", place, false));
    if (!read.view.empty() && std::ranges::find(kViews, read.view) == kViews.end()) {
      add(place + "/view", read.view + " is no view",
          "Write anterior, posterior, medial or lateral.");
    }
    read.supply = of.value("supply", false);
    return read;
  }

  std::vector<Problem> problems;

 private:
  const anatomy::NerveTree& tree_;
};

}  // namespace

Expected<Lecture> read_lecture(std::string_view text, const anatomy::NerveTree& tree) {
  Reader reader(tree);
  const auto parsed = casefile::parse_json_text(text, reader.problems);
  if (!parsed) return std::unexpected(parsed.error());
  Lecture lecture;
  if (!parsed->is_object() || !parsed->contains("endplate_lecture")) {
    return std::unexpected(
        Error::input({"lecture", "this is no lecture", "Begin with { \"endplate_lecture\": 1."}));
  }
  lecture.title = reader.text(*parsed, "title", "", true);
  if (!parsed->contains("steps") || !(*parsed)["steps"].is_array() || (*parsed)["steps"].empty()) {
    reader.add("/steps", "there are no steps", "List at least one step.");
  } else {
    std::size_t at = 0;
    for (const Plain& step : (*parsed)["steps"]) {
      lecture.steps.push_back(reader.step(step, "/steps/" + std::to_string(at++)));
    }
  }
  if (!reader.problems.empty()) {
    return std::unexpected(Error{Fault::input, std::move(reader.problems)});
  }
  return lecture;
}

NerveSupply supply_of(const anatomy::Anatomy& anatomy, const std::vector<std::string>& nerves) {
  std::vector<anatomy::NodeIndex> below;
  for (const std::string& nerve : nerves) {
    if (const auto at = anatomy.tree().find(nerve)) {
      const auto more = anatomy.tree().descendants(*at);
      below.insert(below.end(), more.begin(), more.end());
    }
  }
  const auto is_below = [&](anatomy::NodeIndex node) {
    return std::ranges::find(below, node) != below.end();
  };
  NerveSupply supply;
  for (const anatomy::Muscle& muscle : anatomy.muscles()) {
    if (is_below(muscle.branch)) supply.muscles.push_back(muscle.id);
  }
  for (const anatomy::SkinArea& area : anatomy.areas()) {
    if (std::ranges::any_of(area.branches, is_below)) supply.areas.push_back(area.name);
  }
  return supply;
}

}  // namespace endplate::ui
