#include "models/limb/distance.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>
#include <set>
#include <utility>

#include "models/evidence/nearest_names.hpp"
#include "models/evidence/pool.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/found_on_limb.hpp"
#include "models/limb/found_points.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/measured_limb.hpp"
#include "models/limb/over_skin.hpp"

namespace endplate::limb {
namespace {

using evidence::Provenance;

constexpr double kZ90 = 1.6448536269514722;  // half-width of a central normal interval of 90 %
// Straight distances are not corrected by an along-the-limb figure this near to the landmark's
// level.
constexpr double kLevel_mm = 5.0;

struct Direction {
  std::string word;
  double sign = 1.0;
};

Direction towards(double value, const char* positive, const char* negative) {
  return value >= 0.0 ? Direction{positive, 1.0} : Direction{negative, -1.0};
}

Summary signed_summary(double mean, double sd, double sign) {
  return summarise_normal(sign * mean, sd);
}

// A distance along the limb by model and studies, before it is shown.
struct Combined {
  double mean = 0.0;
  double mean_sd = 0.0;  // of the mean over limbs
  double limb_sd = 0.0;  // of one limb, the uncertainty of the mean and of its population included
  double model = 0.0;    // the model's own figure in the pose
  double moved = 0.0;    // of the mean, by the pose and the operations
};

// The model and the pooled studies are two looks at one mean, each with its own error; the studies
// weigh by their precision. (The model was fitted to them too; its error is that on studies it
// never saw, so counting them twice does not narrow the answer.)
Combined combine(const MeasuredLimb& limb, const FittedMeasure& fitted,
                 const MeasuredLimb::Taken& taken) {
  const double model_error = limb.fit().model_error_mm(fitted.model_sd_mm, taken.here);
  const double pooled = fitted.pooled_mm + taken.here - taken.ledger;
  const double var_model = model_error * model_error;
  const double var_pooled = fitted.pooled_se_mm * fitted.pooled_se_mm;
  const double weight = var_model / (var_model + var_pooled);
  Combined result;
  const double at_rest = std::lerp(taken.here, pooled, weight);
  // The studies measured limbs at rest; what the pose changes is the model's alone.
  result.moved = taken.moved.value_or(taken.here) - taken.here;
  result.model = taken.moved.value_or(taken.here);
  result.mean = at_rest + result.moved;
  result.mean_sd = std::sqrt(var_model * var_pooled / (var_model + var_pooled));
  // A new population strays from the mean as the studied ones do.
  result.limb_sd =
      std::hypot(result.mean_sd, limb.fit().model_error_mm(0.0, at_rest), fitted.limb_sd_mm);
  return result;
}

// The other kinds of distance of the same point, from the geometry, moved as far as the answer
// along the limb moved it.
void add_geometry(const MeasuredLimb& limb, const NerveMeasure& measure, const Combined& along,
                  double sign, Distance& distance) {
  const auto& points = limb.atlas().courses()[measure.course].points;
  const MeasureGeometry geometry = limb.geometry_of(measure);
  const double knot = points[*measure.point].knot;
  const Eigen::Vector3d offset = limb.curve(measure.course).position(knot) - geometry.landmark;
  const double axial = offset.dot(geometry.distal);
  const double across = (offset - axial * geometry.distal).norm();
  const double straight = std::hypot(along.mean, across);
  if (std::abs(along.mean) > kLevel_mm) {
    distance.straight_mm = signed_summary(straight, along.limb_sd, 1.0);
  }
  const auto passes = limb.level_of(measure);
  if (!passes) return;
  const double arc = geometry::arc_length(limb.curve_at_rest(measure.course), *passes, knot);
  distance.along_nerve_mm = signed_summary(arc + along.mean - axial, along.limb_sd, sign);
}

// With what ultrasound found on this limb, which it did at rest; the mean over limbs stays.
Combined on_this_limb(const FoundOnLimb& found, const NerveMeasure& measure,
                      const Combined& combined) {
  const auto narrowed = found.narrowed(measure, combined.mean - combined.moved, combined.limb_sd);
  Combined here = combined;
  here.mean = narrowed.mean_mm + combined.moved;
  here.limb_sd = narrowed.sd_mm;
  return here;
}

// Where the tape of a measure is laid, and by how much the answer differs from the model.
void lay_tape(const MeasuredLimb& limb, const NerveMeasure& measure, const Combined& combined,
              TapedDistance& found) {
  if (measure.definition == Definition::length) {
    found.no_tape = "the length of a nerve is not measured over the skin";
    return;
  }
  if (limb.atlas().landmarks().find(measure.landmark) == nullptr) {
    found.no_tape = "the model limb does not hold this landmark";
    return;
  }
  const auto place = limb.place_of(measure);
  if (!place) {
    found.no_tape = "the nerve does not cross there in this pose";
    return;
  }
  const Eigen::Vector3d landmark = limb.geometry_of(measure).landmark;
  const double correction = found.distance.straight_mm
                                ? found.distance.straight_mm->mean - (*place - landmark).norm()
                                : std::abs(combined.mean) - std::abs(combined.model);
  found.tape = TapeEnds{landmark, *place, correction, combined.limb_sd};
}

TapedDistance of_measure(const MeasuredLimb& limb, const FoundOnLimb& located,
                         const NerveMeasure& measure, const FittedMeasure& fitted,
                         const MeasuredLimb::Taken& taken) {
  const Combined combined = combine(limb, fitted, taken);
  Combined here = on_this_limb(located, measure, combined);
  Distance distance;
  distance.nerve = measure.nerve;
  distance.point = measure.point_name;
  distance.landmark = measure.landmark_name;
  distance.definition = to_string(measure.definition);
  distance.basis = Basis::studies_and_model;
  distance.studies = fitted.studies;
  for (const MeasureRow& row : measure.rows) distance.sources.push_back(row.row);
  distance.provenance = limb.provenance_of(distance.sources);
  distance.in_pose = limb.bent() && taken.moved.has_value();
  distance.moved_mm = combined.moved;

  Direction direction;
  switch (measure.definition) {
    case Definition::axial:
    case Definition::crossing:
      direction = towards(here.mean, "distal", "proximal");
      distance.along_limb_mm = signed_summary(here.mean, here.limb_sd, direction.sign);
      if (measure.point) add_geometry(limb, measure, here, direction.sign, distance);
      break;
    case Definition::along:
    case Definition::length:
      direction = towards(here.mean, "distal", "proximal");
      distance.along_nerve_mm = signed_summary(here.mean, here.limb_sd, direction.sign);
      break;
    case Definition::transverse:
    case Definition::offset_at_level:
      direction = measure.front_to_back ? towards(here.mean, "anterior", "posterior")
                                        : towards(here.mean, "lateral", "medial");
      distance.across_limb_mm = signed_summary(here.mean, here.limb_sd, direction.sign);
      break;
    case Definition::straight:
    case Definition::nearest:
      // A pose that shortens the model by more than the studies measured leaves the model alone.
      if (here.mean <= 0.0) here.mean = here.model;
      distance.straight_mm = signed_summary(here.mean, here.limb_sd, 1.0);
      break;
  }
  distance.direction = direction.word;
  distance.moved_mm *= direction.sign;
  distance.mean_low_mm = direction.sign * combined.mean - kZ90 * combined.mean_sd;
  distance.mean_high_mm = direction.sign * combined.mean + kZ90 * combined.mean_sd;
  TapedDistance found{std::move(distance), std::nullopt};
  lay_tape(limb, measure, here, found);
  return found;
}

// A distance that only studies give: the nerve has no course in the model.
std::optional<Distance> of_studies(const evidence::Quantity& quantity,
                                   const evidence::SpreadModel& spread) {
  const auto pooled = evidence::pool(quantity, spread);
  if (!pooled) return std::nullopt;
  Distance distance;
  distance.nerve = quantity.tree_node;
  distance.point = quantity.point;
  distance.landmark = quantity.landmark;
  distance.posture = quantity.posture;
  distance.basis = Basis::studies;
  distance.studies = pooled->studies.size();
  distance.sources = pooled->estimate.evidence;
  distance.provenance = pooled->estimate.provenance;

  const double mean = pooled->estimate.mean;
  const bool signed_axis = quantity.axis != evidence::Axis::unsigned_distance &&
                           quantity.axis != evidence::Axis::along_nerve;
  const double sign = signed_axis && mean < 0.0 ? -1.0 : 1.0;
  distance.direction = evidence::direction_word(quantity.axis, mean);
  const auto limb = pooled->limb_interval(0.90);
  const auto whole = pooled->mixture.mean_interval(0.90);
  Summary summary;
  summary.mean = sign * mean;
  summary.sd = pooled->mixture.new_value_sd(pooled->estimate.between_limb_sd);
  summary.p05 = std::min(sign * limb.low, sign * limb.high);
  summary.p95 = std::max(sign * limb.low, sign * limb.high);
  summary.p50 = sign * pooled->mixture.new_value_median();
  distance.mean_low_mm = std::min(sign * whole.low, sign * whole.high);
  distance.mean_high_mm = std::max(sign * whole.low, sign * whole.high);
  switch (quantity.axis) {
    case evidence::Axis::axial:
      distance.along_limb_mm = summary;
      distance.definition = "axial";
      break;
    case evidence::Axis::transverse:
    case evidence::Axis::sagittal:
      distance.across_limb_mm = summary;
      distance.definition = "transverse";
      break;
    case evidence::Axis::along_nerve:
      distance.along_nerve_mm = summary;
      distance.definition = "along";
      break;
    case evidence::Axis::unsigned_distance:
      distance.straight_mm = summary;
      distance.definition = "straight";
      break;
  }
  return distance;
}

// A point of a course against a landmark, as a distance along the limb.
NerveMeasure axial_measure(const MeasuredLimb& limb, PointRef ref, const Landmark& landmark) {
  const CoursePoint& point = limb.atlas().courses()[ref.course].points[ref.point];
  NerveMeasure measure;
  measure.course = ref.course;
  measure.point = ref.point;
  measure.landmark = landmark.name;
  // Beyond the elbow distances run along the forearm, above it along the arm.
  measure.axis = landmark.segment == Segment::humerus && point.segment != Segment::humerus
                     ? Segment::forearm
                     : landmark.segment;
  return measure;
}

// The same where no study measured it.
Combined by_model(const MeasuredLimb& limb, const NerveMeasure& measure, const Landmark& landmark,
                  const MeasuredLimb::Taken& taken) {
  const CoursePoint& point = limb.atlas().courses()[measure.course].points[*measure.point];
  const auto knot_sd = limb.fit().knot_sd_mm.find(point.id);
  const double point_sd = knot_sd == limb.fit().knot_sd_mm.end() ? 0.0 : knot_sd->second;
  Combined combined;
  combined.model = combined.mean = taken.moved.value_or(taken.here);
  combined.moved = combined.mean - taken.here;
  combined.mean_sd = std::hypot(limb.fit().model_error_mm(point_sd, taken.here), landmark.sd_mm);
  combined.limb_sd =
      std::hypot(combined.mean_sd, limb.fit().between_limbs.at(std::abs(taken.here)));
  return combined;
}

// A point of a course against a landmark that no study measured it from.
TapedDistance of_model(const MeasuredLimb& limb, const FoundOnLimb& located, PointRef ref,
                       const std::string& nerve, const std::string& point_name,
                       const Landmark& landmark, const std::vector<std::string>& sources) {
  const NerveMeasure measure = axial_measure(limb, ref, landmark);
  const auto taken = limb.take(measure);
  const Combined combined = by_model(limb, measure, landmark, *taken);
  const Combined here = on_this_limb(located, measure, combined);

  Distance distance;
  distance.nerve = nerve;
  distance.point = point_name;
  distance.landmark = landmark.name;
  distance.definition = "axial";
  distance.basis = Basis::model;
  distance.sources = sources;
  distance.provenance = Provenance::assumed;
  distance.assumed =
      "the landmark is placed by textbook anatomy; the point by its distances from "
      "other landmarks";
  const Direction direction = towards(here.mean, "distal", "proximal");
  distance.direction = direction.word;
  distance.in_pose = limb.bent() && taken->moved.has_value();
  distance.moved_mm = direction.sign * here.moved;
  distance.along_limb_mm = signed_summary(here.mean, here.limb_sd, direction.sign);
  add_geometry(limb, measure, here, direction.sign, distance);
  distance.mean_low_mm = direction.sign * combined.mean - kZ90 * combined.mean_sd;
  distance.mean_high_mm = direction.sign * combined.mean + kZ90 * combined.mean_sd;
  TapedDistance found{std::move(distance), std::nullopt};
  lay_tape(limb, measure, here, found);
  return found;
}

// Each found point as a reading of its distance from the landmark where the probe stood: as studies
// measured it where they did, else as the model has it; of the limb at rest.
void read_found_points(const std::vector<FoundPoint>& found, const MeasuredLimb& limb,
                       FoundOnLimb& located) {
  for (const FoundPoint& point : found) {
    const Landmark& landmark = *limb.atlas().landmarks().find(point.at.landmark);
    NerveMeasure measure = axial_measure(limb, point.point, landmark);
    Combined combined = by_model(limb, measure, landmark, *limb.take(measure));
    for (const NerveMeasure& studied : limb.atlas().measures()) {
      const bool same = studied.course == point.point.course &&
                        studied.point == point.point.point && studied.landmark == landmark.name &&
                        studied.definition == Definition::axial;
      const auto fitted = limb.fit().measures.find(studied.id);
      if (!same || fitted == limb.fit().measures.end()) continue;
      const auto taken = limb.take(studied);
      if (!taken) continue;
      measure = studied;
      combined = combine(limb, fitted->second, *taken);
      break;
    }
    const double read_mm =
        point.at.toward == casefile::Toward::distal ? point.at.offset_mm : -point.at.offset_mm;
    located.add(measure, combined.mean - combined.moved, combined.limb_sd, read_mm, point.error_mm);
  }
  located.finish();
}

bool fits(const DistanceQuery& query, const std::string& nerves, const std::string& point,
          const std::string& landmark) {
  const auto among = [&](const std::string& name) {
    // Several nerves of one row are joined by ';'.
    const std::string joined = ";" + nerves + ";";
    return joined.find(";" + name + ";") != std::string::npos;
  };
  return (!query.nerve || among(*query.nerve)) &&
         (!query.landmark || *query.landmark == landmark) &&
         evidence::contains_words(point, query.point);
}

// Points of the courses against the queried landmark, where no study has measured them from it.
void add_modelled_points(const evidence::DataPackage& package, const MeasuredLimb& limb,
                         const FoundOnLimb& located, const DistanceQuery& query,
                         std::vector<TapedDistance>& found) {
  const Landmark* landmark = limb.atlas().landmarks().find(*query.landmark);
  if (landmark == nullptr) return;
  std::map<std::string, std::vector<std::string>> rows_of;  // by point id
  for (const NerveMeasure& measure : limb.atlas().measures()) {
    if (!measure.point) continue;
    auto& rows = rows_of[limb.atlas().courses()[measure.course].points[*measure.point].id];
    for (const MeasureRow& row : measure.rows) rows.push_back(row.row);
  }
  for (const evidence::Row row : package.table("course_points")) {
    const std::string nerve(row.text("tree_node"));
    const std::string point(row.text("point_std"));
    if (!fits(query, nerve, point, landmark->name)) continue;
    const bool known = std::ranges::any_of(found, [&](const TapedDistance& each) {
      const Distance& d = each.distance;
      return d.nerve == nerve && d.point == point && d.along_limb_mm && d.posture.empty();
    });
    const auto ref = limb.atlas().find_point(row.text("point"));
    const auto rows = rows_of.find(std::string(row.text("point")));
    // A point that no distance holds is only a start of the fit.
    if (known || !ref || rows == rows_of.end()) continue;
    found.push_back(of_model(limb, located, *ref, nerve, point, *landmark, rows->second));
  }
}

}  // namespace

Expected<DistanceAnswer> distances(const evidence::DataPackage& package,
                                   const casefile::Limb& given, const DistanceQuery& query,
                                   const std::vector<casefile::Operation>& operations) {
  auto size = LimbSize::from(package, given);
  if (!size) return std::unexpected(size.error());
  auto atlas = Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  DistanceAnswer answer;
  answer.assumptions = size->assumptions();
  answer.warnings = size->warnings();
  std::optional<Expected<anatomy::NerveTree>> tree;  // only found points need these two
  std::optional<CaseLimb> case_limb;
  if (!given.ultrasound.empty()) {
    tree = anatomy::NerveTree::from(package);
    if (!*tree) return std::unexpected(tree->error());
    auto built = CaseLimb::from(package, **tree, given);
    if (!built) return std::unexpected(built.error());
    case_limb = std::move(*built);
    size = case_limb->size();
    answer.assumptions = case_limb->assumptions();
    answer.warnings = case_limb->warnings();
  }
  const SegmentFrames frames(size->mean_scale(), given.side);
  auto pose = CasePose::from(package, frames, given.pose_deg);
  if (!pose) return std::unexpected(pose.error());
  const auto transposition = ulnar_transposition(operations);
  std::ranges::copy(pose->assumptions, std::back_inserter(answer.assumptions));
  if (transposition) answer.assumptions.push_back(in_words(*transposition));
  const MeasuredLimb limb(package, std::move(*atlas), frames, std::move(*pose), transposition);
  FoundOnLimb located(limb, case_limb ? &case_limb->level_spread() : nullptr);
  if (case_limb) read_found_points(case_limb->found_points(), limb, located);
  if (limb.bent()) {
    answer.assumptions.emplace_back(
        "In the pose a distance is that of the anatomical position, which the studies measured, "
        "moved by what the pose moves on the model; its spread is that of the anatomical "
        "position.");
  }

  std::vector<TapedDistance> found;
  std::set<std::string, std::less<>> modelled;  // rows that a measure of the model uses
  for (const NerveMeasure& measure : limb.atlas().measures()) {
    for (const MeasureRow& row : measure.rows) modelled.insert(row.row);
    if (!fits(query, measure.nerve, measure.point_name, measure.landmark_name)) continue;
    const auto fitted = limb.fit().measures.find(measure.id);
    const auto taken = limb.take(measure);
    if (fitted == limb.fit().measures.end() || !taken) continue;
    found.push_back(of_measure(limb, located, measure, fitted->second, *taken));
  }

  const auto quantities = evidence::quantities(package.table("landmark_distances"));
  const auto spread = evidence::SpreadModel::estimate(quantities);
  for (const evidence::Quantity& quantity : quantities) {
    if (quantity.measure != evidence::Measure::distance_mm || quantity.tree_node == "none" ||
        !fits(query, quantity.tree_node, quantity.point, quantity.landmark)) {
      continue;
    }
    const bool in_model = std::ranges::any_of(
        quantity.rows, [&](const evidence::Measurement& row) { return modelled.contains(row.id); });
    if (in_model) continue;
    if (auto distance = of_studies(quantity, spread)) {
      found.push_back({std::move(*distance), std::nullopt,
                       "the model does not hold this distance, only its studies"});
    }
  }
  if (query.landmark) add_modelled_points(package, limb, located, query, found);

  if (found.empty()) {
    return std::unexpected(
        Error::outside_model({"distance", "no published or modelled distance fits",
                              "Leave out --point or --from to see which there are."}));
  }
  if (query.over_skin || query.landmark || found.size() <= kFewDistances) {
    measure_over_skin(limb, found);
    answer.assumptions.emplace_back(
        "Over the skin: a tape on the mean limb's modelled skin, whose shape is assumed, corrected "
        "and spread as the studies correct and spread the straight distance.");
  }
  for (TapedDistance& each : found) answer.distances.push_back(std::move(each.distance));
  std::ranges::stable_sort(answer.distances, {}, &Distance::nerve);
  return answer;
}

}  // namespace endplate::limb
