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
