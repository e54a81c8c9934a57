#include "models/incision/approach_measures.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/line_samples.hpp"
#include "models/incision/cut.hpp"
#include "models/incision/theatre.hpp"
#include "models/limb/limb_normals.hpp"
#include "models/limb/moved_limb.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;

constexpr double kLineStep_mm = 2.0;
// Keeps these random numbers apart from those of other questions asked with the same seed.
constexpr std::uint64_t kMarkStream = 0x6d61726b73000001;

double toward(std::string_view word, double mm) {
  return word == "proximal" || word == "anterior" || word == "lateral" ? mm : -mm;
}

Vector3d offset_of(const evidence::Row& row) {
  Vector3d offset = Vector3d::Zero();
  offset.y() = toward(row.text("toward"), row.number("along_mm").value_or(0.0));
  const std::string_view aside = row.text("aside");
  const double mm = toward(aside, row.number("aside_mm").value_or(0.0));
  offset.x() = row.number("anterior_mm").value_or(0.0);
  if (aside == "anterior" || aside == "posterior") offset.x() += mm;
  if (aside == "medial" || aside == "lateral") offset.z() = mm;
  return offset;
}

Published published_of(const evidence::Row& row) {
  return {std::string(row.text("id")),
          std::string(row.text("study")),
          std::string(row.text("surface")),
          std::string(row.text("safe_rule")),
          row.number("published_distance_mm_mean"),
          row.number("published_distance_mm_sd"),
          row.number("published_distance_mm_min"),
          row.number("published_distance_mm_max"),
          row.number("n")};
}

class Reader {
 public:
  Reader(const evidence::DataPackage& package, const limb::Atlas& atlas, const ApproachPlans& plans)
      : atlas_(atlas), plans_(plans) {
    for (const evidence::Row row : package.table("approaches")) {
      ledger_.emplace(std::string(row.text("id")), published_of(row));
    }
  }

  void read(const evidence::Row& row) {
    ApproachMeasure m;
    m.published = ledger_.at(std::string(row.text("row")));
    m.sign = row.number("sign").value_or(1.0);
    m.arm_scale = row.number("arm_scale").value_or(1.0);
    m.median = row.text("figure") == "median";
    m.fit_study = row.text("fit_study");
    m.provenance =
        evidence::provenance_from(row.text("provenance")).value_or(evidence::Provenance::assumed);
    m.reason = row.text("reason");
    m.from_landmark_mm = offset_of(row);
    m.nerves = row.list("nerves");
    if (auto pose = pose_from_text(row.text("pose"))) {
      m.pose_deg = std::move(*pose);
    } else {
      wrong(row, "pose", "this is no pose", "Write \"key=degrees\" between ';'.");
    }
    if (row.text("definition") == "track") {
      const ApproachPlan* plan = plans_.find(row.text("approach"));
      if (plan == nullptr || plan->cut.kind == CutKind::line || m.nerves.empty()) {
        wrong(row, "approach", "a track needs the plan of a portal or a pin, and nerves",
              "Name an approach of approach_plans.csv and nerves of the tree.");
        return;
      }
      m.track = *plan;
    } else if (!row.text("measure").empty()) {
      m.fitted_as = row.text("measure");
      m.measure = *std::ranges::find(atlas_.measures(), m.fitted_as, &limb::NerveMeasure::id);
    } else if (!own_measure(row, m.measure)) {
      return;
    }
    measures_.push_back(std::move(m));
  }

  Expected<std::vector<ApproachMeasure>> finish() && {
    if (!problems_.empty()) return std::unexpected(Error{Fault::internal, std::move(problems_)});
    return std::move(measures_);
  }

 private:
  void wrong(const evidence::Row& row, std::string_view column, std::string what,
             std::string mend) {
    problems_.push_back(
        {fmt::format("approach_measures.csv, row {}, column {}", row.line(), column),
         std::move(what), std::move(mend)});
  }

  bool own_measure(const evidence::Row& row, limb::NerveMeasure& measure) {
    const auto course = std::ranges::find(atlas_.courses(), row.text("course"), &limb::Course::id);
    const auto definition = limb::definition_from(row.text("definition"));
    const auto axis = limb::segment_from(row.text("axis"));
    if (course == atlas_.courses().end() || !definition || !axis) {
      wrong(row, "course", "a measure of its own needs a course, a definition and an axis",
            "Give all three, or name a measure of course_measures.csv.");
      return false;
    }
    measure.id = row.text("row");
    measure.course = static_cast<std::size_t>(course - atlas_.courses().begin());
    measure.definition = *definition;
    measure.axis = *axis;
    measure.landmark = row.text("landmark");
    measure.plane = row.text("plane");
    measure.front_to_back = row.text("direction") == "anterior";
    if (!row.text("point").empty()) {
      const limb::CoursePoint* point = course->find(row.text("point"));
      if (point == nullptr) {
        wrong(row, "point", "no point of this course", "Name a point of that course.");
        return false;
      }
      measure.point = static_cast<std::size_t>(point - course->points.data());
    }
    const bool of_a_point = *definition == limb::Definition::axial ||
                            *definition == limb::Definition::straight ||
                            *definition == limb::Definition::transverse;
    if (of_a_point != measure.point.has_value()) {
      wrong(row, "point", "the definition and the point do not go together",
            "Give a point to axial, straight and transverse, and to no other.");
      return false;
    }
    return true;
  }

  const limb::Atlas& atlas_;
  const ApproachPlans& plans_;
  std::map<std::string, Published> ledger_;
  std::vector<ApproachMeasure> measures_;
  std::vector<Problem> problems_;
};

}  // namespace

std::optional<bool> Published::holds(double computed_mm) const {
  if (mean_mm && sd_mm) return std::abs(computed_mm - *mean_mm) <= *sd_mm;
  if (min_mm && max_mm) return *min_mm <= computed_mm && computed_mm <= *max_mm;
  return std::nullopt;
}

Expected<std::vector<ApproachMeasure>> approach_measures(const evidence::DataPackage& package,
                                                         const limb::Atlas& atlas) {
  const auto plans = ApproachPlans::from(package);
  if (!plans) return std::unexpected(plans.error());
  Reader reader(package, atlas, *plans);
  for (const evidence::Row row : package.table("approach_measures")) reader.read(row);
  return std::move(reader).finish();
}

std::optional<double> taken_mm(const ApproachMeasure& m, const limb::Atlas& atlas,
                               const limb::LimbJoints& joints, const limb::BodyEnvelope& envelope) {
  limb::SegmentScale scale;
  scale.arm = m.arm_scale;
  const limb::SegmentFrames frames(scale);
  std::vector<geometry::CubicSpline> curves;
  for (std::size_t c = 0; c < atlas.courses().size(); ++c) {
    curves.push_back(atlas.curve(c, frames));
  }
  const limb::MovedLimb moved(atlas, curves, frames, joints, envelope, limb::pose_from(m.pose_deg),
                              std::nullopt);
  const limb::MeasureGeometry rest = atlas.geometry_of(m.measure, frames);
  std::optional<double> taken;
  if (m.from_landmark_mm.isZero()) {
    taken = moved.take(m.measure, rest);
  } else {
    const limb::Landmark& landmark = *atlas.landmarks().find(m.measure.landmark);
    const limb::Segment segment = landmark.segment;
    const Vector3d at_rest = limb::LandmarkSet::position_mm(landmark, frames) +
                             m.from_landmark_mm.x() * frames.anterior(segment) +
                             m.from_landmark_mm.y() * frames.proximal(segment) +
                             m.from_landmark_mm.z() * frames.lateral(segment);
    limb::MeasureGeometry here = moved.geometry_of(m.measure, rest);
    here.landmark = landmark.bone ? moved.space().of_bone(*landmark.bone) * at_rest
                                  : moved.space().flesh(at_rest);
    if (m.measure.definition == limb::Definition::offset_at_level) {
      here.surface.through = here.landmark;
    }
    const geometry::CubicSpline& curve = moved.curve(m.measure.course);
    const double point =
        m.measure.point ? atlas.courses()[m.measure.course].points[*m.measure.point].knot : 0.0;
    taken = limb::take_measure<double>(here, curve, curve, point, point);
  }
  return taken ? std::optional(m.sign * *taken) : std::nullopt;
}

Expected<std::vector<std::vector<double>>> track_samples_mm(
    const evidence::DataPackage& package, const anatomy::NerveTree& tree,
    const std::vector<ApproachMeasure>& measures, int count, std::uint64_t seed) {
  std::vector<std::vector<double>> result(measures.size());
  const auto landmarks = limb::LandmarkSet::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());
  std::map<std::map<std::string, double>, std::vector<std::size_t>> by_pose;
  for (std::size_t i = 0; i < measures.size(); ++i) {
    if (measures[i].track) by_pose[measures[i].pose_deg].push_back(i);
  }
  for (const auto& [pose_deg, of_pose] : by_pose) {
    casefile::Limb limb;
    limb.pose_deg = pose_deg;
    const auto theatre = Theatre::from(package, tree, limb);
    if (!theatre) return std::unexpected(theatre.error());
    const auto lines = limb::sample_lines(package, tree, theatre->limb(), theatre->pose(), {},
                                          theatre->side(), kLineStep_mm, count, seed);
    if (!lines) return std::unexpected(lines.error());
    for (const std::size_t i : of_pose) {
      const auto cut = lay_cut(*theatre, measures[i].track->cut);
      if (!cut) return std::unexpected(cut.error());
      std::vector<float> best_mm2(static_cast<std::size_t>(count),
                                  std::numeric_limits<float>::max());
      for (const limb::SampledLine& line : *lines) {
        if (std::ranges::find(measures[i].nerves, tree.node(line.nerve).name) ==
            measures[i].nerves.end()) {
          continue;
        }
        geometry::LineSamples(line.mean_mm.size(), line.samples_mm)
            .nearest(cut->stations.front().track, best_mm2);
      }
      // The track goes with its landmark, whose place is uncertain: to the first order the shortest
      // way grows or shrinks by as much of that as runs along it.
      const auto* landmark = landmarks->find(measures[i].track->cut.marks.front().landmark);
      const double landmark_sd_mm = landmark == nullptr ? 0.0 : landmark->sd_mm;
      for (int k = 0; k < count; ++k) {
        const double mm = std::sqrt(static_cast<double>(best_mm2[static_cast<std::size_t>(k)]));
        const double shift = limb::LimbNormals(seed, kMarkStream, k).next();
        result[i].push_back(std::abs(mm + landmark_sd_mm * shift));
      }
    }
  }
  return result;
}

}  // namespace endplate::incision
