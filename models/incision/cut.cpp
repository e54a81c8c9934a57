#include "models/incision/cut.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace endplate::incision {
namespace {

Error at(Error error, const std::string& place) {
  for (Problem& problem : error.problems) problem.place = place + problem.place;
  return error;
}

double depth_mm(const Theatre& theatre, const PlannedCut& planned, const SkinPlace& skin,
                const Eigen::Vector3d& direction) {
  const double through_mm = theatre.through_mm(skin.position_mm, direction);
  const auto bone_mm = theatre.to_bone_mm(skin.position_mm, direction);
  double wanted_mm = bone_mm.value_or(kNoBone_mm);
  if (planned.kind == CutKind::injection) wanted_mm = std::min(wanted_mm, kInjection_mm);
  return std::min(planned.depth_mm.value_or(wanted_mm), through_mm);
}

}  // namespace

Expected<Cut> lay_cut(const Theatre& theatre, const PlannedCut& planned) {
  if (planned.depth_mm && *planned.depth_mm <= 0.0) {
    return std::unexpected(Error::input(
        {"/depth_mm", "a depth of nothing cuts nothing", "Give the depth in mm, above 0."}));
  }
  std::vector<SkinPlace> marks;
  for (std::size_t k = 0; k < planned.marks.size(); ++k) {
    auto place = theatre.place(planned.marks[k]);
    if (!place) return std::unexpected(at(place.error(), fmt::format("/points/{}", k)));
    marks.push_back(std::move(*place));
  }
  const bool line = planned.kind == CutKind::line;
  if (marks.empty() || (line && marks.size() < 2)) {
    return std::unexpected(Error::input(
        {"/points", line ? "a line needs two points" : "there is no point",
         line ? "Give where it begins and where it ends." : "Give the point of entry."}));
  }
  if (!line && marks.size() > 1) {
    return std::unexpected(
        Error::input({"/points", "a portal, a pin or an injection has one point of entry",
                      "Give one point, or make it a line."}));
  }

  Cut cut;
  cut.kind = planned.kind;
  cut.depth_given = planned.depth_mm.has_value();
  const auto add = [&](SkinPlace skin, double along_mm, const Eigen::Vector3d& direction) {
    const double deep_mm = depth_mm(theatre, planned, skin, direction);
    const geometry::Track track{skin.position_mm, skin.position_mm + deep_mm * direction};
    cut.stations.push_back({std::move(skin), along_mm, track});
  };
  if (!line) {
    Eigen::Vector3d direction = marks.front().inward;
    if (planned.aimed_at) {
      const auto target = theatre.place(*planned.aimed_at);
      if (!target) return std::unexpected(at(target.error(), "/aimed_at"));
      const Eigen::Vector3d way = target->position_mm - marks.front().position_mm;
      if (way.norm() < 1.0) {
        return std::unexpected(Error::input({"/aimed_at", "the track is aimed at its own entry",
                                             "Give a place on the other side."}));
      }
      direction = way.normalized();
    }
    add(marks.front(), 0.0, direction);
    return cut;
  }
  for (std::size_t k = 0; k + 1 < marks.size(); ++k) {
    auto places = theatre.line(marks[k], marks[k + 1], kStation_mm);
    if (!places) return std::unexpected(places.error());
    for (std::size_t i = k == 0 ? 0 : 1; i < places->size(); ++i) {
      SkinPlace& skin = (*places)[i];
      if (!cut.stations.empty()) {
        cut.length_mm += (skin.position_mm - cut.stations.back().skin.position_mm).norm();
      }
      const Eigen::Vector3d inward = skin.inward;
      add(std::move(skin), cut.length_mm, inward);
    }
  }
  return cut;
}

}  // namespace endplate::incision
