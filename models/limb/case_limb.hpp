#pragma once
// The limb of one case in the anatomical position, as lengths along its nerves. Both sides alike.
#include <Eigen/Core>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/lesion.hpp"
#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::limb {

class CaseLimbCourse;
class LevelSpread;
class LimbSize;
struct FoundPoint;
struct PassedLandmark;

class CaseLimb {
 public:
  static Expected<CaseLimb> from(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb);

  // Of the mean limb: that of the case's mean size with every branch at its mean level.
  const anatomy::NerveMetrics& metrics() const { return metrics_; }

  // Of sampled limbs; limb i depends on the seed and i alone, whatever the number asked for. A limb
  // differs from the mean one by its size (LimbSize::sample), by the levels of its branches and by
  // the lengths of those off the courses. Levels vary by the published spread of distances and the
  // fit's uncertainty; neighbours on a course move together (correlation exp(-d / 100 mm), assumed)
  // and keep their order. A point that ultrasound found takes the others of its
  // course along, by the same correlation.
  std::vector<anatomy::NerveMetrics> sample(int count, std::uint64_t seed) const;

  // Where an injury of a case file lies on the tree, on the mean limb. A place outside the nerve or
  // its segment is refused with the range that would be accepted. Problems stand at "at": the
  // caller knows of which injury.
  Expected<anatomy::Lesion> place(const std::string& nerve, const casefile::Place& at) const;

  // The place of the injury with that number in its case, which gives one. Problems stand at
  // "/injuries/INDEX/at" or "/nerve".
  Expected<anatomy::Lesion> place_injury(const casefile::Injury& injury, std::size_t index) const;

  // The same place in each of the limbs of sample(): mm from the start of its nerve. An offset from
  // a landmark stays what was measured on the patient, whatever the size of the limb.
  Expected<std::vector<double>> sample_places_mm(const std::string& nerve,
                                                 const casefile::Place& at, int count,
                                                 std::uint64_t seed) const;

  // Where a nerve that has a course runs, from its beginning to its end in steps of at most
  // `step_mm`: on the mean right limb at rest, in the limb frame, mm. Empty for the others.
  std::vector<Eigen::Vector3d> path_mm(anatomy::NodeIndex nerve, double step_mm) const;
  // The stretch of a course of the atlas that a nerve follows, mm along that course; nothing for a
  // nerve without a course.
  struct OnCourse {
    std::size_t course = 0;
    double from_mm = 0.0;
    double to_mm = 0.0;
  };
  std::optional<OnCourse> on_course(anatomy::NodeIndex nerve) const;
  // By course of the atlas, on the mean right limb at rest.
  const std::vector<CaseLimbCourse>& courses() const;
  // Its size, with all that is known of it.
  const LimbSize& size() const;
  // Points of nerves that were found on the patient, where limbs of that size have them, and how
  // far the level of any point differs between limbs.
  const std::vector<FoundPoint>& found_points() const;
  const LevelSpread& level_spread() const;

  // What was not given and therefore taken, in words.
  const std::vector<std::string>& assumptions() const;
  // Where the patient lies outside what was published, in words with the source.
  const std::vector<std::string>& warnings() const;
  // Ids of the published rows behind the position of a nerve's beginning and end.
  std::vector<std::string> sources(anatomy::NodeIndex nerve) const;

 private:
  Expected<anatomy::Lesion> place_at_passed(anatomy::NodeIndex nerve, const PassedLandmark& passed,
                                            const casefile::AtLandmark& at) const;

  struct Parts;  // shared: a case's limb never changes
  std::shared_ptr<const Parts> parts_;
  anatomy::NerveMetrics metrics_;
};

}  // namespace endplate::limb
