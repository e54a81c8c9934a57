#pragma once
// The ulnar nerve laid in front of the medial epicondyle by an operation.
//
// It leaves its own course 80 mm proximal to the epicondyle, where the arcade of Struthers is
// released (row AP_215 of approaches.csv), and is back on it 70 mm distal, among the heads of the
// flexor carpi ulnaris (assumed: within the 60 to 80 mm over which it is customarily freed). In
// front of the epicondyle it lies in the fat over the flexors or under them, where it is assumed to
// lie 14 and 10 mm in front of the epicondylar line and 31 and 20 mm medial of the axis. All on the
// ledger limb. The nerve itself stays as long as it was: its branches keep their places on it.
#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct UlnarTransposition {
  casefile::Layer layer = casefile::Layer::subcutaneous;
  bool layer_given = false;
};

// By the last operation done that transposed the ulnar nerve; nothing where none did. A planned
// operation has moved nothing yet.
std::optional<UlnarTransposition> ulnar_transposition(
    const std::vector<casefile::Operation>& operations);

// For the assumptions of an answer.
std::string in_words(const UlnarTransposition& transposition);

// Where a place of the ulnar nerve's own course in the anatomical position comes to lie, both in
// the limb frame of `frames`, mm.
Eigen::Vector3d transposed_mm(const SegmentFrames& frames, casefile::Layer layer,
                              const Eigen::Vector3d& neutral_mm);

}  // namespace endplate::limb
