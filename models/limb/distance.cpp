#include "models/limb/distance.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "models/evidence/nearest_names.hpp"
#include "models/evidence/pool.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/fit_summary.hpp"
#include "models/limb/found_distances.hpp"
#include "models/limb/found_points.hpp"
#include "models/limb/limb_size.hpp"

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

Provenance weaker(Provenance a, Provenance b) {
  return std::max(a, b);
}

// Everything of one limb that distances are taken on.
class Limb {
 public:
  // `spread` must outlive it; null where nothing was found by ultrasound.
  Limb(const evidence::DataPackage& package, Atlas atlas, const SegmentScale& scale, Side side,
       const LevelSpread* spread)
      : atlas_(std::move(atlas)),
        fit_(FitSummary::from(package)),
        frames_(scale, side),
        side_(side),
        spread_(spread) {
    for (std::size_t c = 0; c < atlas_.courses().size(); ++c) {
      curves_.push_back(atlas_.curve(c, frames_));
      ledger_curves_.push_back(atlas_.curve(c, SegmentFrames()));
    }
    for (const evidence::Row row : package.table("landmark_distances")) {
      provenance_.emplace(
          row.text("id"),
          evidence::provenance_from(row.text("provenance")).value_or(Provenance::assumed));
    }
  }

  const Atlas& atlas() const { return atlas_; }
  const FitSummary& fit() const { return fit_; }
  const SegmentFrames& frames() const { return frames_; }
  const geometry::CubicSpline& curve(std::size_t course) const { return curves_[course]; }
  // Points found by ultrasound; empty where there are none.
  FoundDistances& found() { return found_; }
  bool anything_found() const { return spread_ != nullptr; }

  // A distance of one limb before anything was found.
  DistancePrior prior_of(const NerveMeasure& measure, double mean_mm, double sd_mm) const {
    DistancePrior prior{mean_mm, sd_mm, {}, "", 0.0};
    if (!measure.point) return prior;
    const PointRef point{measure.course, *measure.point};
    if (measure.definition == Definition::axial || measure.definition == Definition::crossing) {
      prior.landmark = measure.landmark;
      if (const Landmark* landmark = atlas_.landmarks().find(measure.landmark)) {
        prior.landmark_sd_mm = landmark->sd_mm;
      }
      prior.moves.push_back(moving(point, atlas_.geometry_of(measure, frames_).distal));
    } else if (measure.definition == Definition::along ||
               measure.definition == Definition::length) {
      prior.moves.push_back(moving(point, Eigen::Vector3d::Zero()));
      if (measure.other) {
        prior.moves.push_back(moving({measure.course, *measure.other}, Eigen::Vector3d::Zero()));
        prior.moves.back().per_mm = -1.0;
      }
    }
    return prior;
  }

  FoundDistances::Narrowed narrowed(const NerveMeasure& measure, double mean_mm,
                                    double sd_mm) const {
    if (!anything_found()) return {mean_mm, sd_mm};
    return found_.narrow(prior_of(measure, mean_mm, sd_mm));
  }

  Provenance provenance_of(const std::vector<std::string>& rows) const {
    Provenance weakest = Provenance::read;
    for (const std::string& row : rows) {
      const auto found = provenance_.find(row);
      if (found != provenance_.end()) weakest = weaker(weakest, found->second);
    }
    return weakest;
  }

  // The measure on this limb and on the ledger limb, mm.
  struct Taken {
    double here = 0.0;
    double ledger = 0.0;
  };
  std::optional<Taken> take(const NerveMeasure& measure) const {
    const auto& points = atlas_.courses()[measure.course].points;
    const double point = measure.point ? points[*measure.point].knot : 0.0;
    const double other =
        measure.other ? points[*measure.other].knot : curves_[measure.course].first_knot();
    const auto on = [&](const geometry::CubicSpline& curve, const SegmentFrames& frames) {
      return take_measure<double>(atlas_.geometry_of(measure, frames), curve, curve, point, other);
    };
    const auto here = on(curves_[measure.course], frames_);
    const auto ledger = on(ledger_curves_[measure.course], SegmentFrames());
    if (!here || !ledger) return std::nullopt;
    return Taken{*here, *ledger};
  }

 private:
  // A point of a course as part of a distance that runs along `distal`, or along the nerve where
  // that is zero.
  MovingPoint moving(PointRef ref, const Eigen::Vector3d& distal) const {
    const CoursePoint& point = atlas_.courses()[ref.course].points[ref.point];
    const geometry::CubicSpline& curve = curves_[ref.course];
    Eigen::Vector3d position = curve.position(point.knot);
    const Segment segment = segment_of(position, frames_);
    // The spread knows the right limb only.
    if (side_ == Side::left) position.z() = -position.z();
    const double per_mm =
        distal.isZero() ? 1.0 : curve.derivative(point.knot).normalized().dot(distal);
    return {ref, geometry::arc_length(curve, curve.first_knot(), point.knot),
            spread_->sd_mm(ref.course, position, segment, point.id), per_mm};
  }

  Atlas atlas_;
  FitSummary fit_;
  SegmentFrames frames_;
  Side side_;
  const LevelSpread* spread_;
  std::vector<geometry::CubicSpline> curves_;
  std::vector<geometry::CubicSpline> ledger_curves_;
  FoundDistances found_;
  std::map<std::string_view, Provenance> provenance_;
};

// A distance along the limb by model and studies, before it is shown.
struct Combined {
  double mean = 0.0;
  double mean_sd = 0.0;  // of the mean over limbs
  double limb_sd = 0.0;  // of one limb, the uncertainty of the mean and of its population included
};

// The model and the pooled studies are two looks at one mean, each with its own error; the studies
// weigh by their precision. (The model was fitted to them too; its error is that on studies it
// never saw, so counting them twice does not narrow the answer.)
Combined combine(const Limb& limb, const FittedMeasure& fitted, const Limb::Taken& taken) {
  const double model_error = limb.fit().model_error_mm(fitted.model_sd_mm, taken.here);
  const double pooled = fitted.pooled_mm + taken.here - taken.ledger;
  const double var_model = model_error * model_error;
  const double var_pooled = fitted.pooled_se_mm * fitted.pooled_se_mm;
  const double weight = var_model / (var_model + var_pooled);
  Combined result;
  result.mean = std::lerp(taken.here, pooled, weight);
  result.mean_sd = std::sqrt(var_model * var_pooled / (var_model + var_pooled));
  // A new population strays from the mean as the studied ones do.
  result.limb_sd =
      std::hypot(result.mean_sd, limb.fit().model_error_mm(0.0, result.mean), fitted.limb_sd_mm);
  return result;
}

// With what ultrasound found on this limb; the mean over limbs stays.
Combined on_this_limb(const Limb& limb, const NerveMeasure& measure, const Combined& combined) {
  const auto narrowed = limb.narrowed(measure, combined.mean, combined.limb_sd);
  return {narrowed.mean_mm, combined.mean_sd, narrowed.sd_mm};
}

// The other kinds of distance of the same point, from the geometry, moved as far as the answer
// along the limb moved it.
void add_geometry(const Limb& limb, const NerveMeasure& measure, const Combined& along, double sign,
                  Distance& distance) {
  const geometry::CubicSpline& curve = limb.curve(measure.course);
  const auto& points = limb.atlas().courses()[measure.course].points;
  const MeasureGeometry geometry = limb.atlas().geometry_of(measure, limb.frames());
  const double knot = points[*measure.point].knot;
  const Eigen::Vector3d offset = curve.position(knot) - geometry.landmark;
  const double axial = offset.dot(geometry.distal);
  const double across = (offset - axial * geometry.distal).norm();
  const double straight = std::hypot(along.mean, across);
  if (std::abs(along.mean) > kLevel_mm) {
    distance.straight_mm = signed_summary(straight, along.limb_sd, 1.0);
  }
  CrossingSurface level;
  level.normal = geometry.distal;
  level.through = geometry.landmark;
  const auto passes = find_crossing(curve, level, geometry.search_from, geometry.search_to);
  if (!passes) return;
  const double arc = geometry::arc_length(curve, *passes, knot);
  distance.along_nerve_mm = signed_summary(arc + along.mean - axial, along.limb_sd, sign);
}

Distance of_measure(const Limb& limb, const NerveMeasure& measure, const FittedMeasure& fitted,
                    const Limb::Taken& taken) {
  const Combined combined = combine(limb, fitted, taken);
  const Combined here = on_this_limb(limb, measure, combined);
  Distance distance;
  distance.nerve = measure.nerve;
  distance.point = measure.point_name;
  distance.landmark = measure.landmark_name;
  distance.definition = to_string(measure.definition);
  distance.basis = Basis::studies_and_model;
  distance.studies = fitted.studies;
  for (const MeasureRow& row : measure.rows) distance.sources.push_back(row.row);
  distance.provenance = limb.provenance_of(distance.sources);

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
      distance.straight_mm = signed_summary(here.mean, here.limb_sd, 1.0);
      break;
  }
  distance.direction = direction.word;
  distance.mean_low_mm = direction.sign * combined.mean - kZ90 * combined.mean_sd;
  distance.mean_high_mm = direction.sign * combined.mean + kZ90 * combined.mean_sd;
  return distance;
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
NerveMeasure axial_measure(const Limb& limb, PointRef ref, const Landmark& landmark) {
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
Combined by_model(const Limb& limb, const NerveMeasure& measure, const Landmark& landmark) {
  const CoursePoint& point = limb.atlas().courses()[measure.course].points[*measure.point];
  const auto taken = limb.take(measure);
  const auto knot_sd = limb.fit().knot_sd_mm.find(point.id);
  const double point_sd = knot_sd == limb.fit().knot_sd_mm.end() ? 0.0 : knot_sd->second;
  Combined combined;
  combined.mean = taken->here;
  combined.mean_sd = std::hypot(limb.fit().model_error_mm(point_sd, taken->here), landmark.sd_mm);
  combined.limb_sd =
      std::hypot(combined.mean_sd, limb.fit().between_limbs.at(std::abs(taken->here)));
  return combined;
}

Distance of_model(const Limb& limb, PointRef ref, const std::string& nerve,
                  const std::string& point_name, const Landmark& landmark,
                  const std::vector<std::string>& sources) {
  const NerveMeasure measure = axial_measure(limb, ref, landmark);
  const Combined combined = by_model(limb, measure, landmark);
  const Combined here = on_this_limb(limb, measure, combined);

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
  distance.along_limb_mm = signed_summary(here.mean, here.limb_sd, direction.sign);
  add_geometry(limb, measure, here, direction.sign, distance);
  distance.mean_low_mm = direction.sign * combined.mean - kZ90 * combined.mean_sd;
  distance.mean_high_mm = direction.sign * combined.mean + kZ90 * combined.mean_sd;
  return distance;
}

// Each found point as a reading of its distance from the landmark where the probe stood: as studies
// measured it where they did, else as the model has it.
void read_found_points(const std::vector<FoundPoint>& found, Limb& limb) {
  for (const FoundPoint& point : found) {
    const Landmark& landmark = *limb.atlas().landmarks().find(point.at.landmark);
    NerveMeasure measure = axial_measure(limb, point.point, landmark);
    Combined combined = by_model(limb, measure, landmark);
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
    limb.found().add(limb.prior_of(measure, combined.mean, combined.limb_sd), read_mm,
                     point.error_mm);
  }
  limb.found().finish();
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
void add_modelled_points(const evidence::DataPackage& package, const Limb& limb,
                         const DistanceQuery& query, std::vector<Distance>& found) {
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
    const bool known = std::ranges::any_of(found, [&](const Distance& d) {
      return d.nerve == nerve && d.point == point && d.along_limb_mm && d.posture.empty();
    });
    const auto ref = limb.atlas().find_point(row.text("point"));
    const auto rows = rows_of.find(std::string(row.text("point")));
    // A point that no distance holds is only a start of the fit.
    if (known || !ref || rows == rows_of.end()) continue;
    found.push_back(of_model(limb, *ref, nerve, point, *landmark, rows->second));
  }
}

}  // namespace

Expected<DistanceAnswer> distances(const evidence::DataPackage& package,
                                   const casefile::Limb& given, const DistanceQuery& query) {
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
  Limb limb(package, std::move(*atlas), size->mean_scale(), given.side,
            case_limb ? &case_limb->level_spread() : nullptr);
  if (case_limb) read_found_points(case_limb->found_points(), limb);

  std::set<std::string, std::less<>> modelled;  // rows that a measure of the model uses
  for (const NerveMeasure& measure : limb.atlas().measures()) {
    for (const MeasureRow& row : measure.rows) modelled.insert(row.row);
    if (!fits(query, measure.nerve, measure.point_name, measure.landmark_name)) continue;
    const auto fitted = limb.fit().measures.find(measure.id);
    const auto taken = limb.take(measure);
    if (fitted == limb.fit().measures.end() || !taken) continue;
    answer.distances.push_back(of_measure(limb, measure, fitted->second, *taken));
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
      answer.distances.push_back(std::move(*distance));
    }
  }
  if (query.landmark) add_modelled_points(package, limb, query, answer.distances);

  if (answer.distances.empty()) {
    return std::unexpected(
        Error::outside_model({"distance", "no published or modelled distance fits",
                              "Leave out --point or --from to see which there are."}));
  }
  std::ranges::stable_sort(answer.distances, {}, &Distance::nerve);
  return answer;
}

}  // namespace endplate::limb
