#include "models/limb/drawn_sample.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/limb/level_spread.hpp"
#include "models/limb/limb_normals.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// Keeps these random numbers apart from those of other questions asked with the same seed.
constexpr std::uint64_t kStream = 0x726f757465760000;  // and the nerve's number

// Of the place on its parent where a branch begins, for what is carried on to its first point.
double parent_sd_mm(const std::vector<DrawnNerve>& nerves, const DrawnNerve& nerve) {
  if (!nerve.on_drawn) return nerve.points.front().sd_mm;
  const DrawnNerve& parent = nerves[nerve.on_drawn->nerve];
  const DrawnPlace place = parent.line.at(nerve.on_drawn->share);
  return parent.points[std::min(place.index, parent.points.size() - 1)].sd_mm;
}

// Between the points of a line.
DrawnShift shift_at(const std::vector<DrawnShift>& of_line, const DrawnPlace& place) {
  const DrawnShift& from = of_line[place.index];
  const DrawnShift& to = of_line[place.index + 1];
  return {from.moved_mm + place.share * (to.moved_mm - from.moved_mm),
          std::lerp(from.deeper_mm, to.deeper_mm, place.share)};
}

}  // namespace

std::vector<std::vector<DrawnShift>> drawn_shifts(const std::vector<DrawnNerve>& nerves,
                                                  const std::vector<Vector3d>& with_course_mm,
                                                  std::uint64_t seed, int limb) {
  std::vector<std::vector<DrawnShift>> result(nerves.size());
  for (std::size_t n = 0; n < nerves.size(); ++n) {
    const DrawnNerve& nerve = nerves[n];
    LimbNormals normals(seed, kStream + nerve.nerve, limb);
    const auto any_way = [&] {
      const double x = normals.next(), y = normals.next();
      return Vector3d(x, y, normals.next());
    };
    std::vector<DrawnShift>& shifts = result[n];
    shifts.resize(nerve.line.size());
    if (nerve.on_course) {
      shifts[0].moved_mm = with_course_mm[n];
    } else if (nerve.on_drawn) {
      const DrawnNerve& parent = nerves[nerve.on_drawn->nerve];
      shifts[0] = shift_at(result[nerve.on_drawn->nerve], parent.line.at(nerve.on_drawn->share));
    } else {
      shifts[0].moved_mm = nerve.points.front().sd_mm * any_way();
    }
    double sd_before_mm = parent_sd_mm(nerves, nerve);
    for (std::size_t p = 1; p < shifts.size(); ++p) {
      const DrawnPoint& point = nerve.points[p - 1];
      const double rho = level_correlation(0.0, nerve.line.away_mm(p));
      const double own = std::sqrt(1.0 - rho * rho);
      const double carried =
          sd_before_mm > 0.0 ? rho * std::min(1.0, point.sd_mm / sd_before_mm) : 0.0;
      shifts[p].moved_mm = carried * shifts[p - 1].moved_mm + own * point.sd_mm * any_way();
      // Along the skin only, where the depth is known.
      const Vector3d outward = nerve.line.outward(p);
      shifts[p].moved_mm -= shifts[p].moved_mm.dot(outward) * outward;
      const double depth_sd_mm = point.digit ? kDigitDepthSd_mm : kDepthSd_mm;
      shifts[p].deeper_mm = rho * shifts[p - 1].deeper_mm + own * depth_sd_mm * normals.next();
      sd_before_mm = point.sd_mm;
    }
  }
  return result;
}

DrawnPlaces::DrawnPlaces(const std::vector<DrawnNerve>& nerves, const anatomy::NerveTree& tree,
                         const SegmentFrames& frames, std::optional<casefile::Layer> layer,
                         double step_mm)
    : nerves_(nerves), frames_(frames) {
  for (const DrawnNerve& nerve : nerves) {
    Line line;
    const int steps = std::max(1, static_cast<int>(std::ceil(nerve.line.length_mm() / step_mm)));
    for (int k = 0; k <= steps; ++k) {
      line.shares.push_back(static_cast<double>(k) / steps);
      line.places.push_back(nerve.line.at(line.shares.back()));
    }
    const auto& parents = tree.node(nerve.nerve).parents;
    if (layer && nerve.on_course && tree.node(parents.front()).name == "ulnar nerve") {
      const Vector3d start = sided(nerve.line.point_mm(0));
      line.with_parent_mm = transposed_mm(frames, *layer, start) - start;
    } else if (nerve.on_drawn) {
      line.with_parent_mm =
          (1.0 - nerve.on_drawn->share) * lines_[nerve.on_drawn->nerve].with_parent_mm;
    }
    lines_.push_back(std::move(line));
  }
}

Vector3d DrawnPlaces::sided(Vector3d p) const {
  if (frames_.side() == Side::left) p.z() = -p.z();
  return p;
}

NervePlace DrawnPlaces::carried(std::size_t nerve, std::size_t k, const DrawnShift& shift) const {
  const Line& line = lines_[nerve];
  const DrawnPlace& place = line.places[k];
  const Vector3d p = sided(nerves_[nerve].line.in_flesh(place, shift.moved_mm, shift.deeper_mm)) +
                     (1.0 - line.shares[k]) * line.with_parent_mm;
  return DrawnLine::carried(place, frames_, p);
}

Vector3d DrawnPlaces::lie(std::size_t nerve, std::size_t k, const std::vector<DrawnShift>& of_line,
                          const PosedNerves& posed) const {
  return posed(carried(nerve, k, shift_at(of_line, lines_[nerve].places[k])));
}

std::vector<NervePlace> DrawnPlaces::mean_places(std::size_t nerve) const {
  std::vector<NervePlace> mean;
  for (std::size_t k = 0; k < lines_[nerve].places.size(); ++k) {
    mean.push_back(carried(nerve, k, DrawnShift{}));
  }
  return mean;
}

std::vector<Vector3d> DrawnPlaces::mean_mm(std::size_t nerve, const PosedNerves& posed) const {
  std::vector<Vector3d> mean;
  for (const NervePlace& place : mean_places(nerve)) mean.push_back(posed(place));
  return mean;
}

}  // namespace endplate::limb
