#include "models/limb/limb_answer.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "models/limb/case_limb.hpp"
#include "models/limb/case_pose.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::limb {
namespace {

void add_measures(const LimbSize& size, LimbAnswer& answer) {
  for (const Measure& measure : size.vocabulary().measures()) {
    if (measure.shown_as == ShownAs::not_shown) continue;
    SizedMeasure sized{measure.label,
                       measure.name,
                       measure.definition,
                       size.summary(measure.weights),
                       size.percentile(measure.weights),
                       measure.provenance,
                       measure.reason};
    auto& list = measure.shown_as == ShownAs::segment   ? answer.segments
                 : measure.shown_as == ShownAs::breadth ? answer.breadths
                                                        : answer.girths;
    list.push_back(std::move(sized));
  }
  const auto variables = static_cast<Eigen::Index>(size.measures().size());
  const Eigen::VectorXd stature = Eigen::VectorXd::Unit(variables, 0);
  answer.stature_mm = size.summary(stature);
  answer.stature_percentile = size.percentile(stature);
}

void add_landmarks(const LandmarkSet& set, const LimbSize& size, const CasePose& pose, int samples,
                   std::uint64_t seed, LimbAnswer& answer) {
  const SegmentFrames mean_frames(size.mean_scale(), answer.side);
  const PosedSpace mean_space(mean_frames, pose.joints, pose.pose);
  std::vector<SegmentFrames> frames;
  std::vector<PosedSpace> spaces;
  for (const SizedLimb& limb : size.sample(samples, seed)) {
    frames.emplace_back(limb.scale, answer.side);
    spaces.emplace_back(frames.back(), pose.joints, pose.pose);
  }
  for (const Landmark& landmark : set.landmarks()) {
    const Eigen::Vector3d position = LandmarkSet::posed_mm(landmark, mean_frames, mean_space);
    Eigen::Array3d squares = Eigen::Array3d::Zero();
    for (std::size_t i = 0; i < frames.size(); ++i) {
      squares +=
          (LandmarkSet::posed_mm(landmark, frames[i], spaces[i]) - position).array().square();
    }
    const double placement_mm = landmark.sd_mm * size.mean_scale().breadth;
    const Eigen::Array3d variance =
        squares / static_cast<double>(frames.size()) + placement_mm * placement_mm;
    answer.landmarks.push_back({landmark.name, landmark.segment, position, variance.sqrt().matrix(),
                                landmark.provenance, landmark.reason});
  }
}

void add_frames(const SegmentFrames& frames, const PosedSpace& space, LimbAnswer& answer) {
  const auto add = [&](const char* name, Bone bone, Segment segment) {
    const Eigen::Isometry3d moved = space.of_bone(bone);
    answer.frames.push_back(
        {name, moved * frames.origin(segment), moved.linear() * frames.anterior(segment),
         moved.linear() * frames.proximal(segment), moved.linear() * frames.lateral(segment)});
  };
  add("humerus", Bone::humerus, Segment::humerus);
  add("ulna", Bone::ulna, Segment::forearm);
  add("radius", Bone::radius, Segment::forearm);
  add("hand", Bone::hand, Segment::hand);
}

void add_nerves(const CaseLimb& case_limb, const anatomy::NerveTree& tree,
                const SegmentFrames& frames, const PosedNerves& posed, const PosedBeds& beds,
                const std::optional<UlnarTransposition>& transposition, int samples,
                std::uint64_t seed, std::set<std::string>& sources, LimbAnswer& answer) {
  constexpr double kStep_mm = 10.0;
  const auto sampled = case_limb.sample(samples, seed);
  for (anatomy::NodeIndex node = 0; node < tree.size(); ++node) {
    if (tree.node(node).kind != anatomy::NodeKind::terminal) continue;
    if (!std::isfinite(case_limb.metrics().length_mm[node])) continue;
    std::vector<double> lengths_mm;
    for (const auto& metrics : sampled) lengths_mm.push_back(metrics.length_mm[node]);
    const auto own = case_limb.sources(node);
    sources.insert(own.begin(), own.end());
    NerveLength nerve{tree.node(node).name, summarise_sample(lengths_mm), std::nullopt, {}, own};
    std::vector<Eigen::Vector3d> neutral_mm;
    for (Eigen::Vector3d p : case_limb.path_mm(node, kStep_mm)) {
      if (answer.side == Side::left) p.z() = -p.z();
      if (transposition && nerve.nerve == "ulnar nerve") {
        p = transposed_mm(frames, transposition->layer, p);
      }
      neutral_mm.push_back(p);
      const std::string_view course = nerve.nerve == "axillary nerve" ? "axillary" : "";
      nerve.path_mm.push_back(posed(nerve_place(course, frames, p)));
    }
    if (answer.pose_deg.empty()) {
      nerve.strain = 0.0;
    } else if (!nerve.path_mm.empty() && !(transposition && nerve.nerve == "ulnar nerve")) {
      nerve.strain = beds.strain_of(neutral_mm);
    }
    answer.nerves.push_back(std::move(nerve));
  }
}

}  // namespace

Expected<LimbAnswer> answer_limb(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                 const std::vector<casefile::Operation>& operations, int samples,
                                 std::uint64_t seed) {
  const auto landmarks = LandmarkSet::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());
  const auto case_limb = CaseLimb::from(package, tree, limb);
  if (!case_limb) return std::unexpected(case_limb.error());
  const LimbSize& size = case_limb->size();
  const SegmentFrames frames(size.mean_scale(), limb.side);
  const auto pose = CasePose::from(package, frames, limb.pose_deg);
  if (!pose) return std::unexpected(pose.error());
  const auto transposition = ulnar_transposition(operations);
  const PosedSpace space(frames, pose->joints, pose->pose);
  const auto atlas = Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  const PosedNerves posed(atlas->landmarks(), pose->envelope, frames, space);
  const auto beds =
      PosedBeds::from(package, *atlas, frames, pose->joints, pose->envelope, pose->pose);
  if (!beds) return std::unexpected(beds.error());

  LimbAnswer answer;
  answer.side = limb.side;
  if (!pose->pose.is_neutral()) answer.pose_deg = limb.pose_deg;
  std::set<std::string> sources(size.sources().begin(), size.sources().end());
  add_measures(size, answer);
  add_frames(frames, space, answer);
  add_landmarks(*landmarks, size, *pose, samples, seed, answer);
  add_nerves(*case_limb, tree, frames, posed, *beds, transposition, samples, seed, sources, answer);
  if (!answer.pose_deg.empty()) {
    for (const BedAnswer& bed : beds->answers()) {
      // A transposed ulnar nerve has another bed.
      if (transposition && bed.nerve == "ulnar nerve") continue;
      sources.insert(bed.sources.begin(), bed.sources.end());
      answer.beds.push_back(bed);
    }
  }
  answer.sources.assign(sources.begin(), sources.end());
  answer.warnings = case_limb->warnings();

  if (!limb.side_given) answer.assumptions.emplace_back("Side is not given: right is shown.");
  const auto add = [&](const std::vector<std::string>& words) {
    for (const std::string& word : words) {
      if (std::ranges::find(answer.assumptions, word) == answer.assumptions.end()) {
        answer.assumptions.push_back(word);
      }
    }
  };
  add(case_limb->assumptions());
  add(pose->assumptions);
  if (transposition) add({in_words(*transposition)});
  if (answer.pose_deg.empty()) {
    answer.assumptions.emplace_back(
        "Anatomical position, arm at the side, forearm supinated: the pose against which strain is "
        "reckoned, so every strain is 0.");
  } else {
    answer.assumptions.emplace_back(
        "Lengths, breadths and girths are those of the anatomical position, the nerves' lengths "
        "too. Strain is reckoned for the nerves whose bed is modelled, from the neck to a "
        "fingertip.");
  }
  answer.assumptions.emplace_back(
      "Landmarks are assumed: placed by textbook anatomy and the spacing of published distances.");
  return answer;
}

}  // namespace endplate::limb
