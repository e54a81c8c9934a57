#include "models/casefile/words.hpp"
#include "output/envelope.hpp"
#include "output/incision_views.hpp"

namespace endplate::cli {
namespace {

using incision::IncisionAnswer;

Json vector_json(const Eigen::Vector3d& v) {
  return Json::array({v.x(), v.y(), v.z()});
}

Json points_json(const IncisionAnswer& answer) {
  Json list = Json::array();
  for (std::size_t k = 0; k < answer.cut.stations.size(); ++k) {
    const incision::Station& station = answer.cut.stations[k];
    list.push_back({{"along_mm", station.along_mm},
                    {"position_mm", vector_json(station.skin.position_mm)},
                    {"deepest_mm", vector_json(station.track.to_mm)},
                    {"region", station.skin.region},
                    {"chance_within_chosen", answer.along_chance[k]}});
  }
  return list;
}

Json nerves_json(const IncisionAnswer& answer) {
  Json list = Json::array();
  for (const incision::NamedNearby& nerve : answer.nerves) {
    Json chances = Json::array();
    for (const incision::ChanceWithin& within : nerve.near.chance_within) {
      chances.push_back({{"mm", within.mm}, {"chance", within.chance}});
    }
    list.push_back({{"nerve", nerve.nerve},
                    {"skin_only", nerve.near.of_skin},
                    {"nearest_mm", to_json(nerve.near.nearest_mm)},
                    {"at_along_mm", nerve.near.at_along_mm},
                    {"nearest_place_mm", vector_json(nerve.near.nearest_place_mm)},
                    {"depth_mm", to_json(nerve.near.depth_mm)},
                    {"chance_within", std::move(chances)},
                    {"chance_within_chosen_along", nerve.near.along_chance}});
  }
  return list;
}

Json room_json(const incision::Room& room) {
  return {{"mm", room.mm}, {"to_edge", room.to_edge}};
}

Json corridor_json(const IncisionAnswer& answer) {
  const incision::Corridor& corridor = *answer.corridor;
  Json places = Json::array();
  for (std::size_t k = 0; k < corridor.places.size(); ++k) {
    const incision::CorridorPlace& place = corridor.places[k];
    const incision::Station& station = corridor.line.stations[k];
    places.push_back({{"along_mm", station.along_mm},
                      {"position_mm", vector_json(station.skin.position_mm)},
                      {"offset_to_right_mm", place.offset_mm},
                      {"right", vector_json(place.right)},
                      {"chance", place.chance},
                      {"room_to_right", room_json(place.to_right)},
                      {"room_to_left", room_json(place.to_left)}});
  }
  return {{"within_mm", answer.corridor_within_mm},
          {"wanted_chance", corridor.wanted_chance},
          {"chance", corridor.chance},
          {"moved", corridor.moved},
          {"points", std::move(places)}};
}

}  // namespace

Json incision_json(const CommonOptions& common, const IncisionAnswer& answer) {
  Json document = envelope("incision", common, answer.side, answer.assumptions, answer.sources,
                           answer.warnings);
  document["label"] = answer.label.empty() ? Json(nullptr) : Json(answer.label);
  document["kind"] = casefile::to_string(answer.kind);
  document["pose"] = answer.pose_deg;
  document["frame"] =
      "origin midway between the epicondyles; x anterior, y proximal, z to the right; mm";
  document["marks"] = answer.marks;
  document["length_mm"] = answer.cut.length_mm;
  document["points"] = points_json(answer);
  document["nerves"] = nerves_json(answer);
  document["first_skin_nerve"] =
      answer.first_skin_nerve ? Json(*answer.first_skin_nerve) : Json(nullptr);
  Json clear = Json::array();
  for (const incision::ClearStretch& stretch : answer.clear) {
    clear.push_back({{"from_mm", stretch.from_mm},
                     {"to_mm", stretch.to_mm},
                     {"farther_than_mm", answer.farther_than_mm},
                     {"chance", stretch.chance}});
  }
  document["stretches_clear_of_nerves"] = std::move(clear);
  Json rules = Json::array();
  for (const incision::QuotedRule& rule : answer.rules) {
    rules.push_back({{"rule", rule.rule},
                     {"approach", rule.approach},
                     {"nerve", rule.nerve},
                     {"surface", rule.surface},
                     {"pose", rule.pose.empty() ? Json(nullptr) : Json(rule.pose)},
                     {"figure", rule.figure.empty() ? Json(nullptr) : Json(rule.figure)},
                     {"source", rule.source},
                     {"row", rule.row}});
  }
  document["rules"] = std::move(rules);
  if (answer.corridor) document["corridor"] = corridor_json(answer);
  document["not_modelled"] = incision::kNotModelled;
  return document;
}

}  // namespace endplate::cli
