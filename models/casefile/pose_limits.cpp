#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <string_view>

#include "models/casefile/read.hpp"

namespace endplate::casefile {
namespace {

// Photographic deviations of the wrist: a radial deviation of 65 degrees is three times what every
// goniometer found and no wrist does it, so the study measured something else, in both directions.
constexpr std::array<std::string_view, 2> kOtherMeaning{"JT_203", "JT_204"};

struct Range {
  double deg = 0.0;
  std::string row;
};

double range_of(const evidence::Row& row) {
  return std::max(row.number("value").value_or(0.0), row.number("max").value_or(0.0));
}

class Published {
 public:
  explicit Published(const evidence::DataPackage& package) : package_(package) {}

  // The largest range of one movement, whoever was measured.
  Range largest(std::string_view joint, std::string_view movement) const {
    Range found;
    each(joint, movement, [&](const evidence::Row& row) {
      if (range_of(row) > found.deg) found = {range_of(row), std::string(row.text("id"))};
    });
    return found;
  }

  // The largest sum of two movements that one study found.
  Range largest_arc(std::string_view joint, std::string_view one, std::string_view other) const {
    std::map<std::string, Range> first;
    each(joint, one, [&](const evidence::Row& row) {
      first[std::string(row.text("study"))] = {range_of(row), std::string(row.text("id"))};
    });
    Range found;
    each(joint, other, [&](const evidence::Row& row) {
      const auto same = first.find(std::string(row.text("study")));
      if (same == first.end() || same->second.deg + range_of(row) <= found.deg) return;
      found = {same->second.deg + range_of(row),
               same->second.row + " and " + std::string(row.text("id"))};
    });
    return found;
  }

 private:
  template <class Use>
  void each(std::string_view joint, std::string_view movement, const Use& use) const {
    for (const evidence::Row row : package_.table("joints")) {
      if (row.text("kind") != "range of motion" || row.text("joint") != joint ||
          row.text("item") != movement ||
          std::ranges::find(kOtherMeaning, row.text("id")) != kOtherMeaning.end()) {
        continue;
      }
      use(row);
    }
  }

  const evidence::DataPackage& package_;
};

}  // namespace

PoseLimits pose_limits(const evidence::DataPackage& package) {
  const Published published(package);
  PoseLimits limits;
  const auto add = [&](std::string key, std::string_view joint, std::string_view movement,
                       std::string_view opposite = {}, std::string_view in_words = {}) {
    const Range high = published.largest(joint, movement);
    PoseLimit limit{0.0, high.deg, high.row, "0 is straight"};
    if (!opposite.empty()) {
      const Range low = published.largest(joint, opposite);
      // 0 - x rather than -x: no negative zero in messages.
      limit.low_deg = 0.0 - low.deg;
      limit.rows = low.row + " and " + high.row;
      limit.meaning = fmt::format("0 is the anatomical position, negative is {}", in_words);
    }
    limits.emplace(std::move(key), std::move(limit));
  };
  add("shoulder_abduction_deg", "shoulder", "shoulder abduction");
  limits.at("shoulder_abduction_deg").meaning = "0 is the arm at the side";
  add("shoulder_flexion_deg", "shoulder", "shoulder flexion", "shoulder extension",
      "shoulder extension");
  add("shoulder_external_rotation_deg", "shoulder", "shoulder lateral rotation",
      "shoulder medial rotation", "internal rotation");
  add("elbow_flexion_deg", "elbow", "elbow flexion");
  const Range arc = published.largest_arc("forearm", "forearm pronation", "forearm supination");
  limits.emplace("forearm_pronation_deg",
                 PoseLimit{0.0, arc.deg, arc.row, "0 is full supination, the anatomical position"});
  add("wrist_extension_deg", "wrist", "wrist extension", "wrist flexion", "wrist flexion");
  add("wrist_ulnar_deviation_deg", "wrist", "wrist ulnar deviation", "wrist radial deviation",
      "radial deviation");

  add("fingers_flexion_deg", "finger MCP", "flexion");
  limits.at("fingers_flexion_deg").meaning =
      "0 is straight; of the knuckles, the other joints follow in proportion";
  for (const std::string finger : {"index", "middle", "ring", "little"}) {
    add(finger + "_mcp_flexion_deg", "finger MCP", "flexion", "hyperextension (upper limit)",
        "hyperextension");
    add(finger + "_pip_flexion_deg", "finger PIP", "flexion");
    add(finger + "_dip_flexion_deg", "finger DIP", "flexion");
  }
  add("thumb_palmar_abduction_deg", "thumb CMC", "palmar abduction");
  limits.at("thumb_palmar_abduction_deg").meaning = "0 is beside the palm";
  add("thumb_mcp_flexion_deg", "thumb MCP", "flexion", "extension", "hyperextension");
  add("thumb_ip_flexion_deg", "thumb IP", "flexion", "hyperextension", "hyperextension");
  return limits;
}

}  // namespace endplate::casefile
