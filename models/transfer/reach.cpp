#include "models/transfer/reach.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

#include "models/limb/case_limb.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/girdle_courses.hpp"
#include "models/limb/limb_size.hpp"
#include "models/transfer/branch_place.hpp"
#include "models/transfer/branch_way.hpp"
#include "models/transfer/freed_stretch.hpp"
#include "models/transfer/pivot_gap.hpp"
#include "models/transfer/reach_search.hpp"
#include "models/transfer/reach_sides.hpp"
#include "models/transfer/recipient_pivots.hpp"

namespace endplate::transfer {

using anatomy::NerveMetrics;
using anatomy::NodeIndex;
using limb::Segment;

std::string_view to_string(ReachState state) {
  switch (state) {
    case ReachState::reaches:
      return "reaches";
    case ReachState::with_graft:
      return "with graft";
    case ReachState::does_not_reach:
      return "does not reach";
    case ReachState::not_computable:
      break;
  }
  return "not computable";
}

struct ReachModel::Parts {
  const anatomy::NerveTree* tree;
  limb::CaseLimb limb;
  limb::SegmentFrames frames;
  limb::GirdleCourses girdle;
  FreedStretches stretches;
  BranchPlaces places;
  PivotGap pivot_gap;
  // The mean limb, then the sampled ones, and how long the segments of each are against the mean's.
  std::vector<NerveMetrics> limbs;
  std::vector<Eigen::Vector3d> ratios;
  std::vector<double> breadths;

  // How much wider a gap is in a limb than on the mean one: what lies along the segments grows with
  // their length, what lies across with the breadth.
  double ratio(std::size_t i, const PlacePair& pair) const {
    const Eigen::Vector3d gap = places.position_mm(pair.donor.carrier, pair.donor.arc_mm) -
                                places.position_mm(pair.recipient.carrier, pair.recipient.arc_mm);
    const double squared = std::max(gap.squaredNorm(), 1e-12);
    double sum = 0.0;
    for (const CarriedPlace* at : {&pair.donor, &pair.recipient}) {
      const Segment segment = places.segment(at->carrier, at->arc_mm);
      const double along = std::pow(gap.dot(frames.proximal(segment)), 2) / squared;
      sum += std::sqrt(along * std::pow(ratios[i][static_cast<Eigen::Index>(segment)], 2) +
                       (1.0 - along) * std::pow(breadths[i], 2));
    }
    return 0.5 * sum;
  }
};

namespace {

Error wrong(std::string what, std::string mend) {
  return Error::input({"transfer", std::move(what), std::move(mend)});
}

Level level_of(const limb::SegmentFrames& frames, Segment segment, const Eigen::Vector3d& at_mm) {
  const double along_mm = frames.from_limb(segment, at_mm).fraction * frames.length_mm(segment);
  return {segment == Segment::hand ? "distal wrist crease" : "epicondyles of the humerus",
          segment == Segment::humerus ? -along_mm : along_mm};
}

CutLevel cut_level(const BranchPlaces& places, const limb::SegmentFrames& frames,
                   const NerveMetrics& mean, NodeIndex branch, const std::vector<double>& cuts_mm) {
  CutLevel cut{summarise_sample(cuts_mm), {}, 0.0};
  const auto at = places.place(branch, cut.from_origin_mm.p50, mean);
  if (!at || places.on_girdle(at->carrier, at->arc_mm)) return cut;
  const Level level = level_of(frames, places.segment(at->carrier, at->arc_mm),
                               places.position_mm(at->carrier, at->arc_mm));
  cut.landmark = level.landmark;
  cut.distal_mm = level.distal_mm;
  return cut;
}

// Of ends freed so far, tethered at the two places.
Level sewn_level(const BranchPlaces& places, const limb::SegmentFrames& frames, const PlacePair& at,
                 double donor_mm, double recipient_mm) {
  const Eigen::Vector3d from = places.position_mm(at.donor.carrier, at.donor.arc_mm);
  const Eigen::Vector3d to = places.position_mm(at.recipient.carrier, at.recipient.arc_mm);
  const double both_mm = donor_mm + recipient_mm;
  const double share = both_mm > 0.0 ? donor_mm / both_mm : 0.5;
  const Eigen::Vector3d sewn = from + share * (to - from);
  return level_of(frames, limb::segment_of(sewn, frames), sewn);
}

}  // namespace

Expected<ReachModel> ReachModel::from(const evidence::DataPackage& package,
                                      const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                      int samples, std::uint64_t seed) {
  if (samples < 1) {
    return std::unexpected(
        Error::input({"samples", "no limb is to be sampled", "Ask for 1 or more."}));
  }
  auto case_limb = limb::CaseLimb::from(package, tree, limb);
  if (!case_limb) return std::unexpected(std::move(case_limb.error()));
  const limb::SegmentScale mean = case_limb->size().mean_scale();
  const limb::SegmentFrames frames(mean);  // both sides alike
  auto gap = PivotGap::from(package, tree, frames);
  if (!gap) return std::unexpected(std::move(gap.error()));
  auto girdle = limb::GirdleCourses::from(package, tree);
  if (!girdle) return std::unexpected(std::move(girdle.error()));
  BranchPlaces places(tree, *case_limb, *girdle, frames);
  std::vector<NerveMetrics> limbs{case_limb->metrics()};
  std::ranges::move(case_limb->sample(samples, seed), std::back_inserter(limbs));
  std::vector<Eigen::Vector3d> ratios{Eigen::Vector3d::Ones()};
  std::vector<double> breadths{1.0};
  for (const limb::SizedLimb& sized : case_limb->size().sample(samples, seed)) {
    ratios.emplace_back(sized.scale.arm / mean.arm, sized.scale.forearm / mean.forearm,
                        sized.scale.hand / mean.hand);
    breadths.push_back(sized.scale.breadth / mean.breadth);
  }
  ReachModel model;
  model.parts_ = std::make_shared<const Parts>(
      Parts{&tree, std::move(*case_limb), frames, std::move(*girdle), FreedStretches(package, tree),
            std::move(places), std::move(*gap), std::move(limbs), std::move(ratios),
            std::move(breadths)});
  return model;
}

Expected<Reach> ReachModel::reach(const ReachQuestion& question) const {
  const Parts& parts = *parts_;
  const anatomy::NerveTree& tree = *parts.tree;
  if (question.donor == question.recipient) {
    return std::unexpected(wrong("donor and recipient are the same branch", "Name two branches."));
  }
  const auto is_length = [](double mm) { return mm >= 0.0; };  // NaN is none
  if (!is_length(question.donor_split.length_mm) ||
      !is_length(question.recipient_split.length_mm) ||
      !is_length(question.donor_followed.length_mm)) {
    return std::unexpected(wrong(
        "a branch is split out of its parent or followed into its muscle by a negative length",
        "Give 0 mm or more."));
  }
  const auto below = tree.descendants(question.recipient);
  for (const NodeIndex target : question.targets) {
    if (std::ranges::find(below, target) != below.end()) continue;
    return std::unexpected(wrong(fmt::format("'{}' is no branch of '{}'", tree.node(target).name,
                                             tree.node(question.recipient).name),
                                 "Name a target that the recipient feeds, or none."));
  }
  for (const NodeIndex branch : question.spared) {
    const auto& parents = tree.node(branch).parents;
    if (std::ranges::find(parents, question.recipient) != parents.end()) continue;
    return std::unexpected(wrong(fmt::format("'{}' does not leave '{}'", tree.node(branch).name,
                                             tree.node(question.recipient).name),
                                 "Spare branches of the recipient itself."));
  }
  const auto above = tree.descendants(question.donor);
  if (std::ranges::find(below, question.donor) != below.end() ||
      std::ranges::find(above, question.recipient) != above.end()) {
    return std::unexpected(
        wrong(fmt::format("'{}' and '{}' hang on one another", tree.node(question.donor).name,
                          tree.node(question.recipient).name),
              "Name a donor that does not feed the recipient and is not fed by it."));
  }
  const std::vector<NodeIndex> targets =
      question.targets.empty() ? ends_below(tree, question.recipient) : question.targets;

  const TargetWays ways(tree, question.recipient, targets);
  const SideFinder finder(question, ways, tree, parts.places, parts.stretches, parts.limbs.front());

  const NerveMetrics& mean = parts.limbs.front();
  const RecipientPivots pivots(tree, question.recipient, ways, mean,
                               parts.stretches.of(question.recipient));
  const bool opened = question.junction == Junction::to_recipient_side;

  Reach answer;
  std::vector<Sides> sides;
  for (const NerveMetrics& lengths : parts.limbs) sides.push_back(finder.in(lengths));
  const auto freed_lengths = [&] {
    std::vector<double> donor_mm, recipient_mm;
    for (std::size_t i = 1; i < sides.size(); ++i) {
      const auto& [donor, recipient] = sides[i];
      donor_mm.push_back(donor.most_cut_mm - donor.pivot_mm);
      recipient_mm.push_back(recipient.pivot_mm - recipient.least_cut_mm);
    }
    answer.donor_mm = summarise_sample(donor_mm);
    answer.recipient_mm = summarise_sample(recipient_mm);
  };
  freed_lengths();

  // Of each limb the pivot of the recipient that leaves the least.
  std::vector<double> gap_mm(sides.size(), 0.0);
  std::vector<double> slack_mm(sides.size(), std::numeric_limits<double>::infinity());
  std::vector<double> rest_mm = slack_mm;
  std::vector<FreedEnd> recipients(sides.size());
  PlacePair at;
  for (std::size_t p = 0; p < (opened ? 1 : pivots.size()); ++p) {
    std::vector<FreedEnd> ends;
    std::vector<PlacePair> pairs;
    for (std::size_t i = 0; i < sides.size(); ++i) {
      FreedEnd end = sides[i].recipient;
      RecipientPivots::Held held{question.recipient, end.pivot_mm, end.pivot_mm};
      if (!opened) held = pivots.in(p, parts.limbs[i]);
      end.pivot_mm = held.way_mm;
      end.most_cut_mm = std::min(end.most_cut_mm, end.pivot_mm);
      ends.push_back(end);
      auto donor = parts.places.place(question.donor, sides[i].donor.pivot_mm, parts.limbs[i]);
      auto recipient = parts.places.place(held.branch, held.from_origin_mm, parts.limbs[i]);
      if (!donor || !recipient) {
        answer.why = fmt::format(
            "the model has no place for the {}: neither it nor a nerve that it hangs on is drawn "
            "there",
            tree.node(donor ? question.recipient : question.donor).name);
        return answer;
      }
      // A pivot near the end of a nerve falls on it in one limb and beyond its origin in another;
      // all are followed on the mean limb's nerve.
      if (i > 0 && (donor->carrier != pairs[0].donor.carrier ||
                    recipient->carrier != pairs[0].recipient.carrier)) {
        pairs.push_back(pairs[0]);
        continue;
      }
      donor->arc_mm = parts.places.on_mean_limb_mm(*donor, parts.ratios[i]);
      recipient->arc_mm = parts.places.on_mean_limb_mm(*recipient, parts.ratios[i]);
      pairs.push_back({*donor, *recipient});
    }
    const WorstGap worst = parts.pivot_gap.worst(parts.places, pairs);
    for (std::size_t i = 0; i < sides.size(); ++i) {
      const double ratio = parts.ratio(i, pairs[i]);
      const double here_mm = worst.gap_mm[i] * ratio;
      rest_mm[i] = std::min(
          rest_mm[i], transfer::slack_mm(sides[i].donor, ends[i], worst.at_rest_mm[i] * ratio));
      const double left_mm = transfer::slack_mm(sides[i].donor, ends[i], here_mm);
      if (left_mm >= slack_mm[i]) continue;
      slack_mm[i] = left_mm;
      gap_mm[i] = here_mm;
      recipients[i] = ends[i];
      if (i > 0) continue;
      at = pairs.front();
      answer.joints_between = worst.joints_between;
      answer.worst = worst.worst;
    }
  }
  for (std::size_t i = 0; i < sides.size(); ++i) sides[i].recipient = recipients[i];
  freed_lengths();

  // The mean limb was for the postures; what follows is of the sampled ones.
  for (auto* of_limbs : {&gap_mm, &slack_mm, &rest_mm}) of_limbs->erase(of_limbs->begin());
  std::vector<double> donor_cut_mm, recipient_cut_mm, nearest_mm, farthest_mm, graft_mm;
  for (std::size_t i = 1; i < parts.limbs.size(); ++i) {
    const auto& [donor, recipient] = sides[i];
    // A graft goes on from the ends as long as they can be.
    double from_mm = recipient.least_cut_mm;
    if (const auto cuts = best_cuts(donor, recipient, gap_mm[i - 1])) {
      donor_cut_mm.push_back(cuts->donor_mm);
      recipient_cut_mm.push_back(cuts->recipient_mm);
      from_mm = cuts->recipient_mm;
    } else {
      graft_mm.push_back(-slack_mm[i - 1]);
      from_mm -= graft_mm.back();
    }
    const auto [nearest, farthest] = ways.ends_mm(parts.limbs[i]);
    nearest_mm.push_back(nearest - from_mm);
    farthest_mm.push_back(farthest - from_mm);
  }
  answer.slack_mm = summarise_sample(slack_mm);
  answer.slack_at_rest_mm = summarise_sample(rest_mm);
  answer.chance_at_rest =
      static_cast<double>(std::ranges::count_if(rest_mm, [](double mm) { return mm >= 0.0; })) /
      static_cast<double>(rest_mm.size());
  answer.gap_mm = summarise_sample(gap_mm);
  answer.to_nearest_mm = summarise_sample(nearest_mm);
  answer.to_farthest_mm = summarise_sample(farthest_mm);
  answer.chance = static_cast<double>(donor_cut_mm.size()) / static_cast<double>(slack_mm.size());
  if (!graft_mm.empty()) answer.graft_mm = summarise_sample(graft_mm);
  if (!donor_cut_mm.empty()) {
    answer.donor_cut = cut_level(parts.places, parts.frames, mean, question.donor, donor_cut_mm);
    answer.recipient_cut =
        cut_level(parts.places, parts.frames, mean, question.recipient, recipient_cut_mm);
    const auto& [donor, recipient] = sides.front();
    answer.sewn_at = sewn_level(
        parts.places, parts.frames, at, answer.donor_cut->from_origin_mm.p50 - donor.pivot_mm,
        std::max(0.0, recipient.pivot_mm - answer.recipient_cut->from_origin_mm.p50));
  }
  answer.state = answer.slack_mm->p50 >= 0.0                 ? ReachState::reaches
                 : -answer.slack_mm->p50 <= kLongestGraft_mm ? ReachState::with_graft
                                                             : ReachState::does_not_reach;

  std::set<std::string> rows;
  for (const NodeIndex node :
       {question.donor, question.recipient, at.donor.carrier, at.recipient.carrier}) {
    const auto own = parts.limb.sources(node);
    rows.insert(own.begin(), own.end());
  }
  for (const SplitOut* split :
       {&question.donor_split, &question.donor_followed, &question.recipient_split}) {
    if (!split->row.empty()) rows.insert(split->row);
  }
  if (question.donor_held) rows.insert(question.donor_held->row);
  for (const NodeIndex node : {at.donor.carrier, at.recipient.carrier}) {
    rows.insert(parts.girdle.rows(node).begin(), parts.girdle.rows(node).end());
  }
  for (const NodeIndex node : {question.donor, question.recipient}) {
    const auto& freed = parts.stretches.of(node);
    if (freed) rows.insert(freed->rows.begin(), freed->rows.end());
  }
  answer.sources.assign(rows.begin(), rows.end());
  answer.assumptions = parts.limb.assumptions();
  answer.assumptions.emplace_back(
      "The gap is the straight line between the places where the two ends stay tethered; bones, "
      "vessels and tunnels in the way are not seen, and the ends are not trimmed.");
  answer.assumptions.emplace_back(
      "In sampled limbs the gap grows with the length and the breadth of its segments.");
  for (const CarriedPlace* place : {&at.donor, &at.recipient}) {
    const auto& points = parts.girdle.points(place->carrier);
    if (points.empty()) continue;
    const double sd_mm = std::ranges::max(points, {}, &limb::GirdlePoint::sd_mm).sd_mm;
    answer.assumptions.push_back(
        fmt::format("The {} is drawn on a shoulder girdle, neck and chest that are assumed, with "
                    "points known to {:.0f} mm (SD).",
                    tree.node(place->carrier).name, sd_mm));
  }
  for (const NodeIndex node : {question.donor, question.recipient}) {
    const auto& freed = parts.stretches.of(node);
    if (!freed || !freed->assumed) continue;
    answer.assumptions.push_back(fmt::format("The {} is freed over part of its length: {}.",
                                             tree.node(node).name, freed->reason));
  }
  for (const auto& [place, name] :
       {std::pair{at.donor, question.donor}, std::pair{at.recipient, question.recipient}}) {
    if (!place.beside) continue;
    answer.assumptions.push_back(
        fmt::format("The {} is not drawn: its far end is taken beside the {}, as far from its "
                    "origin as it is long.",
                    tree.node(name).name, tree.node(place.carrier).name));
  }
  return answer;
}

std::optional<double> ReachModel::most_slack_mm(NodeIndex donor, NodeIndex recipient) const {
  const Parts& parts = *parts_;
  const NerveMetrics& mean = parts.limbs.front();
  const ReachQuestion question{donor, recipient};
  const TargetWays ways(*parts.tree, recipient, ends_below(*parts.tree, recipient));
  const RecipientPivots pivots(*parts.tree, recipient, ways, mean, parts.stretches.of(recipient));
  const SideFinder finder(question, ways, *parts.tree, parts.places, parts.stretches, mean);
  const Sides sides = finder.in(mean);
  const auto from = parts.places.place(donor, sides.donor.pivot_mm, mean);
  std::optional<double> most_mm;
  for (std::size_t p = 0; p < pivots.size(); ++p) {
    const RecipientPivots::Held held = pivots.in(p, mean);
    const auto to = parts.places.place(held.branch, held.from_origin_mm, mean);
    if (!from || !to) return std::nullopt;
    FreedEnd end = sides.recipient;
    end.pivot_mm = held.way_mm;
    const double gap_mm = (parts.places.position_mm(from->carrier, from->arc_mm) -
                           parts.places.position_mm(to->carrier, to->arc_mm))
                              .norm();
    most_mm = std::max(most_mm.value_or(-std::numeric_limits<double>::infinity()),
                       transfer::slack_mm(sides.donor, end, gap_mm));
  }
  return most_mm;
}

}  // namespace endplate::transfer
