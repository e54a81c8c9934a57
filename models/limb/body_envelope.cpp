#include "models/limb/body_envelope.hpp"

#include <fmt/format.h>

#include <limits>

namespace endplate::limb {
namespace {

// The column's words are checked when the table is read.
Segment segment_of(const evidence::Row& row) {
  return segment_from(row.text("segment")).value();
}

SegmentPoint place_of(const evidence::Row& row, std::string_view end) {
  const auto number = [&](std::string_view column) {
    return row.number(fmt::format("{}_{}", end, column)).value();
  };
  return {number("fraction"), number("x_mm"), number("z_mm")};
}

}  // namespace

Expected<BodyEnvelope> BodyEnvelope::from(const evidence::DataPackage& package) {
  BodyEnvelope envelope;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("skin_outline")) {
    auto& sections = envelope.skin_[static_cast<std::size_t>(segment_of(row))];
    const SkinSection section{row.number("fraction").value(), row.number("centre_x_mm").value(),
                              row.number("half_depth_mm").value(),
                              row.number("half_width_mm").value()};
    if (!sections.empty() && section.fraction <= sections.back().fraction) {
      problems.push_back({fmt::format("skin_outline.csv, row {}, column fraction", row.line()),
                          "the sections of a segment do not ascend",
                          "Sort the segment's rows by fraction."});
    }
    sections.push_back(section);
  }
  for (const auto& sections : envelope.skin_) {
    if (sections.size() >= 2) continue;
    problems.push_back({"skin_outline.csv", "a segment has fewer than two sections",
                        "Give humerus, forearm and hand at least two sections each."});
  }
  for (const evidence::Row row : package.table("bone_capsules")) {
    envelope.capsules_.push_back({std::string(row.text("bone")), std::string(row.text("part")),
                                  segment_of(row), place_of(row, "from"), place_of(row, "to"),
                                  row.number("radius_mm").value()});
  }
  if (envelope.capsules_.empty()) {
    problems.push_back({"bone_capsules.csv", "it holds no bone", "Give at least one capsule."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return envelope;
}

Segment BodyEnvelope::covering(const SegmentFrames& frames, const Eigen::Vector3d& p) const {
  if (frames.from_limb(Segment::hand, p).fraction > 0.0) return Segment::hand;
  const double arm = depth_in_mm<double>(Segment::humerus, frames, p);
  const double forearm = depth_in_mm<double>(Segment::forearm, frames, p);
  return arm > forearm ? Segment::humerus : Segment::forearm;
}

Eigen::Vector3d BodyEnvelope::inside(const SegmentFrames& frames, const Eigen::Vector3d& p,
                                     double least_depth_mm) const {
  const Segment segment = covering(frames, p);
  const auto depth = [&](const Eigen::Vector3d& place) {
    return depth_in_mm<double>(segment, frames, place);
  };
  if (depth(p) >= least_depth_mm) return p;
  const SegmentPoint place = frames.from_limb(segment, p);
  const Eigen::Vector3d axis = frames.to_limb(segment, place.fraction, 0.0, 0.0);
  // Depth falls along the ray from the axis, and nearly evenly.
  double inner = 0.0;
  double outer = 1.0;
  for (int halvings = 0; halvings < 30; ++halvings) {
    const double middle = 0.5 * (inner + outer);
    (depth(axis + middle * (p - axis)) >= least_depth_mm ? inner : outer) = middle;
  }
  return axis + inner * (p - axis);
}

std::size_t BodyEnvelope::nearest_capsule(const SegmentFrames& frames,
                                          const Eigen::Vector3d& p) const {
  std::size_t nearest = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < capsules_.size(); ++i) {
    const double distance = distance_mm<double>(frames, capsules_[i], p);
    if (distance < least) {
      least = distance;
      nearest = i;
    }
  }
  return nearest;
}

}  // namespace endplate::limb
