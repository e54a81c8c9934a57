#include "models/scan/scan_landmarks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>

#include "models/evidence/cell.hpp"
#include "models/evidence/csv.hpp"
#include "models/evidence/nearest_names.hpp"
#include "models/limb/landmark_set.hpp"

namespace endplate::scan {
namespace {

using limb::Bone;
using limb::Finger;

constexpr std::size_t kLargestFile_bytes = 1 << 20;  // some thousand landmarks
constexpr std::string_view kHeader = "landmark,x,y,z";

struct Carrier {
  std::string_view word;  // of the table's schema
  Bone bone;
  std::optional<Finger> finger;
};
constexpr Carrier kCarriers[]{{"scapula", Bone::scapula, {}},
                              {"humerus", Bone::humerus, {}},
                              {"ulna", Bone::ulna, {}},
                              {"radius", Bone::radius, {}},
                              {"hand", Bone::hand, {}},
                              {"index finger", Bone::hand, Finger::index},
                              {"middle finger", Bone::hand, Finger::middle},
                              {"ring finger", Bone::hand, Finger::ring},
                              {"little finger", Bone::hand, Finger::little}};

Expected<std::string> read_text(const std::filesystem::path& file) {
  const auto refuse = [&](std::string what, std::string mend) {
    return std::unexpected(Error::input({file.string(), std::move(what), std::move(mend)}));
  };
  std::error_code failed;
  if (!std::filesystem::exists(file, failed)) {
    return refuse("there is no such file", "Check the name and the folder.");
  }
  if (!std::filesystem::is_regular_file(file, failed)) {
    return refuse("this is no file", "Name a CSV file with the columns landmark, x, y, z.");
  }
  std::ifstream in(file, std::ios::binary);
  if (!in) return refuse("the file cannot be opened", "Check that you may read it.");
  std::string text(kLargestFile_bytes + 1, '\0');
  in.read(text.data(), static_cast<std::streamsize>(text.size()));
  text.resize(static_cast<std::size_t>(in.gcount()));
  if (text.size() > kLargestFile_bytes) {
    return refuse("the file is larger than 1 MiB",
                  "Name a CSV file with one landmark a row; the surface goes to --scan.");
  }
  // A spreadsheet may put a byte-order mark in front.
  if (text.starts_with("\xEF\xBB\xBF")) text.erase(0, 3);
  return text;
}

// Blanks about a cell are no part of it.
std::string_view trimmed(std::string_view cell) {
  const auto first = cell.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
}

}  // namespace

Eigen::Vector3d ScanLandmark::posed_mm(const limb::SegmentFrames& frames,
                                       const limb::PosedSpace& space) const {
  const Eigen::Vector3d neutral = frames.to_limb(segment, place);
  return finger ? space.flesh(neutral, finger) : Eigen::Vector3d(space.of_bone(bone) * neutral);
}

Expected<ScanLandmarks> ScanLandmarks::from(const evidence::DataPackage& package) {
  const auto placed = limb::LandmarkSet::from(package);
  if (!placed) return std::unexpected(placed.error());
  ScanLandmarks result;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("scan_landmarks")) {
    ScanLandmark landmark;
    landmark.name = row.text("landmark");
    const std::string_view place = row.text("place");
    if (const limb::Landmark* known = placed->find(place)) {
      landmark.segment = known->segment;
      landmark.place = known->place;
      landmark.sd_mm = known->sd_mm;
    } else {
      bool found = false;
      for (const evidence::Row joint : package.table("limb_joints")) {
        if (joint.text("joint") != place) continue;
        landmark.segment = limb::segment_from(joint.text("segment")).value();
        landmark.place = {joint.number("fraction").value(), joint.number("x_mm").value(),
                          joint.number("z_mm").value()};
        found = true;
      }
      if (!found) {
        problems.push_back({fmt::format("scan_landmarks.csv, row {}, column place", row.line()),
                            fmt::format("'{}' is placed nowhere", place),
                            "Name a row of limb_landmarks.csv or limb_joints.csv."});
      }
    }
    landmark.sd_mm = row.number("sd_mm").value_or(landmark.sd_mm);
    // The schema allows these words only.
    const auto* carrier = std::ranges::find(kCarriers, row.text("moves_with"), &Carrier::word);
    landmark.bone = carrier->bone;
    landmark.finger = carrier->finger;
    result.landmarks_.push_back(std::move(landmark));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

std::optional<std::size_t> ScanLandmarks::find(std::string_view name) const {
  const auto found = std::ranges::find_if(landmarks_, [&](const ScanLandmark& landmark) {
    return evidence::same_name(landmark.name, name);
  });
  if (found == landmarks_.end()) return std::nullopt;
  return static_cast<std::size_t>(found - landmarks_.begin());
}

std::vector<std::string> ScanLandmarks::nearest(std::string_view name) const {
  std::vector<std::string> names;
  for (const ScanLandmark& landmark : landmarks_) names.push_back(landmark.name);
  return evidence::nearest_names(name, names, 3);
}

Expected<std::vector<PickedLandmark>> read_picked_landmarks(const std::filesystem::path& file,
                                                            const ScanLandmarks& landmarks) {
  const auto text = read_text(file);
  if (!text) return std::unexpected(text.error());
  auto csv = evidence::parse_csv(*text, file.string());
  if (!csv) {
    csv.error().fault = Fault::input;
    return std::unexpected(csv.error());
  }
  if (fmt::format("{}", fmt::join(csv->header, ",")) != kHeader) {
    return std::unexpected(Error::input(
        {file.string(), fmt::format("the first line is '{}'", fmt::join(csv->header, ",")),
         fmt::format("Begin the file with the line {}, then one landmark a line.", kHeader)}));
  }
  std::vector<PickedLandmark> picked;
  std::vector<Problem> problems;
  const auto refuse = [&](std::size_t row, std::string_view column, std::string what,
                          std::string mend) {
    problems.push_back({fmt::format("{} row {} column {}", file.string(), csv->lines[row], column),
                        std::move(what), std::move(mend)});
  };
  for (std::size_t row = 0; row < csv->lines.size(); ++row) {
    const auto cell = [&](std::size_t column) { return trimmed(csv->cells[row * 4 + column]); };
    PickedLandmark pick;
    const auto known = landmarks.find(cell(0));
    if (!known) {
      refuse(row, "landmark", fmt::format("'{}' is no landmark of a scan", cell(0)),
             fmt::format("Perhaps one of these is meant: {}.",
                         fmt::join(landmarks.nearest(cell(0)), "; ")));
    } else if (std::ranges::find(picked, *known, &PickedLandmark::landmark) != picked.end()) {
      refuse(row, "landmark", fmt::format("'{}' is picked twice", cell(0)),
             "Keep the pick that is right.");
    } else {
      pick.landmark = *known;
    }
    const std::size_t before = problems.size();
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const auto value = evidence::parse_number(cell(axis + 1));
      if (!value) {
        refuse(row, csv->header[axis + 1], fmt::format("'{}' is no number", cell(axis + 1)),
               "Write a number with a point, in the coordinates of the scan's file.");
        continue;
      }
      pick.position[static_cast<Eigen::Index>(axis)] = *value;
    }
    if (known && problems.size() == before) picked.push_back(pick);
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::input, std::move(problems)});
  return picked;
}

}  // namespace endplate::scan
