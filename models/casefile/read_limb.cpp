#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/casefile/json_text.hpp"
#include "models/casefile/read_parts.hpp"

namespace endplate::casefile {
namespace {

using anatomy::TermKind;

constexpr std::string_view kBetween = " to ";

// The standard landmarks at both ends of "LANDMARK to LANDMARK", or nothing.
std::optional<std::pair<std::string, std::string>> ends_of(const std::string& measure,
                                                           const anatomy::Terms& terms) {
  const std::size_t to = measure.find(kBetween);
  if (to == std::string::npos) return std::nullopt;
  const auto one = terms.resolve(TermKind::landmark, measure.substr(0, to));
  const auto other = terms.resolve(TermKind::landmark, measure.substr(to + kBetween.size()));
  if (!one || !other || one->names.size() != 1 || other->names.size() != 1) return std::nullopt;
  return std::pair(one->names.front(), other->names.front());
}

// A measure of the tables, by its name or by the landmarks at its ends; else the two landmarks.
std::optional<std::string> measure_name(const std::string& typed, const std::string& place,
                                        Reading& reading) {
  const auto known = reading.terms.resolve(TermKind::measure, typed);
  const std::size_t to = typed.find(kBetween);
  if (known && known->names.size() == 1 && (to == std::string::npos || !known->slip)) {
    return reading.resolve_one(TermKind::measure, typed, place);
  }
  if (to == std::string::npos) {
    const auto& nearest = known ? known->names : known.error().nearest;
    reading.add(place, fmt::format("{} is no measure that the limb knows", in_quotes(typed)),
                fmt::format("Write \"LANDMARK to LANDMARK\", or a measure such as: {}.",
                            fmt::join(nearest, "; ")));
    return std::nullopt;
  }
  const auto one = reading.resolve_one(TermKind::landmark, typed.substr(0, to), place);
  const auto other =
      reading.resolve_one(TermKind::landmark, typed.substr(to + kBetween.size()), place);
  if (!one || !other) return std::nullopt;
  for (const std::string& measure : reading.terms.names(TermKind::measure)) {
    if (ends_of(measure, reading.terms) == std::pair(*one, *other)) return measure;
  }
  return fmt::format("{} to {}", *one, *other);
}

// Lengths by the name of the measure, and the names as they were written.
void read_measured(ObjectReader& object, std::map<std::string, double>& measured_mm,
                   std::map<std::string, std::string>& measured_as) {
  constexpr double kShortest_mm = 1.0;
  constexpr double kLongest_mm = 2500.0;
  for (const std::string& key : object.take_all_keys()) {
    const auto value = object.number(key, kShortest_mm, kLongest_mm, "mm");
    const auto name = measure_name(key, object.place_of(key), object.reading());
    if (!name || !value) continue;
    measured_as.emplace(*name, key);
    if (!measured_mm.emplace(*name, *value).second) {
      object.add(key, fmt::format("{} is given twice", *name), "Keep the one that is right.");
    }
  }
}

// An angle within the published range, or a problem that names the range and its rows.
void read_angle(ObjectReader& object, const std::string& key, const PoseLimit& limit, Limb& limb) {
  const nlohmann::json* value = object.take(key);
  if (value == nullptr) return;
  if (!value->is_number()) {
    object.number(key, limit.low_deg, limit.high_deg, "degrees");
    return;
  }
  const double angle_deg = value->get<double>();
  if (!(angle_deg >= limit.low_deg && angle_deg <= limit.high_deg)) {
    object.add(
        key,
        fmt::format("{} is outside {} to {} degrees, the largest published range ({})",
                    value->dump(), limit.low_deg, limit.high_deg, limit.rows),
        fmt::format("Give {} to {} degrees: {}.", limit.low_deg, limit.high_deg, limit.meaning));
    return;
  }
  limb.pose_deg.emplace(key, angle_deg);
}

// Abduction and flexion are one elevation in a plane between them, which ends where either does.
void check_elevation(const ObjectReader& object, const Limb& limb) {
  const auto abduction = limb.pose_deg.find("shoulder_abduction_deg");
  const auto flexion = limb.pose_deg.find("shoulder_flexion_deg");
  if (abduction == limb.pose_deg.end() || flexion == limb.pose_deg.end()) return;
  const PoseLimit& limit = object.reading().rules.pose.find("shoulder_flexion_deg")->second;
  const double both_deg = std::hypot(abduction->second, flexion->second);
  if (both_deg <= limit.high_deg) return;
  object.add("shoulder_flexion_deg",
             fmt::format("with {} degrees of abduction the arm is raised by {:.0f} degrees, beyond "
                         "the largest published range of {} ({})",
                         abduction->second, both_deg, limit.high_deg, limit.rows),
             fmt::format("Abduction and flexion together are one elevation, the root of the sum of "
                         "their squares: keep it within {} degrees.",
                         limit.high_deg));
}

void read_stature(ObjectReader& object, Limb& limb) {
  limb.stature_mm = object.number("stature_mm", 300.0, 2400.0, "mm");
  limb.stature_percentile = object.number("stature_percentile", 0.1, 99.9, "per cent");
  if (!object.has("stature_percentile")) return;
  if (object.has("stature_mm")) {
    object.add("stature_percentile", "stature_mm says the stature already",
               "Keep stature_mm; the percentile follows from it.");
  }
  object.require("sex", "A percentile is one of people of a sex: give it, or stature_mm instead.");
}

// A point of a nerve that ultrasound found; whether the nerve has that point the limb knows.
std::optional<LocatedPoint> read_located_point(ObjectReader& item) {
  constexpr double kLeastError_mm = 0.1;
  constexpr double kMostError_mm = 50.0;
  constexpr std::string_view kWhere =
      "Give a landmark, with offset_mm and toward unless it is there.";
  item.require("nerve", "Name the nerve, or the branch whose origin was seen.");
  item.require("point", "Name the point of the nerve, such as \"origin\" or \"bifurcation\".");
  item.require("at", kWhere);
  auto nerve = item.term("nerve", TermKind::nerve);
  auto point = item.text("point");
  const auto error_mm = item.number("error_mm", kLeastError_mm, kMostError_mm, "mm");
  std::optional<AtLandmark> where;
  if (auto at = item.object("at")) {
    at->require("landmark", kWhere);
    where = read_landmark(*at);
    at->finish();
  }
  item.finish();
  if (!nerve || !point || !where) return std::nullopt;
  return LocatedPoint{std::move(*nerve), std::move(*point), std::move(*where), error_mm};
}

void read_pose(ObjectReader& object, Limb& limb) {
  for (const auto& [key, limit] : object.reading().rules.pose) {
    read_angle(object, key, limit, limb);
  }
  check_elevation(object, limb);
  object.finish();
}

}  // namespace

Limb read_limb(ObjectReader& object) {
  Limb limb;
  if (const auto side = object.word("side", kSides)) {
    limb.side = *side;
    limb.side_given = true;
  }
  limb.dominant_side = object.word("dominant_side", kSides);
  limb.sex = object.word("sex", kSexes);
  limb.age_years = object.number("age_years", 0.0, 120.0, "years");
  read_stature(object, limb);
  if (auto measured = object.object("measured")) {
    read_measured(*measured, limb.measured_mm, limb.measured_as);
  }
  if (auto other = object.object("measured_other_side")) {
    read_measured(*other, limb.other_side_mm, limb.other_side_as);
  }
  object.each_object("ultrasound", [&](ObjectReader& item) {
    if (auto located = read_located_point(item)) limb.ultrasound.push_back(std::move(*located));
  });
  if (auto pose = object.object("pose")) read_pose(*pose, limb);
  object.finish();
  return limb;
}

}  // namespace endplate::casefile
