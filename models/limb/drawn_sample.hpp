#pragma once
// How far the drawn nerves of one sampled limb lie from where they are drawn.
//
// Each point is shifted in every direction by its sd_mm; where its depth is known only along the
// skin, and in depth by what was found to vary between limbs. Shifts of points d apart have the
// correlation exp(-d / 100 mm), as the levels on a course; a branch begins with the shift of its
// parent, of which no more is carried on to a surer point than that point's own.
#include <Eigen/Core>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/limb/drawn_limb.hpp"
#include "models/limb/nerve_line.hpp"

namespace endplate::limb {

// Between limbs: SD of the depth of a skin nerve in 30 volunteers (1.9 mm, NP_135 and NP_136), and
// in a digit a quarter of the range in 20 thumbs (NP_087).
inline constexpr double kDepthSd_mm = 1.9;
inline constexpr double kDigitDepthSd_mm = 0.8;

struct DrawnShift {
  Eigen::Vector3d moved_mm = Eigen::Vector3d::Zero();  // right limb
  double deeper_mm = 0.0;
};

// By nerve and by point of its line. `with_course_mm`: by nerve, how far the place is shifted where
// it leaves a course; of the others nothing is read.
std::vector<std::vector<DrawnShift>> drawn_shifts(
    const std::vector<DrawnNerve>& nerves, const std::vector<Eigen::Vector3d>& with_course_mm,
    std::uint64_t seed, int limb);

// The places of the drawn nerves of a limb on either side, every `step_mm`.
class DrawnPlaces {
 public:
  // `frames`: of that limb on its side; `layer`: that the ulnar nerve was moved to, which takes the
  // beginnings of its branches along. `nerves` must outlive it.
  DrawnPlaces(const std::vector<DrawnNerve>& nerves, const anatomy::NerveTree& tree,
              const SegmentFrames& frames, std::optional<casefile::Layer> layer, double step_mm);

  // Where place k of a nerve lies in a pose, with the shifts of its line's points.
  Eigen::Vector3d lie(std::size_t nerve, std::size_t k, const std::vector<DrawnShift>& of_line,
                      const PosedNerves& posed) const;
  // What carries each of them, without a shift, for many poses.
  std::vector<NervePlace> mean_places(std::size_t nerve) const;
  // All of them without a shift.
  std::vector<Eigen::Vector3d> mean_mm(std::size_t nerve, const PosedNerves& posed) const;

 private:
  struct Line {
    std::vector<DrawnPlace> places;
    std::vector<double> shares;  // of the drawn length
    // How far an operation takes its beginning, on the limb's side.
    Eigen::Vector3d with_parent_mm = Eigen::Vector3d::Zero();
  };
  NervePlace carried(std::size_t nerve, std::size_t k, const DrawnShift& shift) const;
  Eigen::Vector3d sided(Eigen::Vector3d p) const;

  const std::vector<DrawnNerve>& nerves_;
  SegmentFrames frames_;
  std::vector<Line> lines_;
};

}  // namespace endplate::limb
