#include "models/limb/bed_answer.hpp"

#include <array>
#include <cmath>

#include "models/limb/bed_station.hpp"
#include "models/limb/motion_measure.hpp"

namespace endplate::limb {
namespace {

// Strain is given over so much of a nerve on either side of a place.
constexpr double kHalfStretch_mm = 10.0;

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

Scattered scattered(double value, double scatter) {
  const double factor = std::exp(kNineInTen * scatter);
  const double less = value / factor;
  const double more = value * factor;
  return {value, std::min(less, more), std::max(less, more)};
}

}  // namespace

Expected<std::vector<BedAnswer>> bed_answers(const evidence::DataPackage& package,
                                             const Atlas& atlas, const SegmentFrames& frames,
                                             const LimbJoints& joints, const BodyEnvelope& envelope,
                                             const Pose& pose) {
  const auto parameters = MotionParameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto plans = bed_plans(package, atlas);
  if (!plans) return std::unexpected(plans.error());
  const auto measures = motion_measures(package);
  if (!measures) return std::unexpected(measures.error());

  const PosedSpace space(frames, joints, pose);
  const PosedNerves nerves(atlas.landmarks(), envelope, frames, space);
  std::vector<BedAnswer> answers;
  for (const BedPlan& plan : *plans) {
    const NerveBed bed(plan, atlas, frames, joints, envelope, *parameters);
    const BedMotion moved = motion(bed, nerves);
    BedAnswer answer;
    answer.nerve = plan.nerve;
    answer.bed_mm = moved.arc_mm.back();
    answer.lengthening_mm = moved.lengthening_mm;
    for (const Station& station : kStations) {
      const double level =
          station.level + station.proximal_mm * frames.fraction_per_mm(station.segment);
      const std::size_t at = place_at_level(bed, frames, station.segment, level);
      answer.stations.push_back(
          {station.place,
           scattered(excursion_mm(bed, moved, space, station.segment, at), parameters->scatter),
           scattered(strain_about(bed, moved, at, kHalfStretch_mm), parameters->scatter)});
    }
    const auto [from, to] = bed.range_of(plan.courses.front());
    const double rest = bed.rest_mm()[to - 1] - bed.rest_mm()[from];
    const double now = moved.arc_mm[to - 1] + moved.slide.slide_mm[to - 1] - moved.arc_mm[from] -
                       moved.slide.slide_mm[from];
    answer.mean_strain = now / rest - 1.0;
    for (const MotionMeasure& m : *measures) {
      if (m.judged && m.bed == plan.bed) answer.sources.push_back(m.row);
    }
    answers.push_back(std::move(answer));
  }
  return answers;
}

}  // namespace endplate::limb
