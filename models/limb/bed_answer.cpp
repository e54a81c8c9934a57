#include "models/limb/bed_answer.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/limb/bed_station.hpp"
#include "models/limb/motion_measure.hpp"

namespace endplate::limb {
namespace {

// Strain is given over so much of a nerve on either side of a place.
constexpr double kHalfStretch_mm = 10.0;
// A nerve lies in a bed when its ends and its middle come so near to it: corners are rounded.
constexpr double kInBed_mm = 5.0;

struct Station {
  const char* place;
  Segment segment;
  double level;
  double proximal_mm;  // on the ledger limb
};
constexpr std::array<Station, 5> kStations{
    {{"armpit", Segment::humerus, 0.8, 0.0},
     {"middle of the arm", Segment::humerus, 0.5, 0.0},
     {"20 mm above the epicondyles", Segment::humerus, 0.0, 20.0},
     {"middle of the forearm", Segment::forearm, 0.5, 0.0},
     {"just above the wrist crease", Segment::forearm, 0.95, 0.0}}};

Summary scattered(double value, double scatter) {
  const double factor = std::exp(kNineInTen * scatter);
  const double mean = value * std::exp(0.5 * scatter * scatter);
  Summary summary;
  summary.mean = mean;
  summary.sd = std::abs(mean) * std::sqrt(std::expm1(scatter * scatter));
  summary.p05 = std::min(value / factor, value * factor);
  summary.p50 = value;
  summary.p95 = std::max(value / factor, value * factor);
  return summary;
}

}  // namespace

Expected<PosedBeds> PosedBeds::from(const evidence::DataPackage& package, const Atlas& atlas,
                                    const SegmentFrames& frames, const LimbJoints& joints,
                                    const BodyEnvelope& envelope, const Pose& pose) {
  const auto parameters = MotionParameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto plans = bed_plans(package, atlas);
  if (!plans) return std::unexpected(plans.error());
  const auto measures = motion_measures(package);
  if (!measures) return std::unexpected(measures.error());

  const PosedSpace space(frames, joints, pose);
  const PosedNerves nerves(atlas.landmarks(), envelope, frames, space);
  PosedBeds result;
  for (const BedPlan& plan : *plans) {
    NerveBed bed(plan, atlas, frames, joints, envelope, *parameters);
    BedMotion moved = motion(bed, nerves);
    BedAnswer answer{plan.nerve, moved.arc_mm.back(), moved.lengthening_mm, {}, {}};
    for (const Station& station : kStations) {
      const double level =
          station.level + station.proximal_mm * frames.fraction_per_mm(station.segment);
      const std::size_t at = place_at_level(bed, frames, station.segment, level);
      answer.stations.push_back(
          {station.place,
           scattered(excursion_mm(bed, moved, space, station.segment, at), parameters->scatter),
           scattered(strain_about(bed, moved, at, kHalfStretch_mm), parameters->scatter)});
    }
    for (const MotionMeasure& m : *measures) {
      if (m.judged && m.bed == plan.bed) answer.sources.push_back(m.row);
    }
    result.beds_.push_back(std::move(bed));
    result.motions_.push_back(std::move(moved));
    result.answers_.push_back(std::move(answer));
  }
  return result;
}

std::optional<double> PosedBeds::strain_of(const std::vector<Eigen::Vector3d>& neutral_mm) const {
  if (neutral_mm.size() < 2) return std::nullopt;
  const auto nearest = [](const NerveBed& bed, const Eigen::Vector3d& p) {
    const auto& way = bed.rest_way_mm();
    const auto found =
        std::ranges::min_element(way, {}, [&](const auto& q) { return (q - p).squaredNorm(); });
    return static_cast<std::size_t>(found - way.begin());
  };
  for (std::size_t b = 0; b < beds_.size(); ++b) {
    const NerveBed& bed = beds_[b];
    const std::size_t from = nearest(bed, neutral_mm.front());
    const std::size_t to = nearest(bed, neutral_mm.back());
    const std::size_t middle = nearest(bed, neutral_mm[neutral_mm.size() / 2]);
    const auto lies_in = [&](std::size_t at, const Eigen::Vector3d& p) {
      return (bed.rest_way_mm()[at] - p).norm() < kInBed_mm;
    };
    if (to <= from || !lies_in(from, neutral_mm.front()) || !lies_in(to, neutral_mm.back()) ||
        !lies_in(middle, neutral_mm[neutral_mm.size() / 2])) {
      continue;
    }
    const BedMotion& moved = motions_[b];
    const auto place = [&](std::size_t i) { return moved.arc_mm[i] + moved.slide.slide_mm[i]; };
    return (place(to) - place(from)) / (bed.rest_mm()[to] - bed.rest_mm()[from]) - 1.0;
  }
  return std::nullopt;
}

}  // namespace endplate::limb
