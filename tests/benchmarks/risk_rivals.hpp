#pragma once
// The same questions put to CGAL's tree of boxes, Embree's point queries and nanoflann's k-d tree:
// one tree of each sampled limb's nerves, one query a track and limb.
//
// A limb's tracks are asked one after another, in the order given, so that its tree stays near the
// processor; limbs run in parallel. Trees are built beforehand.
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "geometry/track.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::benchmarks {

// In how many limbs each track comes within each of the distances.
using Counts = std::vector<std::vector<std::uint32_t>>;  // by distance, then track

class RiskRival {
 public:
  virtual ~RiskRival() = default;
  virtual std::string name() const = 0;
  // Nothing where the rival cannot be asked so.
  virtual Counts within(std::span<const geometry::Track> tracks,
                        std::span<const double> within_mm) const = 0;
  // Whether it finds the distance itself, so that several cost no more than one.
  virtual bool nearest() const = 0;
};

// Asked about points, the tracks' beginnings.
std::vector<std::unique_ptr<RiskRival>> point_rivals(const std::vector<limb::SampledLine>& lines);
// And about whole tracks, for one distance at a time.
std::vector<std::unique_ptr<RiskRival>> track_rivals(const std::vector<limb::SampledLine>& lines);
// Every stretch of every line against every track, by CGAL's distance of segments.
Counts every_stretch(const std::vector<limb::SampledLine>& lines,
                     std::span<const geometry::Track> tracks, std::span<const double> within_mm);

}  // namespace endplate::benchmarks
