#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

constexpr double kWidest_mm = 200.0;
constexpr double kLeastDepth_mm = 0.5;
constexpr double kDeepest_mm = 300.0;

std::optional<SkinMark> read_mark(ObjectReader& object) {
  SkinMark mark;
  object.require("landmark", "Name the landmark from which the point is measured.");
  const auto at = read_landmark(object);
  const auto aside_mm = object.number("aside_mm", 0.0, kWidest_mm, "mm");
  mark.aside = object.word("aside", kAsides);
  mark.surface = object.word("surface", kAsides);
  if (object.has("aside_mm") != object.has("aside")) {
    const bool lacks_side = object.has("aside_mm");
    object.add(lacks_side ? "aside" : "aside_mm",
               lacks_side ? "the distance has no direction" : "the direction has no distance",
               lacks_side
                   ? "Write \"aside\": \"anterior\", \"posterior\", \"medial\" or \"lateral\"."
                   : "Give aside_mm in mm, or leave both out.");
  }
  if (!at) return std::nullopt;
  mark.at = *at;
  mark.aside_mm = aside_mm.value_or(0.0);
  return mark;
}

}  // namespace

std::optional<Incision> read_incision(ObjectReader& object) {
  Incision incision;
  incision.label = object.text("label").value_or("");
  incision.kind = object.word("kind", kCutKinds).value_or(CutKind::line);
  incision.depth_mm = object.number("depth_mm", kLeastDepth_mm, kDeepest_mm, "mm");
  object.require("points", "List the points of the cut in their order.");
  object.each_object("points", [&](ObjectReader& item) {
    if (auto mark = read_mark(item)) incision.points.push_back(std::move(*mark));
    item.finish();
  });
  const nlohmann::json* points = object.take("points");
  if (points != nullptr && points->is_array() && points->empty()) {
    object.add("points", "the incision has no point", "Give at least one point.");
  }
  if (auto aimed = object.object("aimed_at")) {
    incision.aimed_at = read_mark(*aimed);
    aimed->finish();
  }
  object.finish();
  return incision;
}

}  // namespace endplate::casefile
