#include "models/limb/deltoid_fibre.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// Of limb_landmarks.csv.
constexpr const char* kOrigin = "acromion, lateral edge";
constexpr const char* kInsertion = "deltoid insertion";

}  // namespace

DeltoidFibre::DeltoidFibre(const LandmarkSet& landmarks, const SegmentFrames& frames,
                           const PosedSpace& space)
    : origin_(landmarks.position_mm(kOrigin, frames).value()),
      fibre_(landmarks.position_mm(kInsertion, frames).value() - origin_),
      posed_origin_(space.of_bone(Bone::scapula) * origin_),
      posed_fibre_(space.of_bone(Bone::humerus) * Vector3d(origin_ + fibre_) - posed_origin_) {
  // As the humerus turns, so far as that goes with the fibre's own direction.
  const Eigen::Matrix3d humerus = space.of_bone(Bone::humerus).linear();
  turn_ = Eigen::Quaterniond::FromTwoVectors(humerus * fibre_, posed_fibre_).toRotationMatrix() *
          humerus;
}

Vector3d DeltoidFibre::operator()(const Vector3d& neutral_mm) const {
  const Vector3d from_origin = neutral_mm - origin_;
  const double fraction = from_origin.dot(fibre_) / fibre_.squaredNorm();
  const Vector3d beside = from_origin - fraction * fibre_;
  return posed_origin_ + fraction * posed_fibre_ + turn_ * beside;
}

}  // namespace endplate::limb
