#include <fmt/format.h>

#include "models/casefile/json_text.hpp"
#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

constexpr double kLongestOffset_mm = 1000.0;
constexpr double kLongestBranch_mm = 1500.0;
constexpr std::array<std::string_view, 5> kPlaceKeys{"landmark", "root", "trunk", "cord", "branch"};
constexpr std::string_view kWaysToPlace =
    "Give a landmark with offset_mm and toward, or a root, trunk, cord or branch.";

std::optional<AtRoot> read_root(ObjectReader& object) {
  const auto root = object.word("root", kRoots);
  const auto level = object.word("level", kRootLevels);
  if (!root) return std::nullopt;
  AtRoot at{std::string(word_of(kRoots, *root)), level.value_or(RootLevel::postganglionic)};
  if (!object.has("level")) {
    object.reading().assumptions.push_back(fmt::format(
        "whether {} is injured proximal or distal to its ganglion ({}/level) is not given; taken "
        "as postganglionic",
        at.root, object.place()));
  }
  return at;
}

std::optional<AtBranch> read_branch(ObjectReader& object) {
  auto branch = object.term("branch", anatomy::TermKind::nerve);
  const auto from_origin_mm = object.number("from_origin_mm", 0.0, kLongestBranch_mm, "mm");
  object.require("from_origin_mm", "Give the distance from where the branch leaves its parent.");
  if (!branch || !from_origin_mm) return std::nullopt;
  return AtBranch{std::move(*branch), *from_origin_mm};
}

std::optional<Place> read_place_of(ObjectReader& at, std::string_view kind) {
  if (kind == "landmark") return read_landmark(at);
  if (kind == "root") return read_root(at);
  if (kind == "branch") return read_branch(at);
  if (kind == "trunk") {
    const auto trunk = at.word("trunk", kTrunks);
    if (trunk) return AtTrunk{std::string(*trunk)};
  }
  if (kind == "cord") {
    const auto cord = at.word("cord", kCords);
    if (cord) return AtCord{std::string(*cord)};
  }
  return std::nullopt;
}

}  // namespace

std::optional<AtLandmark> read_landmark(ObjectReader& object) {
  auto landmark = object.term("landmark", anatomy::TermKind::landmark);
  const auto offset_mm = object.number("offset_mm", 0.0, kLongestOffset_mm, "mm");
  const auto toward = object.word("toward", kDirections);
  if (object.has("offset_mm") != object.has("toward")) {
    const bool lacks_direction = object.has("offset_mm");
    object.add(lacks_direction ? "toward" : "offset_mm",
               lacks_direction ? "the offset has no direction" : "the direction has no offset",
               lacks_direction
                   ? "Write \"toward\": \"proximal\" or \"distal\"."
                   : "Give offset_mm in mm, or leave both out for the landmark itself.");
  }
  if (!landmark) return std::nullopt;
  return AtLandmark{std::move(*landmark), offset_mm.value_or(0.0), toward.value_or(Toward::distal)};
}

std::optional<Place> read_place(ObjectReader& object, std::string_view key, bool required) {
  if (required) object.require(key, kWaysToPlace);
  auto at = object.object(key);
  if (!at) return std::nullopt;
  if (at->empty()) {
    if (required) object.add(key, "the place is empty", std::string(kWaysToPlace));
    return std::nullopt;
  }
  std::vector<std::string_view> given;
  for (const std::string_view kind : kPlaceKeys) {
    if (at->has(kind)) given.push_back(kind);
  }
  std::optional<Place> place;
  if (given.size() == 1) {
    place = read_place_of(*at, given.front());
    at->finish();
  } else if (given.empty()) {
    object.add(key, "nothing here says where on the nerve", std::string(kWaysToPlace));
    for (const std::string_view kind : kPlaceKeys) at->take(kind);
    for (const std::string_view other : {"offset_mm", "toward", "level", "from_origin_mm"}) {
      at->take(other);
    }
    at->finish();
  } else {
    object.add(key, fmt::format("{} and {} are two places", given[0], given[1]),
               "Keep one; a second injury is an entry of its own.");
  }
  return place;
}

}  // namespace endplate::casefile
