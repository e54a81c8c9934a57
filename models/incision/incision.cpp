#include "models/incision/incision.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/incision/mark_text.hpp"
#include "models/limb/drawn_courses.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/sampled_line.hpp"
#include "models/limb/ulnar_transposition.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;

// Places of a nerve stand so close.
constexpr double kLineStep_mm = 5.0;

AtSkin at_skin(const casefile::SkinMark& mark) {
  return {mark.at.landmark, mark.at.offset_mm, mark.at.toward, mark.aside_mm,
          mark.aside,       mark.surface,      std::nullopt};
}

std::vector<Vector3d> size_ratios(const limb::LimbSize& size, int samples, std::uint64_t seed) {
  const limb::SegmentScale mean = size.mean_scale();
  std::vector<Vector3d> ratios;
  for (const limb::SizedLimb& limb : size.sample(samples, seed)) {
    ratios.emplace_back(limb.scale.arm / mean.arm, limb.scale.forearm / mean.forearm,
                        limb.scale.hand / mean.hand);
  }
  return ratios;
}

// Of the skin nerves that are more likely than not met, the one that lies nearest to the skin.
std::optional<std::string> first_met(const std::vector<NamedNearby>& nerves) {
  const NamedNearby* first = nullptr;
  for (const NamedNearby& nerve : nerves) {
    if (!nerve.near.of_skin || nerve.near.nearest_mm.p50 > kMet_mm) continue;
    if (first == nullptr || nerve.near.depth_mm.p50 < first->near.depth_mm.p50) first = &nerve;
  }
  return first == nullptr ? std::nullopt : std::optional(first->nerve);
}

void say_what_was_taken(const IncisionAnswer& answer, std::vector<std::string>& assumptions) {
  if (!answer.depth_given) {
    assumptions.push_back(
        answer.kind == CutKind::injection
            ? fmt::format("The depth is not given: {:g} mm are taken.", kInjection_mm)
            : fmt::format("The depth is not given: straight in to the first bone is taken, {:g} mm "
                          "where there is none.",
                          kNoBone_mm));
  }
  assumptions.emplace_back(
      "The skin's shape and the depth of the nerves under it are assumed; lines of nerves differ "
      "between limbs as published distances do.");
  assumptions.emplace_back(
      "A mark given from a landmark is where a tape puts it; landmarks are taken as found without "
      "error.");
}

}  // namespace

PlannedCut planned(const casefile::Incision& incision) {
  PlannedCut cut;
  cut.label = incision.label;
  cut.kind = incision.kind;
  for (const casefile::SkinMark& mark : incision.points) cut.marks.push_back(at_skin(mark));
  if (incision.aimed_at) cut.aimed_at = at_skin(*incision.aimed_at);
  cut.depth_mm = incision.depth_mm;
  return cut;
}

Expected<IncisionAnswer> answer_incision(const casefile::Case& patient, const PlannedCut& planned,
                                         const evidence::DataPackage& package,
                                         const IncisionOptions& options) {
  const auto tree = anatomy::NerveTree::from(package);
  if (!tree) return std::unexpected(tree.error());
  const auto theatre = Theatre::from(package, *tree, patient.limb);
  if (!theatre) return std::unexpected(theatre.error());
  auto cut = lay_cut(*theatre, planned);
  if (!cut) return std::unexpected(cut.error());
  const auto lines = limb::sample_lines(
      package, *tree, theatre->limb(), theatre->pose(), patient.operations, theatre->side(),
      kLineStep_mm, options.samples, options.seed, [&](const std::vector<Vector3d>& mean_mm) {
        return comes_near(*cut, mean_mm, options.nearby);
      });
  if (!lines) return std::unexpected(lines.error());
  Nearby near =
      nearby(*theatre, *tree, *cut, *lines,
             size_ratios(theatre->limb().size(), options.samples, options.seed), options.nearby);

  std::optional<Corridor> beside;
  if (options.corridor) {
    const auto nerves = SampledNerves::from(*lines);
    if (!nerves) return std::unexpected(nerves.error());
    auto found = corridor(*theatre, *nerves, planned, *options.corridor);
    if (!found) return std::unexpected(found.error());
    beside = std::move(*found);
  }
  auto rules = rules_near(package, *theatre, *cut, options.approach);
  if (!rules) return std::unexpected(rules.error());

  IncisionAnswer answer;
  answer.rules = std::move(*rules);
  answer.corridor = std::move(beside);
  if (options.corridor) answer.corridor_within_mm = options.corridor->within_mm;
  answer.label = planned.label;
  answer.side = theatre->side();
  if (!theatre->pose().pose.is_neutral()) answer.pose_deg = patient.limb.pose_deg;
  answer.kind = planned.kind;
  for (const AtSkin& mark : planned.marks) answer.marks.push_back(in_words(mark));
  if (planned.aimed_at) answer.marks.push_back("toward " + in_words(*planned.aimed_at));
  answer.region = cut->stations.front().skin.region;
  answer.depth_given = cut->depth_given;
  const auto depth_mm = [](const Station& station) {
    return (station.track.to_mm - station.track.from_mm).norm();
  };
  const auto [low, high] = std::ranges::minmax(cut->stations, {}, depth_mm);
  answer.depth_low_mm = depth_mm(low);
  answer.depth_high_mm = depth_mm(high);
  answer.cut = std::move(*cut);
  const auto drawn = limb::DrawnCourses::from(package, *tree);
  if (!drawn) return std::unexpected(drawn.error());
  const auto girdle = limb::GirdleCourses::from(package, *tree);
  if (!girdle) return std::unexpected(girdle.error());
  std::set<std::string> sources;
  std::size_t assumed = 0;
  for (NerveNearby& nerve : near.nerves) {
    const auto own = theatre->limb().sources(nerve.nerve);
    for (const auto* rows : {&own, &drawn->rows(nerve.nerve), &girdle->rows(nerve.nerve)}) {
      sources.insert(rows->begin(), rows->end());
    }
    assumed += theatre->limb().on_course(nerve.nerve) ? 0 : 1;
    answer.nerves.push_back({tree->node(nerve.nerve).name, std::move(nerve)});
  }
  for (const QuotedRule& rule : answer.rules) sources.insert(rule.row);
  answer.first_skin_nerve = first_met(answer.nerves);
  answer.clear = std::move(near.clear);
  answer.along_chance = std::move(near.along_chance);
  answer.farther_than_mm = options.nearby.farther_than_mm;
  answer.sources.assign(sources.begin(), sources.end());
  answer.warnings = theatre->limb().warnings();
  if (!patient.limb.side_given) {
    answer.assumptions.emplace_back("Side is not given: right is shown.");
  }
  for (const auto* words : {&theatre->limb().assumptions(), &theatre->pose().assumptions}) {
    answer.assumptions.insert(answer.assumptions.end(), words->begin(), words->end());
  }
  if (answer.corridor) {
    answer.assumptions.emplace_back(
        "The corridor is that of this limb's own skin and of the mean limb's size; the least of "
        "many chances is a little too low.");
  }
  if (const auto moved = limb::ulnar_transposition(patient.operations)) {
    answer.assumptions.push_back(limb::in_words(*moved));
  }
  if (assumed > 0) {
    answer.assumptions.push_back(fmt::format(
        "{} of the {} nerves shown have no fitted course: they are drawn by textbook anatomy and "
        "what is published of them (drawn_courses.csv, girdle_courses.csv).",
        assumed, answer.nerves.size()));
  }
  say_what_was_taken(answer, answer.assumptions);
  return answer;
}

}  // namespace endplate::incision
