#include "models/limb/motion_measure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <optional>
#include <ranges>

#include "models/limb/bed_station.hpp"

namespace endplate::limb {
namespace {

// A strain gauge spans about so much on either side of its middle (assumed).
constexpr double kHalfGauge_mm = 10.0;
// The bed from armpit to palm, in levels of arm and hand (assumed).
constexpr double kArmpit = 0.8;
constexpr double kPalm = 0.3;

// "elbow_flexion_deg 90; wrist_extension_deg 60"
std::optional<std::map<std::string, double>> pose_of(std::string_view text) {
  std::map<std::string, double> pose;
  for (const auto part : std::views::split(text, ';')) {
    std::string_view item(part.begin(), part.end());
    while (item.starts_with(' ')) item.remove_prefix(1);
    if (item.empty()) continue;
    const std::size_t blank = item.find(' ');
    double angle = 0.0;
    if (blank == std::string_view::npos) return std::nullopt;
    const auto [end, fault] =
        std::from_chars(item.data() + blank + 1, item.data() + item.size(), angle);
    if (fault != std::errc() || end != item.data() + item.size()) return std::nullopt;
    pose.emplace(item.substr(0, blank), angle);
  }
  return pose;
}

}  // namespace

std::optional<bool> within_published(const MotionMeasure& m, double change) {
  if (std::isfinite(m.sd)) return std::abs(change - m.mean) <= kNineInTen * m.sd;
  if (std::isfinite(m.low) && std::isfinite(m.high)) return change >= m.low && change <= m.high;
  return std::nullopt;
}

Expected<std::vector<MotionMeasure>> motion_measures(const evidence::DataPackage& package) {
  std::map<std::string, evidence::Row, std::less<>> figures;
  for (const evidence::Row row : package.table("nerve_paths")) {
    figures.emplace(row.text("id"), row);
  }
  std::map<std::string, std::string, std::less<>> nerves;
  for (const evidence::Row row : package.table("nerve_beds")) {
    nerves.emplace(row.text("bed"), row.text("nerve"));
  }
  std::vector<MotionMeasure> measures;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("nerve_motion_measures")) {
    MotionMeasure m;
    m.row = row.text("row");
    m.bed = row.text("bed");
    m.nerve = nerves.find(m.bed)->second;  // a foreign key
    const evidence::Row& figure = figures.find(m.row)->second;
    const std::string_view quantity = row.text("quantity");
    m.quantity = quantity == "excursion"       ? MotionQuantity::excursion_mm
                 : quantity == "strain"        ? MotionQuantity::strain_percent
                 : figure.text("unit") == "mm" ? MotionQuantity::bed_mm
                                               : MotionQuantity::bed_percent;
    m.segment = segment_from(row.text("segment")).value();
    m.fraction = row.number("fraction").value();
    m.proximal_mm = row.number("proximal_mm").value_or(0.0);
    for (const auto& [column, pose] :
         {std::pair{"from_pose", &m.from_deg}, std::pair{"to_pose", &m.to_deg}}) {
      if (auto read = pose_of(row.text(column))) {
        *pose = *std::move(read);
      } else {
        problems.push_back(
            {fmt::format("nerve_motion_measures.csv, row {}, column {}", row.line(), column),
             fmt::format("'{}' is no pose", row.text(column)),
             "Write keys of a case's pose, each with its degrees, between semicolons."});
      }
    }
    const std::string_view direction = row.text("direction");
    m.sign = direction == "distal" || direction == "longer" ? 1.0 : -1.0;
    m.judged = row.text("judged") == "yes";
    m.note = row.text("note");
    m.study = figure.text("study");
    m.place = figure.text("to_or_level");
    m.posture = figure.text("posture");
    m.limbs = static_cast<int>(figure.number("n").value_or(0.0));
    m.recalled = figure.text("provenance") == "recalled";
    const auto printed = [&](const char* column) {
      return figure.number(column).value_or(std::numeric_limits<double>::quiet_NaN());
    };
    // The tables hold sizes; a bed that shortens is the one that carries its own sign.
    m.mean = m.sign * std::abs(printed("mean"));
    m.sd = printed("sd");
    m.low = printed("min");
    m.high = printed("max");
    if (m.sign < 0.0) {
      std::swap(m.low, m.high);
      m.low = -m.low;
      m.high = -m.high;
    }
    measures.push_back(std::move(m));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return measures;
}

MotionModel::MotionModel(const Atlas& atlas, const LimbJoints& joints, const BodyEnvelope& envelope,
                         const std::vector<BedPlan>& plans, const SegmentFrames& frames)
    : atlas_(atlas), joints_(joints), envelope_(envelope), plans_(plans), frames_(frames) {}

double MotionModel::in_pose(const MotionMeasure& measure, const NerveBed& bed,
                            const std::map<std::string, double>& pose_deg) const {
  const PosedSpace space(frames_, joints_, pose_from(pose_deg));
  const PosedNerves nerves(atlas_.landmarks(), envelope_, frames_, space);
  const BedMotion moved = motion(bed, nerves);
  const double level =
      measure.fraction + measure.proximal_mm * frames_.fraction_per_mm(measure.segment);
  const std::size_t at = place_at_level(bed, frames_, measure.segment, level);
  const std::vector<double>& rest = bed.rest_mm();
  switch (measure.quantity) {
    case MotionQuantity::bed_mm:
      return moved.lengthening_mm;
    case MotionQuantity::bed_percent: {
      const std::size_t from = place_at_level(bed, frames_, Segment::humerus, kArmpit);
      const std::size_t to = place_at_level(bed, frames_, Segment::hand, kPalm);
      const double neutral = rest[to] - rest[from];
      return 100.0 * ((moved.arc_mm[to] - moved.arc_mm[from]) / neutral - 1.0);
    }
    case MotionQuantity::strain_percent:
      return 100.0 * strain_about(bed, moved, at, kHalfGauge_mm);
    case MotionQuantity::excursion_mm:
      break;
  }
  return excursion_mm(bed, moved, space, measure.segment, at);
}

double MotionModel::read(const MotionMeasure& measure, const MotionParameters& parameters) const {
  const auto plan = std::ranges::find(plans_, measure.bed, &BedPlan::bed);
  const NerveBed bed(*plan, atlas_, frames_, joints_, envelope_, parameters);
  return in_pose(measure, bed, measure.to_deg) - in_pose(measure, bed, measure.from_deg);
}

}  // namespace endplate::limb
