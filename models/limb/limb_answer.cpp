#include "models/limb/limb_answer.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "models/limb/case_limb.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/limb/limb_size.hpp"

namespace endplate::limb {
namespace {

Expected<void> check_neutral(const casefile::Limb& limb) {
  std::vector<Problem> problems;
  for (const auto& [joint, angle_deg] : limb.pose_deg) {
    if (angle_deg == 0.0) continue;
    problems.push_back({"/limb/pose/" + joint,
                        fmt::format("{:g} degrees: the limb is modelled in the anatomical position "
                                    "only",
                                    angle_deg),
                        "Give 0 degrees or leave the pose out."});
  }
  if (problems.empty()) return {};
  return std::unexpected(Error{Fault::outside_model, std::move(problems)});
}

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

void add_landmarks(const LandmarkSet& set, const LimbSize& size, int samples, std::uint64_t seed,
                   LimbAnswer& answer) {
  const SegmentFrames mean_frames(size.mean_scale(), answer.side);
  std::vector<SegmentFrames> frames;
  for (const SizedLimb& limb : size.sample(samples, seed)) {
    frames.emplace_back(limb.scale, answer.side);
  }
  for (const Landmark& landmark : set.landmarks()) {
    const Eigen::Vector3d position = LandmarkSet::position_mm(landmark, mean_frames);
    Eigen::Array3d squares = Eigen::Array3d::Zero();
    for (const SegmentFrames& sampled : frames) {
      squares += (LandmarkSet::position_mm(landmark, sampled) - position).array().square();
    }
    const double placement_mm = landmark.sd_mm * size.mean_scale().breadth;
    const Eigen::Array3d variance =
        squares / static_cast<double>(frames.size()) + placement_mm * placement_mm;
    answer.landmarks.push_back({landmark.name, landmark.segment, position, variance.sqrt().matrix(),
                                landmark.provenance, landmark.reason});
  }
}

void add_nerves(const CaseLimb& case_limb, const anatomy::NerveTree& tree, int samples,
                std::uint64_t seed, std::set<std::string>& sources, LimbAnswer& answer) {
  const auto sampled = case_limb.sample(samples, seed);
  for (anatomy::NodeIndex node = 0; node < tree.size(); ++node) {
    if (tree.node(node).kind != anatomy::NodeKind::terminal) continue;
    if (!std::isfinite(case_limb.metrics().length_mm[node])) continue;
    std::vector<double> lengths_mm;
    for (const auto& metrics : sampled) lengths_mm.push_back(metrics.length_mm[node]);
    const auto own = case_limb.sources(node);
    sources.insert(own.begin(), own.end());
    answer.nerves.push_back({tree.node(node).name, summarise_sample(lengths_mm), 0.0, own});
  }
}

}  // namespace

Expected<LimbAnswer> answer_limb(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                 int samples, std::uint64_t seed) {
  if (auto neutral = check_neutral(limb); !neutral) return std::unexpected(neutral.error());
  const auto landmarks = LandmarkSet::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());
  const auto case_limb = CaseLimb::from(package, tree, limb);
  if (!case_limb) return std::unexpected(case_limb.error());

  const LimbSize& size = case_limb->size();

  LimbAnswer answer;
  answer.side = limb.side;
  std::set<std::string> sources(size.sources().begin(), size.sources().end());
  add_measures(size, answer);
  add_landmarks(*landmarks, size, samples, seed, answer);
  add_nerves(*case_limb, tree, samples, seed, sources, answer);
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
  answer.assumptions.emplace_back(
      "Anatomical position, arm at the side, forearm supinated: the pose against which strain is "
      "reckoned, so every strain is 0.");
  answer.assumptions.emplace_back(
      "Landmarks are assumed: placed by textbook anatomy and the spacing of published distances.");
  return answer;
}

}  // namespace endplate::limb
