#include "models/limb/sampled_line.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "models/limb/atlas.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/drawn_limb.hpp"
#include "models/limb/drawn_sample.hpp"
#include "models/limb/fit_summary.hpp"
#include "models/limb/found_points.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/level_spread.hpp"
#include "models/limb/limb_normals.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::limb {
namespace {

using anatomy::NodeIndex;
using Eigen::Vector3d;

// Keeps these random numbers apart from those of other questions asked with the same seed.
constexpr std::uint64_t kStream = 0x726f757465730003;
constexpr std::uint64_t kFoundStream = 0x726f757465730004;
constexpr std::uint64_t kGirdleStream = 0x726f757465740000;  // and the nerve's number

// Of the skin under which the small nerves are brought: edges of about 5 mm.
constexpr int kSkinFineness = 1;

// Shifts are drawn every so many mm of a course; between these they blend.
constexpr double kKnot_mm = 20.0;

// A place of a course where shifts are drawn.
struct Knot {
  double arc_mm = 0.0;
  std::optional<std::size_t> before;  // the one whose shift this one's follows
  double correlation = 0.0;           // with it
  double along_sd_mm = 0.0;
  double across_sd_mm = 0.0;
};

// Along the limb's axis, forward and sideways; standard normal numbers until scaled.
struct Shift {
  double along = 0.0;
  double forward = 0.0;
  double sideways = 0.0;
};

class Shifts {
 public:
  Shifts(const Atlas& atlas, const FitSummary& fit, const CaseLimb& limb,
         const SegmentFrames& frames)
      : begin_(atlas.courses().size()) {
    const std::vector<CaseLimbCourse>& courses = limb.courses();
    std::vector<Level> levels;
    // Trunks before the branches that begin on them.
    for (const bool branches : {false, true}) {
      for (std::size_t c = 0; c < courses.size(); ++c) {
        if (atlas.courses()[c].is_branch() != branches) continue;
        begin_[c] = knots_.size();
        add_course(atlas, fit, limb, frames, c, levels);
      }
    }
    if (!limb.found_points().empty()) found_ = FoundPoints(limb.found_points(), levels);
  }

  // By knot, mm.
  std::vector<Shift> of_limb(std::uint64_t seed, int limb) const {
    LimbNormals normals(seed, kStream, limb);
    std::vector<Shift> shifts(knots_.size());
    for (std::size_t k = 0; k < knots_.size(); ++k) {
      const Knot& knot = knots_[k];
      const Shift before = knot.before ? shifts[*knot.before] : Shift{};
      const double rho = knot.correlation;
      const double own = std::sqrt(1.0 - rho * rho);
      shifts[k] = {rho * before.along + own * normals.next(),
                   rho * before.forward + own * normals.next(),
                   rho * before.sideways + own * normals.next()};
    }
    if (!found_.empty()) {
      Eigen::VectorXd along(static_cast<Eigen::Index>(shifts.size()));
      for (std::size_t k = 0; k < shifts.size(); ++k) {
        along[static_cast<Eigen::Index>(k)] = shifts[k].along;
      }
      LimbNormals of_points(seed, kFoundStream, limb);
      Eigen::VectorXd drawn(2 * static_cast<Eigen::Index>(found_.points().size()));
      for (double& normal : drawn) normal = of_points.next();
      along = found_.correct(along, Vector3d::Ones(), drawn);
      for (std::size_t k = 0; k < shifts.size(); ++k) {
        shifts[k].along = along[static_cast<Eigen::Index>(k)];
      }
    }
    for (std::size_t k = 0; k < knots_.size(); ++k) {
      shifts[k].along *= knots_[k].along_sd_mm;
      shifts[k].forward *= knots_[k].across_sd_mm;
      shifts[k].sideways *= knots_[k].across_sd_mm;
    }
    return shifts;
  }

  Shift at(const std::vector<Shift>& shifts, std::size_t course, double arc_mm) const {
    const double steps = std::max(arc_mm, 0.0) / step_mm_[course];
    const auto last = count_[course] - 2;
    const auto k = std::min(static_cast<std::size_t>(steps), last);
    const double share = std::min(steps - static_cast<double>(k), 1.0);
    const Shift& a = shifts[begin_[course] + k];
    const Shift& b = shifts[begin_[course] + k + 1];
    return {std::lerp(a.along, b.along, share), std::lerp(a.forward, b.forward, share),
            std::lerp(a.sideways, b.sideways, share)};
  }

 private:
  void add_course(const Atlas& atlas, const FitSummary& fit, const CaseLimb& limb,
                  const SegmentFrames& frames, std::size_t c, std::vector<Level>& levels) {
    const CaseLimbCourse& course = limb.courses()[c];
    const int steps = std::max(1, static_cast<int>(std::ceil(course.length_mm() / kKnot_mm)));
    step_mm_.resize(begin_.size(), 1.0);
    count_.resize(begin_.size(), 0);
    step_mm_[c] = course.length_mm() / steps;
    count_[c] = static_cast<std::size_t>(steps) + 1;
    for (int k = 0; k <= steps; ++k) {
      Knot knot;
      knot.arc_mm = k * step_mm_[c];
      const Vector3d place_mm = course.position_at(knot.arc_mm);
      const Segment segment = segment_of(place_mm, frames);
      const auto error_mm = [&](double d_mm) { return fit.model_error_mm(0.0, d_mm); };
      const LevelSpread& spread = limb.level_spread();
      knot.along_sd_mm = std::hypot(spread.sd_mm(c, place_mm, segment, ""), error_mm(kAcross_mm));
      knot.across_sd_mm =
          std::hypot(spread.limbs().of_distance_mm(kAcross_mm, segment), error_mm(kAcross_mm)) *
          frames.scale().breadth;
      if (k > 0) {
        knot.before = knots_.size() - 1;
        knot.correlation = level_correlation(0.0, step_mm_[c]);
      } else if (const auto from = atlas.find_point(atlas.courses()[c].from_point)) {
        knot.before = nearest_knot(atlas, limb, *from);
        knot.correlation = 1.0;
      }
      knots_.push_back(knot);
      levels.push_back(
          {c, knot.arc_mm, course.parts_at(knot.arc_mm), segment, knot.along_sd_mm, false});
    }
  }

  std::size_t nearest_knot(const Atlas& atlas, const CaseLimb& limb, PointRef point) const {
    const CaseLimbCourse& trunk = limb.courses()[point.course];
    const double arc_mm = trunk.arc_at(atlas.courses()[point.course].points[point.point].knot);
    const auto k = static_cast<std::size_t>(std::round(arc_mm / step_mm_[point.course]));
    return begin_[point.course] + std::min(k, count_[point.course] - 1);
  }

  std::vector<Knot> knots_;  // course by course, trunks first
  std::vector<std::size_t> begin_;
  std::vector<std::size_t> count_;
  std::vector<double> step_mm_;
  FoundPoints found_;
};

// A nerve round the shoulder girdle: its points are known to their sd_mm, in every direction.
SampledLine girdle_line(NodeIndex nerve, const std::vector<GirdlePoint>& points,
                        const SegmentFrames& frames, const PosedSpace& space, double step_mm,
                        int count, std::uint64_t seed, const WantedLine& wanted) {
  const GirdleLine mean(points, frames);
  const int steps = std::max(1, static_cast<int>(std::ceil(mean.length_mm() / step_mm)));
  SampledLine line{nerve, {}, {}};
  for (int k = 0; k <= steps; ++k) {
    line.mean_mm.push_back(mean.at(static_cast<double>(k) / steps).posed_mm(space));
  }
  if (wanted && !wanted(line.mean_mm)) return line;
  std::vector<Vector3d> shifts(points.size());
  for (int i = 0; i < count; ++i) {
    LimbNormals normals(seed, kGirdleStream + nerve, i);
    for (std::size_t p = 0; p < points.size(); ++p) {
      const double away_mm =
          p == 0 ? 0.0 : (mean.points()[p].neutral_mm - mean.points()[p - 1].neutral_mm).norm();
      const double rho = p == 0 ? 0.0 : level_correlation(0.0, away_mm);
      Vector3d own(normals.next(), normals.next(), normals.next());
      if (frames.side() == Side::left) own.z() = -own.z();
      const Vector3d before = p == 0 ? Vector3d::Zero() : shifts[p - 1];
      shifts[p] = rho * before + std::sqrt(1.0 - rho * rho) * own;
    }
    for (int k = 0; k <= steps; ++k) {
      GirdlePlace place = mean.at(static_cast<double>(k) / steps);
      place.from.neutral_mm += points[place.index].sd_mm * shifts[place.index];
      place.to.neutral_mm += points[place.index + 1].sd_mm * shifts[place.index + 1];
      line.samples_mm.push_back(place.posed_mm(space));
    }
  }
  return line;
}

// Proximal, anterior and lateral in the segment that a place lies in.
Eigen::Matrix3d axes_at(const SegmentFrames& frames, const Vector3d& p) {
  const Segment segment = segment_of(p, frames);
  Eigen::Matrix3d axes;
  axes << frames.proximal(segment), frames.anterior(segment), frames.lateral(segment);
  return axes;
}

}  // namespace

Expected<std::vector<SampledLine>> sample_lines(const evidence::DataPackage& package,
                                                const anatomy::NerveTree& tree,
                                                const CaseLimb& limb, const CasePose& pose,
                                                const std::vector<casefile::Operation>& operations,
                                                Side side, double step_mm, int count,
                                                std::uint64_t seed, const WantedLine& wanted) {
  const auto atlas = Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  const SegmentFrames right(limb.size().mean_scale());
  const SegmentFrames frames(limb.size().mean_scale(), side);
  const PosedSpace space(frames, pose.joints, pose.pose);
  const PosedNerves posed(atlas->landmarks(), pose.envelope, frames, space);
  const auto transposition = ulnar_transposition(operations);
  const Shifts shifts(*atlas, FitSummary::from(package), limb, right);

  struct Place {
    Vector3d neutral_mm;  // right limb
    double arc_mm = 0.0;
    Eigen::Matrix3d axes;  // proximal, anterior, lateral
  };
  struct Line {
    std::size_t course = 0;
    std::string_view id;
    bool moved = false;  // by the operation
    std::vector<Place> places;
  };
  std::vector<SampledLine> result;
  std::vector<Line> lines;
  for (NodeIndex node = 0; node < tree.size(); ++node) {
    const auto on = limb.on_course(node);
    if (!on) continue;
    Line line{on->course,
              atlas->courses()[on->course].id,
              transposition && tree.node(node).name == "ulnar nerve",
              {}};
    const int steps = std::max(1, static_cast<int>(std::ceil((on->to_mm - on->from_mm) / step_mm)));
    for (int k = 0; k <= steps; ++k) {
      Place place;
      place.arc_mm = std::lerp(on->from_mm, on->to_mm, static_cast<double>(k) / steps);
      place.neutral_mm = limb.courses()[on->course].position_at(place.arc_mm);
      place.axes = axes_at(right, place.neutral_mm);
      line.places.push_back(place);
    }
    lines.push_back(std::move(line));
    result.push_back({node, {}, {}});
  }

  // A line without room is not wanted.
  const auto make_room = [&](SampledLine& line) {
    if (wanted && !wanted(line.mean_mm)) return;
    line.samples_mm.resize(line.mean_mm.size() * static_cast<std::size_t>(count));
  };
  // From a place of the right limb at rest to where it lies in the case.
  const auto lie = [&](const Line& line, Vector3d p) {
    p = pose.envelope.inside(right, p, kLeastDepth_mm);
    if (side == Side::left) p.z() = -p.z();
    if (line.moved) p = transposed_mm(frames, transposition->layer, p);
    return posed(nerve_place(line.id, frames, p));
  };
  for (std::size_t n = 0; n < lines.size(); ++n) {
    for (const Place& place : lines[n].places) {
      result[n].mean_mm.push_back(lie(lines[n], place.neutral_mm));
    }
    make_room(result[n]);
  }

  const SkinMesh skin = make_skin(right, pose.envelope, pose.joints, kSkinFineness);
  const geometry::SurfaceProbe probe(skin.mesh);
  const DrawnSkin under{skin, probe, pose.envelope, DigitSkin(right, pose.joints)};
  const auto drawn = drawn_nerves(package, tree, limb, under);
  if (!drawn) return std::unexpected(drawn.error());
  const auto layer = transposition ? std::optional(transposition->layer) : std::nullopt;
  const DrawnPlaces small(*drawn, tree, frames, layer, step_mm);
  const std::size_t first_small = result.size();
  for (std::size_t n = 0; n < drawn->size(); ++n) {
    result.push_back({(*drawn)[n].nerve, small.mean_mm(n, posed), {}});
    make_room(result.back());
  }

  tbb::parallel_for(0, count, [&](int i) {
    const std::vector<Shift> of_limb = shifts.of_limb(seed, i);
    for (std::size_t n = 0; n < lines.size(); ++n) {
      const Line& line = lines[n];
      if (result[n].samples_mm.empty()) continue;
      for (std::size_t k = 0; k < line.places.size(); ++k) {
        const Place& place = line.places[k];
        const Shift shift = shifts.at(of_limb, line.course, place.arc_mm);
        result[n].samples_mm[static_cast<std::size_t>(i) * line.places.size() + k] =
            lie(line, place.neutral_mm +
                          place.axes * Vector3d(shift.along, shift.forward, shift.sideways));
      }
    }
    std::vector<Vector3d> with_course(drawn->size(), Vector3d::Zero());
    for (std::size_t n = 0; n < drawn->size(); ++n) {
      const auto& on = (*drawn)[n].on_course;
      if (!on) continue;
      const Shift shift = shifts.at(of_limb, on->course, on->arc_mm);
      with_course[n] = axes_at(right, (*drawn)[n].line.point_mm(0)) *
                       Vector3d(shift.along, shift.forward, shift.sideways);
    }
    const auto small_shifts = drawn_shifts(*drawn, with_course, seed, i);
    for (std::size_t n = 0; n < drawn->size(); ++n) {
      SampledLine& line = result[first_small + n];
      if (line.samples_mm.empty()) continue;
      const std::size_t places = line.mean_mm.size();
      for (std::size_t k = 0; k < places; ++k) {
        line.samples_mm[static_cast<std::size_t>(i) * places + k] =
            small.lie(n, k, small_shifts[n], posed);
      }
    }
  });
  const auto girdle = GirdleCourses::from(package, tree);
  if (!girdle) return std::unexpected(girdle.error());
  std::vector<NodeIndex> round_girdle;
  for (NodeIndex node = 0; node < tree.size(); ++node) {
    const auto& points = girdle->points(node);
    // The wall of the chest is no part of the limb, though the arm hangs beside it.
    const bool on_chest = std::ranges::all_of(
        points, [](const GirdlePoint& point) { return point.bone == Bone::thorax; });
    if (!on_chest && !limb.on_course(node)) round_girdle.push_back(node);
  }
  const std::size_t first = result.size();
  result.resize(first + round_girdle.size());
  tbb::parallel_for(std::size_t{0}, round_girdle.size(), [&](std::size_t n) {
    result[first + n] = girdle_line(round_girdle[n], girdle->points(round_girdle[n]), frames, space,
                                    step_mm, count, seed, wanted);
  });
  std::erase_if(result, [](const SampledLine& line) { return line.samples_mm.empty(); });
  return result;
}

}  // namespace endplate::limb
